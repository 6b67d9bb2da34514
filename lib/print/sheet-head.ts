import type { Job } from './job.ts';
import { type Area, inset, type Size } from './paper.ts';
import type { Surface } from './pdf/surface.ts';
import { type Block, row, space, stack, tagged, unread } from './set/block.ts';
import { stitchRule, tape } from './set/ornament.ts';
import { text, widthOf } from './set/text.ts';
import { inked, resized } from './types.ts';

/** Margins of a single sheet: the tape has the left edge. Millimetres. */
export const MARGINS = { top: 14, right: 15, bottom: 14, left: 21 };
export const GUTTER = 8;

const TAPE_FROM_EDGE = 5;
const TAPE_MARGIN = 12;
const SMALLEST_TITLE = 17;

export const bodyArea = (size: Size): Area => inset({ x: 0, y: 0, ...size }, MARGINS);

export interface HeadWords {
  readonly eyebrow: string;
  readonly title: string;
  /** Facts at the right, the first in stronger type. */
  readonly facts: readonly string[];
}

/** The head of a sheet: what it is, its title, two facts, and a running stitch. */
export const sheetHead = (job: Job, { eyebrow, title, facts }: HeadWords, width: number): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const factWidth =
    Math.max(0, ...facts.map((fact) => widthOf(setter, fact, inked({ ...types.keyStrong, points: 8 }, inks.ink)))) + 1;
  const room = width - factWidth - GUTTER;
  let points = types.title.points;
  while (points > SMALLEST_TITLE && widthOf(setter, title, resized(types.title, points)) > room) points -= 0.5;
  const factBlock = stack(
    facts.map((fact, index) =>
      tagged(
        'P',
        text(
          setter,
          fact,
          { ...(index === 0 ? types.keyStrong : types.key), points: 8, leading: 4 },
          { align: 'right' },
        ),
      ),
    ),
    1.1,
  );
  return stack([
    tagged('P', text(setter, eyebrow, inked(types.text, inks.soft))),
    space(2.2),
    row(
      [
        {
          width: { share: 1 },
          block: tagged('H1', text(setter, title, resized(types.title, points), { balance: true })),
          stand: 'bottom',
        },
        { width: factWidth, block: factBlock, stand: 'bottom' },
      ],
      { gap: GUTTER },
    ),
    space(2.4),
    stitchRule(inks.thread),
  ]);
};

/** What every sheet carries at its edge: the tape, and what page it is. */
export const sheetFurniture = (job: Job, surface: Surface, page: number, pages: number): void => {
  const { setter } = job.press;
  const { types, inks } = job;
  const { width, height } = surface.size;
  const unit = job.guide.studio.length;
  tape(
    surface,
    setter,
    TAPE_FROM_EDGE,
    { x: 0, y: TAPE_MARGIN, width, height: height - 2 * TAPE_MARGIN },
    { unit, colour: inks.soft, light: inks.hair, type: types.key },
  );
  surface.artifact(() => {
    const truth = setter.line([{ text: job.say('true size'), type: types.key }]);
    surface.text(truth.runs, MARGINS.left - 5.4, height - TAPE_MARGIN, -90);
    if (pages > 1) {
      const folio = setter.line([{ text: job.say('page of', { page, pages }), type: types.key }]);
      surface.text(folio.runs, width - MARGINS.right - folio.width, height - 8);
    }
  });
};

/** The short head of a sheet that goes on from another. */
export const runningHead = (job: Job, words: string): Block =>
  unread(
    stack([
      text(job.press.setter, words, inked(job.types.text, job.inks.soft)),
      space(1.6),
      stitchRule(job.inks.thread),
    ]),
  );
