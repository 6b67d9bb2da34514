import { differenceOf, isNeutral, NEARLY_THE_SAME, parseColour } from '../colour/index.ts';
import type { Brief, NamedColour, PackingListPlan, Piece } from '../model/index.ts';
import {
  CUTS,
  type Cut,
  type FabricId,
  KINDS,
  type KindGroup,
  type KindId,
  type PatternType,
} from '../vocabulary/index.ts';
import { refusalOf } from './eligible.ts';
import { imagine } from './imagine.ts';

export interface GridQuestion {
  readonly brief: Brief;
  readonly pieces: readonly Piece[];
  readonly palette: readonly NamedColour[];
  readonly list?: PackingListPlan;
}

/** What makes core and layered looks, and so what can be bought for their sake. */
const MAKES_LOOKS: ReadonlySet<KindGroup> = new Set(['tops', 'knits', 'bottoms', 'one-pieces', 'layers', 'coats']);
/** The neutrals the trade buys most. common practice, no source */
const STAPLES = ['charcoal', 'navy', 'mid grey', 'white', 'black', 'camel'] as const;

/** Patterns that are sold in a kind; coats, jackets and knits are rarely flowered. common practice, no source */
const PATTERNS: Readonly<Partial<Record<KindGroup, readonly PatternType[]>>> = {
  tops: ['plain', 'stripe', 'check', 'floral'],
  knits: ['plain', 'stripe'],
  bottoms: ['plain', 'check', 'floral'],
  'one-pieces': ['plain', 'stripe', 'check', 'floral'],
  layers: ['plain', 'check'],
  coats: ['plain', 'check'],
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

/**
 * Colours to buy in: the mood's, the neutrals worn already, and the neutrals the trade buys most; in this order, and none
 * that is nearly the same as an earlier one.
 */
export const coloursToBuy = ({ palette, pieces }: GridQuestion): readonly NamedColour[] => {
  const worn = pieces.flatMap(({ colours: [ground] }) => (ground !== undefined && isNeutral(ground) ? [ground] : []));
  const staples = STAPLES.flatMap((name) => parseColour(name) ?? []);
  const colours: NamedColour[] = [];
  for (const { name, hex, oklch, neutral } of [...palette, ...worn, ...staples]) {
    if (colours.some((other) => other.name === name || differenceOf(other.hex, hex) < NEARLY_THE_SAME)) continue;
    colours.push({ name, hex, oklch, ...(neutral === undefined ? {} : { neutral }) });
  }
  return colours;
};

/** Kinds to buy: those the list names, or those worn when there is no list. */
const kindsToBuy = ({ list, pieces }: GridQuestion): readonly KindId[] => {
  const asked = new Set(list === undefined ? pieces.map(({ kind }) => kind) : list.lines.flatMap(({ kinds }) => kinds));
  return (Object.keys(KINDS) as KindId[]).filter((id) => MAKES_LOOKS.has(KINDS[id].group) && asked.has(id));
};

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

/**
 * Everything that could be bought for a capsule, kind by kind: kind × colour × pattern × cut, plain and usual before
 * patterned and unusual, so that the first of several equally good ones is the easiest to find.
 */
export const thingsToBuy = (question: GridQuestion): readonly (readonly Piece[])[] => {
  const { brief, palette, pieces } = question;
  const owner = pieces[0]?.wardrobe ?? '';
  const colours = coloursToBuy(question);
  const limits = { brief, palette, keep: [], leaveOut: [] };
  return kindsToBuy(question)
    .map((kind) =>
      patternsOf(kind)
        .flatMap((pattern) =>
          cutsOf(kind).flatMap((cut) => colours.map((colour) => imagine({ kind, colour, pattern, cut }, owner))),
        )
        .filter((piece) => refusalOf({ ...piece, status: 'owned' }, limits) === undefined),
    )
    .filter((things) => things.length > 0);
};
