import type { LineCounter, YAMLError } from 'yaml';

/** What is wrong in a front matter, for someone who has never heard of YAML. `line` is 1-based within the YAML. */
export interface YamlFault {
  readonly line: number;
  readonly wrong: string;
  readonly mend: string;
}

const BRACKETS = { wrong: 'a bracket is opened and not closed', mend: 'end the list with ] or the fields with }' };
const COLON = {
  wrong: 'a text holds a colon, or a line is further in than the one it belongs with',
  mend: 'put text with a colon in quotes; begin fields of one thing equally far in',
};
const LIST = {
  wrong: 'a line is neither a field such as "name: …" nor a line of a list such as "- …"',
  mend: 'begin it as far in as the lines it belongs with, and write a colon after the name of a field',
};

/** By the code of the parser (yaml 2, errors.ts); undefined where its message says more. */
const WORDS: Partial<Record<YAMLError['code'], Omit<YamlFault, 'line'>>> = {
  DUPLICATE_KEY: { wrong: 'this field is written twice', mend: 'keep one of the two' },
  TAB_AS_INDENT: { wrong: 'a line begins with a tab', mend: 'begin it with spaces' },
  BLOCK_AS_IMPLICIT_KEY: COLON,
  MULTILINE_IMPLICIT_KEY: LIST,
  UNEXPECTED_TOKEN: {
    wrong: 'something stands after a text has ended: a quote too many, or one too few before it',
    mend: 'open and close each text with one kind of quote, and write a comma before the next field',
  },
  BAD_SCALAR_START: {
    wrong: 'a text begins with a sign that has a meaning of its own',
    mend: 'put the text in quotes',
  },
  BAD_DQ_ESCAPE: { wrong: 'there is a \\ in a text in double quotes', mend: 'write the text in single quotes' },
};

/** The first line on which a quote stays open. */
const openQuote = (source: string): number => {
  const at = source.split('\n').findIndex((line) => (line.match(/"/g)?.length ?? 0) % 2 === 1);
  return at < 0 ? 1 : at + 1;
};

const faultOf = (error: YAMLError, source: string, counter: LineCounter): YamlFault => {
  const { line } = counter.linePos(error.pos[0]);
  if (error.code === 'MISSING_CHAR' && /closing .?quote/.test(error.message)) {
    return {
      line: source.includes('"') ? openQuote(source) : line,
      wrong: 'a quote is opened and not closed',
      mend: 'close the text with the same quote',
    };
  }
  if (error.code === 'BAD_INDENT') {
    const before = source.slice(0, error.pos[0]);
    const opened = Math.max(before.lastIndexOf('['), before.lastIndexOf('{'));
    return { line: opened < 0 ? line : counter.linePos(opened).line, ...BRACKETS };
  }
  const words = WORDS[error.code] ?? {
    wrong: `the front matter cannot be read: ${error.message}`,
    mend: 'check the indent and the quotes; text with a colon in it needs quotes',
  };
  return { line, ...words };
};

/** Fields written twice, and the first thing that cannot be read: what cannot be read after that is often its echo. */
export const yamlFaults = (
  errors: readonly YAMLError[],
  source: string,
  counter: LineCounter,
): readonly YamlFault[] => {
  const first = errors.findIndex(({ code }) => code !== 'DUPLICATE_KEY');
  return errors
    .filter(({ code }, index) => code === 'DUPLICATE_KEY' || index === first)
    .map((error) => faultOf(error, source, counter));
};
