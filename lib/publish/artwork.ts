import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import type { Guide } from '../guide/index.ts';
import type { PictureIndex } from '../site/pictures.ts';
import { keyOf } from './cache.ts';
import { cardJobs } from './card-pictures.ts';
import type { Easel, Job } from './easel.ts';
import type { Motifs } from './items.ts';
import { lookJob } from './look-pictures.ts';
import { clothJob, pieceJob } from './piece-pictures.ts';
import { inPool } from './pool.ts';

/** Pictures under way at once: the rasteriser holds three, the rest encode. */
const AT_ONCE = 4;

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
