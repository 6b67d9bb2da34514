import type { Look, Piece } from '../model/index.ts';
import { coatsByWarmth, isCoat, warmestCoat } from './coats.ts';
import type { Moment } from './moments.ts';
import { isSkirtOrDress } from './taste.ts';

/** Below this outside, people want something over an indoor look on the way. Own choice, °C. */
export const COLD_WAY_C = 14;
/** Up to this nobody goes without a coat, bare-legged, or with head, neck and hands bare. Own choice, °C. */
export const BITTER_WAY_C = 5;
/** Up to this the ground may be ice or snow, °C. */
export const ICY_WAY_C = 0;

/** How cold the way to a room is in a look without a coat; `mild` where it has one, and where no way is gone. */
export const wayWithoutCoat = (
  { occasion, weather, swims }: Moment,
  { worn }: Look,
  pieces: ReadonlyMap<string, Piece>,
): 'mild' | 'cold' | 'bitter' => {
  if (swims || occasion.setting.where !== 'indoors' || weather === undefined || weather.lowC >= COLD_WAY_C)
    return 'mild';
  const isCoated = worn.some(({ piece: id }) => {
    const piece = pieces.get(id);
    return piece !== undefined && isCoat(piece);
  });
  if (isCoated) return 'mild';
  return weather.lowC <= BITTER_WAY_C ? 'bitter' : 'cold';
};

/** The warmest coat of the bag that is right for the dress, or else the warmest of all, where the way is cold and a look has none. It is told, and not put into the look. */
export const coatForTheWay = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): Piece | undefined =>
  wayWithoutCoat(moment, look, pieces) === 'mild'
    ? undefined
    : (warmestCoat([...pieces.values()], moment.occasion.dress) ?? coatsByWarmth([...pieces.values()])[0]);

/** True where legs show below a skirt, a dress or shorts. */
export const hasBareLegs = ({ worn }: Look, pieces: ReadonlyMap<string, Piece>): boolean => {
  const found = worn.flatMap(({ piece: id, slot }) => {
    const piece = pieces.get(id);
    return piece === undefined ? [] : [{ piece, slot }];
  });
  const isCovered = found.some(
    ({ piece: { covers }, slot }) => (slot === 'legwear' || slot === 'leg layer') && covers.includes('knees'),
  );
  return (
    !isCovered &&
    found.some(
      (one) =>
        isSkirtOrDress(one) ||
        ((one.slot === 'bottom' || one.slot === 'one-piece') && !one.piece.covers.includes('calves')),
    )
  );
};

/** Tights, for legs that would be bare. */
export const isTights = ({ places, covers }: Piece): boolean => places.includes('legwear') && covers.includes('knees');
