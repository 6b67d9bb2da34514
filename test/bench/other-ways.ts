import { pieceRefused } from '../../lib/outfit/grammar/asked.ts';
import { type CoreForm, FORMS, slotsOf } from '../../lib/outfit/grammar/forms.ts';
import type { Seat } from '../../lib/outfit/grammar/seats.ts';
import type { Ground } from '../../lib/outfit/ground.ts';
import type { Restriction } from '../../lib/outfit/index.ts';
import { compileSpace } from '../../lib/outfit/space/compile.ts';
import { Descent } from '../../lib/outfit/space/descent.ts';
import { Endings } from '../../lib/outfit/space/endings.ts';
import { loadSolver } from '../../lib/solver/index.ts';

/** The form of look that is measured. */
export const FORM: CoreForm = 'separates';

/** Plain nested loops over the slots with the same rules, each choice held against all before it. */
export const nestedLoops = (ground: Ground, asked: Restriction, each: (seats: readonly Seat[]) => void): number => {
  const slots = slotsOf(FORMS[FORM], 'complete');
  const options = slots.map((slot) =>
    (ground.seatsBySlot.get(slot) ?? []).filter(
      (seat) => ground.allowed[seat.index] === 1 && pieceRefused(seat, asked) === undefined,
    ),
  );
  const worn: Seat[] = [];
  let looks = 0;
  const place = (at: number): void => {
    if (at === slots.length) {
      if (!obeysWhole(ground, worn, asked)) return;
      looks += 1;
      each(worn);
      return;
    }
    if (FORMS[FORM].optional.includes(slots[at] as Seat['slot'])) place(at + 1);
    for (const seat of options[at] ?? []) {
      if (worn.some((other) => ground.goes[other.index * ground.seats.length + seat.index] !== 1)) continue;
      worn.push(seat);
      place(at + 1);
      worn.pop();
    }
  };
  place(0);
  return looks;
};

/** The plainest way: make every combination of the slots, then hold it against the same rules, pair by pair. */
export const plainLoops = (ground: Ground, asked: Restriction, goes: (a: Seat, b: Seat) => boolean): number => {
  const slots = slotsOf(FORMS[FORM], 'complete');
  const options = slots.map((slot): readonly (Seat | undefined)[] => [
    ...(FORMS[FORM].optional.includes(slot) ? [undefined] : []),
    ...(ground.seatsBySlot.get(slot) ?? []).filter((seat) => pieceRefused(seat, asked) === undefined),
  ]);
  const worn: Seat[] = [];
  let looks = 0;
  const place = (at: number): void => {
    if (at < slots.length) {
      for (const seat of options[at] ?? []) {
        if (seat === undefined) place(at + 1);
        else {
          worn.push(seat);
          place(at + 1);
          worn.pop();
        }
      }
      return;
    }
    for (let one = 0; one < worn.length; one += 1) {
      for (let two = one + 1; two < worn.length; two += 1) {
        if (!goes(worn[one] as Seat, worn[two] as Seat)) return;
      }
    }
    if (obeysWhole(ground, worn, asked)) looks += 1;
  };
  place(0);
  return looks;
};

const isLayer = (slot: string): boolean => slot === 'mid layer' || slot === 'outer layer';

/** A lone layer counts in the first of its two places only. */
const isLayerTwice = (worn: readonly Seat[]): boolean => {
  let lone: Seat | undefined;
  for (const seat of worn) {
    if (!isLayer(seat.slot)) continue;
    if (lone !== undefined) return false;
    lone = seat;
  }
  return lone !== undefined && lone.piece.places.find(isLayer) !== lone.slot;
};

const obeysWhole = (ground: Ground, worn: readonly Seat[], { clo }: Restriction): boolean => {
  if (isLayerTwice(worn)) return false;
  for (const { most, members } of ground.hardCaps) {
    if (worn.reduce((count, { index }) => count + (members[index] ?? 0), 0) > most) return false;
  }
  if (ground.hardMarks !== undefined) {
    let mask = worn.reduce((union, { index }) => union | (ground.marks[index] ?? 0), 0);
    let marks = 0;
    for (; mask !== 0; mask &= mask - 1) marks += 1;
    if (marks > ground.hardMarks) return false;
  }
  if (clo === undefined) return true;
  let on = 40_000;
  let off = 40_000;
  for (const { index } of worn) {
    on += ground.cloOn[index] ?? 0;
    off += ground.cloOff[index] ?? 0;
  }
  return on >= clo.min * 1e6 - 500 && off <= clo.max * 1e6 + 500;
};

/** A count that closes the last two places at once and remembers nothing. */
export const countForgetting = (ground: Ground, asked: Restriction): number => {
  const space = compileSpace(ground, FORM, 'complete', asked);
  if (space === undefined) return 0;
  const descent = new Descent(space);
  const endings = new Endings(descent);
  const below = (depth: number): number => {
    if (depth === endings.depth) return endings.count();
    let looks = 0;
    for (let word = space.wordOf[depth] as number; word < (space.wordOf[depth + 1] as number); word += 1) {
      for (let bits = descent.rows[depth * space.words + word] as number; bits !== 0; bits &= bits - 1) {
        if (descent.descend(depth, word * 32 + 31 - Math.clz32(bits & -bits))) looks += below(depth + 1);
      }
    }
    return looks;
  };
  return descent.open ? below(0) : 0;
};

/** The same looks from a general integer solver: solve, forbid what was found, solve again. */
export const solverLooks = async (ground: Ground, most: number): Promise<{ looks: number; seconds: number }> => {
  const solver = await loadSolver();
  const slots = slotsOf(FORMS[FORM], 'complete');
  const seats = ground.seats.filter(({ slot }) => slots.includes(slot));
  const n = ground.seats.length;
  const rows: { terms: [number, number][]; low: number; high: number }[] = slots.map((slot) => ({
    terms: seats.flatMap((seat, column): [number, number][] => (seat.slot === slot ? [[column, 1]] : [])),
    low: FORMS[FORM].required.includes(slot) ? 1 : 0,
    high: 1,
  }));
  seats.forEach((a, i) => {
    seats.slice(i + 1).forEach((b, j) => {
      if (a.slot !== b.slot && ground.goes[a.index * n + b.index] !== 1) {
        rows.push({
          terms: [
            [i, 1],
            [i + 1 + j, 1],
          ],
          low: 0,
          high: 1,
        });
      }
    });
  });
  const start = performance.now();
  let looks = 0;
  for (; looks < most; looks += 1) {
    const found = await solver.solve({
      costs: seats.map(() => 0),
      lowers: seats.map(() => 0),
      uppers: seats.map(() => 1),
      rows: rows.filter(({ terms }) => terms.length > 0),
    });
    if (found.status === 'infeasible') break;
    const chosen = found.values.filter((value) => value === 1).length;
    rows.push({
      terms: found.values.map((value, column): [number, number] => [column, value === 1 ? 1 : -1]),
      low: Number.NEGATIVE_INFINITY,
      high: chosen - 1,
    });
  }
  return { looks, seconds: (performance.now() - start) / 1000 };
};
