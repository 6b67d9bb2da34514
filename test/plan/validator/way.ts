import { placeOf, weatherOn } from '../../../lib/comfort/index.ts';
import type { Brief, Look, Occasion, PlannedOccasion } from '../../../lib/model/index.ts';
import { isHungUp, type Pieces } from './occasion.ts';

const WARM = /^(beanie|(chunky )?scarf|(leather )?gloves|mittens)$/;
const [BITTER_C, ICY_C] = [5, 0];

/** What the way to a room in the cold lacks that is packed, or has that is not. */
export const badWay = (
  brief: Brief,
  occasion: Occasion,
  planned: PlannedOccasion & { readonly look: Look },
  pieces: Pieces,
): readonly string[] => {
  const { look, way } = planned;
  const named = [...(way?.worn ?? []), way?.under, way?.shoes].flatMap((piece) => piece ?? []);
  const wrong = named.filter((id) => !pieces.has(id)).map((id) => `${id} is for the way and not packed`);
  if (new Set(named).size < named.length) wrong.push('something is worn twice on the way');
  const low = weatherOn(placeOf(brief, occasion), occasion.on)?.lowC ?? 99;
  if (occasion.setting.where === 'outdoors' || occasion.needs.includes('swim') || low > BITTER_C) return wrong;
  const packed = [...pieces.values()].filter(
    ({ heelCm, fabricText }) =>
      heelCm <= (brief.avoid.heelCmOver ?? 99) && !brief.avoid.fabrics.some((word) => fabricText.includes(word)),
  );
  const on = [...look.worn.map(({ piece }) => piece), ...(way?.worn ?? [])].flatMap((id) => pieces.get(id) ?? []);
  for (const slot of ['headwear', 'scarf', 'gloves'] as const) {
    const bare = look.worn.every((one) => one.slot !== slot);
    const has = packed.some(({ kind, places }) => WARM.test(kind) && places.includes(slot));
    if (bare && has && !on.some(({ places }) => places.includes(slot))) wrong.push(`no ${slot} on a way of ${low} °C`);
  }
  const isCoat = ({ places }: { readonly places: readonly string[] }): boolean => places.join() === 'outer layer';
  if (packed.some(isCoat) && !on.some(isCoat)) wrong.push(`no coat on a way of ${low} °C`);
  const left = look.worn
    .flatMap(({ piece }) => pieces.get(piece) ?? [])
    .filter((piece) => isHungUp(piece) && planned.layersCarried.includes(piece.id) && !named.includes(piece.id));
  for (const { id } of left) wrong.push(`${id} is in the hand on a way of ${low} °C`);
  const forSnow = ({ suits, places }: (typeof packed)[number]): boolean =>
    places.includes('shoes') && suits.includes('snow');
  const shod = [...look.worn.map(({ piece }) => piece), ...named].flatMap((id) => pieces.get(id) ?? []);
  if (low <= ICY_C && !occasion.transit && packed.some(forSnow) && !shod.some(forSnow))
    wrong.push(`no shoes for a way of ${low} °C`);
  return wrong;
};
