import type { Capsule, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine, layeredLookTable, type WardrobeEngine, type WardrobeRules } from '../outfit/index.ts';
import { type LookSource, planTrip } from '../plan/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { boundOf } from './bound.ts';
import { tellApart } from './compare-proposals.ts';
import { compositionsOf } from './compositions.ts';
import { type ChoiceLimits, refusalOf } from './eligible.ts';
import { fits, type Position, positionsOf, seatPieces } from './fill.ts';
import { keepFindings, nothingLeft, overLimitFindings, unfillableLines, unseatedKeeps } from './infeasible.ts';
import { type Limits, limitsOf, overLimits, packedOf } from './limits.ts';
import { checkList, findingsOfList } from './list-check.ts';
import { createPricer } from './pricing.ts';
import type { Choice, ChooseQuestion, Proposal } from './record.ts';
import { climb, evaluate, type Filled, type Guard, type SearchProblem, searchFillings } from './search.ts';
import { type Demand, demandsOf, servedBy, serveOccasions } from './serving.ts';
import { silhouetteOf, tradeFindings } from './trade.ts';

/** Layered looks of a wardrobe that are listed at most; a wardrobe of 300 under a list has some two million. */
const MOST_LOOKS = 12_000_000;
/** Sets of pieces the search starts from, less in large wardrobes so that it stays within seconds. */
const RESTARTS = 36;
const RESTARTS_LARGE = 14;
const LARGE = 400_000;
/** Proposals differ in at least this share of the pieces the stylist did not ask to keep. */
const DIFFERENT_SHARE = 0.3;
/** What a piece of an earlier proposal costs beside its place when occasions are dressed. */
const USED_BEFORE = 0.8;

interface Room {
  readonly question: ChooseQuestion;
  readonly eligible: readonly Piece[];
  readonly numberOf: ReadonlyMap<string, number>;
  readonly engine: WardrobeEngine;
  readonly positions: readonly Position[];
  readonly limits: Limits;
  readonly demands: readonly Demand[];
  readonly keep: readonly string[];
}

const rulesOf = ({ rules, never = [], always = [] }: ChooseQuestion, pieces: readonly Piece[]): WardrobeRules => ({
  pieces,
  rules,
  never,
  always,
});

const piecesAt = (at: readonly number[], eligible: readonly Piece[]): readonly Piece[] =>
  at.flatMap((number) => eligible[number] ?? []);

/** Pieces each proposal must have that none of the earlier ones has together: as an excess of what it shares. */
const sameness = (at: readonly number[], earlier: readonly ReadonlySet<number>[], mayShare: number): number =>
  earlier.reduce((sum, set) => sum + Math.max(0, at.filter((piece) => set.has(piece)).length - mayShare), 0);

const searchProblem = (
  { eligible, positions, limits, question }: Room,
  price: SearchProblem['price'],
  earlier: readonly ReadonlySet<number>[],
  mayShare: number,
): SearchProblem => ({
  pieces: eligible,
  may: positions.map((position) =>
    eligible.flatMap((piece, number) => (fits(piece, position, question.list.lines) ? [number] : [])),
  ),
  price,
  excess: (chosen) => overLimits(piecesAt(chosen, eligible), limits) * 10 + sameness(chosen, earlier, mayShare),
  traits: eligible.map((piece) => {
    const silhouette = silhouetteOf(piece);
    // a finishing piece brings variety by its place: a bag and a scarf rather than three pairs of earrings
    return silhouette === undefined
      ? [piece.places[0] ?? piece.kind]
      : [silhouette, ...(piece.colours[0] ? [piece.colours[0].name] : [])];
  }),
});

/** Refuses a change after which an occasion that was dressed is not. Only looks that lose a piece are asked for again. */
const guardOccasions = (
  { demands, engine, eligible, keep }: Room,
  witnesses: ReadonlyMap<string, readonly string[]>,
): Guard => {
  const known = new Map(witnesses);
  return (out, _inn, after) => {
    const left = eligible[out]?.id;
    if (left === undefined) return true;
    if (keep.includes(left)) return false;
    const inside = new Set(piecesAt(after, eligible).map(({ id }) => id));
    const fresh = new Map<string, readonly string[]>();
    for (const demand of demands) {
      const witness = known.get(demand.occasion);
      if (witness === undefined || witness.every((id) => inside.has(id))) continue;
      const look = servedBy(demand, engine, eligible, inside);
      if (look === undefined) return false;
      fresh.set(demand.occasion, look);
    }
    for (const [occasion, look] of fresh) known.set(occasion, look);
    return true;
  };
};

