import { type LaidPicture, lookPicture, type Pixels, redrawn } from '../draw/raster/index.ts';
import type { Guide, GuideLook } from '../guide/index.ts';
import type { Picture, PictureSet } from '../site/pictures.ts';
import { keyOf } from './cache.ts';
import { type Easel, GROUNDS, type Job, WEBP_ON } from './easel.ts';
import { lookKey, type Motifs } from './items.ts';

/** Look pictures stand upright, as a figure does. Widths in pixels, widest first; the last is drawn for small size. */
export const LOOK = { width: 960, height: 1120 } as const;
const LOOK_WIDTHS = [960, 480, 240] as const;
const SMALL_LOOK = 240;

/** One motif on every ground: the widest picture is painted, the others are made from it; the smallest is drawn for small size. */
export const lookJob = (
  guide: Guide,
  look: GuideLook,
  motifs: Motifs,
  { rasteriser, cache, codeHash }: Easel,
): { set: PictureSet; job: Job; scale: () => Promise<number> } => {
  const pictureAt = (ground: (typeof GROUNDS)[number], width: number): Picture => ({
    address: `pictures/looks/${look.slug}-${ground}-${width}.webp`,
    width,
    height: Math.round((width * LOOK.height) / LOOK.width),
  });
  const set: PictureSet = {
    clear: LOOK_WIDTHS.map((width) => pictureAt('clear', width)),
    night: LOOK_WIDTHS.map((width) => pictureAt('night', width)),
  };
  const of = lookKey(look.look, guide);
  const outputs = GROUNDS.flatMap((ground) =>
    set[ground].map(({ address, width }) => ({ file: address, key: ['look', of, ground, width] })),
  );
  let known: LaidPicture | undefined;
  const laid = (): LaidPicture => {
    known ??= lookPicture(motifs.itemsOf(look.look, 'full'), LOOK);
    return known;
  };
  const make = async (): Promise<readonly Uint8Array[]> => {
    const full = laid();
    const small = redrawn(full, motifs.itemsOf(look.look, 'small'));
    const files: Uint8Array[] = [];
    for (const ground of GROUNDS) {
      const widest = await rasteriser.laid(full, { ground });
      for (const width of LOOK_WIDTHS) {
        let pixels: Pixels = widest;
        if (width === SMALL_LOOK) pixels = await rasteriser.laid(small, { ground, zoom: width / LOOK.width });
        else if (width < LOOK.width) pixels = await rasteriser.narrower(widest, width);
        files.push(await rasteriser.webp(pixels, WEBP_ON[ground]));
      }
    }
    return files;
  };
  /** Laying out takes longer than reading one number. */
  const scale = async (): Promise<number> => {
    const kept = await cache.get(keyOf(codeHash, 'scale', of), async () => Buffer.from(String(laid().lay.scale)));
    return Number(Buffer.from(kept).toString());
  };
  return { set, job: { outputs, make }, scale };
};
