import type { Piece, Plan } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';

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

/** Cost per look and per planned wear of every piece that has a price, in the order of the pieces. */
export const costsOf = (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  plan: Plan | undefined,
): readonly CostOfPiece[] => {
  if (pieces.every(({ price }) => price === undefined)) return [];
  const made = new Map(engine.contributions().map((each) => [each.piece, each]));
  return pieces.flatMap(({ id, price }): CostOfPiece[] => {
    const looks = made.get(id);
    if (price === undefined || looks === undefined) return [];
    const level = looks.layered > 0n ? 'layered' : 'complete';
    const wears = plan?.wears[id] ?? 0;
    return [
      {
        piece: id,
        price,
        level,
        looks: looks[level],
        ...(looks[level] > 0n ? { aLook: price.amount / Number(looks[level]) } : {}),
        wears,
        ...(wears > 0 ? { aWear: price.amount / wears } : {}),
      },
    ];
  });
};
