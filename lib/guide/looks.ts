import { hardToTellApart } from '../colour/index.ts';
import { feelsOf } from '../comfort/index.ts';
import type { Brief, Capsule, DressInterval, Look, Piece, Plan } from '../model/index.ts';
import { dressSpanOf, type WardrobeEngine } from '../outfit/index.ts';
import { createStandsIn, momentsOf } from '../plan/index.ts';
import { phrase } from '../words/index.ts';
import { comfortsOf, type PlannedFor } from './look-comforts.ts';
import { neighboursOf, swapsOf } from './neighbours.ts';
import type { GuideLook } from './record.ts';
import { createNamer } from './titles.ts';
import { tripAirOf } from './trip-air.ts';
import { goingOut, goingOutInShort, wearIt } from './wear-it.ts';

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

/** What each look is planned for, in order of the plan, by its id. */
const plannedFor = (plan: Plan, brief: Brief): ReadonlyMap<string, readonly PlannedFor[]> => {
  const occasions = new Map(brief.occasions.map((occasion) => [occasion.id, occasion]));
  const found = new Map<string, PlannedFor[]>();
  for (const planned of plan.days.flatMap((day) => day.occasions)) {
    const occasion = occasions.get(planned.occasion);
    if (planned.look === undefined || occasion === undefined) continue;
    const { id } = planned.look;
    found.set(id, [...(found.get(id) ?? []), { occasion, planned }]);
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
  const planned = plannedFor(plan, brief);
  const neighbours = neighboursOf(shown.map(({ look }) => look));
  const nameOf = createNamer(byId, tripAirOf(plan));
  const feels = feelsOf(brief, capsule.traveller);
  const standsIn = createStandsIn(momentsOf(brief, capsule.traveller), [...byId.values()], engine);
  const pieceName = (id: string): string => byId.get(id)?.name ?? id;
  const digits = String(shown.length).length;
  return shown.map(({ look, title, note, favourite }, index): GuideLook => {
    const uses = planned.get(look.id) ?? [];
    const occasions = uses.map(({ occasion }) => occasion.id);
    const does = (pieces: readonly string[]): boolean => standsIn(look, occasions, pieces);
    const names = uses.map(({ occasion }) => occasion.what);
    const text = title ?? names[0];
    const dress = dressOf(look, byId);
    const comforts = comfortsOf(look, byId, uses, feels);
    const { outdoors, indoors } = comforts;
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
      wearIt: wearIt(look, text, names, dress, comforts, goingOut(uses, pieceName)),
      outInShort: goingOutInShort(look, uses, pieceName),
      note: note ?? '',
      hardToTell: hardToTellApart(piecesOf(look, byId)),
      neighbours: (neighbours[index] ?? []).filter(({ number }) =>
        does(shown[number - 1]?.look.worn.map(({ piece }) => piece) ?? []),
      ),
      swaps: swapsOf(look, wearable, engine, SWAPS_SAID, does),
    };
  });
};
