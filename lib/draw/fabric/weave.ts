import type { Surface } from '../../vocabulary/index.ts';
import type { Detail, Tile } from '../drawing.ts';
import { cableKnit, fineKnit, openKnit, ribKnit } from './knits.ts';
import { curls, grain, lace, nap, quilted, sequin, tortoise } from './special.ts';
import type { Tones, Weave } from './threads.ts';
import { canvas, corduroy, denim, linen, straw, tweed, twill, velvet } from './woven.ts';
/** The weave, nap or knit of each surface; surfaces not listed are smooth. */
export const WEAVES: Partial<Record<Surface, Weave>> = {
  denim,
  twill,
  corduroy,
  'fine knit': fineKnit,
  'rib knit': ribKnit,
  'cable knit': cableKnit,
  'open knit': openKnit,
  linen,
  lace,
  leather: grain,
  suede: nap,
  fleece: curls,
  sequin,
  velvet,
  tweed,
  flannel: nap,
  felt: nap,
  quilted,
  canvas,
  straw,
  towelling: curls,
  tortoiseshell: tortoise,
};

/** What is coarse enough to be seen in a small drawing. */
const COARSE: ReadonlySet<Surface> = new Set([
  'cable knit',
  'quilted',
  'lace',
  'sequin',
  'straw',
  'open knit',
  'tortoiseshell',
  'corduroy',
  'rib knit',
]);

/** The weave of a cloth as a tile, or nothing for a smooth one. Small drawings keep only what is coarse, larger. */
export const weave = (tones: Tones, detail: Detail): Tile | undefined => {
  const draws = detail === 'full' || COARSE.has(tones.surface) ? WEAVES[tones.surface] : undefined;
  if (draws === undefined) return undefined;
  const scale = detail === 'small' ? 1.7 : 1;
  return { name: 'weave', ...draws(tones), ...(scale !== 1 && { transform: [scale, 0, 0, scale, 0, 0] as const }) };
};
