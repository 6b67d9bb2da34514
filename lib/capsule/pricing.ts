import type { LookTable } from '../outfit/index.ts';

/** What a set of pieces makes, and what every change of one piece would do, from one pass over the looks. */
export interface Pricing {
  /** Layered looks of the set. */
  readonly looks: number;
  /** By piece inside: looks that contain it. */
  readonly contribution: Int32Array;
  /** By piece outside: looks it would add. */
  readonly gain: Int32Array;
  /** Looks after piece `out` makes way for piece `inn`, less the looks now. */
  readonly swap: (out: number, inn: number) => number;
}

/**
 * Prices sets of pieces against a table of layered looks. A look with one piece missing is a gain of that piece, and
 * no gain where the swap takes another piece of it: so one pass over looks that lack at most one piece prices all
 * additions, removals and swaps exactly. The answer is overwritten by the next call.
 */
export const createPricer = (table: LookTable, pieces: number) => {
  const { cores, core, from, layers } = table;
  const contribution = new Int32Array(pieces);
  const gain = new Int32Array(pieces);
  /** `shared[in * pieces + out]`: looks that `in` would add and that contain `out`. */
  const shared = new Int32Array(pieces * pieces);
  const swap = (out: number, inn: number): number =>
    (gain[inn] as number) - (contribution[out] as number) - (shared[inn * pieces + out] as number);

  return (inside: Uint8Array): Pricing => {
    contribution.fill(0);
    gain.fill(0);
    shared.fill(0);
    let looks = 0;
    const missing = (piece: number): boolean => piece >= 0 && inside[piece] === 0;
    const member = (piece: number, absent: number): void => {
      if (piece < 0 || piece === absent) return;
      const at = absent * pieces + piece;
      shared[at] = (shared[at] as number) + 1;
    };
    for (let c = 0; c < cores; c += 1) {
      const a = core[c * 2] as number;
      const b = core[c * 2 + 1] as number;
      const lacksA = missing(a);
      const lacksB = missing(b);
      if (lacksA && lacksB) continue;
      const inCore = lacksA ? a : lacksB ? b : -1;
      for (let row = from[c] as number; row < (from[c + 1] as number); row += 1) {
        const mid = layers[row * 2] as number;
        const outer = layers[row * 2 + 1] as number;
        const lacksMid = missing(mid);
        const lacksOuter = missing(outer);
        if (lacksMid && lacksOuter) continue;
        const inLayers = lacksMid ? mid : lacksOuter ? outer : -1;
        if (inCore >= 0 && inLayers >= 0) continue;
        const absent = inCore >= 0 ? inCore : inLayers;
        if (absent < 0) {
          looks += 1;
          contribution[a] = (contribution[a] as number) + 1;
          if (b >= 0) contribution[b] = (contribution[b] as number) + 1;
          if (mid >= 0) contribution[mid] = (contribution[mid] as number) + 1;
          if (outer >= 0) contribution[outer] = (contribution[outer] as number) + 1;
          continue;
        }
        gain[absent] = (gain[absent] as number) + 1;
        member(a, absent);
        member(b, absent);
        member(mid, absent);
        member(outer, absent);
      }
    }
    return { looks, contribution, gain, swap };
  };
};
