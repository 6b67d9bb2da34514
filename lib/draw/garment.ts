import type { KindId } from '../vocabulary/index.ts';
import { BAGS } from './carry/index.ts';
import type { Detail, Drawing, DrawKind, DrawnPiece } from './drawing.ts';
import { DRESS } from './dress/index.ts';
import { SHOES } from './feet/index.ts';
import { LEGWEAR } from './legwear/index.ts';
import { LOWER } from './lower/index.ts';
import { SWIM } from './swim/index.ts';
import { UPPER } from './upper/index.ts';

const ARTISTS: Readonly<Partial<Record<KindId, DrawKind>>> = {
  ...UPPER,
  ...LOWER,
  ...DRESS,
  ...SWIM,
  ...LEGWEAR,
  ...SHOES,
  ...BAGS,
};

/** Draws a piece at true size in its own cloth. Pure and seeded: the same piece always gives the same drawing. */
export const drawPiece = (piece: DrawnPiece, detail: Detail = 'full'): Drawing => {
  const draw = ARTISTS[piece.kind];
  if (draw === undefined) throw new Error(`no drawing for the kind ${piece.kind}`);
  return draw(piece, detail);
};
