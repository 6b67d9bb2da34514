import { describe, expect, it } from 'vitest';
import { buildProgramme, type Term } from '../../lib/plan/programme.ts';
import { loadSolver } from '../../lib/solver/index.ts';

/**
 * Knapsacks with known optima. Source: KNAPSACK_01, test data for the 0/1 knapsack problem, J. Burkardt, Florida State
 * University: P01, P02, P03, P07 (after Kreher and Stinson; Martello and Toth). From memory.
 */
const KNAPSACKS = [
  {
    name: 'P01',
    capacity: 165,
    weights: [23, 31, 29, 44, 53, 38, 63, 85, 89, 82],
    profits: [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
    optimum: 309,
  },
  { name: 'P02', capacity: 26, weights: [12, 7, 11, 8, 9], profits: [24, 13, 23, 15, 16], optimum: 51 },
  { name: 'P03', capacity: 190, weights: [56, 59, 80, 64, 75, 17], profits: [50, 50, 64, 46, 50, 5], optimum: 150 },
  {
    name: 'P07',
    capacity: 750,
    weights: [70, 73, 77, 80, 82, 87, 90, 94, 98, 106, 110, 113, 115, 118, 120],
    profits: [135, 139, 149, 150, 156, 163, 173, 184, 192, 201, 210, 214, 221, 229, 240],
    optimum: 1458,
  },
];

/** The textbook recursion: best profit by capacity. */
const byTable = (capacity: number, weights: readonly number[], profits: readonly number[]): number => {
  const best = new Array<number>(capacity + 1).fill(0);
  weights.forEach((weight, item) => {
    for (let room = capacity; room >= weight; room -= 1)
      best[room] = Math.max(best[room] ?? 0, (best[room - weight] ?? 0) + (profits[item] ?? 0));
  });
  return best[capacity] ?? 0;
};

/** Lines of the affine space of `dimension` over three elements: triples of points that sum to nothing. */
const triples = (dimension: number): readonly (readonly number[])[] => {
  const points = 3 ** dimension;
  const digits = (point: number): readonly number[] =>
    Array.from({ length: dimension }, (_, place) => Math.floor(point / 3 ** place) % 3);
  const third = (a: number, b: number): number =>
    digits(a).reduce((sum, digit, place) => sum + ((6 - digit - (digits(b)[place] ?? 0)) % 3) * 3 ** place, 0);
  const lines: number[][] = [];
  for (let a = 0; a < points; a += 1)
    for (let b = a + 1; b < points; b += 1) if (third(a, b) > b) lines.push([a, b, third(a, b)]);
  return lines;
};

/**
 * Covers of Steiner triple systems. Source: Fulkerson, Nemhauser and Trotter, Two computationally difficult set covering
 * problems that arise in computing the 1-width of incidence matrices of Steiner triple systems, 1974; stein9 and stein27
 * of MIPLIB, optima 5 and 18. What a cover leaves out has no line: the largest such sets have 4 and 9 points. From memory.
 */
const STEINER = [
  { dimension: 2, lines: 12, optimum: 5 },
  { dimension: 3, lines: 117, optimum: 18 },
];

describe('the solver on published instances', () => {
  it.each(KNAPSACKS)('fills knapsack $name', async ({ capacity, weights, profits, optimum }) => {
    expect(byTable(capacity, weights, profits)).toBe(optimum);
    const programme = buildProgramme();
    programme.atMost(
      capacity,
      weights.map((weight, item): Term => [programme.choice(-(profits[item] ?? 0)), weight]),
    );
    const { status, values, bound } = await (await loadSolver()).solve(programme.done());
    expect(status).toBe('optimal');
    expect(Math.round(-bound)).toBe(optimum);
    expect(values.reduce((sum, value, item) => sum + value * (profits[item] ?? 0), 0)).toBe(optimum);
    expect(values.reduce((sum, value, item) => sum + value * (weights[item] ?? 0), 0)).toBeLessThanOrEqual(capacity);
  });

  it.each(STEINER)('covers $lines triples with $optimum points', async ({ dimension, lines, optimum }) => {
    const sets = triples(dimension);
    expect(sets).toHaveLength(lines);
    const points = 3 ** dimension;
    if (points < 12) {
      let least = points;
      for (let chosen = 0; chosen < 2 ** points; chosen += 1) {
        const has = (point: number): boolean => (chosen & (1 << point)) !== 0;
        if (sets.every((set) => set.some(has)))
          least = Math.min(least, Array.from({ length: points }, (_, point) => point).filter(has).length);
      }
      expect(least).toBe(optimum);
    }
    const programme = buildProgramme();
    const columns = Array.from({ length: points }, () => programme.choice(1));
    for (const set of sets)
      programme.atLeast(
        1,
        set.map((point): Term => [columns[point] ?? 0, 1]),
      );
    const { status, values, bound } = await (await loadSolver({ lpIterations: 2_000_000 })).solve(programme.done());
    expect(status).toBe('optimal');
    expect(Math.ceil(bound - 1e-6)).toBe(optimum);
    expect(values.reduce((sum, value) => sum + value, 0)).toBe(optimum);
    for (const set of sets) expect(set.some((point) => values[point] === 1)).toBe(true);
  });
});
