import { hasFlight, LIQUIDS } from '../../bag/index.ts';
import type { Guide } from '../../guide/record.ts';
import type { IsoDate, Measure, PackedBag, PackedPiece, PackedSundry } from '../../model/index.ts';
import type { KindGroup } from '../../vocabulary/index.ts';
import type { Job } from '../job.ts';

/** Ways of going into a bag. */
export type Fold = Exclude<PackedPiece['fold'], 'wear'>;

/** One thing to tick. */
export interface PackLine {
  readonly id: string;
  readonly name: string;
  readonly art:
    | { readonly is: 'piece'; readonly piece: string }
    | { readonly is: 'sundry'; readonly packed: PackedSundry };
  readonly count: number;
  readonly grams: Measure;
  /** How it goes in; undefined for what is worn and for what is no clothing. */
  readonly fold?: Fold;
  /** Journeys on which it is worn. */
  readonly wornOn: readonly IsoDate[];
  readonly millilitres?: number;
}

export interface PackGroup {
  readonly title: string;
  readonly lines: readonly PackLine[];
}

/** A bag, what is worn, or the liquids of a bag. */
export interface PackSection {
  readonly id: string;
  readonly title: string;
  readonly note: string;
  /** Said instead where the note is too long for the line. */
  readonly shortNote?: string;
  readonly groups: readonly PackGroup[];
  /** A bag's with its own weight and its liquids, as everywhere; else the sum of the lines. */
  readonly grams: number;
  /** Millilitres are shown instead of a number. */
  readonly liquids: boolean;
  /** The limits of a flight are shown with them. */
  readonly limited?: boolean;
}

type PieceGroup = 'upper' | 'over' | 'lower' | 'swim' | 'feet' | 'finishing';

/** Body places from head to foot, as clothes are laid out on a bed. */
const PIECE_GROUPS: Readonly<Record<PieceGroup, readonly KindGroup[]>> = {
  over: ['coats', 'layers'],
  upper: ['tops', 'knits'],
  lower: ['bottoms', 'one-pieces'],
  swim: ['swimwear'],
  feet: ['shoes', 'legwear'],
  finishing: ['bags', 'jewellery', 'accessories'],
};

const SUNDRY_GROUPS = {
  smalls: ['underthings'],
  wash: ['wash bag'],
  other: ['other'],
  papers: ['papers'],
  care: ['medicines', 'electrics'],
} as const;

const pieceLine = (job: Job, packed: PackedPiece): PackLine => ({
  id: `piece-${packed.piece}`,
  name: job.piece(packed.piece).name,
  art: { is: 'piece', piece: packed.piece },
  count: 1,
  grams: packed.grams,
  ...(packed.fold === 'wear' ? {} : { fold: packed.fold }),
  wornOn: packed.wornOn,
});

const sundryLine = (bag: string, packed: PackedSundry, index: number): PackLine => ({
  id: `${bag}-thing-${index + 1}`,
  name: packed.sundry.name,
  art: { is: 'sundry', packed },
  count: packed.sundry.count,
  grams: packed.grams,
  wornOn: [],
  ...(packed.sundry.millilitres === undefined ? {} : { millilitres: packed.sundry.millilitres * packed.sundry.count }),
});

const pieceGroups = (job: Job, pieces: readonly PackedPiece[]): readonly PackGroup[] =>
  (Object.keys(PIECE_GROUPS) as PieceGroup[]).flatMap((group) => {
    const kinds = PIECE_GROUPS[group];
    const lines = pieces.filter((packed) => kinds.includes(packed.group)).map((packed) => pieceLine(job, packed));
    return lines.length === 0 ? [] : [{ title: job.say(`group ${group}`), lines }];
  });

