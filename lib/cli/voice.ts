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

/** A finding as lines of text: level, what, why, how to mend it; `mends` is how many findings its mend is for. */
export const findingText = (finding: Finding, voice: Voice, mends = 1): string => {
  const where =
    finding.file === undefined ? '' : ` (${finding.file}${finding.line === undefined ? '' : `:${finding.line}`})`;
  const lines = [`${finding.level} [${finding.rule}] ${voice.say(finding.message)}${where}`];
  if (finding.reason !== undefined) lines.push(`    ${voice.say(finding.reason)}`);
  const forHow = mends === 1 ? '' : mends === 2 ? 'For both: ' : `For all ${voice.formats.count(mends)}: `;
  if (finding.mend !== undefined) lines.push(`    ${forHow}${voice.say(finding.mend)}`);
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

/** Findings as text; what mends several in a row is said once, after the last, and for how many it is. */
export const findingLines = (findings: readonly Finding[], voice: Voice): readonly string[] => {
  // two go together when all that would mend them is the same
  const mendsOf = ({ rule, mend, orElse = [] }: Finding): string =>
    JSON.stringify([rule, ...[mend, ...orElse].map((said) => (said === undefined ? '' : voice.say(said)))]);
  let alike = 0;
  return findings.map((finding, index) => {
    alike += 1;
    const next = findings[index + 1];
    if (next !== undefined && finding.mend !== undefined && mendsOf(next) === mendsOf(finding)) {
      const { mend: _said, orElse: _either, ...rest } = finding;
      return findingText(rest, voice);
    }
    const text = findingText(finding, voice, alike);
    alike = 0;
    return text;
  });
};

/** Refusals as data, beside what was asked. */
export const refusalData = (
  findings: readonly Finding[],
): readonly { readonly rule: string; readonly message: Phrase; readonly pieces: readonly string[] }[] =>
  findings.map(({ rule, message, about }) => ({ rule, message, pieces: about }));
