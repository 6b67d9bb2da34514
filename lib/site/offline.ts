import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { build } from 'esbuild';

/** What is kept for days without signal: every page, and the pictures a phone shows. Cards, sheets and the widest pictures are not. */
const KEPT =
  /(\.html|\.css|\.js|\.webmanifest|-480\.webp|-small\.webp|pictures\/cloth\/[^/]+\.webp|icon\.svg|-latin(-ext)?-[^/]+\.woff2)$/;

/** Never keeps itself: the browser asks for it anew to learn of a new build. */
const WORKER = 'sw.js';

const filesBelow = async (folder: string): Promise<readonly string[]> =>
  (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .toSorted();

/** As a page asks for it: a folder for its index, `/` between the steps. */
const addressFrom = (folder: string, file: string): string =>
  path
    .relative(folder, file)
    .split(path.sep)
    .join('/')
    .replace(/(^|\/)index\.html$/, '$1') || './';

/** Writes a guide's service worker: its list of files, and a cache named by a hash of all they hold. */
export const writeWorker = async (out: string, guide: string): Promise<void> => {
  const folder = path.join(out, guide);
  const files = [...(await filesBelow(folder)), ...(await filesBelow(path.join(out, 'assets')))]
    .filter((file) => KEPT.test(file.split(path.sep).join('/')))
    .filter((file) => path.basename(file) !== WORKER);
  const hash = createHash('sha256');
  for (const file of files) hash.update(path.relative(out, file)).update(await readFile(file));
  const { outputFiles } = await build({
    entryPoints: [path.join(import.meta.dirname, 'browser', 'worker.ts')],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    write: false,
    define: {
      VERSION: JSON.stringify(hash.digest('hex').slice(0, 16)),
      GUIDE: JSON.stringify(guide),
      FILES: JSON.stringify(files.map((file) => addressFrom(folder, file))),
    },
  });
  await writeFile(path.join(folder, WORKER), outputFiles[0]?.contents ?? '');
};
