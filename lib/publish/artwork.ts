import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import { CARD_SIZES, type CardFormat, drawCard } from '../draw/card/index.ts';
import type { Detail } from '../draw/index.ts';
import { lookPictureSvg, piecePictureSvg, type Rasteriser } from '../draw/raster/index.ts';
import type { Guide, GuideLook } from '../guide/index.ts';
import type { Piece } from '../model/index.ts';
import type { CardPictures, Picture, PictureIndex, PictureSet, PiecePictures } from '../site/pictures.ts';
import type { Fonts } from '../type/index.ts';
import type { Slot } from '../vocabulary/index.ts';
import { type Cache, keyOf } from './cache.ts';
import { type CardVoice, cardInput } from './card-input.ts';
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
const LOOK = { width: 960, height: 1120 } as const;
const LOOK_WIDTHS = [960, 480, 240] as const;
const SMALL_LOOK = 240;
/** A piece fills this box in pixels; the small one is drawn for small size. */
const PIECE = { width: 480, height: 640 } as const;
const SMALL_PIECE = 160;
const CLOTH = { width: 96, height: 72 } as const;
const GROUNDS = ['clear', 'night'] as const;
/** Pictures under way at once: the rasteriser holds three, the rest encode. */
const AT_ONCE = 4;

interface Job {
  /** Below the guide's folder. */
  readonly file: string;
  readonly key: readonly unknown[];
  make(): Promise<Uint8Array>;
}

const webpOf =
  (easel: Easel, svg: () => string, width: number): (() => Promise<Uint8Array>) =>
  async () =>
    easel.rasteriser.webp(await easel.rasteriser.pixels(svg(), { width }));

/** One motif at several widths, each rasterised at its own width so that fine weaves do not shimmer. */
const lookJobs = (guide: Guide, look: GuideLook, motifs: Motifs, easel: Easel): { set: PictureSet; jobs: Job[] } => {
  const jobs: Job[] = [];
  const onGround = (ground: (typeof GROUNDS)[number]): readonly Picture[] =>
    LOOK_WIDTHS.map((width): Picture => {
      const detail: Detail = width <= SMALL_LOOK ? 'small' : 'full';
      const file = `pictures/looks/${look.slug}-${ground}-${width}.webp`;
      jobs.push({
        file,
        key: ['look', lookKey(look.look, guide), ground, width],
        make: webpOf(easel, () => lookPictureSvg(motifs.itemsOf(look.look, detail), { ...LOOK, ground }), width),
      });
      return { address: file, width, height: Math.round((width * LOOK.height) / LOOK.width) };
    });
  return { set: { clear: onGround('clear'), night: onGround('night') }, jobs };
};

/** The slot a piece takes when it is shown alone. */
const slotOf = ({ places, site }: Piece): Slot => {
  const place = places[0] ?? 'top';
  return place === 'jewellery' ? `jewellery ${site ?? 'ears'}` : place;
};

const pieceJobs = (piece: Piece, motifs: Motifs, easel: Easel): { pictures: PiecePictures; jobs: Job[] } => {
  const slot = slotOf(piece);
  const { box } = motifs.item(piece.id, slot, 'full').picture;
  const margin = Math.max(1.2, Math.max(box.width, box.height) * 0.035);
  const [widthCm, heightCm] = [box.width + 2 * margin, box.height + 2 * margin];
  const pxPerCm = Math.min(PIECE.width / widthCm, PIECE.height / heightCm);
  const jobs: Job[] = [];
  const onGround = (ground: (typeof GROUNDS)[number]): readonly Picture[] =>
    [1, SMALL_PIECE / Math.max(PIECE.width, PIECE.height)].map((share): Picture => {
      const width = Math.max(8, Math.round(widthCm * pxPerCm * share));
      const detail: Detail = share < 1 ? 'small' : 'full';
      const file = `pictures/pieces/${piece.id}-${ground}-${share < 1 ? 'small' : 'large'}.webp`;
      jobs.push({
        file,
        key: ['piece', motifKey(piece), ground, width],
        make: webpOf(easel, () => piecePictureSvg(motifs.item(piece.id, slot, detail), { width, ground }), width),
      });
      return { address: file, width, height: Math.round((width * heightCm) / widthCm) };
    });
  return { pictures: { clear: onGround('clear'), night: onGround('night'), widthCm, heightCm }, jobs };
};

