import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { type Content, readContent } from '../../lib/content/index.ts';
import { createRasteriser } from '../../lib/draw/raster/index.ts';
import { besideGuides, buildGuides, type Guide } from '../../lib/guide/index.ts';
import { artworkOf } from '../../lib/publish/artwork.ts';
import { noCache } from '../../lib/publish/cache.ts';
import { motifsOf } from '../../lib/publish/items.ts';
import {
  type Download,
  type Picture,
  renderSite,
  type SitePart,
  siteModel,
  writeAssets,
} from '../../lib/site/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { loadFonts } from '../../lib/type/index.ts';
import { createFormats } from '../../lib/words/index.ts';

const HOME = path.join(import.meta.dirname, '..', '..');
const DEMO = path.join(HOME, 'content');
const SMALL = path.join(HOME, 'test', 'content', 'cases', 'valid', 'content');

interface Recipe {
  readonly content: string;
  readonly trip?: string;
  readonly edition: 'client' | 'stylist';
  /** What is changed of the content before it is computed. */
  readonly change?: (content: Content) => Content;
  /** Draws pieces and cloth in earnest, for their weight. */
  readonly painted?: boolean;
  /** Shows the looks of the book over and over, up to so many. */
  readonly looks?: number;
  /** Leaves every picture out, as when none could be made. */
  readonly blind?: boolean;
}

const studio =
  (change: Partial<Content['studio']>) =>
  (content: Content): Content => ({ ...content, studio: { ...content.studio, ...change } });

/** The sites the tests look at. */
const RECIPES = {
  /** The whole demo with the stylist's findings: every kind of page there is. */
  demo: { content: DEMO, edition: 'stylist' },
  client: { content: DEMO, trip: 'october-by-rail', edition: 'client', painted: true },
  german: { content: DEMO, trip: 'wedding-in-the-alentejo', edition: 'stylist', change: studio({ language: 'de' }) },
  many: {
    content: DEMO,
    trip: 'october-by-rail',
    edition: 'client',
    change: studio({ address: 'https://guides.example/' }),
    looks: 300,
  },
  one: { content: SMALL, edition: 'stylist' },
  blind: { content: SMALL, edition: 'stylist', blind: true },
} satisfies Record<string, Recipe>;

export type SiteName = keyof typeof RECIPES;

/** Whatever decides what a site holds: a change of it voids the sites built before. */
const sourceHash = async (): Promise<string> => {
  const hash = createHash('sha256');
  for (const folder of ['lib', 'templates', 'content', path.join('test', 'content', 'cases', 'valid')]) {
    const files = await readdir(path.join(HOME, folder), { recursive: true, withFileTypes: true });
    for (const file of files
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => path.join(parentPath, name))
      .sort())
      hash.update(path.relative(HOME, file)).update(await readFile(file));
  }
  for (const file of ['package.json', '.eleventy.js', path.join('test', 'site', 'built.ts')])
    hash.update(await readFile(path.join(HOME, file)));
  return hash.digest('hex').slice(0, 16);
};

/** Plain colour in the proportions of a picture: what pictures look like is tested elsewhere, and drawing them all takes minutes. */
const stand = new Map<string, Promise<Buffer>>();
const standIn = ({ width, height }: Picture, format: 'png' | 'webp'): Promise<Buffer> => {
  const key = `${width} ${height} ${format}`;
  const made =
    stand.get(key) ??
    sharp({ create: { width, height, channels: 3, background: '#9a8f80' } })
      .toFormat(format)
      .toBuffer();
  stand.set(key, made);
  return made;
};

const swollen = (guide: Guide, count: number): Guide => ({
  ...guide,
  looks: Array.from({ length: count }, (_, at) => ({
    ...(guide.looks[at % guide.looks.length] as Guide['looks'][number]),
    number: at + 1,
    slug: `look-${String(at + 1).padStart(String(count).length, '0')}`,
    neighbours: [],
  })),
});

const write = async (file: string, bytes: Uint8Array | string): Promise<void> => {
  await mkdir(path.dirname(file), { recursive: true });
  await writeFile(file, bytes);
};

