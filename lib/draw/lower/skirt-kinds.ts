import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { aLine, midi } from './flared-skirts.ts';
import { pencil } from './pencil-skirt.ts';
import { pleatedSkirt } from './pleats.ts';
import { denim, mini } from './short-skirts.ts';
import { drawSkirt, type SkirtRecipe } from './skirt.ts';
import { maxi } from './tiered-skirt.ts';
import { wrap } from './wrap-skirt.ts';

const kind =
  (recipe: SkirtRecipe): DrawKind =>
  (piece, detail) => {
    if (piece.cut === 'pleated') return pleatedSkirt(piece, detail);
    return drawSkirt(piece, detail, piece.cut === 'wrap' ? wrap : recipe);
  };

/** Skirts. A cut of `pleated` or `wrap` makes any of them that. */
export const SKIRTS = {
  'mini skirt': kind(mini),
  'denim skirt': kind(denim),
  'pencil skirt': kind(pencil),
  'a-line skirt': kind(aLine),
  'midi skirt': kind(midi),
  'pleated skirt': pleatedSkirt,
  'wrap skirt': kind(wrap),
  'maxi skirt': kind(maxi),
} satisfies Partial<Record<KindId, DrawKind>>;
