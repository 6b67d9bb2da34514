import { phrase } from '../../words/phrase.ts';
import { COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { inSlot, lengthIndex, pairIn, showsLegs, volumeOf } from './traits.ts';

/** Volume above and below the waist, each 0 (close) to 3 (full); `threshold` is the most their sum may be. */
export const PROPORTION: PairRule = {
  id: 'proportion',
  says: phrase('outfit', 'rule proportion', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 5, low: 0, high: 6, unit: phrase('outfit', 'unit volume', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    const found = pairIn(a, b, inSlot('top'), inSlot('bottom'));
    if (found === undefined) return undefined;
    const [top, bottom] = found;
    return volumeOf(top.piece) + volumeOf(bottom.piece) > threshold
      ? phrase('outfit', 'full on full', { top: top.piece.name, bottom: bottom.piece.name })
      : undefined;
  },
};

/** A top that reaches the thigh hides anything that ends above the knee. */
export const LENGTHS_MEET: PairRule = {
  id: 'lengths',
  says: phrase('outfit', 'rule lengths', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, inSlot('top'), inSlot('bottom'));
    if (found === undefined) return undefined;
    const [top, bottom] = found;
    return lengthIndex(top.piece.length) >= lengthIndex('thigh') &&
      showsLegs(bottom) &&
      lengthIndex(bottom.piece.length) < lengthIndex('knee')
      ? phrase('outfit', 'long over short', { top: top.piece.name, bottom: bottom.piece.name })
      : undefined;
  },
};

/** Two pieces of one kind over each other: two cardigans, two shirts. */
export const ONE_OF_A_KIND: PairRule = {
  id: 'one-of-a-kind',
  says: phrase('outfit', 'rule one-of-a-kind', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const upper = inSlot('top', 'one-piece', 'mid layer', 'outer layer', 'cover-up');
    return upper(a) && upper(b) && a.piece.kind === b.piece.kind
      ? phrase('outfit', 'two of a kind', { one: a.piece.name, two: b.piece.name })
      : undefined;
  },
};
