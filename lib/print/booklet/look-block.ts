import type { GuideLook } from '../../guide/record.ts';
import type { Job } from '../job.ts';
import { layPicture } from '../lay-picture.ts';
import { outdoors, whatItIs, whenToWear } from '../look-words.ts';
import type { Size } from '../paper.ts';
import { type Block, row, space, stack, tagged } from '../set/block.ts';
import { spans, text } from '../set/text.ts';
import { inked, resized } from '../types.ts';

/** What a look is, under its picture. */
const lookWords = (job: Job, look: GuideLook, compact: boolean): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const heading = [
    {
      text: `${look.number}  `,
      type: inked({ ...resized(types.title, compact ? 12 : 17), style: 'title italic' }, inks.thread),
    },
    { text: job.sayPhrase(look.title), type: resized(types.panel, compact ? 10 : 13) },
  ];
  const when = compact ? outdoors(job, look) : whenToWear(job, look);
  return stack([
    tagged('H3', spans(setter, heading)),
    space(compact ? 0.7 : 1.2),
    tagged('P', text(setter, when, compact ? types.key : resized(types.text, 7.8))),
    space(compact ? 0.7 : 1.2),
    tagged('P', text(setter, whatItIs(job, look), compact ? inked(types.key, inks.ink) : resized(types.text, 7.8))),
  ]);
};

/** A look across the page: picture at the left, words at the right. */
export const wideLook = (job: Job, look: GuideLook, size: Size, note: Block | undefined): Block => {
  const picture = { width: size.width * 0.56, height: size.height };
  return tagged(
    'Sect',
    row(
      [
        { width: picture.width, block: layPicture(job, look, picture) },
        {
          width: { share: 1 },
          block: stack([space(3), lookWords(job, look, false), ...(note === undefined ? [] : [space(3), note])]),
        },
      ],
      { gap: 4, least: size.height },
    ),
  );
};

/** Height of the words under a small look, millimetres. */
export const smallWordsHeight = (job: Job, look: GuideLook, width: number): number =>
  lookWords(job, look, true).height(width);

/** A look in a quarter of the page: picture above, words below in so much room that neighbours begin at one height. */
export const smallLook = (job: Job, look: GuideLook, size: Size, wordsHeight: number): Block => {
  const words = lookWords(job, look, true);
  return tagged('Sect', {
    height: () => size.height,
    paint: (surface, area) => {
      const room = area.height - wordsHeight - 2;
      words.paint(surface, { ...area, y: area.y + room + 2, height: area.height - room - 2 });
      layPicture(job, look, { width: area.width, height: Math.max(20, room) }).paint(surface, {
        ...area,
        height: room,
      });
    },
  });
};
