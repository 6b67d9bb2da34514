import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { clampLength, corner, type DrawnLength, Garment } from '../kit/index.ts';
import { drawLegs, type TightsDesign } from './tights-leg.ts';
import { panty } from './tights-panty.ts';

const SHORTEST = 70;
const LONGEST = 118;
const USUAL = 104;

/** Length of tights from the waist to the toe. */
export const tightsLength = (piece: Pick<DrawnPiece, 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, USUAL, SHORTEST, LONGEST);

/** Tights laid out, one foot over the other. */
export const drawTights = (piece: DrawnPiece, detail: Detail, design: TightsDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const length = tightsLength(piece).cm;
  const half = 13.4 + design.thick;
  garment.inside([corner(-half + 0.4, 0.6), [0, -0.8], corner(half - 0.4, 0.6), corner(0, 3)], {
    fill: garment.cloth.lining,
  });
  drawLegs(garment, length, design);
  panty(garment, design, half);
  return garment
    .anchor('waist', [0, 1])
    .anchor('left waist', [-half, 0])
    .anchor('right waist', [half, 0])
    .anchor('hem', [0, length])
    .finish();
};
