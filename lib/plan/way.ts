import type { Look, Piece } from '../model/index.ts';
import { coatsByWarmth, isCoat, warmestCoat } from './coats.ts';
import type { Moment } from './moments.ts';

/** Below this outside, people want something over an indoor look on the way. Own choice, °C. */
const COLD_WAY_C = 14;
/** Up to this nobody goes without a coat. Own choice, °C. */
const BITTER_WAY_C = 5;

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
