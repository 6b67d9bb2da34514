import type { Brief, Capsule, Piece } from '../model/index.ts';
import { fabricRefused } from '../vocabulary/index.ts';

/** The wardrobe a capsule chooses from, as its client wears it on this trip; empty when there is none of that name. */
export const wardrobeOn = (
  wardrobes: ReadonlyMap<string, readonly Piece[]>,
  { avoid }: Pick<Brief, 'avoid'>,
  { wardrobe }: Pick<Capsule, 'wardrobe'>,
): readonly Piece[] =>
  (wardrobes.get(wardrobe) ?? []).map((piece) =>
    fabricRefused(piece, avoid.againstSkin ?? []) === undefined ? piece : { ...piece, offSkin: true },
  );
