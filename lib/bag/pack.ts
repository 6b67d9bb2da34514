import type { Brief, PackedPiece, Packing, Piece, Plan } from '../model/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { exactly, sumOf } from './measures.ts';

export interface PackQuestion {
  readonly brief: Brief;
  readonly pieces: readonly Piece[];
  readonly plan: Plan;
}

/** Pieces worn on each journey, by the journey's date. */
const wornOnJourneys = ({ brief, plan }: PackQuestion): ReadonlyMap<string, ReadonlySet<string>> => {
  const journeys = new Map<string, Set<string>>();
  const planned = plan.days.flatMap(({ occasions }) => occasions);
  for (const { id, on, transit } of brief.occasions) {
    if (!transit) continue;
    const entry = planned.find(({ occasion }) => occasion === id);
    const worn = journeys.get(on) ?? new Set<string>();
    for (const { piece } of entry?.look?.worn ?? []) worn.add(piece);
    for (const piece of entry?.layersCarried ?? []) worn.add(piece);
    journeys.set(on, worn);
  }
  return journeys;
};

const foldOf = (piece: Piece): PackedPiece['fold'] => {
  const { group } = KINDS[piece.kind];
  if (group === 'shoes') return 'shoe bag';
  if (group === 'jewellery') return 'pouch';
  if (group === 'knits' || group === 'swimwear' || group === 'legwear') return 'roll';
  return piece.fabric === 'satin' || piece.fabric === 'silk' ? 'flat' : 'fold';
};

/** The packing list: what is worn at the first departure stays out of the bags, the rest goes in, largest first. */
export const packTrip = (question: PackQuestion): Packing => {
  const { brief, pieces } = question;
  const journeys = wornOnJourneys(question);
  const first = [...journeys.keys()].toSorted()[0];
  const packed = pieces.map(
    (piece): PackedPiece => ({
      piece: piece.id,
      group: KINDS[piece.kind].group,
      grams: piece.grams,
      litres: piece.litres,
      wornOn: [...journeys].filter(([, worn]) => worn.has(piece.id)).map(([date]) => date),
      fold: foldOf(piece),
    }),
  );
  const worn = packed.filter(({ wornOn }) => first !== undefined && wornOn.includes(first));
  const left = brief.bags.map(({ litres }) => litres);
  const contents = brief.bags.map((): PackedPiece[] => []);
  const inside = packed.filter((piece) => !worn.includes(piece)).toSorted((a, b) => b.litres.value - a.litres.value);
  for (const piece of inside) {
    const fits = left.findIndex((room) => room >= piece.litres.value);
    const at = Math.max(fits, 0);
    contents[at]?.push(piece);
    left[at] = (left[at] ?? 0) - piece.litres.value;
  }
  const weighed = pieces
    .filter(({ grams }) => grams.basis === 'given')
    .reduce((sum, { grams }) => sum + grams.value, 0);
  const all = pieces.reduce((sum, { grams }) => sum + grams.value, 0);
  return {
    bags: brief.bags.map((bag, index) => {
      const held = contents[index] ?? [];
      return {
        bag,
        pieces: held,
        sundries: [],
        grams: sumOf([exactly(bag.ownGrams, 'the bag itself'), ...held.map(({ grams }) => grams)]),
        litres: sumOf(held.map(({ litres }) => litres)),
      };
    }),
    worn,
    wornGrams: sumOf(worn.map(({ grams }) => grams)),
    weighedShare: all === 0 ? 1 : weighed / all,
    notes: [],
  };
};
