import { isSkirt } from '../../vocabulary/kinds.ts';
import { phrase } from '../../words/phrase.ts';
import { COMMON_PRACTICE, type EmptyRule, ORDINARY_POINTS, type PairRule } from './rule.ts';
import {
  BOOTS,
  HEAVY_FOR_SHORTS,
  inSlot,
  isOpenShoe,
  isSock,
  lengthIndex,
  pairIn,
  SHORTS,
  showsLegs,
  volumeOf,
} from './traits.ts';

/** Legwear belongs under what shows the leg; socks belong in closed shoes, and with heels of `threshold` cm only in boots. */
export const LEGWEAR_SUITS: PairRule = {
  id: 'legwear-suits',
  says: phrase('outfit', 'rule legwear-suits', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 4, low: 0, high: 15, unit: phrase('outfit', 'unit cm', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    const onFeet = pairIn(a, b, inSlot('legwear'), inSlot('shoes'));
    if (onFeet !== undefined) {
      const [legwear, shoes] = onFeet;
      const said = { legwear: legwear.piece.name, shoes: shoes.piece.name };
      if (legwear.piece.covers.includes('feet') && isOpenShoe(shoes)) return phrase('outfit', 'bare shoes', said);
      const dressy = shoes.piece.heelCm >= threshold && !BOOTS.has(shoes.piece.kind);
      return isSock(legwear) && dressy ? phrase('outfit', 'socks with heels', said) : undefined;
    }
    const onLegs = pairIn(a, b, inSlot('legwear'), inSlot('bottom', 'one-piece'));
    if (onLegs === undefined) return undefined;
    const [legwear, garment] = onLegs;
    return !isSock(legwear) && !showsLegs(garment)
      ? phrase('outfit', 'unseen legwear', { legwear: legwear.piece.name, garment: garment.piece.name })
      : undefined;
  },
};

/** Tall boots want a slim leg or a hem above them; walking boots do not go with skirts and fine dresses. */
export const SHOES_SUIT: PairRule = {
  id: 'shoes-suit',
  says: phrase('outfit', 'rule shoes-suit', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, inSlot('shoes'), inSlot('bottom', 'one-piece'));
    if (found !== undefined) {
      const [shoes, garment] = found;
      const said = { shoes: shoes.piece.name, garment: garment.piece.name };
      const trousers = !isSkirt(garment.piece) && lengthIndex(garment.piece.length) >= lengthIndex('ankle');
      if (shoes.piece.kind === 'knee boots' && trousers && garment.slot === 'bottom' && volumeOf(garment.piece) > 0) {
        return phrase('outfit', 'boots under trousers', said);
      }
      if (shoes.piece.kind === 'hiking boots' && showsLegs(garment) && garment.piece.dress.high > 0) {
        return phrase('outfit', 'walking boots with fine', said);
      }
      return undefined;
    }
    const byWater = pairIn(a, b, inSlot('swim'), inSlot('shoes'));
    if (byWater !== undefined && !isOpenShoe(byWater[1]) && !byWater[1].piece.suits.includes('swim')) {
      return phrase('outfit', 'closed shoes by water', { shoes: byWater[1].piece.name });
    }
    return undefined;
  },
};

/** Shorts go with light shoes: trainers, canvas, loafers, sandals. */
export const SHORTS_SHOES: PairRule = {
  id: 'shorts-shoes',
  says: phrase('outfit', 'rule shorts-shoes', {}),
  shape: 'pair',
  severity: 'lowers the score',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, inSlot('shoes'), inSlot('bottom', 'one-piece'));
    if (found === undefined) return undefined;
    const [shoes, shorts] = found;
    return SHORTS.has(shorts.piece.kind) && HEAVY_FOR_SHORTS.has(shoes.piece.kind)
      ? phrase('outfit', 'heavy with shorts', { shoes: shoes.piece.name, shorts: shorts.piece.name })
      : undefined;
  },
};

/** From the dress code of index `threshold` on, a knee-length skirt or dress asks for legwear. */
export const BARE_LEGS: EmptyRule = {
  id: 'bare-legs',
  says: phrase('outfit', 'rule bare-legs', {}),
  shape: 'empty',
  slot: 'legwear',
  severity: 'lowers the score',
  threshold: { default: 2, low: 0, high: 4, unit: phrase('outfit', 'unit dress', {}) },
  points: ORDINARY_POINTS / 2,
  source: COMMON_PRACTICE,
  without: (worn, threshold) =>
    showsLegs(worn) && worn.piece.dress.low >= threshold && lengthIndex(worn.piece.length) <= lengthIndex('knee')
      ? phrase('outfit', 'bare legs', { garment: worn.piece.name })
      : undefined,
};
