import type { HouseRuleSettings } from '../../model/house-rules.ts';
import { KINDS } from '../../vocabulary/kinds.ts';
import type { Slot } from '../../vocabulary/places.ts';
import { phrase } from '../../words/phrase.ts';
import { slotsOfPiece } from '../grammar/seats.ts';
import type { Worn } from '../worn.ts';
import { type CapRule, COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { inSlot, isOpenShoe, LAPELLED, pairIn } from './traits.ts';

/** Places with something beneath them: a shirt, a lining, a collar, a waistband, a sock. */
const OVER_SOMETHING: ReadonlySet<Slot> = new Set<Slot>([
  'mid layer',
  'outer layer',
  'shoes',
  'bag',
  'tie',
  'belt',
  'jewellery lapel',
]);

const touchesSkin = (worn: Worn): boolean => !OVER_SOMETHING.has(worn.slot) || isOpenShoe(worn);

/** True when a piece has a place in which something lies between it and the skin. */
export const wornOffSkin = (piece: Worn['piece']): boolean =>
  slotsOfPiece(piece).some((slot) => !touchesSkin({ piece, slot }));

/** Cloth the client does not wear against the skin stays out of the places that touch it; the brief says which cloth. */
export const OFF_THE_SKIN: CapRule = {
  id: 'off-the-skin',
  says: phrase('outfit', 'rule off-the-skin', {}),
  shape: 'cap',
  severity: 'rules out',
  threshold: { default: 0, low: 0, high: 0, unit: phrase('outfit', 'unit pieces', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  counts: (worn) => worn.piece.offSkin === true && touchesSkin(worn),
  tooMany: (pieces) => phrase('outfit', 'against the skin', { pieces: pieces.map(({ name }) => name) }),
};

/** True when the rule shuts such a piece out, and does not only lower the score. */
export const keepsOffSkin = (rules: HouseRuleSettings): boolean =>
  (rules[OFF_THE_SKIN.id]?.severity ?? OFF_THE_SKIN.severity) === 'rules out';

/** Coats and tailored jackets are lined; an unlined layer touches what the piece beneath leaves bare. */
const isLined = ({ kind }: Worn['piece']): boolean => KINDS[kind].group === 'coats' || LAPELLED.has(kind);

export const SLEEVES_BENEATH: PairRule = {
  id: 'sleeves-beneath',
  says: phrase('outfit', 'rule sleeves-beneath', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, inSlot('top', 'one-piece'), inSlot('mid layer', 'outer layer'));
    if (found === undefined) return undefined;
    const [beneath, over] = found;
    if (over.piece.offSkin !== true || isLined(over.piece)) return undefined;
    const upper = over.piece.covers.filter((part) => part !== 'thighs' && part !== 'knees' && part !== 'calves');
    return upper.every((part) => beneath.piece.covers.includes(part))
      ? undefined
      : phrase('outfit', 'bare beneath', { over: over.piece.name, beneath: beneath.piece.name });
  },
};
