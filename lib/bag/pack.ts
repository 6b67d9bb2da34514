import type {
  Brief,
  Capsule,
  Measure,
  PackedBag,
  PackedPiece,
  PackedSundry,
  Packing,
  Piece,
  Plan,
  StockLine,
} from '../model/index.ts';
import type { Solver } from '../plan/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { type Assignment, assignToBags } from './assign.ts';
import { GUIDELINES_READ } from './guidelines.ts';
import { pieceItem, sundryGrams, sundryItem, sundryLitres } from './items.ts';
import { isFlight, type Journey, journeysOf } from './journeys.ts';
import { exactly, givenShare, sumOf } from './measures.ts';
import { foldOf, inPackingOrder } from './order.ts';
import { sundriesFor } from './sundries.ts';

/** A later journey this much heavier than the first is worth a word. Own choice. */
const WORTH_SAYING_GRAMS = 100;

export interface PackQuestion {
  readonly brief: Brief;
  readonly pieces: readonly Piece[];
  readonly plan: Plan;
  /** Its looks that are fixed to occasions. */
  readonly capsule: Pick<Capsule, 'fixed'>;
  /** The studio's stock of things that are not worn in a look. */
  readonly stock: readonly StockLine[];
  readonly solver: Solver;
  /** Plans the trip again without some pieces and tells the occasions that then have no look; they count the wears and the washes. */
  readonly planAgain?: (without: readonly string[]) => Promise<readonly string[]>;
}

/** One bag on one journey. */
export interface Load {
  readonly bag: number;
  /** The journey; undefined when the trip has none. */
  readonly journey?: Journey;
  readonly grams: Measure;
  readonly litres: Measure;
}

/** The packing list with what it was made from, for the report and the findings. */
export interface PackedTrip {
  readonly packing: Packing;
  readonly loads: readonly Load[];
  readonly journeys: readonly Journey[];
  readonly assignment: Assignment;
  readonly proven: boolean;
}

const packedPiece = (piece: Piece, journeys: readonly Journey[]): PackedPiece => ({
  piece: piece.id,
  group: KINDS[piece.kind].group,
  grams: piece.grams,
  litres: piece.litres,
  wornOn: [...new Set(journeys.filter(({ worn }) => worn.has(piece.id)).map(({ on }) => on))],
  fold: foldOf(piece),
});

const notesOf = (question: PackQuestion, bags: readonly PackedBag[]): readonly Phrase[] => [
  ...bags.flatMap(({ bag, heaviest }) =>
    heaviest === undefined
      ? []
      : [phrase('bag', 'heaviest on', { bag: bag.name, date: heaviest.on, grams: heaviest.grams.value })],
  ),
  ...question.brief.bags
    .filter(({ guideline }) => guideline !== undefined)
    .map(({ name, assumed = [] }) => phrase('bag', 'guideline is', { bag: name, assumed, read: GUIDELINES_READ })),
  ...question.brief.bags.flatMap(({ name, sharedBy }) =>
    sharedBy === undefined ? [] : [phrase('bag', 'shared by', { bag: name, travellers: sharedBy })],
  ),
  ...(question.brief.occasions.some(isFlight)
    ? [phrase('bag', 'flight rules', { read: GUIDELINES_READ }), phrase('bag', 'ask the carrier', {})]
    : []),
];

/** Packs the trip: who wears what on each journey, which thing goes into which bag, in which order. */
export const packInFull = async (question: PackQuestion): Promise<PackedTrip> => {
  const { brief, pieces, plan, stock, solver } = question;
  const { bags } = brief;
  const journeys = journeysOf(brief, plan);
  const flies = journeys.some(({ occasion }) => isFlight(occasion));
  const sundries: readonly PackedSundry[] = sundriesFor(brief, plan, pieces, stock).map((sundry) => ({
    sundry,
    grams: sundryGrams(sundry),
  }));
  const items = [
    ...pieces.map((piece) =>
      pieceItem(piece, bags, new Set(journeys.flatMap(({ worn }, index) => (worn.has(piece.id) ? [index] : [])))),
    ),
    ...sundries.map(({ sundry }) => sundryItem(sundry, bags, flies)),
  ];
  const assignment = await assignToBags(items, bags, journeys.length, solver);
  const first = journeys[0];
  const packed = pieces.map((piece) => packedPiece(piece, journeys));
  const isWorn = ({ piece }: PackedPiece): boolean => first?.worn.has(piece) === true;
  const loadOf = (bag: number, journey: Journey | undefined): Load => {
    const inside = packed.filter(
      ({ piece }, index) => assignment.bags[index] === bag && journey?.worn.has(piece) !== true,
    );
    const things = sundries.filter((_, index) => assignment.bags[pieces.length + index] === bag);
    return {
      bag,
      ...(journey === undefined ? {} : { journey }),
      grams: sumOf([
        exactly(bags[bag]?.ownGrams ?? 0, 'the bag itself'),
        ...inside.map(({ grams }) => grams),
        ...things.map(({ grams }) => grams),
      ]),
      litres: sumOf([...inside.map(({ litres }) => litres), ...things.map(({ sundry }) => sundryLitres(sundry))]),
    };
  };
  const loads = bags.flatMap((_, bag) =>
    journeys.length === 0 ? [loadOf(bag, undefined)] : journeys.map((journey) => loadOf(bag, journey)),
  );
  const packedBags = bags.map((bag, index): PackedBag => {
    const own = loads.filter((load) => load.bag === index);
    const start = own[0] ?? loadOf(index, undefined);
    const heaviest = own.reduce(
      (most, load) => (load.grams.value > most.grams.value + WORTH_SAYING_GRAMS ? load : most),
      start,
    );
    const inside = packed.filter((piece, at) => assignment.bags[at] === index && !isWorn(piece));
    return {
      bag,
      pieces: inPackingOrder(inside, plan),
      sundries: sundries.filter((_, at) => assignment.bags[pieces.length + at] === index),
      grams: start.grams,
      litres: start.litres,
      ...(heaviest === start || heaviest.journey === undefined
        ? {}
        : { heaviest: { on: heaviest.journey.on, grams: heaviest.grams } }),
    };
  });
  const worn = packed.filter(isWorn).map((piece): PackedPiece => ({ ...piece, fold: 'wear' }));
  const packing: Packing = {
    bags: packedBags,
    worn,
    wornGrams: sumOf(worn.map(({ grams }) => grams)),
    weighedShare: givenShare([...packed, ...sundries].map(({ grams }) => grams)),
    notes: notesOf(question, packedBags),
  };
  return { packing, loads, journeys, assignment, proven: assignment.proven };
};

/** The packing list of one traveller's trip. */
export const packTrip = async (question: PackQuestion): Promise<Packing> => (await packInFull(question)).packing;
