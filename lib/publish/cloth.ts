import { INK, swatchMarkup } from '../draw/card/index.ts';
import type { LayItem } from '../draw/flat-lay/index.ts';
import type { Piece } from '../model/index.ts';

/** Scale of a swatch, pixels a centimetre: close enough to see the weave. */
const PX_PER_CM = 12;
const MARGIN = 2;

/** A pinked swatch of a piece's own cloth, as an SVG document. */
export const clothSvg = (
  piece: Piece,
  item: LayItem,
  size: { readonly width: number; readonly height: number },
): string => {
  const { width, height } = size;
  const box = { x: MARGIN, y: MARGIN, width: width - 2 * MARGIN, height: height - 2 * MARGIN };
  const swatch = swatchMarkup(
    { ...item, name: piece.name, colour: piece.colours[0]?.hex ?? INK },
    box,
    PX_PER_CM,
    'w-',
    { ink: INK },
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${swatch}</svg>`;
};
