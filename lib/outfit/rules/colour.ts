import { hueFamily } from '../../colour/hue.ts';
import { seenColours } from '../../colour/piece-relation.ts';
import { phrase } from '../../words/phrase.ts';
import { relationOf } from './relation.ts';
import { COMMON_PRACTICE, type MarksRule, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { isUnseen } from './traits.ts';

export const COLOUR: PairRule = {
  id: 'colour',
  says: phrase('outfit', 'rule colour', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    if (isUnseen(a) || isUnseen(b)) return undefined;
    const found = relationOf(a.piece, b.piece);
    return found.goes ? undefined : found.reason;
  },
};

/** The hue families of the seen colours; neutrals are free. */
export const HUE_FAMILIES_AT_MOST: MarksRule = {
  id: 'hue-families',
  says: phrase('outfit', 'rule hue-families', {}),
  shape: 'marks',
  severity: 'rules out',
  threshold: { default: 3, low: 0, high: 8, unit: phrase('outfit', 'unit families', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  marks: (worn) =>
    isUnseen(worn)
      ? []
      : [...new Set(seenColours(worn.piece).map((colour) => hueFamily(colour)))].filter(
          (family) => family !== 'neutral',
        ),
  tooMany: (families, most) => phrase('outfit', 'too many hues', { families, most }),
};
