import type { Finding, Studio } from '../model/index.ts';
import { createFormats, english, type Formats, type Phrase, say } from '../words/index.ts';

/** How the command line speaks: English sentences, the studio's units. */
export interface Voice {
  readonly formats: Formats;
  say(phrase: Phrase): string;
}

export const voiceOf = (studio: Studio): Voice => {
  const language = studio.language.startsWith('en') ? studio.language : 'en-GB';
  const formats = createFormats({ ...studio, language });
  return { formats, say: (phrase) => say(english, formats, phrase) };
};

/** A finding as lines of text: level, what, why, how to mend it. */
export const findingText = (finding: Finding, voice: Voice): string => {
  const where =
    finding.file === undefined ? '' : ` (${finding.file}${finding.line === undefined ? '' : `:${finding.line}`})`;
  const lines = [`${finding.level} [${finding.rule}] ${voice.say(finding.message)}${where}`];
  if (finding.reason !== undefined) lines.push(`    ${voice.say(finding.reason)}`);
  if (finding.mend !== undefined) lines.push(`    ${voice.say(finding.mend)}`);
  for (const other of finding.orElse ?? []) lines.push(`    or: ${voice.say(other)}`);
  return lines.join('\n');
};

const isPhrase = (value: unknown): value is Phrase =>
  value !== null && typeof value === 'object' && 'room' in value && 'key' in value && 'values' in value;

/** Data as JSON: phrases said, integers of any size as digits in quotes. */
export const jsonText = (data: unknown, voice: Voice): string =>
  JSON.stringify(
    data,
    (_key, value: unknown) => (isPhrase(value) ? voice.say(value) : typeof value === 'bigint' ? String(value) : value),
    2,
  );

/** Findings as text; what mends several in a row is said once, after the last. */
export const findingLines = (findings: readonly Finding[], voice: Voice): readonly string[] => {
  const mendOf = ({ mend }: Finding): string => (mend === undefined ? '' : voice.say(mend));
  return findings.map((finding, index) => {
    const { mend: _said, ...rest } = finding;
    const next = findings[index + 1];
    const goesOn = next !== undefined && next.rule === finding.rule && mendOf(next) === mendOf(finding);
    return findingText(goesOn ? rest : finding, voice);
  });
};

/** Refusals as data, beside what was asked. */
export const refusalData = (
  findings: readonly Finding[],
): readonly { readonly rule: string; readonly message: Phrase; readonly pieces: readonly string[] }[] =>
  findings.map(({ rule, message, about }) => ({ rule, message, pieces: about }));
