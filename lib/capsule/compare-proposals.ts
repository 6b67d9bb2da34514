import type { Piece } from '../model/index.ts';
import { QUIET_PATTERNS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { Proposal } from './record.ts';

type Draft = Omit<Proposal, 'wins' | 'loses'>;

const colourNames = (pieces: readonly Piece[]): number =>
  new Set(pieces.flatMap(({ colours: [ground] }) => ground?.name ?? [])).size;
const prints = (pieces: readonly Piece[]): number =>
  pieces.filter(({ pattern }) => !QUIET_PATTERNS.has(pattern.type)).length;
const served = ({ plan, serves }: Draft): number => plan?.served ?? serves.length;

/** Measured so that more is better; the phrase tells how the proposal stands to the best of the others. */
const MEASURES: readonly {
  readonly of: (draft: Draft) => number;
  readonly say: (draft: Draft, other: Draft) => Phrase;
}[] = [
  {
    of: served,
    say: (one, other) => phrase('capsule', 'versus occasions', { mine: served(one), theirs: served(other) }),
  },
  {
    of: ({ counts }) => Number(counts.layered),
    say: (one, other) =>
      phrase('capsule', 'versus looks', { mine: Number(one.counts.layered), theirs: Number(other.counts.layered) }),
  },
  {
    of: ({ packed }) => -Math.round(packed.grams),
    say: (one, other) => phrase('capsule', 'versus weight', { mine: one.packed.grams, theirs: other.packed.grams }),
  },
  {
    of: ({ pieces }) => colourNames(pieces),
    say: (one, other) =>
      phrase('capsule', 'versus colours', { mine: colourNames(one.pieces), theirs: colourNames(other.pieces) }),
  },
  {
    of: ({ pieces }) => prints(pieces),
    say: (one, other) => phrase('capsule', 'versus prints', { mine: prints(one.pieces), theirs: prints(other.pieces) }),
  },
  {
    of: ({ findings }) => -findings.length,
    say: (one, other) =>
      phrase('capsule', 'versus findings', { mine: one.findings.length, theirs: other.findings.length }),
  },
];

/** Tells each proposal apart from the others by what it is the best and the worst in. */
export const tellApart = (drafts: readonly Draft[]): readonly Proposal[] =>
  drafts.map((draft) => {
    const others = drafts.filter((other) => other !== draft);
    const against = (best: boolean): readonly Phrase[] =>
      MEASURES.flatMap(({ of, say }) => {
        const sorted = others.toSorted((a, b) => of(b) - of(a));
        const rival = best ? sorted[0] : sorted.at(-1);
        if (rival === undefined) return [];
        const ahead = of(draft) - of(rival);
        return (best ? ahead > 0 : ahead < 0) ? [say(draft, rival)] : [];
      });
    return { ...draft, wins: against(true), loses: against(false) };
  });
