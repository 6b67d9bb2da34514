import type { Slot } from '../../vocabulary/places.ts';
import type { CoreForm } from '../grammar/forms.ts';

/** Stands for "nothing" in an optional slot. */
export const NOTHING = -1;
/** Stands for a bit that is no node. */
export const NO_NODE = -2;
export const WORD = 32;

/**
 * One form of look under one question, ready to be searched: a graph with a part for each slot. A node is a seat or
 * "nothing"; its number is its bit, and each slot begins on a word of its own, so that the candidates of a slot are a
 * few words and a choice is one AND.
 */
export interface LookSpace {
  readonly form: CoreForm;
  /** Slots in the fixed order; those that can only stay empty are left out. */
  readonly slots: readonly Slot[];
  /** How many of the slots make one listed or counted look; fewer than all where a look must only be *completable*. */
  readonly counted: number;
  readonly words: number;
  /** First word of each slot, and one more entry: the end. */
  readonly wordOf: Int32Array;
  /** Seat of each node, `NOTHING` or `NO_NODE`. */
  readonly seatOf: Int32Array;
  /** `adjacency[node * words + word]`. */
  readonly adjacency: Int32Array;
  /** Candidates before any choice. */
  readonly root: Int32Array;
  /** At most `most` different bits of `ofNode` in one look. */
  readonly marks: { readonly most: number; readonly ofNode: Int32Array } | undefined;
  /** At most `most` nodes of a class; `others` has every bit outside the class. */
  readonly caps: readonly { readonly most: number; readonly ofNode: Uint8Array; readonly others: Int32Array }[];
  readonly demands: readonly SpaceDemand[];
  readonly clo: SpaceClo | undefined;
}

/** Something that one node of several slots has to answer. */
export interface SpaceDemand {
  readonly answers: Int32Array;
  /** Nodes that raise it; undefined when it always stands. */
  readonly asks: Int32Array | undefined;
  /** Last slot in which it can be raised or answered. */
  readonly last: number;
}

/** Insulation in whole units of `CLO_UNITS`. */
export interface SpaceClo {
  readonly min: number;
  readonly max: number;
  readonly off: Int32Array;
  readonly on: Int32Array;
  /** Most that slots from a depth on can add with everything on, and least with layers off; one entry more than slots. */
  readonly mostOn: Float64Array;
  readonly leastOff: Float64Array;
}

/** Nodes of a slot in order. */
export const nodesOf = ({ wordOf, seatOf }: Pick<LookSpace, 'wordOf' | 'seatOf'>, slot: number): readonly number[] => {
  const nodes: number[] = [];
  for (let node = (wordOf[slot] ?? 0) * WORD; node < (wordOf[slot + 1] ?? 0) * WORD; node += 1) {
    if ((seatOf[node] ?? NO_NODE) !== NO_NODE) nodes.push(node);
  }
  return nodes;
};

/** `offset`: where the row begins in an array of rows. */
export const setBit = (rows: Int32Array, node: number, offset = 0): void => {
  const word = offset + (node >> 5);
  rows[word] = (rows[word] ?? 0) | (1 << (node & 31));
};

export const clearBit = (rows: Int32Array, node: number, offset = 0): void => {
  const word = offset + (node >> 5);
  rows[word] = (rows[word] ?? 0) & ~(1 << (node & 31));
};
