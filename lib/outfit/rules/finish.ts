import { isSkirt } from '../../vocabulary/kinds.ts';
import { phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { type CapRule, COMMON_PRACTICE, type EmptyRule, ORDINARY_POINTS, type PairRule } from './rule.ts';
import {
  inSlot,
  isOrnament,
  LAPELLED,
  NECK_BOWS,
  OVER_TIE,
  pairIn,
  SHORTS,
  TAKES_TIE,
  TOO_EASY_FOR_TIE,
  WITHOUT_BELT,
} from './traits.ts';

export const ONE_STATEMENT: CapRule = {
  id: 'one-statement',
  says: phrase('outfit', 'rule one-statement', {}),
  shape: 'cap',
  severity: 'rules out',
  threshold: { default: 1, low: 0, high: 6, unit: phrase('outfit', 'unit pieces', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  counts: ({ piece }) => piece.statement,
  tooMany: (pieces, most) => phrase('outfit', 'too many statements', { pieces: pieces.map(({ name }) => name), most }),
};

export const ORNAMENTS_AT_MOST: CapRule = {
  id: 'ornaments',
  says: phrase('outfit', 'rule ornaments', {}),
  shape: 'cap',
  severity: 'lowers the score',
  threshold: { default: 3, low: 0, high: 8, unit: phrase('outfit', 'unit pieces', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  counts: isOrnament,
  tooMany: (pieces, most) => phrase('outfit', 'too many ornaments', { pieces: pieces.map(({ name }) => name), most }),
};

/** Gold is warm: an OKLCH hue between orange and yellow with some chroma. Own choice. */
const isGold = ({ piece }: Worn): boolean => {
  const [metal] = piece.colours;
  return metal !== undefined && metal.oklch.c >= 0.04 && metal.oklch.h >= 30 && metal.oklch.h <= 120;
};
const isMetal = ({ piece }: Worn): boolean => piece.fabric === 'metal';

export const METALS_AGREE: PairRule = {
  id: 'metals',
  says: phrase('outfit', 'rule metals', {}),
  shape: 'pair',
  severity: 'lowers the score',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) =>
    isMetal(a) && isMetal(b) && isGold(a) !== isGold(b)
      ? phrase('outfit', 'metals apart', { one: a.piece.name, two: b.piece.name })
      : undefined,
};

const isAtNeck = (worn: Worn): boolean =>
  worn.slot === 'scarf' || worn.slot === 'jewellery neck' || worn.slot === 'tie' || NECK_BOWS.has(worn.piece.kind);

/** One thing at the neck: a scarf, a necklace, a tie or a bow. */
export const ONE_AT_THE_NECK: PairRule = {
  id: 'one-at-the-neck',
  says: phrase('outfit', 'rule one-at-the-neck', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    // a warm scarf goes over a tie on the way, and comes off with the coat
    const scarfOverTie = pairIn(a, b, inSlot('scarf'), inSlot('tie')) !== undefined;
    return isAtNeck(a) && isAtNeck(b) && !scarfOverTie
      ? phrase('outfit', 'two at the neck', { one: a.piece.name, two: b.piece.name })
      : undefined;
  },
};

/** A tie wants a collar above, long trousers and leather shoes below, and over it nothing that hides or contradicts it. */
export const TIE_SUITS: PairRule = {
  id: 'tie-suits',
  says: phrase('outfit', 'rule tie-suits', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const legs = pairIn(a, b, inSlot('tie'), inSlot('bottom'));
    if (legs !== undefined && SHORTS.has(legs[1].piece.kind))
      return phrase('outfit', 'tie with shorts', { tie: legs[0].piece.name, shorts: legs[1].piece.name });
    const feet = pairIn(a, b, inSlot('tie'), inSlot('shoes'));
    if (feet !== undefined && TOO_EASY_FOR_TIE.has(feet[1].piece.kind))
      return phrase('outfit', 'tie with shoes', { tie: feet[0].piece.name, shoes: feet[1].piece.name });
    const layered = pairIn(a, b, inSlot('tie'), inSlot('mid layer'));
    if (layered !== undefined && !OVER_TIE.has(layered[1].piece.kind))
      return phrase('outfit', 'tie under layer', { tie: layered[0].piece.name, layer: layered[1].piece.name });
    const found = pairIn(a, b, inSlot('tie'), inSlot('top'));
    return found !== undefined && !TAKES_TIE.has(found[1].piece.kind)
      ? phrase('outfit', 'takes no tie', { tie: found[0].piece.name, top: found[1].piece.name })
      : undefined;
  },
};

/** A tie on a shirt alone looks like the end of a working day: it is worn under a jacket, a waistcoat or a fine knit. */
export const TIE_JACKET: EmptyRule = {
  id: 'tie-jacket',
  says: phrase('outfit', 'rule tie-jacket', {}),
  shape: 'empty',
  slot: 'mid layer',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  without: ({ piece, slot }) =>
    slot === 'tie' ? phrase('outfit', 'tie without jacket', { tie: piece.name }) : undefined,
};

/** Braces button to trousers; a belt wants loops or a waist. */
export const BELT_SUITS: PairRule = {
  id: 'belt-suits',
  says: phrase('outfit', 'rule belt-suits', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, inSlot('belt'), inSlot('bottom', 'one-piece'));
    if (found === undefined) return undefined;
    const [belt, garment] = found;
    const said = { belt: belt.piece.name, garment: garment.piece.name };
    const noTrousers = garment.slot === 'one-piece' || isSkirt(garment.piece);
    if (belt.piece.kind === 'braces' && noTrousers) return phrase('outfit', 'takes no belt', said);
    return WITHOUT_BELT.has(garment.piece.kind) ? phrase('outfit', 'takes no belt', said) : undefined;
  },
};

const isPocketSquare = ({ piece }: Worn): boolean => piece.kind === 'pocket square';

/** A pocket square needs the breast pocket of a jacket. */
export const LAPEL_SUITS: PairRule = {
  id: 'lapel-suits',
  says: phrase('outfit', 'rule lapel-suits', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, isPocketSquare, inSlot('mid layer'));
    return found !== undefined && !LAPELLED.has(found[1].piece.kind)
      ? phrase('outfit', 'no breast pocket', { square: found[0].piece.name, layer: found[1].piece.name })
      : undefined;
  },
};

export const POCKET_SQUARE: EmptyRule = {
  id: 'pocket-square',
  says: phrase('outfit', 'rule pocket-square', {}),
  shape: 'empty',
  slot: 'mid layer',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  without: (worn) =>
    isPocketSquare(worn) ? phrase('outfit', 'square without jacket', { square: worn.piece.name }) : undefined,
};
