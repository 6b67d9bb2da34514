import { isNeutral } from '../colour/index.ts';
import type { Piece } from '../model/index.ts';
import { QUIET_PATTERNS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { Draft } from './proposal.ts';
import type { Proposal } from './record.ts';
import { silhouetteOf } from './trade.ts';

const distinct = (pieces: readonly Piece[], trait: (piece: Piece) => string | undefined): number =>
  new Set(pieces.flatMap((piece) => trait(piece) ?? [])).size;
const prints = (pieces: readonly Piece[]): number =>
  pieces.filter(({ pattern }) => !QUIET_PATTERNS.has(pattern.type)).length;

/** Occasions that a proposal dresses, warm enough where that was planned. */
export const dressedBy = ({ plan, serves }: Draft): number => plan?.served ?? serves.length;

type Key =
  | 'versus occasions'
  | 'versus core looks'
  | 'versus layered looks'
  | 'versus weight'
  | 'versus colours'
  | 'versus shapes'
  | 'versus prints'
  | 'versus findings';

/** Figures of a proposal. `sign`: 1 where more is better, −1 where less is; `least`: a difference worth telling. */
const MEASURES: readonly {
  readonly key: Key;
  readonly of: (draft: Draft) => number;
  readonly sign: 1 | -1;
  readonly least: number;
}[] = [
  { key: 'versus occasions', of: dressedBy, sign: 1, least: 1 },
  { key: 'versus layered looks', of: ({ counts }) => Number(counts.layered), sign: 1, least: 1 },
  { key: 'versus core looks', of: ({ counts }) => Number(counts.core), sign: 1, least: 1 },
  { key: 'versus weight', of: ({ packed }) => packed.grams, sign: -1, least: 150 },
  { key: 'versus shapes', of: ({ pieces }) => distinct(pieces, silhouetteOf), sign: 1, least: 1 },
  {
    key: 'versus colours',
    of: ({ pieces }) =>
      distinct(pieces, ({ colours: [ground] }) =>
        ground === undefined || isNeutral(ground) ? undefined : ground.name,
      ),
    sign: 1,
    least: 1,
  },
  { key: 'versus prints', of: ({ pieces }) => prints(pieces), sign: 1, least: 1 },
  { key: 'versus findings', of: ({ findings }) => findings.length, sign: -1, least: 1 },
];

/** Tells each proposal apart from the others: by its pieces from the first, and by what it is the best and the worst in. */
export const tellApart = (drafts: readonly Draft[]): readonly Proposal[] =>
  drafts.map((draft) => {
    const others = drafts.filter((other) => other !== draft);
    const against = (ahead: 1 | 0): readonly Phrase[] =>
      MEASURES.flatMap(({ key, of, sign, least }) => {
        const direction = ahead === 1 ? sign : -sign;
        const [rival] = others.map(of).sort((a, b) => direction * (b - a));
        const mine = of(draft);
        return rival !== undefined && direction * (mine - rival) >= least
          ? [phrase('capsule', key, { mine, theirs: rival, ahead })]
          : [];
      });
    const [first = draft] = drafts;
    const beyond = (one: Draft, other: Draft): readonly Piece[] =>
      one.pieces.filter(({ id }) => other.pieces.every((piece) => piece.id !== id));
    return {
      ...draft,
      brings: beyond(draft, first),
      leaves: beyond(first, draft),
      wins: against(1),
      loses: against(0),
    };
  });
