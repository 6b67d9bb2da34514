import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { createRasteriser } from '../../lib/draw/raster/index.ts';
import { loadFonts } from '../../lib/type/index.ts';
import { KIND_GROUPS, KIND_IDS, KINDS, type KindId } from '../../lib/vocabulary/index.ts';
import { rowsOf } from './cells.ts';
import { sheetSvg } from './sheet.ts';

const USAGE = `npm run specimen -- [folder] [kind …]

Draws every kind in every cut, length, fabric and pattern, to look at: one picture a kind and a page of them all.
The folder is _specimen unless it is named; with kinds, only those are drawn.`;

const slugOf = (kind: KindId): string => kind.replaceAll(/[^a-z0-9]+/g, '-');

const pageOf = (kinds: readonly KindId[]): string => {
  const groups = KIND_GROUPS.map((group) => {
    const own = kinds.filter((kind) => KINDS[kind].group === group);
    const pictures = own.map((kind) => `<img src="${slugOf(kind)}.webp" alt="${kind}" loading="lazy">`);
    return own.length === 0 ? '' : `<h2 id="${group}">${group}</h2>\n${pictures.join('\n')}`;
  });
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Specimens</title>
<style>body{margin:2rem;background:#f2eadc;color:#352e27;font:15px/1.5 sans-serif}img{display:block;width:100%;max-width:1640px;margin:0 0 2rem}</style>
<h1>Specimens</h1>
<p>${kinds.length} kinds. Each: as it comes, at 80 pixels, and every cut, length, fabric and pattern that changes it.</p>
${groups.filter((group) => group !== '').join('\n')}
</html>
`;
};

const main = async (given: readonly string[]): Promise<number> => {
  if (given.includes('--help')) {
    console.log(USAGE);
    return 0;
  }
  const [folder = '_specimen', ...named] = given;
  const unknown = named.filter((kind) => !(KIND_IDS as readonly string[]).includes(kind));
  if (unknown.length > 0) {
    console.error(`there is no kind called ${unknown.join(', ')}`);
    return 2;
  }
  const kinds = named.length > 0 ? KIND_IDS.filter((kind) => named.includes(kind)) : KIND_IDS;
  const fonts = loadFonts();
  const rasteriser = createRasteriser();
  await mkdir(folder, { recursive: true });
  for (const kind of kinds) {
    const pixels = await rasteriser.pixels(sheetSvg(rowsOf(kind), fonts));
    await writeFile(path.join(folder, `${slugOf(kind)}.webp`), await rasteriser.webp(pixels));
    console.log(kind);
  }
  await writeFile(path.join(folder, 'index.html'), pageOf(kinds));
  return 0;
};

process.exitCode = await main(process.argv.slice(2));
