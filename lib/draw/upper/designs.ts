import type { DrawKind } from '../drawing.ts';
import { type ButtonedDesign, drawButtoned } from './buttoned.ts';
import { type CardiganDesign, drawCardigan } from './cardigan.ts';
import { drawPullover, type PulloverDesign } from './pullover.ts';
import { drawTailored, type TailoredDesign } from './tailored.ts';

/** A design becomes the drawing of a kind. */
export const pullover =
  (design: PulloverDesign): DrawKind =>
  (piece, detail) =>
    drawPullover(piece, detail, design);

export const buttoned =
  (design: ButtonedDesign): DrawKind =>
  (piece, detail) =>
    drawButtoned(piece, detail, design);

export const tailored =
  (design: TailoredDesign): DrawKind =>
  (piece, detail) =>
    drawTailored(piece, detail, design);

export const cardigan =
  (design: CardiganDesign): DrawKind =>
  (piece, detail) =>
    drawCardigan(piece, detail, design);
