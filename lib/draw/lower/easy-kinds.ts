import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { culottes } from './culottes.ts';
import { joggers, leggings } from './jersey-trousers.ts';
import { cropped, linen } from './light-trousers.ts';
import { shorts, tailoredShorts } from './shorts.ts';
import { drawTrousers, type TrouserRecipe } from './trousers.ts';
import { walking } from './walking-trousers.ts';

const kind =
  (recipe: TrouserRecipe): DrawKind =>
  (piece, detail) =>
    drawTrousers(piece, detail, recipe);

/** Easy trousers, leggings, culottes and shorts. */
export const EASY_TROUSERS = {
  'cropped trousers': kind(cropped),
  'linen trousers': kind(linen),
  'walking trousers': kind(walking),
  joggers: kind(joggers),
  leggings: kind(leggings),
  culottes: kind(culottes),
  shorts: kind(shorts),
  'tailored shorts': kind(tailoredShorts),
} satisfies Partial<Record<KindId, DrawKind>>;
