import type { Finding } from '../model/index.ts';
import { phrase } from '../words/index.ts';

const HARD_TO_TELL = 'colour-hard-to-tell';

const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.map(String) : value === undefined ? [] : [String(value)];
const once = (values: readonly string[]): readonly string[] => [...new Set(values)];

/** The name a pair's sentence has for a piece, and for the other. */
const namesIn = ({ about, message: { values } }: Finding, piece: string): readonly [own: string, other: string] => {
  const [one, two] = [String(values.one), String(values.two)];
  return about[0] === piece ? [one, two] : [two, one];
};

/** One finding of several pairs that share a piece. */
const together = (pairs: readonly [Finding, ...Finding[]], piece: string): Finding => {
  const [first] = pairs;
  const looks = once(pairs.flatMap(({ reason }) => texts(reason?.values.looks))).toSorted(
    (a, b) => Number(a) - Number(b),
  );
  return {
    ...first,
    message: phrase('colour', 'hard to tell from', {
      piece: namesIn(first, piece)[0],
      others: pairs.map((pair) => namesIn(pair, piece)[1]),
      visions: once(pairs.flatMap(({ message }) => texts(message.values.visions))),
    }),
    reason: phrase('colour', 'hard to tell in', { looks }),
    about: once([piece, ...pairs.flatMap(({ about }) => about)]),
  };
};

/**
 * Findings with the pairs that are hard to tell apart folded into one for each piece: that with the most pairs first, until
 * every pair is told once. All others stay as they are, in their order.
 */
export const foldedByPiece = (findings: readonly Finding[]): readonly Finding[] => {
  let left = findings.filter(({ rule }) => rule === HARD_TO_TELL);
  const at = findings.findIndex(({ rule }) => rule === HARD_TO_TELL);
  const folded: Finding[] = [];
  while (left.length > 0) {
    const pairsOf = (piece: string): readonly Finding[] => left.filter(({ about }) => about.includes(piece));
    const [piece = ''] = once(left.flatMap(({ about }) => about)).toSorted(
      (a, b) => pairsOf(b).length - pairsOf(a).length,
    );
    const [first, ...others] = pairsOf(piece);
    if (first === undefined) break;
    folded.push(others.length === 0 ? first : together([first, ...others], piece));
    left = left.filter(({ about }) => !about.includes(piece));
  }
  const isOther = ({ rule }: Finding): boolean => rule !== HARD_TO_TELL;
  return at < 0
    ? findings
    : [...findings.slice(0, at).filter(isOther), ...folded, ...findings.slice(at).filter(isOther)];
};
