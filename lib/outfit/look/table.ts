import { CORE_SLOTS } from '../../vocabulary/places.ts';
import { CORE_FORMS, type Level } from '../grammar/forms.ts';
import { createGround } from '../ground.ts';
import type { WardrobeRules } from '../rules/rulebook.ts';
import { compileSpace } from '../space/compile.ts';
import { Cursor } from '../space/cursor.ts';

/**
 * Every layered look of a wardrobe as piece numbers, core by core: the looks of core `c` are rows `from[c]` to
 * `from[c + 1]` of `layers`, two entries a row (mid layer or cover-up; outer layer), −1 where nothing is worn.
 */
export interface LookTable {
  readonly cores: number;
  readonly looks: number;
  /** Two entries a core: top and bottom, or a one-piece or swimwear and −1. */
  readonly core: Int16Array;
  readonly from: Int32Array;
  readonly layers: Int16Array;
}

const grown = <A extends Int16Array | Int32Array>(array: A, needed: number, make: (length: number) => A): A => {
  if (needed <= array.length) return array;
  const larger = make(Math.max(needed, array.length * 2));
  larger.set(array);
  return larger;
};

/**
 * Lists all layered looks of a wardrobe, or its cores alone, for searches that weigh many sets of pieces against each
 * other; undefined when there are more than `atMost`.
 */
export const layeredLookTable = (
  wardrobe: WardrobeRules,
  atMost: number,
  level: Exclude<Level, 'complete'> = 'layered',
): LookTable | undefined => {
  const ground = createGround(wardrobe);
  const numberOf = new Map(wardrobe.pieces.map(({ id }, index) => [id, index]));
  const pieceOfSeat = Int16Array.from(ground.seats, ({ piece }) => numberOf.get(piece.id) ?? -1);
  let core = new Int16Array(1024);
  let from = new Int32Array(512);
  let layers = new Int16Array(8192);
  let cores = 0;
  let looks = 0;
  for (const form of CORE_FORMS) {
    const space = compileSpace(ground, form, level, {});
    if (space === undefined || space.counted === 0) continue;
    const inCore = space.slots.filter((slot) => CORE_SLOTS.has(slot)).length;
    const over = space.slots.findIndex((slot) => slot === 'mid layer' || slot === 'cover-up');
    const outer = space.slots.indexOf('outer layer');
    const cursor = new Cursor(space);
    const seats = new Int32Array(space.counted);
    const numberAt = (slot: number): number => {
      const seat = slot < 0 ? -1 : (seats[slot] as number);
      return seat < 0 ? -1 : (pieceOfSeat[seat] as number);
    };
    let last = -1;
    while (cursor.next()) {
      cursor.seats(seats);
      const one = numberAt(0);
      const two = inCore > 1 ? numberAt(1) : -1;
      if (last < 0 || core[last * 2] !== one || core[last * 2 + 1] !== two) {
        core = grown(core, cores * 2 + 2, (length) => new Int16Array(length));
        from = grown(from, cores + 2, (length) => new Int32Array(length));
        last = cores;
        core[cores * 2] = one;
        core[cores * 2 + 1] = two;
        from[cores] = looks;
        cores += 1;
      }
      layers = grown(layers, looks * 2 + 2, (length) => new Int16Array(length));
      layers[looks * 2] = numberAt(over);
      layers[looks * 2 + 1] = numberAt(outer);
      looks += 1;
      if (looks > atMost) return undefined;
    }
  }
  from[cores] = looks;
  return {
    cores,
    looks,
    core: core.slice(0, cores * 2),
    from: from.slice(0, cores + 1),
    layers: layers.slice(0, looks * 2),
  };
};
