import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { build } from 'esbuild';

/**
 * What is kept for days without signal: every page, the pictures a phone shows, pieces also as large as they are laid
 * out for trying, and drawings. Cards, sheets and the other widths of looks are not.
 */
const KEPT =
  /(\.html|\.css|\.js|\.webmanifest|-480\.webp|-(small|large)\.webp|pictures\/cloth\/[^/]+\.webp|(?<!cards\/[^/]+)\.svg|-latin(-ext)?-[^/]+\.woff2)$/;

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

/** Pictures of the trip's other guides that this guide's pages show: the looks of who travels along, the cloth of a mood. */
const borrowed = async (folder: string, pages: readonly string[]): Promise<readonly string[]> => {
  const asked = new Set<string>();
  const there = new Set(await filesBelow(path.dirname(folder)));
  for (const page of pages) {
    const html = await readFile(page, 'utf8');
    for (const [, sources = ''] of html.matchAll(/\s(?:src|srcset)="([^"]+)"/g)) {
      for (const source of sources.split(',')) {
        const file = path.join(path.dirname(page), source.trim().split(' ')[0] ?? '');
        if (there.has(file) && !file.startsWith(folder + path.sep)) asked.add(file);
      }
    }
  }
  return [...asked].toSorted();
};

/** Writes a guide's service worker: its list of files, and a cache named by a hash of all they hold. */
export const writeWorker = async (out: string, guide: string): Promise<void> => {
  const folder = path.join(out, guide);
  const own = await filesBelow(folder);
  const pages = own.filter((file) => file.endsWith('.html'));
  const shared = await filesBelow(path.join(out, 'assets'));
  const files = [...new Set([...own, ...shared, ...(await borrowed(folder, pages))])]
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
