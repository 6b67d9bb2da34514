import type { Job } from '../job.ts';
import { type Area, inset, type Size } from '../paper.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, space, stack, tagged } from '../set/block.ts';
import { type FlowItem, flow, levelFlow } from '../set/flow.ts';
import { stitchRule } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { inked, resized } from '../types.ts';

/** A page of the booklet, painted when its place on a sheet is known. */
export interface BookPage {
  readonly paint: (surface: Surface, page: number) => void;
  /** Line of the table of contents. */
  readonly bookmark?: { readonly title: string; readonly level: number };
  /** No folio: covers and blank pages. */
  readonly bare?: boolean;
}

/** Margins of a page that is folded and sewn: the inner edge needs more. Millimetres. */
const EDGE = { top: 15, bottom: 17, inner: 17, outer: 13 };
const FOLIO_FROM_FOOT = 9;

/** Odd pages lie on the right, with the fold at their left. */
export const bookArea = (size: Size, page: number): Area =>
  inset(
    { x: 0, y: 0, ...size },
    {
      top: EDGE.top,
      bottom: EDGE.bottom,
      left: page % 2 === 1 ? EDGE.inner : EDGE.outer,
      right: page % 2 === 1 ? EDGE.outer : EDGE.inner,
    },
  );

/** The same width on every page, whichever side the fold is on. */
export const bookMeasure = (size: Size): Size => {
  const { width, height } = bookArea(size, 1);
  return { width, height };
};

export const paintFolio = (job: Job, surface: Surface, page: number): void => {
  const { setter } = job.press;
  const area = bookArea(surface.size, page);
  const y = surface.size.height - FOLIO_FROM_FOOT;
  surface.artifact(() => {
    const folio = setter.line([{ text: String(page), type: inked({ ...job.types.kind, points: 9 }, job.inks.thread) }]);
    const foot = setter.line([{ text: job.guide.capsule.title, type: job.types.key }]);
    const [outer, inner] =
      page % 2 === 1 ? [area.x + area.width - folio.width, area.x] : [area.x, area.x + area.width - foot.width];
    surface.text(folio.runs, outer, y);
    surface.text(foot.runs, inner, y);
  });
};

/** Head of a part of the booklet. */
export const partHead = (job: Job, title: string): Block =>
  stack([
    tagged('H2', text(job.press.setter, title, resized(job.types.title, 21))),
    space(2),
    stitchRule(job.inks.thread),
    space(5),
  ]);

/** The roomiest of some settings, roomiest first, that takes no more pages than the closest. */
export const roomiest = (
  settings: readonly number[],
  build: (setting: number) => readonly BookPage[],
): readonly BookPage[] => {
  const closest = build(settings.at(-1) ?? 0);
  for (const setting of settings.slice(0, -1)) {
    const pages = build(setting);
    if (pages.length <= closest.length) return pages;
  }
  return closest;
};

/**
 * A part that runs over as many pages as it takes; level, when its last page should not hold a stray line. `tail` fills what
 * its last page leaves.
 */
export const flowingPart = (
  job: Job,
  size: Size,
  title: string,
  items: readonly FlowItem[],
  { level = false, tail }: { readonly level?: boolean; readonly tail?: (height: number) => Block } = {},
): readonly BookPage[] => {
  const measure = bookMeasure(size);
  const head: FlowItem = { block: partHead(job, title), withNext: true };
  const frames = (level ? levelFlow : flow)([head, ...items], measure.width, () => measure.height);
  return frames.map(
    (frame, index): BookPage => ({
      paint: (surface, page) => {
        const area = bookArea(size, page);
        frame.paint(surface, area);
        const taken = frame.height(measure.width);
        const height = measure.height - taken;
        if (tail !== undefined && index === frames.length - 1 && height > 0)
          tail(height).paint(surface, { ...area, y: area.y + taken, height });
      },
      ...(index === 0 ? { bookmark: { title, level: 1 } } : {}),
    }),
  );
};
