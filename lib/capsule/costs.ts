import type { Piece } from '../model/index.ts';

/** What a piece costs, by what comes of it; for pieces with a price. */
export interface CostOfPiece {
  readonly piece: string;
  readonly price: { readonly amount: number; readonly currency: string };
  /** What `looks` counts: complete looks for shoes and accessories, which are in no layered look. */
  readonly level: 'layered' | 'complete';
  /** Looks that contain it. */
  readonly looks: bigint;
  /** In the price's currency; absent when there is no look. */
  readonly aLook?: number;
  /** Times the plan wears it. */
  readonly wears: number;
  /** In the price's currency; absent when the plan never wears it. */
  readonly aWear?: number;
}

/** Looks that contain a piece, at two levels. */
export interface LooksOfPiece {
  readonly piece: string;
  readonly layered: bigint;
  readonly complete: bigint;
}

/** Cost per look and per planned wear of every piece that has a price, in the order of the pieces. */
export const costsOf = (
  pieces: readonly Piece[],
  looks: readonly LooksOfPiece[],
  wearsOf: Readonly<Record<string, number>>,
): readonly CostOfPiece[] => {
  const byPiece = new Map(looks.map((each) => [each.piece, each]));
  return pieces.flatMap(({ id, price }): CostOfPiece[] => {
    const made = byPiece.get(id);
    if (price === undefined || made === undefined) return [];
    const level = made.layered > 0n ? 'layered' : 'complete';
    const wears = wearsOf[id] ?? 0;
    return [
      {
        piece: id,
        price,
        level,
        looks: made[level],
        ...(made[level] > 0n ? { aLook: price.amount / Number(made[level]) } : {}),
        wears,
        ...(wears > 0 ? { aWear: price.amount / wears } : {}),
      },
    ];
  });
};
