import { hardToTellApart } from '../colour/index.ts';
import { lookComfort } from '../comfort/index.ts';
import type { Brief, Capsule, DressInterval, Look, Piece, Plan, WornPiece } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import { DRESS_CODES } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { neighboursOf, swapsOf } from './neighbours.ts';
import type { GuideLook } from './record.ts';

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
  const pieces = piecesOf(look, byId);
  return {
    low: Math.max(0, ...pieces.map(({ dress }) => dress.low)),
    high: Math.min(DRESS_CODES.length - 1, ...pieces.map(({ dress }) => dress.high)),
  };
};

const CORE_SLOTS = new Set(['one-piece', 'top', 'bottom', 'swim']);
const LAYER_SLOTS = new Set(['mid layer', 'outer layer', 'cover-up']);

/** Order in which the pieces beside the core set a look apart. */
const TELLING_SLOTS: readonly string[] = ['mid layer', 'outer layer', 'cover-up', 'shoes', 'scarf', 'headwear'];

/** Pairs of pieces a look could be named after, the plainest first: its core, then something worn with it and the core's last. */
const pairsOf = (look: Look, byId: ReadonlyMap<string, Piece>): readonly (readonly string[])[] => {
  const nameOf = ({ piece }: WornPiece): string => byId.get(piece)?.name ?? piece;
  const core = look.worn.filter(({ slot }) => CORE_SLOTS.has(slot)).map(nameOf);
  const place = ({ slot }: WornPiece): number => {
    const at = TELLING_SLOTS.indexOf(slot);
    return at < 0 ? TELLING_SLOTS.length : at;
  };
  const others = look.worn.filter(({ slot }) => !CORE_SLOTS.has(slot)).toSorted((a, b) => place(a) - place(b));
  const [layer] = others.filter(({ slot }) => LAYER_SLOTS.has(slot)).map(nameOf);
  const plain = core.length > 1 || layer === undefined ? core.slice(0, 2) : [...core, layer];
  return [
    plain,
    ...others.map((other) => (core.length > 1 ? [nameOf(other), ...core.slice(-1)] : [...core, nameOf(other)])),
  ];
};

/** Names for looks nobody has named, each different from those before it as far as the pieces allow. */
const createNamer = (byId: ReadonlyMap<string, Piece>): ((look: Look) => Phrase) => {
  const taken = new Set<string>();
  return (look) => {
    const pairs = pairsOf(look, byId);
    const pair = pairs.find((names) => !taken.has(names.join('\n'))) ?? pairs[0] ?? [];
    taken.add(pair.join('\n'));
    const [first = '', second] = pair;
    return second === undefined
      ? phrase('guide', 'look of one', { first })
      : phrase('guide', 'look of two', { first, second });
  };
};

/** What a look is for, without the occasion it is named after. */
const wornFor = (occasions: readonly string[], title: string | undefined): readonly Phrase[] => {
  const others = occasions.filter((name) => name !== title);
  if (others.length === 0) return [];
  const key = others.length < occasions.length ? 'wear it also for' : 'wear it for';
  return [phrase('guide', key, { occasions: others })];
};

const wearIt = (
  title: string | undefined,
  occasions: readonly string[],
  dress: DressInterval,
  outdoors: GuideLook['outdoors'],
  indoors: GuideLook['indoors'],
): readonly Phrase[] => [
  ...wornFor(occasions, title),
  phrase('guide', 'wear it anywhere', { low: DRESS_CODES[dress.low] ?? '', high: DRESS_CODES[dress.high] ?? '' }),
  phrase('guide', 'wear it outdoors', { low: outdoors.lowC, high: outdoors.highC }),
  phrase('guide', 'wear it indoors', { low: indoors.lowC, high: indoors.highC }),
];

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
  const nameOf = createNamer(byId);
  const digits = String(shown.length).length;
  return shown.map(({ look, title, note, favourite }, index): GuideLook => {
    const occasions = planned.get(look.id) ?? [];
    const names = occasions.flatMap((id) => titleOf.get(id) ?? []);
    const text = title ?? names[0];
    const dress = dressOf(look, byId);
    const outdoors = lookComfort(look, byId, 'strolling', 'outdoors');
    const indoors = lookComfort(look, byId, 'sitting', 'indoors');
    return {
      number: index + 1,
      slug: `look-${String(index + 1).padStart(Math.max(2, digits), '0')}`,
      title: text === undefined ? nameOf(look) : phrase('guide', 'as written', { text }),
      look,
      dress,
      outdoors,
      indoors,
      occasions,
      favourite:
        favourite ||
        capsule.favourites.some(({ pieces }) => pieces.every((id) => look.worn.some(({ piece }) => piece === id))),
      wearIt: wearIt(text, names, dress, outdoors, indoors),
      note: note ?? '',
      hardToTell: hardToTellApart(piecesOf(look, byId)),
      neighbours: neighbours[index] ?? [],
      swaps: swapsOf(look, wearable, engine, SWAPS_SAID),
    };
  });
};
