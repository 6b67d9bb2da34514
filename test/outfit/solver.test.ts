import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, HOUSE_RULES, type Restriction } from '../../lib/outfit/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from './wardrobe.ts';

/**
 * The same looks from HiGHS, a general integer solver that knows nothing of looks: a column a seat, a row a slot, a row a
 * pair that a house rule forbids, a column a hue family, rows for prints, statements and insulation. Solve, forbid what
 * was found, solve again, until nothing is left.
 */
const SLOTS = ['top', 'bottom', 'mid layer', 'outer layer', 'shoes', 'bag', 'scarf'];
const REQUIRED = ['top', 'bottom', 'shoes'];
const REMOVABLE = ['mid layer', 'outer layer', 'scarf'];
type Row = { terms: [number, number][]; low: number; high: number };

const looksBySolver = async (
  pieces: readonly Piece[],
  clo: { min: number; max: number },
): Promise<readonly string[]> => {
  const solver = await loadSolver();
  const seats = SLOTS.flatMap((slot) =>
    pieces
      .filter(({ places }) => places.some((place) => place === slot))
      .map((piece) => ({ piece, slot: slot as never })),
  );
  const families: string[] = [];
  const rows: Row[] = [];
  const columns = (test: (seat: (typeof seats)[number]) => boolean): [number, number][] =>
    seats.flatMap((seat, column): [number, number][] => (test(seat) ? [[column, 1]] : []));
  for (const slot of SLOTS) {
    rows.push({ terms: columns((seat) => seat.slot === slot), low: REQUIRED.includes(slot) ? 1 : 0, high: 1 });
  }
  for (const { id } of pieces) rows.push({ terms: columns(({ piece }) => piece.id === id), low: 0, high: 1 });
  for (const rule of HOUSE_RULES) {
    if (rule.severity !== 'rules out') continue;
    const threshold = rule.threshold?.default ?? 0;
    if (rule.shape === 'cap') rows.push({ terms: columns(rule.counts), low: 0, high: threshold });
    if (rule.shape === 'pair') {
      seats.forEach((a, i) => {
        seats.forEach((b, j) => {
          if (j > i && rule.between(a, b, threshold) !== undefined)
            rows.push({
              terms: [
                [i, 1],
                [j, 1],
              ],
              low: 0,
              high: 1,
            });
        });
      });
    }
    if (rule.shape === 'marks') {
      seats.forEach((seat, column) => {
        for (const mark of rule.marks(seat)) {
          if (!families.includes(mark)) families.push(mark);
          rows.push({
            terms: [
              [column, 1],
              [seats.length + families.indexOf(mark), -1],
            ],
            low: -1,
            high: 0,
          });
        }
      });
      rows.push({
        terms: families.map((_, index): [number, number] => [seats.length + index, 1]),
        low: 0,
        high: threshold,
      });
    }
  }
  // a lone layer counts once, in the first of its two places
  const layers = ['mid layer', 'outer layer'];
  seats.forEach(({ piece, slot }, column) => {
    const home = piece.places.find((place) => layers.includes(place));
    if (!layers.includes(slot) || home === undefined || home === slot) return;
    const atHome = columns((seat) => seat.slot === home).map(([one]): [number, number] => [one, -1]);
    rows.push({ terms: [[column, 1], ...atHome], low: Number.NEGATIVE_INFINITY, high: 0 });
  });
  // underthings 0.04 clo, socks 0.02 in closed shoes; half of the last digit, as comfort rounds to thousandths
  const socks = (slot: string, piece: Piece): number => (slot === 'shoes' && piece.covers.includes('feet') ? 0.02 : 0);
  const amounts = (test: (slot: string) => boolean): [number, number][] =>
    seats.flatMap(({ piece, slot }, column): [number, number][] =>
      test(slot) ? [[column, piece.clo.value + socks(slot, piece)]] : [],
    );
  rows.push({ terms: amounts(() => true), low: clo.min - 0.04 - 0.0005, high: Number.POSITIVE_INFINITY });
  rows.push({ terms: amounts((slot) => !REMOVABLE.includes(slot)), low: 0, high: clo.max - 0.04 + 0.0005 });
  const size = seats.length + families.length;
  const found: string[] = [];
  for (;;) {
    const solved = await solver.solve({
      costs: Array.from({ length: size }, () => 0),
      lowers: Array.from({ length: size }, () => 0),
      uppers: Array.from({ length: size }, () => 1),
      rows: rows.filter(({ terms }) => terms.length > 0),
    });
    if (solved.status === 'infeasible') return found;
    if (solved.status !== 'optimal') throw new Error(`the solver ended with ${solved.status}`);
    const worn = seats.filter((_, column) => solved.values[column] === 1);
    found.push(worn.map(({ piece, slot }) => `${piece.id} as ${slot}`).join());
    rows.push({
      terms: seats.map((_, column): [number, number] => [column, solved.values[column] === 1 ? 1 : -1]),
      low: Number.NEGATIVE_INFINITY,
      high: worn.length - 1,
    });
  }
};

const KINDS_WORN: readonly KindId[] = [
  't-shirt',
  'shirt',
  'overshirt',
  'jeans',
  'pencil skirt',
  'cardigan',
  'wool coat',
  'ankle boots',
  'pumps',
  'tote',
  'scarf',
];
const COLOURS = ['red', 'navy', 'mustard', 'green', 'white', 'orange', 'purple', 'black', 'teal'];

describe('a general integer solver', () => {
  it.each([0, 1, 2, 3])('finds the same complete looks of separates (wardrobe %i)', async (turn) => {
    const pieces = KINDS_WORN.map((kind, index) =>
      pieceOf(kind.replaceAll(' ', '-'), kind, COLOURS[(index * (turn + 2) + turn) % COLOURS.length], {
        statement: index % 4 === turn,
        pattern: { type: (index + turn) % 3 === 0 ? 'stripe' : 'plain', scale: index % 2 === 0 ? 'small' : 'large' },
      }),
    );
    const clo = { min: 0.6, max: 1 };
    const asked: Restriction = { clo, cores: ['separates'] };
    const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
    const listed = [...engine.enumerate({ restriction: asked })].map(({ worn }) =>
      worn.map(({ piece, slot }) => `${piece} as ${slot}`).join(),
    );
    expect(listed.length).toBeGreaterThan(0);
    expect((await looksBySolver(pieces, clo)).toSorted()).toEqual(listed.toSorted());
  });
});
