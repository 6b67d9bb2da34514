import { differenceOf } from '../../colour/difference.ts';
import { seenColours } from '../../colour/piece-relation.ts';
import type { Piece } from '../../model/piece.ts';
import { QUIET_PATTERNS } from '../../vocabulary/patterns.ts';
import { phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { type CapRule, COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { isUnseen } from './traits.ts';

const isPrint = (worn: Worn): boolean => !QUIET_PATTERNS.has(worn.piece.pattern.type) && !isUnseen(worn);
const ofOneCloth = (a: Piece, b: Piece): boolean =>
  a.pattern.type === b.pattern.type &&
  a.fabric === b.fabric &&
  a.colours.every(({ hex }, i) => hex === b.colours[i]?.hex);
/** Two prints that are not a suit's jacket and trousers. */
const twoPrints = (a: Worn, b: Worn): boolean => isPrint(a) && isPrint(b) && !ofOneCloth(a.piece, b.piece);

export const PATTERN_COUNT: CapRule = {
  id: 'pattern-count',
  says: phrase('outfit', 'rule pattern-count', {}),
  shape: 'cap',
  severity: 'rules out',
  threshold: { default: 2, low: 0, high: 6, unit: phrase('outfit', 'unit prints', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  counts: isPrint,
  tooMany: (pieces, most) => phrase('outfit', 'too many prints', { pieces: pieces.map(({ name }) => name), most }),
};

export const PATTERN_SCALE: PairRule = {
  id: 'pattern-scale',
  says: phrase('outfit', 'rule pattern-scale', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) =>
    twoPrints(a, b) && a.piece.pattern.scale === b.piece.pattern.scale
      ? phrase('outfit', 'prints of one scale', {
          one: a.piece.name,
          two: b.piece.name,
          scale: a.piece.pattern.scale,
        })
      : undefined,
};

/** `threshold` is the CIEDE2000 difference within which two colours are called the same colour. */
export const PATTERN_COLOUR: PairRule = {
  id: 'pattern-colour',
  says: phrase('outfit', 'rule pattern-colour', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 14, low: 0, high: 100, unit: phrase('outfit', 'unit difference', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    if (!twoPrints(a, b)) return undefined;
    const shared = seenColours(a.piece).some((one) =>
      seenColours(b.piece).some((two) => differenceOf(one.hex, two.hex) <= threshold),
    );
    return shared ? undefined : phrase('outfit', 'prints share no colour', { one: a.piece.name, two: b.piece.name });
  },
};
