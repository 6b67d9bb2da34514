import { shapeOf } from '../draw/flat-lay/index.ts';
import type { Detail } from '../draw/index.ts';
import { pieceMargin, piecePicture } from '../draw/raster/index.ts';
import type { Piece } from '../model/index.ts';
import type { Picture, PiecePictures } from '../site/pictures.ts';
import type { Slot } from '../vocabulary/index.ts';
import { clothSvg } from './cloth.ts';
import { type Easel, GROUNDS, type Job, WEBP_ON } from './easel.ts';
import { type Motifs, motifKey } from './items.ts';

/** A piece fills this box in pixels. */
const PIECE = { width: 480, height: 640 } as const;
/** The small one is drawn for small size, and to scale as pages show pieces beside each other: pixels a centimetre, and the least width. */
const SMALL_PIECE = { pxPerCm: 2.5, width: 64 } as const;
/** Pages show some twenty of the small pictures together: coarser than a picture that is looked at alone. */
const SMALL_WEBP = { quality: 54, alphaQuality: 50, effort: 4 } as const;
/** A swatch is shown a quarter as wide. */
const CLOTH = { width: 96, height: 72 } as const;

/** The slot a piece takes when it is shown alone. */
const slotOf = ({ places, site }: Piece): Slot => {
  const place = places[0] ?? 'top';
  return place === 'jewellery' ? `jewellery ${site ?? 'ears'}` : place;
};

export const pieceJob = (
  piece: Piece,
  motifs: Motifs,
  { rasteriser }: Easel,
): { readonly pictures: PiecePictures; readonly job: Job } => {
  const slot = slotOf(piece);
  const { picture } = motifs.item(piece.id, slot, 'full');
  const { box } = picture;
  const margin = pieceMargin(box);
  const [widthCm, heightCm] = [box.width + 2 * margin, box.height + 2 * margin];
  const pxPerCm = Math.min(PIECE.width / widthCm, PIECE.height / heightCm);
  const sizes = (['large', 'small'] as const).map((size) => {
    const detail: Detail = size === 'small' ? 'small' : 'full';
    const large = Math.round(widthCm * pxPerCm);
    const small = Math.max(Math.round(widthCm * SMALL_PIECE.pxPerCm), SMALL_PIECE.width);
    const width = size === 'small' ? Math.min(large, small) : large;
    return { size, detail, width, height: Math.round((width * heightCm) / widthCm) };
  });
  const addressOf = (ground: string, size: string): string => `pictures/pieces/${piece.id}-${ground}-${size}.webp`;
  const onGround = (ground: (typeof GROUNDS)[number]): readonly Picture[] =>
    sizes.map(({ size, width, height }) => ({ address: addressOf(ground, size), width, height }));
  const each = GROUNDS.flatMap((ground) => sizes.map((size) => ({ ground, ...size })));
  return {
    pictures: { clear: onGround('clear'), night: onGround('night'), widthCm, heightCm, shape: shapeOf(picture) },
    job: {
      outputs: each.map(({ ground, size, width }) => ({
        file: addressOf(ground, size),
        key: ['piece', motifKey(piece), ground, width],
      })),
      make: () =>
        Promise.all(
          each.map(async ({ ground, detail, width, height }) => {
            const picture = piecePicture(motifs.item(piece.id, slot, detail), { width, height });
            return rasteriser.webp(await rasteriser.laid(picture, { ground }), {
              ...(detail === 'small' ? SMALL_WEBP : {}),
              ...WEBP_ON[ground],
            });
          }),
        ),
    },
  };
};

export const clothJob = (piece: Piece, motifs: Motifs, { rasteriser }: Easel): { cloth: Picture; job: Job } => {
  const file = `pictures/cloth/${piece.id}.webp`;
  const make = async (): Promise<readonly Uint8Array[]> => {
    const svg = clothSvg(piece, motifs.item(piece.id, slotOf(piece), 'full'), CLOTH);
    return [await rasteriser.webp(await rasteriser.pixels(svg, { width: CLOTH.width }), SMALL_WEBP)];
  };
  return {
    cloth: { address: file, ...CLOTH },
    job: { outputs: [{ file, key: ['cloth', motifKey(piece)] }], make },
  };
};
