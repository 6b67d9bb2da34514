import type { Capsule, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine, type WardrobeEngine } from '../outfit/index.ts';
import { planTrip } from '../plan/index.ts';
import { refusedPieces } from './eligible.ts';
import { packedOf } from './limits.ts';
import { checkList, findingsOfList } from './list-check.ts';
import { lookSourceOf } from './look-source.ts';
import type { ChooseQuestion, Proposal } from './record.ts';
import { type ChoosingRoom, rulesOf } from './room.ts';
import { servedBy } from './serving.ts';
import { tradeFindings } from './trade.ts';

/** A proposal before it is told apart from the others. */
export type Draft = Omit<Proposal, 'brings' | 'leaves' | 'wins' | 'loses'>;

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
): Promise<Plan | undefined> => {
  const { brief, traveller, solver } = question;
  if (solver === undefined) return undefined;
  return planTrip({
    brief,
    traveller,
    capsule: capsuleOf(question, pieces),
    pieces,
    engine: lookSourceOf(engine, refusedPieces(pieces, brief)),
    solver,
  });
};

/** Counts, dresses, weighs and checks a set of pieces; `bound` is in what the question counts. */
export const draftOf = async (
  { question, limits, demands }: ChoosingRoom,
  pieces: readonly Piece[],
  bound: number,
): Promise<Draft> => {
  const engine = createWardrobeEngine(rulesOf(question, pieces));
  const inside = new Set(pieces.map(({ id }) => id));
  const served = demands.filter((demand) => servedBy(demand, engine, pieces, inside) !== undefined);
  const plan = await planOf(question, pieces, engine);
  const counts = engine.count();
  return {
    pieces,
    counts,
    bound,
    gapAtMost: bound === 0 ? 0 : Math.max(0, 1 - Number(counts[question.most ?? 'layered']) / bound),
    packed: packedOf(pieces, limits.journeys),
    serves: served.map(({ occasion }) => occasion),
    unserved: demands.filter((demand) => !served.includes(demand)).map(({ occasion }) => occasion),
    ...(plan === undefined ? {} : { plan }),
    findings: [
      // places beyond the list were asked for, so that what takes them is no finding
      ...findingsOfList(checkList(pieces, question.list), pieces).filter(({ rule }) => rule === 'list-underfilled'),
      ...tradeFindings(pieces, question.brief),
    ],
  };
};
