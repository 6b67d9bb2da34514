import type { Piece } from '../../model/piece.ts';
import type { KindId } from '../../vocabulary/kinds.ts';
import { phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { COMMON_PRACTICE, type EmptyRule, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { inSlot, LAPELLED, lengthIndex, pairIn, surfaceOf, volumeOf } from './traits.ts';

/** Slots from the body outwards. */
const UNDER = ['top', 'one-piece', 'mid layer'] as const;
const OVER = ['mid layer', 'outer layer'] as const;
const isJacket = ({ kind }: Piece): boolean => LAPELLED.has(kind) && kind !== 'waistcoat';
const isCape = ({ kind }: Piece): boolean => kind === 'cape' || kind === 'shawl';
/** At or above this clo a knit is thick. ASHRAE Handbook ch. 9 table 9: thick long-sleeved sweater 0.36, thin 0.25. */
const THICK_KNIT_CLO = 0.33;
const KNITTED = new Set(['fine knit', 'rib knit', 'cable knit', 'fleece', 'jersey']);
const isThickKnit = (piece: Piece): boolean => piece.clo.value >= THICK_KNIT_CLO && KNITTED.has(surfaceOf(piece));

/** Pulled over the head; a cardigan buttoned up as the top of a look is as bulky below one. common practice, no source */
const JUMPERS: ReadonlySet<KindId> = new Set([
  'crew-neck jumper',
  'v-neck jumper',
  'roll-neck',
  'sweatshirt',
  'hoodie',
]);
const CARDIGANS: ReadonlySet<KindId> = new Set(['cardigan', 'long cardigan', 'cropped cardigan']);

const layered = (a: Worn, b: Worn): readonly [Worn, Worn] | undefined => {
  const found = pairIn(a, b, inSlot(...UNDER), inSlot(...OVER));
  return found !== undefined && found[0].slot === 'mid layer' && found[1].slot === 'mid layer' ? undefined : found;
};

/**
 * What is worn over must have room for what is under it: its volume may be at most `threshold` steps less, a layer that
 * hangs longer than the coat over it shows, only a coat goes over a tailored jacket or over an overshirt worn as the
 * shirt, a jumper goes over no jumper or buttoned cardigan, and two thick knits do not go over each other.
 */
export const LAYER_OVER: PairRule = {
  id: 'layer-over',
  says: phrase('outfit', 'rule layer-over', {}),
  shape: 'pair',
  severity: 'rules out',
  threshold: { default: 1, low: 0, high: 3, unit: phrase('outfit', 'unit volume', {}) },
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b, threshold) => {
    const found = layered(a, b);
    if (found === undefined) return undefined;
    const [under, over] = found;
    const said = { under: under.piece.name, over: over.piece.name };
    if (isCape(over.piece)) return undefined;
    // the skirt of a dress hangs free below a jacket; only its upper part must fit
    if (under.slot !== 'one-piece' && volumeOf(under.piece) - volumeOf(over.piece) > threshold) {
      return phrase('outfit', 'no room under', said);
    }
    if (under.slot === 'mid layer' && lengthIndex(under.piece.length) > lengthIndex(over.piece.length)) {
      return phrase('outfit', 'hangs out under', said);
    }
    // an overshirt worn as the shirt has pockets, a collar and seams that show under a knit
    if (under.slot === 'top' && over.slot === 'mid layer' && under.piece.kind === 'overshirt') {
      return phrase('outfit', 'layer under layer', said);
    }
    // an overshirt or denim jacket is itself a jacket; only a coat goes over a tailored one
    if (under.slot === 'mid layer' && isJacket(under.piece) && over.piece.places.includes('mid layer')) {
      return phrase('outfit', 'jacket on jacket', said);
    }
    const jumperUnder = JUMPERS.has(under.piece.kind) || CARDIGANS.has(under.piece.kind);
    if (under.slot === 'top' && jumperUnder && JUMPERS.has(over.piece.kind))
      return phrase('outfit', 'jumper on jumper', said);
    if (isThickKnit(under.piece) && isThickKnit(over.piece)) return phrase('outfit', 'thick on thick', said);
    return undefined;
  },
};

/** Cloth a garment beneath is seen through. common practice, no source */
const SEE_THROUGH = new Set(['chiffon', 'lace', 'open knit']);

/** An underlayer is worn where nobody sees it: under what covers shoulders and arms, or the legs, and is not sheer. */
export const UNDERLAYER_HIDDEN: PairRule = {
  id: 'underlayer-hidden',
  says: phrase('outfit', 'rule underlayer-hidden', {}),
  shape: 'pair',
  severity: 'rules out',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const onBody = pairIn(a, b, inSlot('base layer'), inSlot('top', 'one-piece'));
    const onLegs = pairIn(a, b, inSlot('leg layer'), inSlot('bottom', 'one-piece'));
    const found = onBody ?? onLegs;
    if (found === undefined) return undefined;
    const [base, over] = found;
    const covers = onBody === undefined ? (['calves'] as const) : (['shoulders', 'forearms'] as const);
    const hides = covers.every((part) => over.piece.covers.includes(part)) && !SEE_THROUGH.has(surfaceOf(over.piece));
    return hides ? undefined : phrase('outfit', 'underlayer seen', { under: base.piece.name, over: over.piece.name });
  },
};

/** Thermal tops are underwear by their look: worn as the top that is seen they lower the score. */
export const UNDERLAYER_ALONE: EmptyRule = {
  id: 'underlayer-alone',
  says: phrase('outfit', 'rule underlayer-alone', {}),
  shape: 'empty',
  slot: 'mid layer',
  severity: 'lowers the score',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  without: ({ piece, slot }) =>
    slot === 'top' && piece.kind === 'thermal top'
      ? phrase('outfit', 'underlayer alone', { top: piece.name })
      : undefined,
};
