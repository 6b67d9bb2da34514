import { lstat, mkdir, rename, rm } from 'node:fs/promises';
import path from 'node:path';

const exists = async (file: string): Promise<boolean> =>
  lstat(file).then(
    () => true,
    () => false,
  );

/** Marks a folder as Wayfold's output, so that a build never replaces a folder that holds something else. */
export const OUTPUT_MARK = '.wayfold';

/**
 * Builds a folder beside the old one and swaps it in whole: until the very end readers see the last good output, and a
 * build that fails or is killed leaves it untouched.
 * @throws what `fill` throws, after removing the half-built folder
 */
export const swapIn = async (out: string, fill: (folder: string) => Promise<void>): Promise<void> => {
  const next = `${out}.next`;
  const last = `${out}.last`;
  // A killed build can leave the old output set aside; put it back before anything else.
  if (!(await exists(out)) && (await exists(last))) await rename(last, out);
  await rm(next, { recursive: true, force: true });
  await rm(last, { recursive: true, force: true });
  await mkdir(next, { recursive: true });
  try {
    await fill(next);
  } catch (error) {
    await rm(next, { recursive: true, force: true });
    throw error;
  }
  if (await exists(out)) await rename(out, last);
  await rename(next, out);
  await rm(last, { recursive: true, force: true });
};

/** True when the folder may be replaced: it is absent, empty, or Wayfold wrote it. */
export const mayReplace = async (out: string, isEmpty: (folder: string) => Promise<boolean>): Promise<boolean> =>
  !(await exists(out)) || (await exists(path.join(out, OUTPUT_MARK))) || isEmpty(out);