/** Serves the occasions, fills the list around them, then lets go of what was only one way of serving them. */
const fillOnce = (room: Room, problem: SearchProblem, earlier: readonly ReadonlySet<number>[], large: boolean) => {
  const { question, eligible, numberOf, engine, positions, limits, demands, keep } = room;
  const used = new Set(earlier.flatMap((set) => [...set]));
  const numbers = (ids: Iterable<string>): readonly number[] => [...ids].flatMap((id) => numberOf.get(id) ?? []);
  const serving = serveOccasions({
    demands,
    engine,
    pieces: eligible,
    taken: keep,
    fits: (ids) => {
      const pieces = piecesAt(numbers(ids), eligible);
      const seated = seatPieces(pieces, positions, question.list.lines);
      return seated.filter((at) => at >= 0).length === pieces.length && overLimits(pieces, limits) === 0;
    },
    cost: (id) => (used.has(numberOf.get(id) ?? -1) ? USED_BEFORE : 0),
  });
  const locked = numbers(serving.pieces);
  const seated = seatPieces(piecesAt(locked, eligible), positions, question.list.lines);
  const start = seated.map((index) => (index < 0 ? -1 : (locked[index] ?? -1)));
  const ends = searchFillings(start, problem, {
    locked: new Set(locked),
    restarts: large ? RESTARTS_LARGE : RESTARTS,
    seed: (question.seed ?? 1) + earlier.length * 1009,
  });
  const kept = new Set(numbers(keep));
  return ends
    .slice(0, 4)
    .map((end) => climb(end, problem, kept, guardOccasions(room, serving.witnesses)))
    .toSorted((a, b) => b.worth - a.worth)[0];
};

/** The lightest filling: what is left when even that is too heavy is the least to mend. */
const lightest = (room: Room): readonly Piece[] => {
  const { eligible, positions, question, keep } = room;
  const order = eligible.toSorted(
    (a, b) => Number(keep.includes(b.id)) - Number(keep.includes(a.id)) || a.grams.value - b.grams.value,
  );
  const listed = positions.filter(({ line }) => line !== undefined);
  return seatPieces(order, listed, question.list.lines).flatMap((index) => order[index] ?? []);
};

export const lookSourceOf = (engine: WardrobeEngine): LookSource => ({
  rank: (k, restriction) => engine.rank(k, restriction),
  explain: (ids, restriction) => {
    const { goes, look, reasons } = engine.explain([...ids], restriction);
    const said = reasons.map(({ message }) => message);
    return look === undefined ? { goes, reasons: said } : { goes, look, reasons: said };
  },
});

const capsuleOf = (
  { brief, traveller, mood, list, never = [], always = [], rules }: ChooseQuestion,
  pieces: readonly Piece[],
): Capsule => ({
  file: brief.file,
  id: 'proposal',
  trip: brief.id,
  title: 'proposal',
  traveller,
  wardrobe: brief.travellers.find(({ name }) => name === traveller)?.wardrobe ?? '',
  list: list.id,
  mood,
  pieces: pieces.map(({ id }) => id),
  never,
  always,
  favourites: [],
  fixed: [],
  rules,
  rationale: '',
});

const planOf = async (
  question: ChooseQuestion,
  pieces: readonly Piece[],
  engine: WardrobeEngine,
): Promise<Plan | undefined> =>
  question.solver === undefined
    ? undefined
    : planTrip({
        brief: question.brief,
        traveller: question.traveller,
        capsule: capsuleOf(question, pieces),
        pieces,
        engine: lookSourceOf(engine),
        solver: question.solver,
      });

const draftOf = async (room: Room, filled: Filled, bound: number): Promise<Omit<Proposal, 'wins' | 'loses'>> => {
  const { question, eligible, limits, demands } = room;
  const pieces = piecesAt(filled.at, eligible);
  const engine = createWardrobeEngine(rulesOf(question, pieces));
  const inside = new Set(pieces.map(({ id }) => id));
  const served = demands.filter((demand) => servedBy(demand, engine, pieces, inside) !== undefined);
  const plan = await planOf(question, pieces, engine);
  const counts = engine.count();
  return {
    pieces,
    counts,
    bound,
    gapAtMost: bound === 0 ? 0 : Math.max(0, 1 - Number(counts.layered) / bound),
    packed: packedOf(pieces, limits.journeys),
    serves: served.map(({ occasion }) => occasion),
    unserved: demands.filter((demand) => !served.includes(demand)).map(({ occasion }) => occasion),
    ...(plan === undefined ? {} : { plan }),
    findings: [...findingsOfList(checkList(pieces, question.list), pieces), ...tradeFindings(pieces, question.brief)],
  };
};

