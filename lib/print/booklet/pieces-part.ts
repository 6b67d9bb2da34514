import type { Piece } from '../../model/index.ts';
import type { Job } from '../job.ts';
import type { Size } from '../paper.ts';
import { fitIn, type Picture } from '../pdf/pictures.ts';
import { type Block, type Cell, drawn, row, type SharedTag, space, stack, tagged } from '../set/block.ts';
import type { FlowItem } from '../set/flow.ts';
import { prose } from '../set/markdown.ts';
import { text } from '../set/text.ts';
import { paintThumbnail } from '../thumbnail.ts';
import { resized } from '../types.ts';
import { type BookPage, flowingPart, roomiest } from './pages.ts';

import { smallProse } from './prose-types.ts';

/** Between rows, millimetres, as far as the pages have room. */
const ROW_GAPS = [12, 11, 10, 9, 8, 7, 6, 5, 4, 3];
const PICTURE = { width: 21, height: 25 };

const pieceCell = (job: Job, piece: Piece, photo: Picture | undefined): Block => {
  const { setter } = job.press;
  const { types } = job;
  const colour = job.say('colours of piece', { colours: piece.colours.map(({ name }) => name) });
  const alt =
    photo === undefined
      ? job.say('piece drawing', { name: piece.name, colour })
      : job.say('piece photo', { name: piece.name });
  const picture = drawn(PICTURE.height, (surface, area) =>
    surface.tag('Figure', { alt }, () => {
      if (photo === undefined) paintThumbnail(surface, job.art(piece, 'full', 0.3), area);
      else surface.picture(photo.ref, fitIn(photo.size, area));
    }),
  );
  const note = prose(setter, piece.note, smallProse(job)).map(({ block }) => block);
  const words = stack(
    [
      tagged('P', text(setter, piece.name, resized(types.panel, 9.6))),
      tagged('P', text(setter, colour === piece.fabricText ? colour : `${colour}, ${piece.fabricText}`, types.key)),
      ...note,
    ],
    1,
  );
  return tagged(
    'LI',
    tagged(
      'LBody',
      row(
        [
          { width: PICTURE.width, block: picture },
          { width: { share: 1 }, block: words, stand: 'middle' },
        ],
        { gap: 2.5 },
      ),
    ),
  );
};

/** Every piece with its picture, colour, cloth and the stylist's note. */
export const piecesPart = (job: Job, size: Size, photos: ReadonlyMap<string, Picture>): readonly BookPage[] =>
  roomiest(ROW_GAPS, (gap) => piecesApart(job, size, photos, gap));

const piecesApart = (
  job: Job,
  size: Size,
  photos: ReadonlyMap<string, Picture>,
  above: number,
): readonly BookPage[] => {
  const { pieces } = job.guide;
  const rows: FlowItem[] = [];
  const list: SharedTag = {};
  for (let at = 0; at < pieces.length; at += 2) {
    const pair = pieces.slice(at, at + 2);
    const cells = [0, 1].map((index): Cell => {
      const piece = pair[index];
      return {
        width: { share: 1 },
        block: piece === undefined ? space(0) : pieceCell(job, piece, photos.get(piece.id)),
        stand: 'middle',
      };
    });
    rows.push({ block: tagged('L', row(cells, { gap: 4 }), {}, list), above });
  }
  const empty: FlowItem = { block: tagged('P', text(job.press.setter, job.say('no pieces'), job.types.fact)) };
  return flowingPart(job, size, job.say('the pieces'), rows.length > 0 ? rows : [empty], { level: true });
};
