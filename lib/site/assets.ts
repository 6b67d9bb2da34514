import { copyFile, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { build, transform } from 'esbuild';
import sharp from 'sharp';
import { LANGUAGES } from '../words/index.ts';

const HOME = path.join(import.meta.dirname, '..', '..');
const STYLES = [
  'tokens',
  'base',
  'cover',
  'pieces',
  'pairs',
  'looks',
  'look',
  'days',
  'packing',
  'more',
  'better',
  'palette',
  'try',
  'print',
  'print-looks',
  'print-pieces',
  'print-lists',
];

interface FontFile {
  readonly family: string;
  readonly module: string;
  readonly weight: string;
  readonly style: 'normal' | 'italic';
  readonly subset: string;
}

/** Unicode ranges of the subsets, as the font packages declare them. */
const RANGES: Readonly<Record<string, string>> = {
  latin:
    'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD',
  'latin-ext':
    'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+0304,U+0308,U+0329,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF',
  cyrillic: 'U+0301,U+0400-045F,U+0490-0491,U+04B0-04B1,U+2116',
  greek: 'U+0370-0377,U+037A-037F,U+0384-038A,U+038C,U+038E-03A1,U+03A3-03FF',
};

const serif = (weight: string, style: FontFile['style']): FontFile[] =>
  ['latin', 'latin-ext'].map((subset) => ({ family: 'Fraunces', module: 'fraunces', weight, style, subset }));
const sans = (weight: string): FontFile[] =>
  ['latin', 'latin-ext', 'cyrillic', 'greek'].map((subset) => ({
    family: 'Noto Sans',
    module: 'noto-sans',
    weight,
    style: 'normal',
    subset,
  }));
/** One weight of the serif, upright and italic: a page loads what it shows, and more would be felt on a phone. */
const FONTS: readonly FontFile[] = [
  ...serif('300', 'normal'),
  ...serif('300', 'italic'),
  ...sans('400'),
  ...sans('500'),
];

const fileOf = ({ module, subset, weight, style }: FontFile): string => `${module}-${subset}-${weight}-${style}.woff2`;

const fontFace = (font: FontFile): string =>
  `@font-face{font-family:"${font.family}";src:url(fonts/${fileOf(font)}) format("woff2");font-weight:${font.weight};font-style:${font.style};font-display:swap;unicode-range:${RANGES[font.subset] ?? ''}}`;

const ICON = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" rx="6" fill="#f5efe4"/><path d="M5 24h5l6-13 6 13h5" fill="none" stroke="#97482a" stroke-width="2.4" stroke-linejoin="round" stroke-linecap="round"/><path d="M5 6h22" stroke="#352e27" stroke-width="2" stroke-dasharray="4 3" stroke-linecap="round"/></svg>`;

/** For home screens that take no SVG: to the edge, since they round the corners themselves. Pixels a side. */
const ICON_SIZES = [180, 512] as const;
const ICON_UNITS = 32;
const DENSITY_OF_SVG = 72;

const writeIcons = async (assets: string): Promise<void> => {
  await writeFile(path.join(assets, 'icon.svg'), ICON);
  const square = Buffer.from(ICON.replace(' rx="6"', ''));
  for (const size of ICON_SIZES)
    await sharp(square, { density: (DENSITY_OF_SVG * size) / ICON_UNITS })
      .resize(size, size)
      .png()
      .toFile(path.join(assets, `icon-${size}.png`));
};

/** One script for every page, and one a language for the page on which pieces are tried. */
const SCRIPTS = ['site', ...Object.keys(LANGUAGES).map((language) => `try-${language}`)];

/** Writes what every page shares: one style sheet, the fonts, the icon, the scripts. */
export const writeAssets = async (out: string): Promise<void> => {
  const require = createRequire(import.meta.url);
  const assets = path.join(out, 'assets');
  await mkdir(path.join(assets, 'fonts'), { recursive: true });
  for (const font of FONTS) {
    const source = require.resolve(`@fontsource/${font.module}/files/${fileOf(font)}`);
    await copyFile(source, path.join(assets, 'fonts', fileOf(font)));
  }
  const folder = path.join(HOME, 'templates', 'styles');
  const known = new Set(await readdir(folder));
  const parts = await Promise.all(
    STYLES.filter((name) => known.has(`${name}.css`)).map((name) => readFile(path.join(folder, `${name}.css`), 'utf8')),
  );
  const { code } = await transform([...FONTS.map(fontFace), ...parts].join('\n'), { loader: 'css', minify: true });
  await writeFile(path.join(assets, 'site.css'), code);
  await writeIcons(assets);
  await build({
    entryPoints: SCRIPTS.map((name) => path.join(import.meta.dirname, 'browser', `${name}.ts`)),
    outdir: assets,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
  });
};
