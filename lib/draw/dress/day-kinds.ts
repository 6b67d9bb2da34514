import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { type DressDesign, drawDress } from './draw.ts';
import { knitted } from './knitted-dress.ts';
import { maxi } from './maxi-dress.ts';
import { sheath } from './sheath-dress.ts';
import { shirtDress } from './shirt-dress.ts';
import { tShirtDress } from './t-shirt-dress.ts';
import { tea } from './tea-dress.ts';
import { wrapDress } from './wrap-dress.ts';

const kind =
  (design: DressDesign): DrawKind =>
  (piece, detail) =>
    drawDress(piece, detail, design);

/** Dresses that hang from the shoulders. */
export const DAY_DRESSES = {
  'shirt dress': kind(shirtDress),
  'wrap dress': kind(wrapDress),
  't-shirt dress': kind(tShirtDress),
  'knitted dress': kind(knitted),
  'sheath dress': kind(sheath),
  'tea dress': kind(tea),
  'maxi dress': kind(maxi),
} satisfies Partial<Record<KindId, DrawKind>>;
