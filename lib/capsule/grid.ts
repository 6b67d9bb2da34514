import { differenceOf, isNeutral, NEARLY_THE_SAME, parseColour } from '../colour/index.ts';
import type { Brief, NamedColour, PackingListPlan, Piece } from '../model/index.ts';
import {
  CUTS,
  type Cut,
  type FabricId,
  KINDS,
  type KindGroup,
  type KindId,
  keptOffSkin,
  type PatternType,
} from '../vocabulary/index.ts';
import { refusalOf } from './eligible.ts';
import { imagine } from './imagine.ts';

/** Two pieces of one kind nearer than this, CIEDE2000, do the same job in a wardrobe: navy and dark navy. Own choice. */
const SAME_JOB = 10;

export interface GridQuestion {
  readonly brief: Brief;
  readonly pieces: readonly Piece[];
  readonly palette: readonly NamedColour[];
  readonly list?: PackingListPlan;
}

/** What only finishes a look, and is in no core or layered one. */
const FINISHES: ReadonlySet<KindGroup> = new Set(['legwear', 'shoes', 'bags', 'jewellery', 'accessories']);
export const onlyFinishes = (kind: KindId): boolean => FINISHES.has(KINDS[kind].group);
/** The neutrals the trade buys most. common practice, no source */
const STAPLES = ['charcoal', 'navy', 'mid grey', 'white', 'black', 'camel'] as const;
/** Colours that leather, metal and glasses are sold in. common practice, no source */
const LEATHERS = ['black', 'dark brown', 'tan'] as const;
const METALS = ['gold', 'silver'] as const;
const FRAMES = ['black', 'dark brown'] as const;

/** Patterns that are sold in a kind; coats, jackets and knits are rarely flowered. common practice, no source */
const PATTERNS: Readonly<Partial<Record<KindGroup, readonly PatternType[]>>> = {
  tops: ['plain', 'stripe', 'check', 'floral'],
  knits: ['plain', 'stripe'],
  bottoms: ['plain', 'check', 'floral'],
  'one-pieces': ['plain', 'stripe', 'check', 'floral'],
  layers: ['plain', 'check'],
  coats: ['plain', 'check'],
  swimwear: ['plain', 'stripe'],
};
/** Cloths that are sold plain. common practice, no source */
const SOLD_PLAIN: ReadonlySet<FabricId> = new Set([
  'denim',
  'leather',
  'technical shell',
  'quilted',
  'down',
  'fleece',
  'corduroy',
]);
/** A kind whose usual cut is one of these is sold in others as well; "wide trousers" say their cut by their name. */
const UNMARKED: ReadonlySet<Cut> = new Set(['regular', 'straight']);
const OTHER_CUTS: Readonly<Partial<Record<KindGroup, readonly Cut[]>>> = {
  tops: ['slim', 'relaxed'],
  knits: ['slim', 'relaxed'],
  bottoms: ['slim', 'relaxed', 'wide'],
  'one-pieces': ['slim', 'relaxed'],
  layers: ['slim', 'relaxed'],
  coats: ['relaxed', 'oversized'],
};

/** How many colours are tried of what no line of the list asks for: it is bought for an occasion, not for its colour. Own choice. */
const COLOURS_OFF_LIST = 3;

const named = (names: readonly string[]): readonly NamedColour[] => names.flatMap((name) => parseColour(name) ?? []);

/**
 * Colours to buy in: the mood's, the neutrals worn already, and the neutrals the trade buys most; in this order, and none
 * that is nearly the same as an earlier one.
 */
export const coloursToBuy = ({ palette, pieces }: GridQuestion): readonly NamedColour[] => {
  const worn = pieces.flatMap(({ colours: [ground] }) => (ground !== undefined && isNeutral(ground) ? [ground] : []));
  return apart([...palette, ...worn, ...named(STAPLES)]);
};

/** Without those that are nearly the same as an earlier one. */
const apart = (some: readonly NamedColour[]): readonly NamedColour[] => {
  const colours: NamedColour[] = [];
  for (const { name, hex, oklch, neutral } of some) {
    if (colours.some((other) => other.name === name || differenceOf(other.hex, hex) < NEARLY_THE_SAME)) continue;
    colours.push({ name, hex, oklch, ...(neutral === undefined ? {} : { neutral }) });
  }
  return colours;
};

