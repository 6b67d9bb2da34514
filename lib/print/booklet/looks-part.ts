import type { Job } from '../job.ts';
import type { Size } from '../paper.ts';
import { type Block, grid, stack, tagged } from '../set/block.ts';
import { prose } from '../set/markdown.ts';
import { text } from '../set/text.ts';
import { smallLook, smallWordsHeight, wideLook } from './look-block.ts';
import { type BookPage, bookArea, bookMeasure, flowingPart, partHead } from './pages.ts';

import { smallProse } from './prose-types.ts';

const LOOK_GAP = 6;

/** Looks of each page in turn: the first two by two, the rest as many as go to a page. */
const paged = <T>(looks: readonly T[], aPage: 2 | 4, wide: number): readonly (readonly T[])[] => {
  const pages: T[][] = [];
  for (let at = 0; at < looks.length; ) {
    const count = at < wide ? 2 : aPage;
    pages.push(looks.slice(at, at + count));
    at += count;
  }
  return pages;
};

/** The looks, two or four to a page; the first `wide` of them two to a page whatever the rest. */
export const looksPart = (job: Job, size: Size, aPage: 2 | 4, wide = 0): readonly BookPage[] => {
  const { looks } = job.guide;
  const { setter } = job.press;
  const measure = bookMeasure(size);
  const title = job.say('the looks');
  const head = partHead(job, title);
  if (looks.length === 0) {
    return flowingPart(job, size, title, [{ block: tagged('P', text(setter, job.say('no looks'), job.types.fact)) }]);
  }
  return paged(looks, aPage, wide).map((some, index): BookPage => {
    const across = aPage === 2 || index * 2 < wide ? 1 : 2;
    return {
      ...(index === 0 ? { bookmark: { title, level: 1 } } : {}),
      paint: (surface, page) => {
        const area = bookArea(size, page);
        const taken = index === 0 ? head.height(measure.width) : 0;
        if (index === 0) head.paint(surface, area);
        const height = (measure.height - taken - LOOK_GAP) / 2;
        const cell: Size = { width: across === 1 ? measure.width : (measure.width - LOOK_GAP) / 2, height };
        const blocks = some.map((look, at): Block => {
          if (across === 2) {
            const beside = some.slice(at - (at % 2), at - (at % 2) + 2);
            const words = Math.max(...beside.map((each) => smallWordsHeight(job, each, cell.width)));
            return smallLook(job, look, cell, words);
          }
          const note = prose(setter, look.note, smallProse(job)).map(({ block }) => block);
          return wideLook(job, look, cell, note.length > 0 ? stack(note, 1) : undefined);
        });
        grid(blocks, across, { across: LOOK_GAP, down: LOOK_GAP }).paint(surface, {
          ...area,
          y: area.y + taken,
          height: measure.height - taken,
        });
      },
    };
  });
};
