import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import { CARD_SIZES, type Card, type CardFormat, drawCard } from '../draw/card/index.ts';
import { shapeOf } from '../draw/flat-lay/index.ts';
import type { Detail } from '../draw/index.ts';
import {
  type LaidPicture,
  lookPicture,
  type Pixels,
  pieceMargin,
  piecePicture,
  type Rasteriser,
  redrawn,
} from '../draw/raster/index.ts';
import type { Guide, GuideLook } from '../guide/index.ts';
import type { Piece } from '../model/index.ts';
import type { CardPictures, Picture, PictureIndex, PictureSet, PiecePictures } from '../site/pictures.ts';
import type { Fonts } from '../type/index.ts';
import type { Slot } from '../vocabulary/index.ts';
import { type Cache, keyOf } from './cache.ts';
import { type CardVoice, cardInput, settableCard } from './card-input.ts';
import { clothSvg } from './cloth.ts';
import { lookKey, type Motifs, motifKey } from './items.ts';
import { inPool } from './pool.ts';

/** What artwork is made with; all of it handed in. */
export interface Easel {
  readonly rasteriser: Rasteriser;
  readonly fonts: Fonts;
  readonly cache: Cache;
  readonly voice: CardVoice;
  /** Voids what was kept when the code that draws changes. */
  readonly codeHash: string;
  readonly onPicture: () => void;
}

/** Look pictures stand upright, as a figure does. Widths in pixels, widest first; the last is drawn for small size. */
export const LOOK = { width: 960, height: 1120 } as const;
const LOOK_WIDTHS = [960, 480, 240] as const;
const SMALL_LOOK = 240;
/** A piece fills this box in pixels. */
const PIECE = { width: 480, height: 640 } as const;
/** The small one is drawn for small size, and to scale as pages show pieces beside each other: pixels a centimetre, and the least width. */
const SMALL_PIECE = { pxPerCm: 2.5, width: 64 } as const;
/** Pages show some twenty of the small pictures together: coarser than a picture that is looked at alone. */
const SMALL_WEBP = { quality: 54, alphaQuality: 50, effort: 4 } as const;
/** A swatch is shown a quarter as wide. */
const CLOTH = { width: 96, height: 72 } as const;
const GROUNDS = ['clear', 'night'] as const;
/** Pictures under way at once: the rasteriser holds three, the rest encode. */
const AT_ONCE = 4;

/** Pictures that are made together, from the same pixels or the same layout. */
interface Job {
  /** Files below the guide's folder, and what else than the code each depends on. */
  readonly outputs: readonly { readonly file: string; readonly key: readonly unknown[] }[];
  /** The files' bytes in their order. */
  make(): Promise<readonly Uint8Array[]>;
}

/** One motif on every ground: the widest picture is painted, the others are made from it; the smallest is drawn for small size. */
const lookJob = (
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
        files.push(await rasteriser.webp(pixels));
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

/** The slot a piece takes when it is shown alone. */
const slotOf = ({ places, site }: Piece): Slot => {
  const place = places[0] ?? 'top';
  return place === 'jewellery' ? `jewellery ${site ?? 'ears'}` : place;
};

const pieceJob = (
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
            return rasteriser.webp(await rasteriser.laid(picture, { ground }), detail === 'small' ? SMALL_WEBP : {});
          }),
        ),
    },
  };
};

