import { createLeafPicker } from './leaves.ts';
import type { PartedLooks } from './looks.ts';
import { looseBound, type Open } from './rows.ts';
import type { Seating } from './seating.ts';

/** What a mid and an outer layer make at most, whatever else is chosen; layers count from 1, 0 is none. */
export interface PairBounds {
  /**
   * `free` places are left, and `firsts` layers that could be a top or one-piece as well are chosen in all: those of the
   * pair itself cannot be worn under it.
   */
  readonly of: (mid: number, outer: number, free: number, firsts: number) => number;
  /** Whether a layer could be a top or one-piece as well. */
  readonly isFirst: (piece: number) => boolean;
}

export const createPairBounds = (looks: PartedLooks, seating: Seating): PairBounds => {
  const { cell, pieces, bottoms, layers, leaves, planes, cores } = looks;
  const isFirst = (piece: number): boolean => {
    for (let row = 0; row <= bottoms.length; row += 1) if ((cell[row * pieces + piece] as number) >= 0) return true;
    return false;
  };
  const openOf = (members: readonly number[]): Open => ({
    leaves: members,
    picker: createLeafPicker(seating, members),
    values: new Int32Array(members.length),
  });
  const dual = layers.filter(isFirst);
  const nothing = {
    firsts: [],
    rows: [],
    open: bottoms.map((_, index) => index + 1),
    seated: new Int32Array(seating.classes),
  };

  // layers that go with the same cores make the same
  const open = openOf([...leaves, ...dual]);
  const known = new Map<string, number>();
  const made = Float64Array.from(planes, (plane) => {
    if (plane === undefined) return 0;
    const key = plane.join('');
    const bound = known.get(key) ?? looseBound(looks, Int32Array.from(plane), open, nothing, seating);
    known.set(key, bound);
    return bound;
  });

  const most = new Int32Array(cores);
  for (const plane of planes)
    if (plane !== undefined)
      for (let c = 0; c < cores; c += 1) most[c] = Math.max(most[c] as number, plane[c] as number);
  const openLeaves = openOf(leaves);
  const caps = new Map<number, number>();
  const capOf = (free: number, firsts: number): number => {
    const key = free * (dual.length + 1) + firsts;
    const cap =
      caps.get(key) ??
      looseBound(
        looks,
        most,
        openLeaves,
        nothing,
        { ...seating, free },
        {
          leaves: dual,
          values: new Int32Array(dual.length),
          most: firsts,
        },
      );
    caps.set(key, cap);
    return cap;
  };
  const wide = layers.length + 1;
  const dualAt = Uint8Array.from({ length: wide }, (_, at) => (at > 0 && isFirst(layers[at - 1] as number) ? 1 : 0));
  return {
    isFirst,
    of: (mid, outer, free, firsts) => {
      const bound = made[mid * wide + outer] as number;
      const under = firsts - (dualAt[mid] as number) - (dualAt[outer] as number);
      return bound === 0 ? 0 : Math.min(bound, capOf(free, Math.max(0, Math.min(under, dual.length))));
    },
  };
};