const prepare = (question: ChooseQuestion): Room | Choice => {
  const { wardrobe, brief, list, mood, keep = [], leaveOut = [] } = question;
  const choice: ChoiceLimits = { brief, palette: mood.palette, keep, leaveOut };
  const askedFor = keepFindings(wardrobe, keep, leaveOut);
  if (askedFor.length > 0) return { possible: false, findings: askedFor };
  const listed = list.lines.reduce((sum, { count }) => sum + count, 0);
  const piecesAtMost = question.piecesAtMost ?? Math.max(listed, brief.piecesAtMost ?? 0);
  const positions = positionsOf(list.lines, piecesAtMost);
  const wanted = wardrobe.filter((piece) => refusalOf(piece, choice) === undefined);
  if (wanted.length === 0) return { possible: false, findings: [nothingLeft(wardrobe)] };
  const eligible = wanted.filter((piece) => positions.some((position) => fits(piece, position, list.lines)));
  const unseated = unseatedKeeps(
    wardrobe.filter(({ id }) => keep.includes(id)),
    positions,
    list,
  );
  const unfillable = unfillableLines(list, eligible, wardrobe, positions, choice);
  if (listed > piecesAtMost) {
    const finding = {
      level: 'error' as const,
      rule: 'pieces-at-most',
      message: phrase('capsule', 'list too long', { listed, most: piecesAtMost }),
      mend: phrase('capsule', 'list too long mend', { over: listed - piecesAtMost }),
      about: [],
    };
    return { possible: false, findings: [finding, ...unfillable] };
  }
  if (unfillable.length > 0 || unseated.length > 0) return { possible: false, findings: [...unfillable, ...unseated] };
  const room: Room = {
    question,
    eligible,
    numberOf: new Map(eligible.map(({ id }, number) => [id, number])),
    engine: createWardrobeEngine(rulesOf(question, eligible)),
    positions,
    limits: limitsOf(brief, question),
    demands: demandsOf(brief, question.traveller, eligible),
    keep,
  };
  const light = lightest(room);
  return overLimits(light, room.limits) > 0
    ? { possible: false, findings: overLimitFindings(light, room.limits) }
    : room;
};

/**
 * Chooses the pieces for one bag: at most so many, within weight and volume, filling the list, dressing every occasion
 * that can be dressed, in the mood's colours, making the most layered looks, then variety, then lightness. Gives two or
 * three proposals that differ from one another, each the best found, with an upper bound that no filling of the list
 * exceeds. The same question gives the same answer.
 */
export const chooseCapsule = async (question: ChooseQuestion): Promise<Choice> => {
  const prepared = prepare(question);
  if ('possible' in prepared) return prepared;
  const room = prepared;
  const { eligible, positions, demands } = room;
  const table = layeredLookTable(rulesOf(question, eligible), MOST_LOOKS);
  if (table === undefined) {
    const finding = {
      level: 'error' as const,
      rule: 'wardrobe-size',
      message: phrase('capsule', 'too many looks', { most: MOST_LOOKS }),
      mend: phrase('capsule', 'too many looks mend', {}),
      about: [],
    };
    return { possible: false, findings: [finding] };
  }
  const price = createPricer(table, eligible.length);
  const free = positions.length - room.keep.length;
  const mayShare = positions.length - Math.ceil(free * DIFFERENT_SHARE);
  const fillings: Filled[] = [];
  const earlier: ReadonlySet<number>[] = [];
  for (let number = 0; number < (question.proposals ?? 3); number += 1) {
    const problem = searchProblem(room, price, earlier, mayShare);
    const filled = fillOnce(room, problem, earlier, table.looks > LARGE);
    if (filled === undefined || filled.excess > 0) break;
    fillings.push(evaluate(filled.at, problem));
    earlier.push(new Set(filled.at.filter((piece) => piece >= 0)));
  }
  const [first] = fillings;
  if (first === undefined) return { possible: false, findings: overLimitFindings(lightest(room), room.limits) };
  const bound = boundOf({
    table,
    pieces: eligible,
    compositions: compositionsOf(eligible, positions, question.list.lines),
    found: Math.max(...fillings.map(({ looks }) => looks)),
  });
  const drafts: Omit<Proposal, 'wins' | 'loses'>[] = [];
  for (const filled of fillings) drafts.push(await draftOf(room, filled, bound));
  const notes: Phrase[] =
    drafts.length < (question.proposals ?? 3) ? [phrase('capsule', 'fewer proposals', { found: drafts.length })] : [];
  const nowhere = demands.filter(({ occasion }) => drafts.every(({ unserved }) => unserved.includes(occasion)));
  for (const { what } of nowhere) notes.push(phrase('capsule', 'no look in wardrobe', { occasion: what }));
  return { possible: true, proposals: tellApart(drafts), eligible: eligible.length, notes };
};
