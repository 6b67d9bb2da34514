import type { Measure } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import { fixedFor, momentsOf, usedIn } from '../plan/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { roomOf } from './assign.ts';
import { type Front, type FrontPoint, looksAgainstGrams } from './front.ts';
import { sundryLitres } from './items.ts';
import {
  isOver,
  type LeaveOut,
  leaveOutForLightness,
  leaveOutUntilFits,
  type Overrun,
  type PieceWorth,
  worthOf,
} from './leave-out.ts';
import { givenShare, sumOf } from './measures.ts';
import { createUnserved } from './occasions.ts';
import { type Load, type PackedTrip, type PackQuestion, packInFull } from './pack.ts';
import { type TransitSaving, transitSavings } from './transit.ts';

/** One bag on one journey, against its limits. */
export interface ReportedLoad {
  readonly bag: string;
  /** Occasion id of the journey. */
  readonly journey?: string;
  /** With the bag's own weight. */
  readonly grams: Measure;
  readonly litres: Measure;
  /** By how much it is too heavy or too full; 0 when it is not. */
  readonly over: Overrun;
}

export interface ReportedFront extends Front {
  readonly points: readonly (FrontPoint & { readonly unserved: readonly string[] })[];
}

/** What is behind the packing list: the sums, what each piece costs and gives, and how to get lighter. */
export interface BagReport {
  readonly fits: boolean;
  /** True when no other way of filling the bags keeps the limits better. */
  readonly proven: boolean;
  /** Everything carried: worn, packed and the bags themselves. */
  readonly grams: Measure;
  /** What is put into bags when nothing is worn. */
  readonly litres: Measure;
  /** Share of the litres that was measured, 0 to 1. */
  readonly measuredShare: number;
  readonly loads: readonly ReportedLoad[];
  readonly worth: readonly PieceWorth[];
  /** What to leave at home until the bags hold the rest; no steps when they hold everything. */
  readonly leaveOut: {
    readonly steps: readonly LeaveOut[];
    readonly fits: boolean;
    /**
     * Occasions that lose their look in a plan made again without these pieces, wears and washes counted: it cannot dress
     * them, or the look that was fixed to them has lost a piece. Undefined when no plan was made.
     */
    readonly planned?: readonly string[];
  };
  /** What to leave at home first to carry less, whether or not anything is over a limit. */
  readonly lighter: readonly LeaveOut[];
  /** Looks against grams; each choice with the occasions that then have no look. */
  readonly front: ReportedFront;
  readonly transit: readonly TransitSaving[];
}

/** Pieces named when the bags could be lighter; further ones would be another capsule. */
const LIGHTER_STEPS = 4;

/** How far a load is over its bag's limits. Rounding in the sums is no overrun. */
export const overrunOf = (load: Load, { brief }: Pick<PackQuestion, 'brief'>): Overrun => {
  const bag = brief.bags[load.bag];
  if (bag === undefined) return { grams: 0, litres: 0 };
  const room = roomOf(bag);
  const over = (is: number, most: number): number => (is > most + 1e-6 ? is - most : 0);
  return {
    grams: room.grams === undefined ? 0 : over(load.grams.value, Math.max(room.grams + bag.ownGrams, 0)),
    litres: over(load.litres.value, room.litres),
  };
};

/** The worst journey of each bag, added up. */
const overrunOfTrip = (packed: PackedTrip, question: PackQuestion): Overrun => {
  const worst = question.brief.bags.map((_, bag) => {
    const overs = packed.loads.filter((load) => load.bag === bag).map((load) => overrunOf(load, question));
    return {
      grams: Math.max(0, ...overs.map(({ grams }) => grams)),
      litres: Math.max(0, ...overs.map(({ litres }) => litres)),
    };
  });
  return {
    grams: worst.reduce((sum, { grams }) => sum + grams, 0),
    litres: worst.reduce((sum, { litres }) => sum + litres, 0),
  };
};

/** What to leave at home, with the sentence before it: so that it fits, or only to carry less. No steps when none help. */
export const leavingOut = ({ fits, leaveOut, lighter }: BagReport): { lead: Phrase; steps: readonly LeaveOut[] } => {
  if (fits) return { lead: phrase('bag', 'order lead', {}), steps: lighter };
  if (!leaveOut.fits) return { lead: phrase('bag', 'order in vain', {}), steps: [] };
  const { steps, planned } = leaveOut;
  if (planned === undefined) return { lead: phrase('bag', 'order until it fits', {}), steps };
  return { lead: phrase('bag', 'order planned again', { unserved: planned.length }), steps };
};

/** Whose look is lost in a plan made again without the pieces to leave out, beyond what the first could not dress. */
const plannedWithout = async (
  { brief, capsule, plan, planAgain }: PackQuestion,
  { steps, fits }: BagReport['leaveOut'],
): Promise<readonly string[] | undefined> => {
  if (planAgain === undefined || !fits || steps.length === 0) return undefined;
  const without = steps.map(({ piece }) => piece);
  const before = new Set(plan.unserved.map(({ occasion }) => occasion));
  const undressed = new Set(await planAgain(without));
  return momentsOf(brief, plan.traveller)
    .filter(
      (moment) =>
        undressed.has(moment.occasion.id) || fixedFor(capsule, moment)?.some((id) => without.includes(id)) === true,
    )
    .map(({ occasion }) => occasion.id)
    .filter((occasion) => !before.has(occasion));
};

/** Computes the report of a packed trip. */
export const bagReport = async (
  question: PackQuestion,
  packed: PackedTrip,
  engine: WardrobeEngine,
): Promise<BagReport> => {
  const { brief, pieces, plan, capsule } = question;
  const unserved = createUnserved(brief, plan.traveller, engine, pieces, capsule);
  const overWithout = async (without: readonly string[]): Promise<Overrun> =>
    overrunOfTrip(
      without.length === 0
        ? packed
        : await packInFull({ ...question, pieces: pieces.filter(({ id }) => !without.includes(id)) }),
      question,
    );
  const { journeys } = packed;
  const inBags = pieces.filter(({ id }) => journeys.length === 0 || journeys.some(({ worn }) => !worn.has(id)));
  const leaveOut = await leaveOutUntilFits(inBags, engine, unserved, overWithout);
  const planned = await plannedWithout(question, leaveOut);
  const front = looksAgainstGrams(pieces, engine);
  const sundries = packed.packing.bags.flatMap((bag) => bag.sundries);
  const litres = [...pieces.map((piece) => piece.litres), ...sundries.map(({ sundry }) => sundryLitres(sundry))];
  return {
    fits: !isOver(overrunOfTrip(packed, question)),
    proven: packed.proven,
    grams: sumOf([packed.packing.wornGrams, ...packed.packing.bags.map(({ grams }) => grams)]),
    litres: sumOf(litres),
    measuredShare: givenShare(litres),
    loads: packed.loads.map((load) => ({
      bag: brief.bags[load.bag]?.name ?? '',
      ...(load.journey === undefined ? {} : { journey: load.journey.occasion.id }),
      grams: load.grams,
      litres: load.litres,
      over: overrunOf(load, question),
    })),
    worth: worthOf(pieces, engine, unserved),
    leaveOut: { ...leaveOut, ...(planned === undefined ? {} : { planned }) },
    lighter: leaveOutForLightness(inBags, engine, unserved, usedIn(plan), LIGHTER_STEPS),
    front: { ...front, points: front.points.map((point) => ({ ...point, unserved: unserved(point.without) })) },
    transit: transitSavings(brief, plan.traveller, packed.journeys, pieces, engine),
  };
};
