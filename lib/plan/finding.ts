import type { Brief, Finding, Occasion } from '../model/index.ts';
import type { Phrase } from '../words/index.ts';

/** A finding about some occasions of a brief, at the line of the first. */
export const finding = (
  level: Finding['level'],
  rule: string,
  message: Phrase,
  mend: Phrase,
  brief: Brief,
  about: readonly Occasion[] = [],
): Finding => {
  const line = about[0]?.line;
  return {
    level,
    rule,
    message,
    mend,
    file: brief.file,
    ...(line === undefined ? {} : { line }),
    about: about.map(({ id }) => id),
  };
};