const clothJob = (piece: Piece, motifs: Motifs, { rasteriser }: Easel): { cloth: Picture; job: Job } => {
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

const cardJobs = (
  guide: Guide,
  look: GuideLook,
  motifs: Motifs,
  { fonts, voice, rasteriser }: Easel,
): { readonly cards: CardPictures; readonly jobs: readonly Job[] } => {
  const stem = `cards/${look.slug}`;
  const draw = (format: CardFormat) =>
    drawCard(settableCard(cardInput(guide, look, format, motifs, voice), fonts), fonts, { onLaid: rasteriser.prepare });
  const pngOf = async (card: Card): Promise<Uint8Array> =>
    rasteriser.png(await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet }));
  const keyFor = (format: CardFormat): readonly unknown[] => {
    const { pieces, ...words } = cardInput(guide, look, format, motifs, voice);
    return ['card', words, pieces.map(({ name, colour }) => [name, colour]), lookKey(look.look, guide)];
  };
  return {
    cards: {
      portrait: { address: `${stem}.png`, ...CARD_SIZES.portrait },
      landscape: { address: `${stem}-wide.png`, ...CARD_SIZES.landscape },
      svg: `${stem}.svg`,
    },
    jobs: [
      {
        outputs: [
          { file: `${stem}.svg`, key: [...keyFor('portrait'), 'svg'] },
          { file: `${stem}.png`, key: [...keyFor('portrait'), 'png'] },
        ],
        make: async () => {
          const card = await draw('portrait');
          return [new TextEncoder().encode(card.svg), await pngOf(card)];
        },
      },
      {
        outputs: [{ file: `${stem}-wide.png`, key: [...keyFor('landscape'), 'png'] }],
        make: async () => [await pngOf(await draw('landscape'))],
      },
    ],
  };
};

export interface Artwork {
  readonly index: PictureIndex;
  /** How many pictures `paint` will call back for. */
  readonly count: number;
  /** Pixels a centimetre of each look's widest picture, by its slug. */
  scales(): Promise<Readonly<Record<string, number>>>;
  /** Makes the pictures, or takes them from the cache, and writes them below the guide's folder. */
  paint(folder: string): Promise<void>;
}

/** Plans every picture of a guide; nothing is drawn before `paint`. */
export const artworkOf = (guide: Guide, motifs: Motifs, easel: Easel): Artwork => {
  const looks = guide.looks.map((look) => ({ slug: look.slug, ...lookJob(guide, look, motifs, easel) }));
  const cards = guide.looks.map((look) => ({ slug: look.slug, ...cardJobs(guide, look, motifs, easel) }));
  const pieces = guide.pieces.map((piece) => ({ id: piece.id, ...pieceJob(piece, motifs, easel) }));
  const cloths = guide.pieces.map((piece) => ({ id: piece.id, ...clothJob(piece, motifs, easel) }));
  const jobs = [...looks, ...pieces, ...cloths].map(({ job }) => job).concat(cards.flatMap((part) => part.jobs));
  const paintOne = async (folder: string, { outputs, make }: Job): Promise<void> => {
    let made: Promise<readonly Uint8Array[]> | undefined;
    for (const [index, { file, key }] of outputs.entries()) {
      const bytes = await easel.cache.get(keyOf(easel.codeHash, ...key), async () => {
        made ??= make();
        return (await made)[index] ?? new Uint8Array();
      });
      await writeFile(path.join(folder, file), bytes);
      easel.onPicture();
    }
  };
  return {
    index: {
      looks: Object.fromEntries(looks.map(({ slug, set }) => [slug, set])),
      cards: Object.fromEntries(cards.map((part) => [part.slug, part.cards])),
      pieces: Object.fromEntries(pieces.map(({ id, pictures }) => [id, pictures])),
      cloth: Object.fromEntries(cloths.map(({ id, cloth }) => [id, cloth])),
    },
    scales: async () =>
      Object.fromEntries(await Promise.all(looks.map(async ({ slug, scale }) => [slug, await scale()] as const))),
    count: jobs.reduce((sum, { outputs }) => sum + outputs.length, 0),
    async paint(folder) {
      const folders = new Set(
        jobs.flatMap(({ outputs }) => outputs.map(({ file }) => path.dirname(path.join(folder, file)))),
      );
      for (const each of folders) await mkdir(each, { recursive: true });
      await inPool(jobs, AT_ONCE, (job) => paintOne(folder, job));
    },
  };
};

/** Keeps sharp from holding decoded pictures between builds. */
sharp.cache(false);