const sundryGroups = (job: Job, bag: PackedBag, index: number): readonly PackGroup[] =>
  (Object.keys(SUNDRY_GROUPS) as (keyof typeof SUNDRY_GROUPS)[]).flatMap((group) => {
    const kinds: readonly string[] = SUNDRY_GROUPS[group];
    const lines = bag.sundries.flatMap((packed, at) =>
      kinds.includes(packed.sundry.group) ? [sundryLine(`bag-${index + 1}`, packed, at)] : [],
    );
    return lines.length === 0 ? [] : [{ title: job.say(`group ${group}`), lines }];
  });

const totalGrams = (lines: readonly PackLine[]): number => lines.reduce((sum, { grams }) => sum + grams.value, 0);

const bagSections = (job: Job, bag: PackedBag, index: number): readonly PackSection[] => {
  const kind = bag.bag.cm === undefined ? job.say('bag role', { role: bag.bag.role }) : job.formats.sides(bag.bag.cm);
  const own = bag.bag.ownGrams;
  const note = job.say('with its own', { kind, own });
  const liquids = bag.sundries.flatMap((packed, at) =>
    packed.sundry.group === 'liquids' ? [sundryLine(`bag-${index + 1}`, packed, at)] : [],
  );
  const dry: PackSection = {
    id: `bag-${index + 1}`,
    title: bag.bag.name,
    note,
    shortNote: own > 0 ? job.say('its own', { own }) : kind,
    groups: [...pieceGroups(job, bag.pieces), ...sundryGroups(job, bag, index)],
    grams: bag.grams.value,
    liquids: false,
  };
  const limited = bag.bag.role !== 'hold' && hasFlight(job.guide.brief);
  const wet: PackSection = {
    id: `bag-${index + 1}-liquids`,
    title: job.say('liquids bag'),
    grams: dry.groups.length > 0 ? totalGrams(liquids) : bag.grams.value,
    note: limited ? job.say('liquids note', { bag: bag.bag.name }) : bag.bag.name,
    groups: [
      {
        title: limited ? job.say('nothing over', { limit: LIQUIDS.containerMl }) : '',
        lines: liquids,
      },
    ],
    liquids: true,
    limited,
  };
  return [...(dry.groups.length > 0 ? [dry] : []), ...(liquids.length > 0 ? [wet] : [])];
};

/** So few lines that a head for each body place would only scatter them. */
const FEW_WORN = 10;

const wornGroups = (job: Job): readonly PackGroup[] => {
  const groups = pieceGroups(job, job.guide.packing.worn);
  const lines = groups.flatMap((group) => group.lines);
  return lines.length > 0 && lines.length <= FEW_WORN ? [{ title: job.say('group worn'), lines }] : groups;
};

/** Everything to tick: first bag, what is worn, the other bags, each with its liquids after it. */
export const packSections = (job: Job): readonly PackSection[] => {
  const { packing } = job.guide;
  const worn: PackSection = {
    id: 'worn',
    title: job.say('on you'),
    note: job.say('worn out of the door'),
    groups: wornGroups(job),
    grams: packing.wornGrams.value,
    liquids: false,
  };
  const bags = packing.bags.map((bag, index) => bagSections(job, bag, index));
  return [...(bags[0] ?? []), ...(worn.groups.length > 0 ? [worn] : []), ...bags.slice(1).flat()];
};

/** Dates of the journeys with the luggage, in order, each once. */
export const journeyDates = ({ brief, capsule }: Pick<Guide, 'brief' | 'capsule'>): readonly IsoDate[] =>
  [
    ...new Set(
      brief.occasions
        .filter(
          ({ transit, travellers }) => transit && (travellers.length === 0 || travellers.includes(capsule.traveller)),
        )
        .map(({ on }) => on),
    ),
  ].sort();

/** "train" when every journey is one, else "journey". */
export const journeyWord = (job: Job): string =>
  job.say('journey word', {
    journeys: job.guide.brief.occasions.filter(({ transit }) => transit).map(({ what }) => what),
  });

export const linesOf = (section: PackSection): readonly PackLine[] => section.groups.flatMap(({ lines }) => lines);
