import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { differenceCiede2000 } from 'culori';
import { coloursOfPhoto } from '../../lib/photo/index.ts';
import { photograph, SCENES, type Scene, trueShares } from './synthetic.ts';

/** How well one known colour of a synthetic photo was read. */
export interface ReadColour {
  readonly scene: string;
  readonly known: string;
  readonly read: string;
  /** The word for what was read. */
  readonly name: string;
  /** CIEDE2000 between the two. */
  readonly error: number;
  readonly knownShare: number;
  readonly readShare: number;
}

const difference = differenceCiede2000();

/** Writes a scene as a photo into a folder, reads its colours and sets them beside the known ones. */
export const readScene = async (
  folder: string,
  scene: Scene,
  seed: number,
): Promise<{ readonly found: number; readonly colours: readonly ReadColour[] }> => {
  const name = `${seed}.${scene.format}`;
  await writeFile(path.join(folder, name), await photograph(scene, seed));
  const read = await coloursOfPhoto(folder, name);
  if (!read.ok) throw new Error(read.trouble.wrong);
  const { colours } = read.value;
  const shares = trueShares(scene);
  return {
    found: colours.length,
    colours: scene.cloth.map((known, index) => {
      const nearest = colours.reduce((best, next) =>
        difference(next.hex, known) < difference(best.hex, known) ? next : best,
      );
      return {
        scene: scene.name,
        known,
        read: nearest.hex,
        name: nearest.name,
        error: difference(nearest.hex, known),
        knownShare: shares[index] ?? 0,
        readShare: nearest.share,
      };
    }),
  };
};

/** Every scene, read in order. */
export const readScenes = async (
  folder: string,
): Promise<readonly (Awaited<ReturnType<typeof readScene>> & { readonly scene: Scene })[]> => {
  const read = [];
  for (const [index, scene] of SCENES.entries()) read.push({ scene, ...(await readScene(folder, scene, index + 1)) });
  return read;
};

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
