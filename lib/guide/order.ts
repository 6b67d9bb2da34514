import type { Piece } from '../model/index.ts';
import { KIND_GROUPS, KINDS } from '../vocabulary/index.ts';

/** The pieces of a capsule in the order of the kind groups, and within a group in the stylist's order. */
export const inGroupOrder = (pieces: readonly Piece[]): readonly Piece[] =>
  KIND_GROUPS.flatMap((group) => pieces.filter(({ kind }) => KINDS[kind].group === group));
