import { layeredLookTable } from '../outfit/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { type Best, createChooser } from './best.ts';
import { tellApart } from './compare-proposals.ts';
import { refusedPieces } from './eligible.ts';
import { type Earlier, earlierOf } from './fillings.ts';
import { wardrobeTooLarge } from './infeasible.ts';
import { type Draft, draftOf } from './proposal.ts';
import type { Choice, ChooseQuestion } from './record.ts';
import { type ChoosingRoom, piecesAt, prepareRoom, rulesOf } from './room.ts';
import { nothingWithin } from './unmet.ts';

/** Layered looks of a wardrobe that are listed at most; a wardrobe of 300 under a list has some two million. */
const MOST_LOOKS = 12_000_000;
const PROPOSALS = 3;

/** What the stylist should know of all proposals together. */
const notesOf = ({ question, demands, eligible }: ChoosingRoom, drafts: readonly Draft[]): readonly Phrase[] => {
  const nowhere = demands.filter(({ occasion }) => drafts.every(({ unserved }) => unserved.includes(occasion)));
  const refused = refusedPieces(eligible, question.brief);
  const kept = eligible.filter(({ id }) => refused.has(id));
  return [
    ...(drafts.length < (question.proposals ?? PROPOSALS)
      ? [phrase('capsule', 'fewer proposals', { found: drafts.length })]
      : []),
    ...nowhere.map(({ what }) => phrase('capsule', 'no look in wardrobe', { occasion: what })),
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
    (a, b) => b.serves.length - a.serves.length || looksOf(b) - looksOf(a) || a.findings.length - b.findings.length,
  );
  return { possible: true, proposals: tellApart(drafts), eligible: eligible.length, notes: notesOf(room, drafts) };
};
