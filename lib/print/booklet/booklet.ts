import type { Guide } from '../../guide/record.ts';
import { phrase } from '../../words/index.ts';
import { finishJob, type Job, type Printed, type PrintSources, startJob } from '../job.ts';
import { FOLDED, type PaperName } from '../paper.ts';
import type { Picture } from '../pdf/pictures.ts';
import { cautionsPart, notesPage } from './closing.ts';
import { backPage, coverPage, palettePart } from './cover.ts';
import { daysPart } from './days-part.ts';
import { layPages } from './impose.ts';
import { looksPart } from './looks-part.ts';
import { type BookPage, paintFolio } from './pages.ts';
import { piecesPart } from './pieces-part.ts';

export interface BookletChoice {
  /** Paper of the sheets; a page is half of it. The studio's when left out. */
  readonly paper?: PaperName;
  /** Two pages to a sheet, ordered for folding. */
  readonly imposed?: boolean;
  /** Bleed of 3 mm and crop marks, for a printer who trims. */
  readonly bleed?: boolean;
  /** Looks to a page; when there are more than twelve, four, and the first larger where folding leaves pages over. */
  readonly looksAPage?: 2 | 4;
}

/** Common practice of printers, no source. */
const BLEED = 3;
const MANY_LOOKS = 12;
const PHOTO_BOX = { width: 21, height: 25 };

const loadPhotos = async (job: Job, photos: ReadonlyMap<string, Uint8Array>): Promise<ReadonlyMap<string, Picture>> => {
  const loaded = new Map<string, Picture>();
  for (const { id, name, file } of job.guide.pieces) {
    const bytes = photos.get(id);
    if (bytes === undefined) continue;
    const picture = await job.press.pictures.load(bytes, PHOTO_BOX);
    if (picture !== undefined) loaded.set(id, picture);
    else {
      job.findings.push({
        level: 'warning',
        rule: 'print-picture',
        message: phrase('print', 'picture unreadable', { what: name }),
        mend: phrase('print', 'picture unreadable mend', {}),
        file,
        about: [id],
      });
    }
  }
  return loaded;
};

const SHEET = 4;

/** Pages that folding leaves over, with the back cover counted. */
const leftOver = (inside: number): number => (SHEET - ((inside + 1) % SHEET)) % SHEET;

/** Looks to show large, two to a page, so that a page left over is a page of looks: four of them take one page more. */
const wideLooks = (looks: number, inside: number): number => Math.min(leftOver(inside), Math.floor(looks / 4)) * 4;

/** Pages to write on before the back cover, so that the sheets can be folded. */
const padded = (pages: readonly BookPage[], notes: BookPage, back: BookPage): readonly BookPage[] => {
  return [...pages, ...Array.from({ length: leftOver(pages.length) }, () => notes), back];
};

/** The lookbook to hold in the hand: cover, palette, pieces, looks, days, cautions, on half sheets. */
export const bookletPdf = async (guide: Guide, sources: PrintSources, choice: BookletChoice = {}): Promise<Printed> => {
  const job = await startJob(guide, sources, 'booklet title');
  const paper = choice.paper ?? guide.studio.paper;
  const bleed = choice.bleed === true ? BLEED : 0;
  const size = FOLDED[paper];
  const photos = await loadPhotos(job, sources.photos ?? new Map());
  const aPage = choice.looksAPage ?? (guide.looks.length > MANY_LOOKS ? 4 : 2);
  const inside = (wide: number): readonly BookPage[] => [
    coverPage(job, size, bleed, choice.imposed === true),
    ...palettePart(job, size),
    ...piecesPart(job, size, photos),
    ...looksPart(job, size, aPage, wide),
    ...daysPart(job, size),
    ...cautionsPart(job, size),
  ];
  const wide = choice.looksAPage === undefined && aPage === 4 ? wideLooks(guide.looks.length, inside(0).length) : 0;
  const pages = padded(inside(wide), notesPage(job, size), backPage(job, size, bleed, choice.imposed === true));
  const surfaces = layPages(job.press, pages.length, { paper, imposed: choice.imposed === true, bleed });
  surfaces.forEach((surface, index) => {
    const page = pages[index];
    if (page === undefined) return;
    if (page.bookmark !== undefined) job.press.bookmark(page.bookmark.title, page.bookmark.level, surface, 0);
    page.paint(surface, index + 1);
    if (page.bare !== true) paintFolio(job, surface, index + 1);
  });
  return finishJob(job);
};
