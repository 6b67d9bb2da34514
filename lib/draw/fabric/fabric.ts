import { FABRICS, type Surface } from '../../vocabulary/index.ts';
import type { Detail, DrawnPiece, Tile } from '../drawing.ts';
import type { Cloth } from './cloth.ts';
import { crosswiseStripes, print } from './print.ts';
import { clothTones } from './tones.ts';
import { weave } from './weave.ts';

const SHEER: Partial<Record<Surface, number>> = { chiffon: 0.22, lace: 0.15, 'open knit': 0.12 };

/** Stripes run across these, as they are knitted; down the others. common practice, no source */
const KNITTED: ReadonlySet<Surface> = new Set([
  'jersey',
  'fine knit',
  'rib knit',
  'cable knit',
  'open knit',
  'fleece',
  'towelling',
  'swim',
  'canvas',
]);

/** Surfaces that still show through a print; a finer weave would only cost time. */
const DEEP: ReadonlySet<Surface> = new Set([
  'corduroy',
  'rib knit',
  'cable knit',
  'open knit',
  'lace',
  'sequin',
  'quilted',
  'velvet',
  'fleece',
  'towelling',
]);

const build = (
  surface: Surface,
  colours: readonly string[],
  pattern: DrawnPiece['pattern'],
  detail: Detail,
  seed: string,
): Cloth => {
  const ground = colours[0] ?? '#8d8478';
  const tones = clothTones(ground, surface);
  const woven = pattern.type === 'plain' || pattern.type === 'colour block' || DEEP.has(surface);
  const tiles = [
    print(pattern, colours, detail, seed, !KNITTED.has(surface)),
    woven ? weave(tones, detail) : undefined,
  ].filter((tile): tile is Tile => tile !== undefined);
  const face = tiles[0];
  const printed = face?.name === 'print';
  const stripes =
    pattern.type === 'stripe' && KNITTED.has(surface) ? crosswiseStripes(pattern.scale, colours, detail) : undefined;
  return {
    ...tones,
    // light and shade in the ground's own tones would veil a print
    ...(printed && { sheen: tones.sheen * 0.55 }),
    ...(stripes && { stripes }),
    accents: colours.slice(1),
    sheer: SHEER[surface] ?? 0,
    tiles,
    swatch: face && { ...face, name: 'swatch', ground },
  };
};

/** The cloth of a piece: its own colours, surface, pattern and scale. */
export const fabric = (piece: DrawnPiece, detail: Detail): Cloth =>
  build(
    FABRICS[piece.fabric].surface,
    piece.colours.map(({ hex }) => hex),
    piece.pattern,
    detail,
    `${piece.wardrobe}/${piece.id}`,
  );

/** A plain cloth of another colour or surface, for linings, ribs, trims and soles. */
export const plainCloth = (hex: string, surface: Surface = 'smooth', detail: Detail = 'full'): Cloth =>
  build(surface, [hex], { type: 'plain', scale: 'medium' }, detail, '');
