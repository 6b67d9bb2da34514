import { hardToTellApart } from '../colour/index.ts';
import { feelsOf, lookComfort } from '../comfort/index.ts';
import type { Brief, Capsule, DressInterval, Look, Piece, Plan } from '../model/index.ts';
import { dressSpanOf, type WardrobeEngine } from '../outfit/index.ts';
import { phrase } from '../words/index.ts';
import { neighboursOf, swapsOf } from './neighbours.ts';
import type { GuideLook } from './record.ts';
import { createNamer } from './titles.ts';
import { tripAirOf } from './trip-air.ts';
import { wearIt } from './wear-it.ts';

/** A look that will be shown, and what is known of it before it is numbered. */
export interface ShownLook {
  readonly look: Look;
  readonly title?: string;
  readonly note?: string;
  readonly favourite: boolean;
}

const piecesOf = (look: Look, byId: ReadonlyMap<string, Piece>): readonly Piece[] =>
  look.worn.flatMap(({ piece }) => byId.get(piece) ?? []);

/** What all pieces of a look have in common on the dress scale. */
export const dressOf = (look: Look, byId: ReadonlyMap<string, Piece>): DressInterval => {
  const { low, high } = dressSpanOf(piecesOf(look, byId));
  return { low, high };
};

/** Occasion ids by the look the plan gives them. */
const plannedFor = (plan: Plan): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const { look, occasion } of plan.days.flatMap(({ occasions }) => occasions)) {
    if (look !== undefined) found.set(look.id, [...(found.get(look.id) ?? []), occasion]);
  }
  return found;
};

/** Exchanges of one piece told beside a look. */
const SWAPS_SAID = 6;

/** Numbers the shown looks and says of each what a reader needs to wear it. */
export const describeLooks = (
  shown: readonly ShownLook[],
  capsule: Capsule,
  brief: Brief,
  plan: Plan,
  byId: ReadonlyMap<string, Piece>,
  engine: Pick<WardrobeEngine, 'explain'>,
  refused: ReadonlySet<string>,
): readonly GuideLook[] => {
  const wearable = [...byId.values()].filter(({ id }) => !refused.has(id));
  const planned = plannedFor(plan);
  const neighbours = neighboursOf(shown.map(({ look }) => look));
  const titleOf = new Map(brief.occasions.map(({ id, what }) => [id, what]));
  const nameOf = createNamer(byId, tripAirOf(plan));
  const feels = feelsOf(brief, capsule.traveller);
  const digits = String(shown.length).length;
  return shown.map(({ look, title, note, favourite }, index): GuideLook => {
    const occasions = planned.get(look.id) ?? [];
    const names = occasions.flatMap((id) => titleOf.get(id) ?? []);
    const text = title ?? names[0];
    const dress = dressOf(look, byId);
    const outdoors = lookComfort(look, byId, 'strolling', 'outdoors', feels);
    const indoors = lookComfort(look, byId, 'sitting', 'indoors', feels);
    return {
      number: index + 1,
      slug: `look-${String(index + 1).padStart(Math.max(2, digits), '0')}`,
      title: text === undefined ? nameOf({ look, dress, outdoors }) : phrase('guide', 'as written', { text }),
      look,
      dress,
      outdoors,
      indoors,
      occasions,
      favourite:
        favourite ||
        capsule.favourites.some(({ pieces }) => pieces.every((id) => look.worn.some(({ piece }) => piece === id))),
      wearIt: wearIt(look, text, names, dress, outdoors, indoors),
      note: note ?? '',
      hardToTell: hardToTellApart(piecesOf(look, byId)),
      neighbours: neighbours[index] ?? [],
      swaps: swapsOf(look, wearable, engine, SWAPS_SAID),
    };
  });
};
