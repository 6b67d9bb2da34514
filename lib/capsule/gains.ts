import type { Piece } from '../model/index.ts';
import { onlyFinishes } from './grid.ts';
import { type Dressed, engineWith, hasLook, type ImproveQuestion } from './improve-question.ts';
import { isInSeason } from './season.ts';

/** One piece more: what it would bring. */
export interface Addition {
  readonly piece: Piece;
  /** What `adds` counts: complete looks for what only finishes a look, and is in no layered one. */
  readonly level: 'layered' | 'complete';
  /** Looks with it. */
  readonly adds: bigint;
  /** Occasion ids for which there is no look without it and one with it. */
  readonly serves: readonly string[];
  /** Occasion ids for which a look with it does, those of `serves` among them. */
  readonly wornFor: readonly string[];
}

/** Most occasions first, then garments, then most looks. */
export const byWorth = (a: Addition, b: Addition): number =>
  b.serves.length - a.serves.length ||
  Number(a.level === 'complete') - Number(b.level === 'complete') ||
  Number(b.adds - a.adds);

/** What a piece would bring, counted with it in the capsule. */
export const additionOf = (piece: Piece, dressed: readonly Dressed[], question: ImproveQuestion): Addition => {
  const engine = engineWith([...question.pieces, piece], question);
  const worn = dressed.filter(({ demand }) => isInSeason(piece, demand) && hasLook(engine, demand, [piece.id]));
  // in cold beyond travel clothes the plan asks for clothing made for it, and so does this
  const isServed = ({ hasLook: had, demand }: Dressed): boolean =>
    !had && (demand.beyondClothes !== true || piece.status !== 'to buy');
  const level = onlyFinishes(piece.kind) ? 'complete' : 'layered';
  return {
    piece,
    level,
    adds: engine.count({ pieces: [piece.id] })[level],
    serves: worn.filter(isServed).map(({ demand }) => demand.occasion),
    wornFor: worn.filter((each) => each.hasLook || isServed(each)).map(({ demand }) => demand.occasion),
  };
};
