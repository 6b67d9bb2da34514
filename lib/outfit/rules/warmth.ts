import { phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { isOpenShoe, SHORTS } from './traits.ts';

const bareFor = (worn: Worn): boolean => isOpenShoe(worn) || SHORTS.has(worn.piece.kind);
const isWinterHead = ({ piece, slot }: Worn): boolean =>
  (slot === 'headwear' || slot === 'gloves' || slot === 'scarf') &&
  (piece.suits.includes('snow') || piece.fabric === 'cable wool');
/** A roll-neck: covers the neck and is knitted warm. Thin knit 0.25 clo and up, ASHRAE Handbook ch. 9 table 9. */
const isRollNeck = ({ piece, slot }: Worn): boolean =>
  slot === 'top' && piece.covers.includes('neck') && piece.clo.value >= 0.25;

/**
 * One look, one season: shorts and bare shoes do not go with winter wear, that is a layer of at least `threshold` clo,
 * a roll-neck, or what is made for snow.
 */
export const ONE_SEASON: PairRule = {
  id: 'one-season',
  says: phrase('outfit', 'rule one-season', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 0.5, low: 0.1, high: 3, unit: phrase('outfit', 'unit clo', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    const isWinter = (worn: Worn): boolean =>
      (worn.slot !== 'shoes' && worn.slot !== 'swim' && worn.piece.clo.value >= threshold) ||
      isRollNeck(worn) ||
      isWinterHead(worn);
    const said = (bare: Worn, winter: Worn) =>
      phrase('outfit', 'two seasons', { bare: bare.piece.name, winter: winter.piece.name });
    if (bareFor(a) && isWinter(b)) return said(a, b);
    if (bareFor(b) && isWinter(a)) return said(b, a);
    return undefined;
  },
};
