import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';

/** Rooms whose code decides what a picture or a sheet looks like. */
export const DRAWING_ROOMS = [
  'colour',
  'draw',
  'guide',
  'model',
  'photo',
  'print',
  'publish',
  'type',
  'vocabulary',
  'words',
];
/** Rooms whose code decides what a guide says. */
export const GUIDE_ROOMS = [
  'bag',
  'capsule',
  'colour',
  'comfort',
  'guide',
  'model',
  'outfit',
  'plan',
  'solver',
  'vocabulary',
];

/** Hash of the code of some rooms and of the packages they use: what was kept is void when either changes. */
export const codeHash = async (rooms: readonly string[]): Promise<string> => {
  const lib = path.join(import.meta.dirname, '..');
  const hash = createHash('sha256');
  for (const room of rooms) {
    const files = (await readdir(path.join(lib, room), { recursive: true }))
      .filter((file) => file.endsWith('.ts'))
      .sort();
    for (const file of files) hash.update(file).update(await readFile(path.join(lib, room, file)));
  }
  hash.update(await readFile(path.join(lib, '..', 'package.json')));
  return hash.digest('hex').slice(0, 16);
};
