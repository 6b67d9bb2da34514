import type { Piece } from '../model/index.ts';
import { type Dressed, engineWith, hasLook, type ImproveQuestion } from './improve-question.ts';

/** One piece more: what it would bring. */
export interface Addition {
  readonly piece: Piece;
  /** Layered looks with it. */
  readonly adds: bigint;
  /** Occasion ids for which there is no look without it and one with it. */
  readonly serves: readonly string[];
  /** Occasion ids for which a look with it does, those of `serves` among them. */
  readonly wornFor: readonly string[];
}

/** Most occasions first, then most looks. */
export const byWorth = (a: Addition, b: Addition): number =>
  b.serves.length - a.serves.length || Number(b.adds - a.adds);

/** What a piece would bring, counted with it in the capsule. */
export const additionOf = (piece: Piece, dressed: readonly Dressed[], question: ImproveQuestion): Addition => {
  const engine = engineWith([...question.pieces, piece], question);
  const worn = dressed.filter(({ demand }) => hasLook(engine, demand, [piece.id]));
  return {
    piece,
    adds: engine.count({ pieces: [piece.id] }).layered,
    serves: worn.filter((each) => !each.hasLook).map(({ demand }) => demand.occasion),
    wornFor: worn.map(({ demand }) => demand.occasion),
  };
};
