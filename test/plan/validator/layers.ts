import { airOf, cloOfLook, placeOf } from '../../../lib/comfort/index.ts';
import type { Brief, Look, Occasion, PlannedOccasion } from '../../../lib/model/index.ts';
import { askedClo, isHungUp, type Pieces } from './occasion.ts';

const COLD_C = 5;
const WET_LAYERS = ['outer layer', 'mid layer'];
const LAYERS = ['mid layer', 'outer layer', 'cover-up', 'scarf', 'headwear', 'gloves'];
/** A tailored jacket belongs to the clothes from business up. common practice, no source */
const DRESSY = ['business', 'cocktail', 'formal'];
const JACKET = /blazer|^(suit|dinner) jacket|waistcoat/;

/** What comes off under any roof. common practice, no source */
const OFF_INDOORS = ['beanie', 'chunky scarf', 'gloves', 'leather gloves', 'mittens'];

/** What is wrong with the layers that are said to be on and in the hand. */
export const mislayered = (
  brief: Brief,
  occasion: Occasion,
  planned: PlannedOccasion & { readonly look: Look },
  pieces: Pieces,
  traveller: string,
): readonly string[] => {
  const { look, layersOn: on, layersCarried: carried } = planned;
  const warm = (id: string): number => pieces.get(id)?.clo.value ?? 0;
  const layers = look.worn.filter(({ piece, slot }) => LAYERS.includes(slot) && warm(piece) > 0);
  const ids = layers.map(({ piece }) => piece).sort();
  if ([...on, ...carried].sort().join() !== ids.join())
    return [`layers are ${ids.join(', ')}, not ${[...on, ...carried].join(', ')}`];
  const wrong: string[] = [];
  const outdoors = occasion.setting.where === 'outdoors';
  const inARoom = !outdoors && !occasion.transit && !occasion.needs.includes('swim');
  for (const { piece, slot } of layers) {
    const rainproof = WET_LAYERS.includes(slot) && pieces.get(piece)?.suits.includes('rain') === true;
    const dry = layers.some((other) => on.includes(other.piece) && pieces.get(other.piece)?.suits.includes('rain'));
    if (outdoors && occasion.needs.includes('rain') && rainproof && !dry)
      wrong.push(`${piece} is in the hand in the rain`);
  }
  const air = airOf(occasion, placeOf(brief, occasion));
  const mean = air === undefined ? 0 : (air.lowC + air.highC) / 2;
  const asked = askedClo(
    brief,
    occasion,
    traveller,
    air === undefined ? undefined : { ...air, lowC: mean, highC: mean },
  );
  if (asked === undefined) return wrong;
  const off = cloOfLook(look, pieces).off;
  const sum = (worn: readonly string[]): number => worn.reduce((clo, id) => clo + warm(id), off);
  const couldGoOn = carried.filter((id) => {
    const piece = pieces.get(id);
    return piece !== undefined && !(inARoom && isHungUp(piece)) && (outdoors || !OFF_INDOORS.includes(piece.kind));
  });
  if (sum(on) < asked.min - 0.005 && couldGoOn.length > 0)
    wrong.push(`too cold with ${couldGoOn.join(' and ')} in the hand`);
  const meant = on.filter((id) => {
    const { kind, suits = [] } = pieces.get(id) ?? {};
    const slot = layers.find(({ piece }) => piece === id)?.slot ?? '';
    const forRain = occasion.needs.includes('rain') && outdoors && suits.includes('rain');
    const forCold = outdoors && (air?.lowC ?? 99) <= COLD_C && ['headwear', 'scarf', 'gloves'].includes(slot);
    return (
      forRain ||
      forCold ||
      (DRESSY.includes(occasion.dress) && slot === 'mid layer' && kind !== undefined && JACKET.test(kind))
    );
  });
  if (sum(meant) >= asked.min + 0.005 && meant.length < on.length)
    wrong.push(`${on.filter((id) => !meant.includes(id)).join(' and ')} is on and not needed`);
  return wrong;
};
