import { layFlat } from '../draw/flat-lay/index.ts';
import type { GuideLook } from '../guide/record.ts';
import { tucksOf } from '../vocabulary/index.ts';
import type { Job } from './job.ts';
import type { Size } from './paper.ts';
import type { DrawnForm } from './pdf/drawings.ts';
import { type Block, drawn, tagged } from './set/block.ts';

/** Enough for a form to be resolved at the size of a booklet or a card; millimetres a centimetre. */
const LAID_SCALE = 0.6;

/** A look laid flat in a frame, as a hand lays clothes on a bed. */
export const layPicture = (job: Job, look: GuideLook, frame: Size): Block => {
  const worn = look.look.worn.map(({ piece, slot }) => ({ piece: job.piece(piece), slot }));
  const tucks = tucksOf(worn.map(({ piece: { kind }, slot }) => ({ kind, slot })));
  const pieces = worn.map((each, index) => ({ ...each, tuck: tucks[index] }));
  const alt = job.say('look described', { pieces: pieces.map(({ piece }) => piece.name) });
  return tagged(
    'Figure',
    drawn(frame.height, (surface, { x, y, width }) => {
      const forms = new Map<string, DrawnForm>();
      const items = pieces.map(({ piece, slot, tuck }) => {
        forms.set(piece.id, job.art(piece, 'full', LAID_SCALE, tuck));
        return { id: piece.id, slot, picture: job.drawing(piece, 'full', tuck), tuck };
      });
      if (items.length === 0) return;
      for (const { item, transform } of layFlat(items, { x, y, width, height: frame.height }).placed) {
        const form = forms.get(item.id);
        if (form !== undefined) surface.laid(form, transform);
      }
    }),
    { alt },
  );
};
