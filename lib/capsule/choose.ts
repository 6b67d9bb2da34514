import { layeredLookTable } from '../outfit/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { type Best, createChooser } from './best.ts';
import { dressedBy, tellApart } from './compare-proposals.ts';
import { refusedPieces } from './eligible.ts';
import { type Earlier, earlierOf } from './fillings.ts';
import { wardrobeTooLarge } from './infeasible.ts';
import { type Draft, draftOf } from './proposal.ts';
import type { Choice, ChooseQuestion } from './record.ts';
import { type ChoosingRoom, piecesAt, prepareRoom, rulesOf } from './room.ts';
import type { Demand } from './serving.ts';
import { nothingWithin } from './unmet.ts';

/** Layered looks of a wardrobe that are listed at most; a wardrobe of 300 under a list has some two million. */
const MOST_LOOKS = 12_000_000;
const PROPOSALS = 3;

/** Why no proposal dresses an occasion: the list has no room for what the wardrobe has, or what the nearest look lacks. */
const undressed = ({ looksFor, eligible }: ChoosingRoom, demand: Demand, [first]: readonly Draft[]): Phrase => {
  const { occasion, what } = demand;
  const [look] = looksFor(demand);
  if (look !== undefined) {
    const lacking = eligible.filter(({ id }) => look.includes(id) && !first?.pieces.some((piece) => piece.id === id));
    return phrase('capsule', 'no room for look', { occasion: what, pieces: lacking.map(({ name }) => name) });
  }
  const lacks = first?.plan?.unserved.find((each) => each.occasion === occasion)?.lacks ?? [];
  return phrase('capsule', 'no look in wardrobe', { occasion: what, lacks });
};

/** What the stylist should know of all proposals together. */
const notesOf = (room: ChoosingRoom, drafts: readonly Draft[]): readonly Phrase[] => {
  const { question, demands, eligible } = room;
  const nowhere = demands.filter(({ occasion }) => drafts.every(({ unserved }) => unserved.includes(occasion)));
  const refused = refusedPieces(eligible, question.brief);
  const kept = eligible.filter(({ id }) => refused.has(id));
  return [
    ...(drafts.length < (question.proposals ?? PROPOSALS)
      ? [phrase('capsule', 'fewer proposals', { found: drafts.length })]
      : []),
    ...nowhere.map((demand) => undressed(room, demand, drafts)),
    ...(kept.length === 0 ? [] : [phrase('capsule', 'kept though refused', { pieces: kept.map(({ name }) => name) })]),
  ];
};

/**
 * Chooses the pieces for one bag: at most so many, within weight and volume, filling the list, dressing every occasion
 * that can be dressed, in the mood's colours, making the most looks, then variety, then lightness. Gives up to three
 * proposals that differ from one another by two fifths of their garments, each the best found, with an upper bound that no
 * such filling exceeds. The same question gives the same answer.
 */
export const chooseCapsule = async (question: ChooseQuestion): Promise<Choice> => {
  const room = prepareRoom(question);
  if (!('question' in room)) return { possible: false, findings: room };
  const { eligible } = room;
  const table = layeredLookTable(rulesOf(question, eligible), MOST_LOOKS, question.most);
  if (table === undefined) return { possible: false, findings: [wardrobeTooLarge(MOST_LOOKS)] };
  const choose = createChooser(room, table);
  const found: Best[] = [];
  const earlier: Earlier[] = [];
  for (let number = 0; number < (question.proposals ?? PROPOSALS); number += 1) {
    const best = choose(earlier);
    if (best === undefined || best.filled.excess > 0) {
      if (number > 0) break;
      return { possible: false, findings: [nothingWithin(piecesAt(best?.filled.at ?? [], eligible), room.limits)] };
    }
    found.push(best);
    earlier.push(earlierOf(piecesAt(best.filled.at, eligible), room));
  }
  const bound = Math.max(...found.map(({ filled }) => filled.looks), found[0]?.bound ?? 0);
  const drafts: Draft[] = [];
  for (const { filled } of found) drafts.push(await draftOf(room, piecesAt(filled.at, eligible), bound));
  const looksOf = ({ counts }: Draft): number => Number(counts[question.most ?? 'layered']);
  drafts.sort(
    (a, b) => dressedBy(b) - dressedBy(a) || looksOf(b) - looksOf(a) || a.findings.length - b.findings.length,
  );
  return { possible: true, proposals: tellApart(drafts), eligible: eligible.length, notes: notesOf(room, drafts) };
};
