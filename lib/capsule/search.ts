import type { Piece } from '../model/index.ts';
import { seededRandom } from '../plan/random.ts';
import type { createPricer, Pricing } from './pricing.ts';

/** What a search may choose from and must respect; pieces and positions by number. */
export interface SearchProblem {
  readonly pieces: readonly Piece[];
  /** For each position the pieces that may take it. */
  readonly may: readonly (readonly number[])[];
  /** For each position whether it may stay empty. */
  readonly mayBeEmpty: readonly boolean[];
  readonly price: ReturnType<typeof createPricer>;
  /** Grams, litres and sets to differ from beyond what is allowed; 0 when all is well. */
  readonly excess: (chosen: readonly number[]) => number;
  /** Silhouette, colours and the like of each piece, for variety: each counts once however many pieces have it. */
  readonly traits: readonly (readonly string[])[];
  /** How well each piece suits the mood and how far it goes, for each piece alone; a trait is worth `TRAIT` of these. */
  readonly merits: readonly number[];
}

/** The piece in each position, −1 where it is empty, and what that is worth. */
export interface Filled {
  readonly at: readonly number[];
  readonly looks: number;
  readonly excess: number;
  readonly worth: number;
}

/** Asked before a change is made: may `out` make way for `inn`, with `after` chosen? */
export type Guard = (out: number, inn: number, after: readonly number[]) => boolean;

const LOOK = 1_000;
const MOST_STEPS = 200;
/** What a silhouette or colour that no other piece has is worth beside the merits of pieces. Own choice. */
const TRAIT = 8;

const insideOf = (at: readonly number[], pieces: number): Uint8Array => {
  const inside = new Uint8Array(pieces);
  for (const piece of at) if (piece >= 0) inside[piece] = 1;
  return inside;
};

/** Distinct silhouettes and colours and merits, then lightness; never worth as much as one look. */
const nicety = (at: readonly number[], { pieces, traits, merits }: SearchProblem): number => {
  const seen = new Set<string>();
  let grams = 0;
  let merit = 0;
  for (const piece of at) {
    for (const trait of traits[piece] ?? []) seen.add(trait);
    grams += pieces[piece]?.grams.value ?? 0;
    merit += merits[piece] ?? 0;
  }
  return Math.min(LOOK - 2, TRAIT * seen.size + merit) - grams / 1e6;
};

const worthOf = (looks: number, excess: number, nice: number): number => looks * LOOK + nice - excess * 1e9;

export const evaluate = (at: readonly number[], problem: SearchProblem): Filled => {
  const { looks } = problem.price(insideOf(at, problem.pieces.length));
  const excess = problem.excess(at);
  return { at, looks, excess, worth: worthOf(looks, excess, nicety(at, problem)) };
};

interface Move {
  readonly position: number;
  readonly piece: number;
  readonly estimate: number;
}

const replaced = (at: readonly number[], position: number, piece: number): readonly number[] =>
  at.map((sitting, index) => (index === position ? piece : sitting));

/** Every change of one position that keeps the list, best first by looks and excess. */
const movesFrom = (
  now: Filled,
  pricing: Pricing,
  problem: SearchProblem,
  locked: ReadonlySet<number>,
): readonly Move[] => {
  const inside = new Set(now.at);
  const moves: Move[] = [];
  now.at.forEach((out, position) => {
    if (locked.has(out)) return;
    if (out >= 0 && now.excess > 0 && problem.mayBeEmpty[position] === true)
      moves.push({ position, piece: -1, estimate: now.looks - (pricing.contribution[out] ?? 0) });
    for (const piece of problem.may[position] ?? []) {
      if (inside.has(piece)) continue;
      const looks = now.looks + (out < 0 ? (pricing.gain[piece] ?? 0) : pricing.swap(out, piece));
      // without a limit nothing can be exceeded, and the bound below is the worth but for niceties
      if (now.excess === 0 && looks < now.looks) continue;
      moves.push({ position, piece, estimate: looks });
    }
  });
  return moves.sort((a, b) => b.estimate - a.estimate || a.position - b.position || a.piece - b.piece);
};

/** Climbs by the best single change until none is better. */
export const climb = (start: Filled, problem: SearchProblem, locked: ReadonlySet<number>, guard?: Guard): Filled => {
  let now = start;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const pricing = problem.price(insideOf(now.at, problem.pieces.length));
    const moves = movesFrom(now, pricing, problem, locked);
    let best: Filled | undefined;
    for (const { position, piece, estimate } of moves) {
      // moves come by looks; once one is taken, fewer looks cannot be worth more unless an excess is mended
      if (best !== undefined && best.excess === 0 && estimate < best.looks) break;
      const at = replaced(now.at, position, piece);
      const excess = problem.excess(at);
      const worth = worthOf(estimate, excess, nicety(at, problem));
      if (worth <= (best ?? now).worth) continue;
      if (guard !== undefined && !guard(now.at[position] ?? -1, piece, at)) continue;
      best = { at, looks: estimate, excess, worth };
    }
    if (best === undefined) return now;
    now = best;
  }
  return now;
};

export interface SearchOptions {
  readonly locked: ReadonlySet<number>;
  readonly restarts: number;
  readonly seed: number;
  /** Climbed from first; what `start` leaves open is filled up at random otherwise. */
  readonly first: readonly number[];
}

/** Fills empty positions at random with pieces that fit. */
const fillUp = (at: readonly number[], problem: SearchProblem, random: () => number): readonly number[] => {
  const filled = [...at];
  filled.forEach((sitting, position) => {
    if (sitting >= 0) return;
    const open = (problem.may[position] ?? []).filter((piece) => !filled.includes(piece));
    if (open.length > 0) filled[position] = open[Math.floor(random() * open.length)] ?? -1;
  });
  return filled;
};

/** Iterated local search: climbs from a first filling, from random ones and from shaken best ones. The distinct ends, best first. */
export const searchFillings = (
  start: readonly number[],
  problem: SearchProblem,
  { locked, restarts, seed, first }: SearchOptions,
): readonly Filled[] => {
  const random = seededRandom(seed);
  const found = new Map<string, Filled>();
  let best: Filled | undefined;
  for (let restart = 0; restart < restarts; restart += 1) {
    const shaken =
      best === undefined
        ? first
        : restart % 3 === 0
          ? start
          : best.at.map((piece) => (locked.has(piece) || random() > 0.3 ? piece : -1));
    const end = climb(evaluate(fillUp(shaken, problem, random), problem), problem, locked);
    found.set([...end.at].sort((a, b) => a - b).join(), end);
    if (best === undefined || end.worth > best.worth) best = end;
  }
  return [...found.values()].sort((a, b) => b.worth - a.worth);
};
