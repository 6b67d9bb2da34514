import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { cocktail } from './cocktail-dress.ts';
import { type DressDesign, drawDress } from './draw.ts';
import { gown } from './evening-gown.ts';
import { pinafore } from './pinafore.ts';
import { withShoulders } from './shoulders.ts';
import { slip } from './slip-dress.ts';
import { sun } from './sundress.ts';

const kind =
  (design: DressDesign): DrawKind =>
  (piece, detail) =>
    drawDress(piece, detail, withShoulders(piece, design));

/** Dresses held by straps. */
export const STRAP_DRESSES = {
  'slip dress': kind(slip),
  sundress: kind(sun),
  'cocktail dress': kind(cocktail),
  'evening gown': kind(gown),
  pinafore: kind(pinafore),
} satisfies Partial<Record<KindId, DrawKind>>;
