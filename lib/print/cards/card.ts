import type { GuideLook } from '../../guide/record.ts';
import type { Job } from '../job.ts';
import { layPicture } from '../lay-picture.ts';
import { whatItIs, whenToWear } from '../look-words.ts';
import { type Area, inset } from '../paper.ts';
import { type Block, row, space, stack, tagged } from '../set/block.ts';
import { stitchRule } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { inked, resized } from '../types.ts';

/** Between the cut and what stands on a card, millimetres. */
const MARGIN = 5;
const EDGES = { top: MARGIN, right: MARGIN, bottom: MARGIN, left: MARGIN };
/** Between the words and the picture, millimetres, and the least height that is left for it. */
const GAP = 2;
const LEAST_PICTURE = 20;
/** Cards narrower than this take the smaller heading, millimetres. */
const NARROW = 80;
/** A stitch that suits so small a thing. */
const FINE = { width: 0.6 };

const head = (job: Job, look: GuideLook, narrow: boolean): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const numeral = inked({ ...resized(types.title, narrow ? 13 : 18), style: 'title italic' }, inks.thread);
  return stack([
    row(
      [
        {
          width: { share: 1 },
          block: tagged('H2', text(setter, job.sayPhrase(look.title), resized(types.panel, narrow ? 10 : 12.5))),
          stand: 'bottom',
        },
        {
          width: narrow ? 8 : 11,
          block: tagged('P', text(setter, String(look.number), numeral, { align: 'right' })),
          stand: 'bottom',
        },
      ],
      { gap: 2 },
    ),
    space(1),
    tagged('P', text(setter, whenToWear(job, look), types.key)),
    space(1.6),
    stitchRule(inks.thread, FINE),
  ]);
};

const foot = (job: Job, look: GuideLook): Block => {
  const { setter } = job.press;
  const { types, inks, guide } = job;
  return stack([
    stitchRule(inks.hair, FINE),
    space(0.8),
    tagged('P', text(setter, whatItIs(job, look), inked(types.key, inks.ink))),
    space(1.4),
    tagged(
      'P',
      text(setter, [guide.studio.name, guide.brief.title].join(', '), { ...types.key, style: 'serif italic' }),
    ),
  ]);
};

/** A card to cut out: the look laid flat between its words, all of them in type that can be read in the hand. */
export const paintCard = (job: Job, look: GuideLook, area: Area): Block => {
  const narrow = area.width < NARROW;
  return tagged('Sect', {
    height: () => area.height,
    paint: (surface, at) => {
      const inner = inset(at, EDGES);
      const [top, bottom] = [head(job, look, narrow), foot(job, look)];
      const [above, below] = [top.height(inner.width), bottom.height(inner.width)];
      const frame = { width: inner.width, height: Math.max(LEAST_PICTURE, inner.height - above - below - 2 * GAP) };
      top.paint(surface, { ...inner, height: above });
      layPicture(job, look, frame).paint(surface, { ...inner, y: inner.y + above + GAP, ...frame });
      bottom.paint(surface, { ...inner, y: inner.y + inner.height - below, height: below });
    },
  });
};
