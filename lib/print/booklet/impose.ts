import type { PaperName, Size } from '../paper.ts';
import { FOLDED, PAPERS, turn } from '../paper.ts';
import type { Press } from '../pdf/press.ts';
import type { Surface } from '../pdf/surface.ts';
import { cropMarks } from '../set/ornament.ts';

export interface BookFormat {
  readonly paper: PaperName;
  /** Two pages to a sheet, ordered for folding and sewing through the fold. */
  readonly imposed: boolean;
  /** Millimetres that pictures run over the cut; 0 without crop marks. */
  readonly bleed: number;
}

/** Room around the trimmed page for bleed and crop marks, millimetres. */
const SLUG = 10;
const MARK = 5;

/**
 * Pages left and right on each side of each sheet, numbered from 1: front and back of the first (outermost) sheet,
 * then of the next. The count must be a multiple of four.
 */
export const imposition = (pages: number): readonly (readonly [left: number, right: number])[] => {
  if (pages % 4 !== 0) throw new Error(`${pages} pages cannot be folded: a booklet has a multiple of four`);
  return Array.from({ length: pages / 2 }, (_, side): readonly [number, number] =>
    side % 2 === 0 ? [pages - side, side + 1] : [side + 1, pages - side],
  );
};

const sheetOf = (press: Press, trim: Size, bleed: number) => {
  const edge = bleed > 0 ? SLUG : 0;
  const size = { width: trim.width + 2 * edge, height: trim.height + 2 * edge };
  const area = { x: edge, y: edge, ...trim };
  const boxes =
    bleed > 0
      ? {
          trim: area,
          bleed: { x: edge - bleed, y: edge - bleed, width: trim.width + 2 * bleed, height: trim.height + 2 * bleed },
        }
      : {};
  const sheet = press.addSheet(size, boxes);
  if (bleed > 0) {
    const whole = press.pageOn(sheet, size, { x: 0, y: 0 });
    cropMarks(whole, area, { gap: bleed + 0.5, length: MARK - 0.5, colour: '#000000' });
  }
  return { sheet, edge };
};

/** The surfaces of all pages in the order in which they are read, wherever they lie on the sheets. */
export const layPages = (press: Press, pages: number, { paper, imposed, bleed }: BookFormat): readonly Surface[] => {
  const page = FOLDED[paper];
  if (!imposed) {
    return Array.from({ length: pages }, () => {
      const { sheet, edge } = sheetOf(press, page, bleed);
      return press.pageOn(sheet, page, { x: edge, y: edge });
    });
  }
  const spread = turn(PAPERS[paper], 'landscape');
  const surfaces = new Map<number, Surface>();
  for (const [left, right] of imposition(pages)) {
    const { sheet, edge } = sheetOf(press, spread, bleed);
    const half = spread.width / 2;
    surfaces.set(left, press.pageOn(sheet, page, { x: edge + half - page.width, y: edge }));
    surfaces.set(right, press.pageOn(sheet, page, { x: edge + half, y: edge }));
  }
  return [...surfaces].sort(([a], [b]) => a - b).map(([, surface]) => surface);
};
