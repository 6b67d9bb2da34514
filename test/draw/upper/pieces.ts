import type { DrawnPiece } from '../../../lib/draw/drawing.ts';
import { oklch } from '../../../lib/draw/kit/index.ts';
import { KINDS, type KindId } from '../../../lib/vocabulary/index.ts';

/** A piece of a kind with the kind's own defaults, in the colours given (the first is the ground). */
export const pieceOf = (
  kind: KindId,
  changes: Partial<Omit<DrawnPiece, 'colours' | 'kind'>> & { readonly hexes?: readonly string[] } = {},
): DrawnPiece => {
  const { hexes = ['#b8573a'], ...rest } = changes;
  const { cut, length, fabric, heelCm } = KINDS[kind];
  return {
    id: `a ${kind}`,
    wardrobe: 'trial',
    name: kind,
    kind,
    cut,
    length,
    heelCm,
    fabric,
    pattern: { type: 'plain', scale: 'medium' },
    ...rest,
    colours: hexes.map((hex) => ({ name: hex, hex, share: 1 / hexes.length, oklch: oklch(hex) })),
  };
};