const clothJob = (piece: Piece, motifs: Motifs, easel: Easel): { cloth: Picture; job: Job } => {
  const file = `pictures/cloth/${piece.id}.webp`;
  return {
    cloth: { address: file, ...CLOTH },
    job: {
      file,
      key: ['cloth', motifKey(piece)],
      make: webpOf(easel, () => clothSvg(piece, motifs.item(piece.id, slotOf(piece), 'full'), CLOTH), CLOTH.width * 2),
    },
  };
};

const cardJobs = (
  guide: Guide,
  look: GuideLook,
  motifs: Motifs,
  easel: Easel,
): { cards: CardPictures; jobs: Job[] } => {
  const { fonts, voice, rasteriser } = easel;
  const stem = `cards/${look.slug}`;
  const draw = async (format: CardFormat): Promise<string> =>
    (await drawCard(cardInput(guide, look, format, motifs, voice), fonts)).svg;
  // The portrait card is wanted twice, as SVG and as PNG: laid out once, and let go of when both are written.
  let portrait: Promise<string> | undefined;
  const drawPortrait = (): Promise<string> => {
    const drawn = portrait ?? draw('portrait');
    portrait = portrait === undefined ? drawn : undefined;
    return drawn;
  };
  const keyFor = (format: CardFormat): readonly unknown[] => {
    const { pieces, ...words } = cardInput(guide, look, format, motifs, voice);
    return ['card', words, pieces.map(({ name, colour }) => [name, colour]), lookKey(look.look, guide)];
  };
  const svgJob: Job = {
    file: `${stem}.svg`,
    key: [...keyFor('portrait'), 'svg'],
    make: async () => new TextEncoder().encode(await drawPortrait()),
  };
  const pngJob = (format: CardFormat, file: string): Job => ({
    file,
    key: [...keyFor(format), 'png'],
    make: async () =>
      rasteriser.png(await rasteriser.pixels(await (format === 'portrait' ? drawPortrait() : draw(format)))),
  });
  return {
    cards: {
      portrait: { address: `${stem}.png`, ...CARD_SIZES.portrait },
      landscape: { address: `${stem}-wide.png`, ...CARD_SIZES.landscape },
      svg: `${stem}.svg`,
    },
    jobs: [svgJob, pngJob('portrait', `${stem}.png`), pngJob('landscape', `${stem}-wide.png`)],
  };
};

export interface Artwork {
  readonly index: PictureIndex;
  /** How many pictures `paint` will call back for. */
  readonly count: number;
  /** Makes the pictures, or takes them from the cache, and writes them below the guide's folder. */
  paint(folder: string): Promise<void>;
}

/** Plans every picture of a guide; nothing is drawn before `paint`. */
export const artworkOf = (guide: Guide, motifs: Motifs, easel: Easel): Artwork => {
  const looks = guide.looks.map((look) => ({ slug: look.slug, ...lookJobs(guide, look, motifs, easel) }));
  const cards = guide.looks.map((look) => ({ slug: look.slug, ...cardJobs(guide, look, motifs, easel) }));
  const pieces = guide.pieces.map((piece) => ({ id: piece.id, ...pieceJobs(piece, motifs, easel) }));
  const cloths = guide.pieces.map((piece) => ({ id: piece.id, ...clothJob(piece, motifs, easel) }));
  const jobs = [...looks, ...cards, ...pieces].flatMap((part) => part.jobs).concat(cloths.map(({ job }) => job));
  return {
    index: {
      looks: Object.fromEntries(looks.map(({ slug, set }) => [slug, set])),
      cards: Object.fromEntries(cards.map((part) => [part.slug, part.cards])),
      pieces: Object.fromEntries(pieces.map(({ id, pictures }) => [id, pictures])),
      cloth: Object.fromEntries(cloths.map(({ id, cloth }) => [id, cloth])),
    },
    count: jobs.length,
    async paint(folder) {
      const folders = new Set(jobs.map(({ file }) => path.dirname(path.join(folder, file))));
      for (const each of folders) await mkdir(each, { recursive: true });
      await inPool(jobs, AT_ONCE, async ({ file, key, make }) => {
        const bytes = await easel.cache.get(keyOf(easel.codeHash, ...key), make);
        await writeFile(path.join(folder, file), bytes);
        easel.onPicture();
      });
    },
  };
};

/** Keeps sharp from holding decoded pictures between builds. */
sharp.cache(false);
