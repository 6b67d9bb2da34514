import { cloOfLook, isRemovable } from '../comfort/index.ts';
import type { Look, Piece, WornPiece } from '../model/index.ts';
import { dressIndex, isForWarmth, type KindId, type Slot } from '../vocabulary/index.ts';
import { type Moment, requiredAt } from './moments.ts';
import { isColdOutdoors } from './warmth.ts';

export interface Layers {
  readonly on: readonly string[];
  readonly carried: readonly string[];
}

/** What comes off in a room unless nothing else keeps warm. common practice, no source */
export const COAT_SLOTS: ReadonlySet<string> = new Set<Slot>(['outer layer', 'scarf', 'headwear', 'gloves']);
/** From this dress code a tailored jacket is part of the clothes, and not a layer to take off. common practice, no source */
const JACKET_FROM = dressIndex('business');
const JACKETS: ReadonlySet<KindId> = new Set<KindId>([
  'blazer',
  'double-breasted blazer',
  'suit jacket',
  'dinner jacket',
  'waistcoat',
]);
/** Clo by which a coat in a room counts as more than it is; beyond any garment. */
const COAT_IN_A_ROOM = 5;
/** The same for a coat worn out of doors with the jumper in the hand: layers go on from inside out. Own choice, clo. */
const OUT_OF_ORDER = 2;

/**
 * Which of a look's layers are worn at the middle of the occasion's temperatures, and which are taken along: as little
 * as keeps warm enough. A rain layer is on where rain is asked for, and a tailored jacket at a dressy occasion.
 */
export const layersFor = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): Layers => {
  const layers = look.worn.filter(({ piece, slot }) => isRemovable(slot) && (pieces.get(piece)?.clo.value ?? 0) > 0);
  const all = layers.map(({ piece }) => piece);
  const { air, occasion } = moment;
  if (air === undefined || moment.required?.method === 'none') {
    const off = occasion.setting.where === 'indoors' || moment.swims;
    return off ? { on: [], carried: all } : { on: all, carried: [] };
  }
  const mean = (air.lowC + air.highC) / 2;
  const asked = requiredAt(moment, { ...air, lowC: mean, highC: mean });
  const off = cloOfLook(look, pieces).off;
  const wet = occasion.needs.includes('rain') && occasion.setting.where === 'outdoors';
  const indoors = occasion.setting.where === 'indoors';
  const cold = isColdOutdoors(moment);
  const dressy = dressIndex(occasion.dress) >= JACKET_FROM;
  const mustBeOn = layers.filter(({ piece, slot }) => {
    const { suits, kind } = pieces.get(piece) ?? {};
    const forCold = cold && kind !== undefined && isForWarmth({ kind });
    const forRain = wet && slot === 'outer layer' && suits?.includes('rain') === true;
    return forRain || forCold || (dressy && slot === 'mid layer' && kind !== undefined && JACKETS.has(kind));
  });
  const burdenOf = ({ piece, slot }: WornPiece): number =>
    (pieces.get(piece)?.clo.value ?? 0) + (indoors && COAT_SLOTS.has(slot) ? COAT_IN_A_ROOM : 0);
  let best: { readonly on: readonly string[]; readonly burden: number } | undefined;
  for (let chosen = 0; chosen < 2 ** layers.length; chosen += 1) {
    const worn = layers.filter((_, index) => (chosen & (2 ** index)) !== 0);
    const clo = off + worn.reduce((sum, { piece }) => sum + (pieces.get(piece)?.clo.value ?? 0), 0);
    const outermostFirst =
      !indoors &&
      worn.some((layer) => layer.slot === 'outer layer' && !mustBeOn.includes(layer)) &&
      layers.some((layer) => layer.slot === 'mid layer' && !worn.includes(layer));
    const burden = worn.reduce((sum, layer) => sum + burdenOf(layer), 0) + (outermostFirst ? OUT_OF_ORDER : 0);
    const coated = indoors && worn.some(({ slot }) => COAT_SLOTS.has(slot));
    const inOrder = !coated || layers.every((layer) => COAT_SLOTS.has(layer.slot) || worn.includes(layer));
    const right = inOrder && clo >= asked.min && mustBeOn.every((layer) => worn.includes(layer));
    if (right && (best === undefined || burden < best.burden)) best = { on: worn.map(({ piece }) => piece), burden };
  }
  const on = best?.on ?? all;
  return { on, carried: all.filter((piece) => !on.includes(piece)) };
};
