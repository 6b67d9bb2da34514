import { drawingSvg, drawPiece } from '../../draw/index.ts';
import type { Piece } from '../../model/index.ts';

/** Page pixels a centimetre: one scale for every garment of the page. */
const PX_PER_CM = 1.5;

/** A garment that is in no guide, drawn as a file of its own. */
export interface GarmentFile {
  /** Below the guide's folder. */
  readonly address: string;
  readonly svg: string;
  /** Size on the page, pixels. */
  readonly width: number;
  readonly height: number;
}

/** Draws a piece small, at the scale of the page. */
export const garmentFile = (piece: Piece, address: string): GarmentFile => {
  const drawing = drawPiece(piece, 'small');
  const width = Math.round(drawing.box.width * PX_PER_CM);
  return {
    address,
    svg: drawingSvg(drawing, { prefix: 'g', width }),
    width,
    height: Math.round(drawing.box.height * PX_PER_CM),
  };
};