/** Colours a kind is sold in: leather, metal and glasses are not sold in all. */
const coloursOf = (id: KindId, question: GridQuestion): readonly NamedColour[] => {
  const { group, places } = KINDS[id];
  if (group === 'jewellery') return named(METALS);
  if (places.includes('eyewear')) return named(FRAMES);
  if (group === 'shoes' || group === 'bags' || places.includes('belt'))
    return apart([...named(LEATHERS), ...question.palette]);
  return coloursToBuy(question);
};

/** Kinds to buy: those the list names, or those worn when there is no list. */
const kindsToBuy = ({ list, pieces }: GridQuestion): ReadonlySet<KindId> =>
  new Set(list === undefined ? pieces.map(({ kind }) => kind) : list.lines.flatMap(({ kinds }) => kinds));

const patternsOf = (id: KindId): readonly PatternType[] => {
  const { group, fabric } = KINDS[id];
  return SOLD_PLAIN.has(fabric) ? ['plain'] : (PATTERNS[group] ?? ['plain']);
};

/** The usual cut, and where that says nothing others of another volume: cuts of one volume make the same looks. */
const cutsOf = (id: KindId): readonly Cut[] => {
  const { cut, group } = KINDS[id];
  const others = UNMARKED.has(cut) ? (OTHER_CUTS[group] ?? []) : [];
  return [cut, ...others.filter((other) => CUTS[other].volume !== CUTS[cut].volume)];
};

const thingsOf = (
  kinds: readonly KindId[],
  question: GridQuestion,
  made: (kind: KindId) => readonly Piece[],
): readonly (readonly Piece[])[] => {
  const limits = { brief: question.brief, palette: question.palette, keep: [], leaveOut: [] };
  return kinds
    .map((kind) => made(kind).map((piece) => keptOffSkin(piece, question.brief.avoid)))
    .map((things) => things.filter((piece) => refusalOf({ ...piece, status: 'owned' }, limits) === undefined))
    .filter((things) => things.length > 0);
};
const ownerOf = ({ pieces }: GridQuestion): string => pieces[0]?.wardrobe ?? '';

/**
 * Everything that could be bought for a capsule, kind by kind: kind × colour × pattern × cut, plain and usual before
 * patterned and unusual, so that the first of several equally good ones is the easiest to find.
 */
export const thingsToBuy = (question: GridQuestion): readonly (readonly Piece[])[] => {
  const asked = kindsToBuy(question);
  return thingsOf(
    (Object.keys(KINDS) as KindId[]).filter((id) => asked.has(id)),
    question,
    (kind) =>
      patternsOf(kind).flatMap((pattern) =>
        cutsOf(kind).flatMap((cut) =>
          coloursOf(kind, question).map((colour) => imagine({ kind, colour, pattern, cut }, ownerOf(question))),
        ),
      ),
  );
};

/** True when something of the same kind and pattern in nearly the same colour is owned already: nobody buys it twice. */
export const ownsLike = ({ kind, pattern, colours: [ground] }: Piece, owned: readonly Piece[]): boolean =>
  owned.some((own) => {
    const [other] = own.colours;
    if (own.kind !== kind || own.pattern.type !== pattern.type || ground === undefined || other === undefined)
      return false;
    return other.name === ground.name || differenceOf(other.hex, ground.hex) < SAME_JOB;
  });

/** What no line of the list asks for, plain and as it usually is: an occasion may want it all the same. */
export const thingsOffList = (question: GridQuestion): readonly (readonly Piece[])[] => {
  const asked = kindsToBuy(question);
  return thingsOf(
    (Object.keys(KINDS) as KindId[]).filter((id) => !asked.has(id)),
    question,
    (kind) =>
      coloursOf(kind, question)
        .slice(0, COLOURS_OFF_LIST)
        .map((colour) => imagine({ kind, colour, pattern: 'plain', cut: KINDS[kind].cut }, ownerOf(question))),
  );
};
