import type { LookTable } from '../../outfit/index.ts';

/**
 * The layered looks of a wardrobe, parted by what a search must branch on. `layers` can be worn over a core, `bottoms`
 * below a top; a `leaf` is a top, one-piece or swimwear that is nothing else, so that no look has two of them: once
 * layers and bottoms are chosen, what leaves add is a plain sum.
 */
export interface PartedLooks {
  readonly cores: number;
  readonly layers: readonly number[];
  readonly bottoms: readonly number[];
  readonly leaves: readonly number[];
  /** `cell[row * pieces + piece]`: the core of a piece with bottom `row − 1`, or alone in row 0; −1 when there is none. */
  readonly cell: Int32Array;
  readonly pieces: number;
  /** `planes[mid * (layers + 1) + outer]`: by core, the looks it makes under them, 1 or none; layers count from 1, 0 is none. */
  readonly planes: readonly (Uint8Array | undefined)[];
  /** By piece number: its row in `cell`, its number from 1 in `planes`; 0 when it has none. */
  readonly rowOf: Int16Array;
  readonly layerOf: Int16Array;
}

export const partLooks = (table: LookTable, pieces: number): PartedLooks => {
  const { cores, core, from, layers: worn } = table;
  const rowOf = new Int16Array(pieces);
  const layerOf = new Int16Array(pieces);
  const first = new Uint8Array(pieces);
  for (let c = 0; c < cores; c += 1) {
    first[core[c * 2] as number] = 1;
    const bottom = core[c * 2 + 1] as number;
    if (bottom >= 0) rowOf[bottom] = 1;
  }
  for (const piece of worn) if (piece >= 0) layerOf[piece] = 1;
  // what is a bottom in one look and a top or one-piece in another is decided first, like a layer
  for (let piece = 0; piece < pieces; piece += 1) if (first[piece] === 1 && rowOf[piece] === 1) layerOf[piece] = 1;
  const numbered = (flags: Int16Array): readonly number[] => {
    const members = [...flags.keys()].filter((piece) => flags[piece] === 1);
    members.forEach((piece, index) => {
      flags[piece] = index + 1;
    });
    return members;
  };
  const bottoms = numbered(rowOf);
  const layers = numbered(layerOf);
  const cell = new Int32Array((bottoms.length + 1) * pieces).fill(-1);
  const wide = layers.length + 1;
  const planes = new Array<Uint8Array | undefined>(wide * wide).fill(undefined);
  for (let c = 0; c < cores; c += 1) {
    const bottom = core[c * 2 + 1] as number;
    const at = (bottom < 0 ? 0 : (rowOf[bottom] as number)) * pieces + (core[c * 2] as number);
    // a piece that is a core of two forms by itself is one core here, with the looks of both
    const merged = (cell[at] as number) < 0 ? c : (cell[at] as number);
    cell[at] = merged;
    for (let look = from[c] as number; look < (from[c + 1] as number); look += 1) {
      const mid = worn[look * 2] as number;
      const outer = worn[look * 2 + 1] as number;
      const under = (mid < 0 ? 0 : (layerOf[mid] as number)) * wide + (outer < 0 ? 0 : (layerOf[outer] as number));
      let plane = planes[under];
      if (plane === undefined) {
        plane = new Uint8Array(cores);
        planes[under] = plane;
      }
      plane[merged] = (plane[merged] as number) + 1;
    }
  }
  const leaves = [...first.keys()].filter((piece) => first[piece] === 1 && rowOf[piece] === 0 && layerOf[piece] === 0);
  return { cores, layers, bottoms, leaves, cell, pieces, planes, rowOf, layerOf };
};

/** The planes of a set of layers: every pair of one as mid and one as outer layer, and either or both left off. */
export const planesOf = (
  { planes, layers, layerOf }: PartedLooks,
  set: readonly number[],
): readonly { readonly at: number; readonly plane: Uint8Array }[] => {
  const wide = layers.length + 1;
  const numbers = [0, ...set.map((piece) => layerOf[piece] as number)];
  return numbers.flatMap((mid) =>
    numbers.flatMap((outer) => {
      const plane = planes[mid * wide + outer];
      return plane === undefined ? [] : [{ at: mid * wide + outer, plane }];
    }),
  );
};

/** Layered looks of every core under a set of layers, into `weights`. */
export const weighCores = (looks: PartedLooks, set: readonly number[], weights: Int32Array): void => {
  weights.fill(0);
  for (const { plane } of planesOf(looks, set)) {
    for (let c = 0; c < plane.length; c += 1) weights[c] = (weights[c] as number) + (plane[c] as number);
  }
};
