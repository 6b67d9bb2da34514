import type { Guide } from '../../guide/record.ts';
import { finishJob, type PaperChoice, type Printed, type PrintSources, startJob } from '../job.ts';
import { type Area, PAPERS, type Size, turn } from '../paper.ts';
import { fitIn } from '../pdf/pictures.ts';
import { tagged } from '../set/block.ts';
import { cropMarks } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { paintCard } from './card.ts';

export interface CardSheetChoice extends PaperChoice {
  readonly aPage?: 4 | 6;
}

/** Sheets have no tape: cards take the whole paper but for what printers cannot reach. Millimetres. */
const EDGE = 9;
const GAP = 6;
const FOOT = 5;
/** Width to height of a card, 1080 to 1350 pixels. */
const CARD: Size = { width: 4, height: 5 };
const MARK = { gap: 0.8, length: 2.2 };

const columnsOf = (aPage: 4 | 6, landscape: boolean): number => (aPage === 4 ? 2 : landscape ? 3 : 2);

/** Cells of a sheet, each the shape of a card, in the middle of their share of the paper. */
const cardAreas = (size: Size, aPage: 4 | 6): readonly Area[] => {
  const columns = columnsOf(aPage, size.width > size.height);
  const rows = aPage / columns;
  const width = (size.width - 2 * EDGE - GAP * (columns - 1)) / columns;
  const height = (size.height - 2 * EDGE - FOOT - GAP * (rows - 1)) / rows;
  const cell = fitIn(CARD, { x: 0, y: 0, width, height });
  const left = (size.width - columns * cell.width - (columns - 1) * GAP) / 2;
  const top = (size.height - FOOT - rows * cell.height - (rows - 1) * GAP) / 2;
  return Array.from({ length: aPage }, (_, index) => ({
    x: left + (index % columns) * (cell.width + GAP),
    y: top + Math.floor(index / columns) * (cell.height + GAP),
    width: cell.width,
    height: cell.height,
  }));
};

/** Cards to cut out, four or six to a sheet: drawn and set here, so that their words stay legible at the size they are cut to. */
export const cardSheetPdf = async (
  guide: Guide,
  sources: PrintSources,
  choice: CardSheetChoice = {},
): Promise<Printed> => {
  const job = await startJob(guide, sources, 'cards title');
  const size = turn(PAPERS[choice.paper ?? guide.studio.paper], choice.orientation ?? 'portrait');
  const aPage = choice.aPage ?? 4;
  const areas = cardAreas(size, aPage);
  const { looks } = guide;
  const heading = job.say('cards title', { traveller: guide.capsule.traveller });
  const sheets = Math.max(1, Math.ceil(looks.length / aPage));
  for (let sheet = 0; sheet < sheets; sheet++) {
    const surface = job.press.addPage(size);
    job.press.bookmark(sheets > 1 ? job.say('page of', { page: sheet + 1, pages: sheets }) : heading, 1, surface, 0);
    const foot =
      sheet === 0 ? `${heading}. ${job.say('cut along')}` : job.say('page of', { page: sheet + 1, pages: sheets });
    const footArea = { x: EDGE, y: size.height - EDGE, width: size.width - 2 * EDGE, height: 3 };
    if (sheet === 0) tagged('H1', text(job.press.setter, foot, job.types.key)).paint(surface, footArea);
    else surface.artifact(() => text(job.press.setter, foot, job.types.key).paint(surface, footArea));
    if (looks.length === 0)
      tagged('P', text(job.press.setter, job.say('no looks'), job.types.fact)).paint(surface, { ...footArea, y: EDGE });
    looks.slice(sheet * aPage, (sheet + 1) * aPage).forEach((look, index) => {
      const area = areas[index];
      if (area === undefined) return;
      paintCard(job, look, area).paint(surface, area);
      cropMarks(surface, area, { ...MARK, colour: job.inks.soft });
    });
  }
  return finishJob(job);
};
