import { cloOfLook, isLeftAtTheDoor, isRemovable } from '../comfort/index.ts';
import type { Look, Piece, WornPiece } from '../model/index.ts';
import { dressIndex, isForWarmth, type KindId } from '../vocabulary/index.ts';
import { isCoat } from './coats.ts';
import type { Moment } from './moments.ts';
import { isColdOutdoors } from './warmth.ts';

export interface Layers {
  readonly on: readonly string[];
  readonly carried: readonly string[];
}

/** From this dress code a tailored jacket is part of the clothes, and not a layer to take off. common practice, no source */
const JACKET_FROM = dressIndex('business');
const JACKETS: ReadonlySet<KindId> = new Set<KindId>([
  'blazer',
  'double-breasted blazer',
  'suit jacket',
  'dinner jacket',
  'waistcoat',
]);
/** Clo by which a coat on a train or plane counts as more than it is; beyond any garment. */
const COAT_INDOORS = 5;
/** The same for a coat worn out of doors with the jumper in the hand: layers go on from inside out. Own choice, clo. */
const OUT_OF_ORDER = 2;

/**
 * Which of a look's layers are worn at the middle of the occasion's temperatures, and which are taken along: as little
 * as keeps warm enough. In a room a coat is never on, and on a journey it is where nothing else keeps warm; hat and gloves
 * come off in both. A rain layer is on where rain is asked for, and a tailored jacket at a dressy occasion.
 */
export const layersFor = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): Layers => {
  const isLeft = ({ piece }: WornPiece): boolean => {
    const found = pieces.get(piece);
    return found !== undefined && isLeftAtTheDoor(found);
  };
  const isAtHand = ({ piece }: WornPiece): boolean => {
    const found = pieces.get(piece);
    return moment.occasion.transit && found !== undefined && isCoat(found);
  };
  const removable = look.worn.filter(({ piece, slot }) => isRemovable(slot) && (pieces.get(piece)?.clo.value ?? 0) > 0);
  const all = removable.map(({ piece }) => piece);
  const indoors = moment.occasion.setting.where === 'indoors';
  const layers = indoors ? removable.filter((layer) => !isLeft(layer) || isAtHand(layer)) : removable;
  const { air, occasion } = moment;
  if (air === undefined || moment.required?.method === 'none') {
    const off = occasion.setting.where === 'indoors' || moment.swims;
    return off ? { on: [], carried: all } : { on: all, carried: [] };
  }
  const asked = moment.minAtMiddle ?? 0;
  const off = cloOfLook(look, pieces).off;
  const wet = occasion.needs.includes('rain') && occasion.setting.where === 'outdoors';
  const cold = isColdOutdoors(moment);
  const dressy = dressIndex(occasion.dress) >= JACKET_FROM;
  const mustBeOn = layers.filter(({ piece, slot }) => {
    const { suits, kind } = pieces.get(piece) ?? {};
    const forCold = cold && kind !== undefined && isForWarmth({ kind });
    const forRain = wet && slot === 'outer layer' && suits?.includes('rain') === true;
    return forRain || forCold || (dressy && slot === 'mid layer' && kind !== undefined && JACKETS.has(kind));
  });
  const burdenOf = (layer: WornPiece): number =>
    (pieces.get(layer.piece)?.clo.value ?? 0) + (indoors && isLeft(layer) ? COAT_INDOORS : 0);
  let best: { readonly on: readonly string[]; readonly burden: number } | undefined;
  for (let chosen = 0; chosen < 2 ** layers.length; chosen += 1) {
    const worn = layers.filter((_, index) => (chosen & (2 ** index)) !== 0);
    const clo = off + worn.reduce((sum, { piece }) => sum + (pieces.get(piece)?.clo.value ?? 0), 0);
    const outermostFirst =
      !indoors &&
      worn.some((layer) => layer.slot === 'outer layer' && !mustBeOn.includes(layer)) &&
      layers.some((layer) => layer.slot === 'mid layer' && !worn.includes(layer));
    const burden = worn.reduce((sum, layer) => sum + burdenOf(layer), 0) + (outermostFirst ? OUT_OF_ORDER : 0);
    const coated = indoors && worn.some(isLeft);
    const inOrder = !coated || layers.every((layer) => isLeft(layer) || worn.includes(layer));
    const right = inOrder && clo >= asked && mustBeOn.every((layer) => worn.includes(layer));
    if (right && (best === undefined || burden < best.burden)) best = { on: worn.map(({ piece }) => piece), burden };
  }
  const on = best?.on ?? layers.map(({ piece }) => piece);
  return { on, carried: all.filter((piece) => !on.includes(piece)) };
};
