import { DRESS_CODES } from '../../vocabulary/dress-codes.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { isLeftAtDoor } from './traits.ts';

const code = (index: number): string => DRESS_CODES[index] ?? '';

const apart = (a: Worn, b: Worn, threshold: number): Phrase | undefined => {
  const [plain, dressy] = a.piece.dress.high <= b.piece.dress.high ? [a.piece, b.piece] : [b.piece, a.piece];
  return plain.dress.high + threshold < dressy.dress.low
    ? phrase('outfit', 'dress apart', {
        plain: plain.name,
        dressy: dressy.name,
        ends: code(plain.dress.high),
        begins: code(dressy.dress.low),
      })
    : undefined;
};

/** Of two whose codes do not meet, the one that is left at the door is told of, once for all it is worn with. */
const apartOnTheWay = (a: Worn, b: Worn, threshold: number): Phrase | undefined => {
  if (apart(a, b, threshold) === undefined) return undefined;
  const [plain, dressy] = a.piece.dress.high <= b.piece.dress.high ? [a.piece, b.piece] : [b.piece, a.piece];
  const outer = isLeftAtDoor(plain) ? plain : dressy;
  return outer === plain
    ? phrase('outfit', 'plainer on the way', { piece: outer.name })
    : phrase('outfit', 'dressier on the way', { piece: outer.name });
};

/**
 * Dress intervals of all pieces of a look that are worn indoors have a code in common; in one dimension that is so when
 * each two have one (Helly's theorem). `threshold` is by how many steps a piece may be plainer than the rest.
 */
export const DRESS_MEETS: PairRule = {
  id: 'dress-meets',
  says: phrase('outfit', 'rule dress-meets', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 0, low: 0, high: 4, unit: phrase('outfit', 'unit steps', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => (isLeftAtDoor(a.piece) || isLeftAtDoor(b.piece) ? undefined : apart(a, b, threshold)),
};

/** What is left at the door is not seen inside, but on the way: it goes with the rest all the same. */
export const ON_THE_WAY: PairRule = {
  id: 'on-the-way',
  says: phrase('outfit', 'rule on-the-way', {}),
  shape: 'pair',
  severity: 'lowers the score',
  threshold: { default: 0, low: 0, high: 4, unit: phrase('outfit', 'unit steps', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) =>
    isLeftAtDoor(a.piece) || isLeftAtDoor(b.piece) ? apartOnTheWay(a, b, threshold) : undefined,
};
