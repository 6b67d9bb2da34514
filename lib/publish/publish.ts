import { readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { readContent } from '../content/index.ts';
import { drawingFindings } from '../draw/index.ts';
import { createRasteriser } from '../draw/raster/index.ts';
import { besideGuides, buildGuides, findingsOfLetters, type Guide, type Keep } from '../guide/index.ts';
import type { Finding, Problem, Studio } from '../model/index.ts';
import { renderSite, siteModel, writeAssets } from '../site/index.ts';
import { loadSolver } from '../solver/index.ts';
import { loadFonts } from '../type/index.ts';
import { createFormats, type Formats, languageOf, say } from '../words/index.ts';
import { artworkOf } from './artwork.ts';
import { folderCache, keyOf } from './cache.ts';
import { codeHash, DRAWING_ROOMS, GUIDE_ROOMS } from './code-hash.ts';
import type { Easel } from './easel.ts';
import { motifsOf } from './items.ts';
import { packed, unpacked } from './kept.ts';
import { lineProgress, type Progress, terminalProgress } from './progress.ts';
import { printSheets } from './sheets.ts';
import { mayReplace, OUTPUT_MARK, swapIn } from './swap.ts';

export interface PublishOptions {
  /** Absolute paths. */
  readonly contentFolder: string;
  readonly out: string;
  readonly cacheFolder: string;
  readonly edition: 'client' | 'stylist';
  /** One trip only. */
  readonly trip?: string;
  /** Writes progress to a terminal; absent when nobody watches. */
  readonly watch?: (text: string) => void;
  /** Takes a line now and then when nobody watches. */
  readonly tell?: (line: string) => void;
}

export interface Made {
  readonly guides: number;
  readonly pages: number;
  readonly cards: number;
  readonly sheets: number;
  readonly seconds: number;
}

export type PublishResult =
  | {
      readonly ok: true;
      readonly made: Made;
      readonly out: string;
      readonly studio: Studio;
      /** What each guide has against itself. */
      readonly told: readonly { readonly guide: string; readonly findings: readonly Finding[] }[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const isEmpty = async (folder: string): Promise<boolean> => (await readdir(folder).catch(() => ['?'])).length === 0;

const cannot = (file: string, wrong: string, mend: string): PublishResult => ({
  ok: false,
  problems: [{ file, wrong, mend }],
});

const nameOf = ({ brief, capsule }: Pick<Guide, 'brief' | 'capsule'>): string => `${brief.title}, ${capsule.title}`;

const piecesSaid = ({ pieces }: Guide['capsule'], formats: Formats): string =>
  formats.plural(pieces.length, { one: '# piece', other: '# pieces' });

const drawnSaid = ({ counts, looks }: Guide, formats: Formats): string => {
  const layered = formats.plural(counts.layered, { one: '# layered look', other: '# layered looks' });
  return `${layered}, drawing ${formats.plural(looks.length, { one: '# card', other: '# cards' })}`;
};

/** Without what a sheet leaves out of a name of which that is said already. */
const notToldBefore = (ofSheets: readonly Finding[], told: readonly Finding[]): readonly Finding[] => {
  const charactersOf = ({ message }: Finding): readonly string[] =>
    Array.isArray(message.values.characters) ? message.values.characters.map(String) : [];
  const known = new Set(
    told.filter(({ rule }) => rule === 'letters').flatMap(({ message }) => [...String(message.values.text)]),
  );
  return ofSheets.filter(
    (finding) => finding.rule !== 'print-glyph' || charactersOf(finding).some((character) => !known.has(character)),
  );
};

/** Nothing of the content may lie in the output, nor the output in the content. */
const overlaps = (a: string, b: string): boolean =>
  a === b || a.startsWith(`${b}${path.sep}`) || b.startsWith(`${a}${path.sep}`);

/**
 * Builds everything from a content folder: reads, computes, draws, prints, renders, and swaps the finished folder in. With
 * problems in the content nothing is written and the last good output stays.
 */
export const publish = async (options: PublishOptions): Promise<PublishResult> => {
  const started = performance.now();
  const { contentFolder, out, edition, trip } = options;
  if (overlaps(contentFolder, out))
    return cannot(out, 'the guide would be written into the content', 'name another folder with --out');
  if (!(await mayReplace(out, isEmpty))) {
    return cannot(out, 'this folder holds something that Wayfold did not write', 'name a new folder with --out');
  }
  const { content, problems } = await readContent(contentFolder);
  if (content === undefined) return { ok: false, problems };
  if (trip !== undefined && !content.trips.some(({ brief }) => brief.id === trip)) {
    return cannot(
      `trips/${trip}`,
      'there is no such trip',
      `write ${content.trips.map(({ brief }) => `"${brief.id}"`).join(' or ')}`,
    );
  }
  const progress: Progress =
    options.watch === undefined ? lineProgress(options.tell ?? (() => {})) : terminalProgress(options.watch);
  const formats = createFormats(content.studio);
  const cache = folderCache(options.cacheFolder);
  const guideCode = await codeHash(GUIDE_ROOMS);
  const guides = await buildGuides(content, await loadSolver(), {
    keep: async (question, compute) => {
      const key = keyOf(guideCode, 'guide', question);
      const kept = unpacked<Guide>(await cache.get(key, async () => packed(await compute())));
      const { studio, brief, capsule } = question;
      return { ...kept, studio, brief, capsule };
    },
    ...(trip === undefined ? {} : { trip }),
    onGuide: (done, of, { brief, capsule }) => {
      progress.line(`${nameOf({ brief, capsule })}: ${piecesSaid(capsule, formats)}, planning…`);
      progress.step(`computing ${brief.id}/${capsule.id}`, done, of);
    },
  });
  const keep: Keep = async (what, question, compute) =>
    unpacked(await cache.get(keyOf(guideCode, what, question), async () => packed(compute())));
  progress.step('setting guides side by side');
  const beside = await besideGuides(guides, content, { improve: edition === 'stylist', keep });
  const language = languageOf(content.studio.language);
  const voice = { formats, say: (phrase: Parameters<typeof say>[2]) => say(language, formats, phrase) };
  const hash = await codeHash(DRAWING_ROOMS);
  let drawn = 0;
  let toDraw = 0;
  const easel: Easel = {
    rasteriser: createRasteriser(),
    fonts: loadFonts(),
    cache,
    voice,
    codeHash: hash,
    onPicture: () => {
      drawn += 1;
      progress.step('drawing', drawn, toDraw);
    },
  };
  const easelWork = await Promise.all(
    guides.map(async (guide) => {
      const motifs = await motifsOf(guide.pieces, contentFolder);
      const withPhotos: Guide = {
        ...guide,
        findings: [
          ...guide.findings,
          ...motifs.findings,
          ...drawingFindings(guide.pieces),
          ...findingsOfLetters(guide, easel.fonts),
        ],
      };
      return { guide: withPhotos, artwork: artworkOf(withPhotos, motifs, easel) };
    }),
  );
  toDraw = easelWork.reduce((sum, { artwork }) => sum + artwork.count, 0);
  let pages = 0;
  let sheets = 0;
  const told: { guide: string; findings: readonly Finding[] }[] = [];
  await swapIn(out, async (folder) => {
    const parts = [];
    for (const { guide, artwork } of easelWork) {
      const guideFolder = path.join(folder, guide.id);
      progress.line(`${nameOf(guide)}: ${drawnSaid(guide, formats)}…`);
      await artwork.paint(guideFolder);
      const { downloads, findings } = await printSheets(guide, guideFolder, {
        ...easel,
        language,
        onSheet: (what) => progress.step(`printing ${guide.id}/${what}`),
      });
      sheets += downloads.length;
      const all = [...guide.findings, ...notToldBefore(findings, guide.findings)];
      told.push({ guide: guide.id, findings: all });
      parts.push({
        guide: { ...guide, findings: all },
        pictures: { ...artwork.index, scales: await artwork.scales() },
        downloads,
      });
    }
    progress.step('setting the pages');
    await writeAssets(folder);
    pages = (await renderSite(siteModel({ parts, content, edition, beside }), folder)).pages;
    await writeFile(path.join(folder, OUTPUT_MARK), 'Wayfold wrote this folder and replaces it whole.\n');
  });
  progress.end();
  const cards = guides.reduce((sum, { looks }) => sum + looks.length, 0);
  return {
    ok: true,
    out,
    studio: content.studio,
    told,
    made: { guides: guides.length, pages, cards, sheets, seconds: (performance.now() - started) / 1000 },
  };
};
