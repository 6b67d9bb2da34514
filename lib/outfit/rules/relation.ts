import { relatePieces } from '../../colour/piece-relation.ts';
import type { ColourRelation } from '../../colour/relation.ts';
import type { Piece } from '../../model/piece.ts';

/** Relations already found, kept no longer than the pieces: a pair is asked about by rule, by score and in each place. */
const found = new WeakMap<Piece, WeakMap<Piece, ColourRelation>>();

/** How the colours of two pieces stand to each other; pieces never change, so the answer does not either. */
export const relationOf = (a: Piece, b: Piece): ColourRelation => {
  const known = found.get(a)?.get(b);
  if (known !== undefined) return known;
  const relation = relatePieces(a, b);
  const ofA = found.get(a) ?? new WeakMap<Piece, ColourRelation>();
  ofA.set(b, relation);
  found.set(a, ofA);
  return relation;
};
