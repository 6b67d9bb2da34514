import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';

/** Rooms whose code decides what a picture or a sheet looks like. */
const DRAWING_ROOMS = ['colour', 'draw', 'guide', 'model', 'photo', 'print', 'publish', 'type', 'vocabulary', 'words'];

/** Hash of the code that draws and of the packages it draws with: what was kept is void when either changes. */
export const codeHash = async (): Promise<string> => {
  const lib = path.join(import.meta.dirname, '..');
  const hash = createHash('sha256');
  for (const room of DRAWING_ROOMS) {
    const files = (await readdir(path.join(lib, room), { recursive: true }))
      .filter((file) => file.endsWith('.ts'))
      .sort();
    for (const file of files) hash.update(file).update(await readFile(path.join(lib, room, file)));
  }
  hash.update(await readFile(path.join(lib, '..', 'package.json')));
  return hash.digest('hex').slice(0, 16);
};