const SHEETS: readonly Download[] = (['packing list', 'day plan', 'wear table', 'booklet'] as const).map((kind) => ({
  kind,
  paper: 'A4',
  address: `print/${kind.replace(' ', '-')}-a4.pdf`,
  bytes: 8,
}));

const build = async (recipe: Recipe, out: string): Promise<void> => {
  const { content: read, problems } = await readContent(recipe.content);
  if (read === undefined) throw new Error(JSON.stringify(problems));
  const content = recipe.change?.(read) ?? read;
  const computed = await buildGuides(
    content,
    await loadSolver(),
    recipe.trip === undefined ? {} : { trip: recipe.trip },
  );
  const guides = computed.map((guide) => (recipe.looks === undefined ? guide : swollen(guide, recipe.looks)));
  const parts: SitePart[] = [];
  for (const guide of guides) {
    const folder = path.join(out, guide.id);
    const easel = {
      rasteriser: createRasteriser(),
      fonts: loadFonts(),
      cache: noCache,
      voice: { formats: createFormats(content.studio), say: () => '' },
      codeHash: '',
      onPicture: () => undefined,
    };
    const motifs = await motifsOf(guide.pieces, recipe.content);
    const { index } = artworkOf(guide, motifs, easel);
    const pictures = recipe.blind === true ? { looks: {}, cards: {}, pieces: {}, cloth: {} } : index;
    const sets = [...Object.values(pictures.looks), ...Object.values(pictures.pieces)];
    for (const picture of [
      ...sets.flatMap(({ clear, night }) => [...clear, ...night]),
      ...Object.values(pictures.cloth),
    ])
      await write(path.join(folder, picture.address), await standIn(picture, 'webp'));
    for (const { portrait, landscape, svg } of Object.values(pictures.cards)) {
      for (const card of [portrait, landscape])
        await write(path.join(folder, card.address), await standIn(card, 'png'));
      await write(path.join(folder, svg), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    }
    if (recipe.painted === true) await artworkOf({ ...guide, looks: [] }, motifs, easel).paint(folder);
    for (const { address } of SHEETS) await write(path.join(folder, address), '%PDF-1.7');
    parts.push({ guide, pictures, downloads: SHEETS });
  }
  await writeAssets(out);
  const beside = await besideGuides(guides, content, { improve: recipe.edition === 'stylist' });
  await renderSite(siteModel({ parts, content, edition: recipe.edition, beside }), out);
};

/** The folder of a finished site; built once and kept until the code or the content changes. */
export const builtSite = async (name: SiteName): Promise<string> => {
  const folder = path.join(tmpdir(), 'wayfold-sites', `${name}-${await sourceHash()}`);
  if (existsSync(folder)) return folder;
  const beside = `${folder}.${process.pid}`;
  await rm(beside, { recursive: true, force: true });
  await build(RECIPES[name], beside);
  await rename(beside, folder).catch(() => rm(beside, { recursive: true, force: true }));
  return folder;
};

/** Addresses of every page of a site, relative to it: `october-by-rail/ink-and-rose/days/`. */
export const pagesOf = async (site: string): Promise<readonly string[]> =>
  (await readdir(site, { recursive: true }))
    .filter((file) => path.basename(file) === 'index.html')
    .map((file) =>
      file
        .split(path.sep)
        .join('/')
        .replace(/index\.html$/, ''),
    )
    .sort();

/** One page of each kind of a guide, with what the kind is called. */
export const kindsOf = (pages: readonly string[], guide: string): ReadonlyMap<string, string> => {
  const kinds = new Map<string, string>();
  for (const page of pages.filter((each) => each.startsWith(`${guide}/`))) {
    const [first = '', second] = page
      .slice(guide.length + 1)
      .split('/')
      .filter((step) => step !== '');
    const kind = first === '' ? 'cover' : second === undefined ? first : `one of ${first}`;
    if (!kinds.has(kind)) kinds.set(kind, page);
  }
  return kinds;
};
