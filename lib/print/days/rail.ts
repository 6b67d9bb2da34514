import type { Look } from '../../model/index.ts';
import type { Slot } from '../../vocabulary/index.ts';
import type { Job } from '../job.ts';
import type { DrawnForm } from '../pdf/drawings.ts';
import { type Block, tagged } from '../set/block.ts';

/** What hangs on the rail, from the outside in; the rest stands on the floor beside it. */
const HANGING: readonly Slot[] = [
  'outer layer',
  'mid layer',
  'cover-up',
  'top',
  'base layer',
  'one-piece',
  'swim',
  'bottom',
];

/** Small things are drawn larger than what hangs, or they could not be told apart. */
const LARGER = 1.3;
const HOOK = 1.6;
const LEAST_GAP = 1.2;
const MOST_GAP = 9;
/** Nothing is drawn larger than this, so that a single scarf does not fill the line; millimetres a centimetre. */
const LARGEST_SCALE = 0.3;

interface Hung {
  readonly form: DrawnForm;
  readonly hanging: boolean;
}

/** Small things one above the other, at most this many to a pile. */
const PILE = 2;

interface Arranged {
  readonly hanging: readonly DrawnForm[];
  readonly piles: readonly (readonly DrawnForm[])[];
}

const arrange = (pieces: readonly Hung[]): Arranged => {
  const small = pieces.filter(({ hanging }) => !hanging).map(({ form }) => form);
  const piles: DrawnForm[][] = [];
  for (let at = 0; at < small.length; at += PILE) piles.push(small.slice(at, at + PILE));
  return { hanging: pieces.filter(({ hanging }) => hanging).map(({ form }) => form), piles };
};

const widest = (pile: readonly DrawnForm[]): number => Math.max(...pile.map(({ box }) => box.width)) * LARGER;
const stackHeight = (pile: readonly DrawnForm[]): number => pile.reduce((sum, { box }) => sum + box.height, 0) * LARGER;

/** The largest scale at which the look fits the line: its own width counts, not the trip's longest coat. */
const scaleOf = ({ hanging, piles }: Arranged, width: number, height: number): number => {
  const parts = hanging.length + piles.length;
  const across =
    hanging.reduce((sum, { box }) => sum + box.width, 0) + piles.reduce((sum, pile) => sum + widest(pile), 0);
  const tallest = Math.max(1, ...hanging.map(({ box }) => box.height));
  const piled = Math.max(1, ...piles.map(stackHeight));
  return Math.min(
    LARGEST_SCALE,
    (height - HOOK) / tallest,
    (height - HOOK - LEAST_GAP) / piled,
    (width - LEAST_GAP * parts) / Math.max(1, across),
  );
};

/** A look hung from a rail: garments on it, small things standing beside. */
export const lookRail = (job: Job, look: Look, height: number): Block => {
  const scaleGuess = height / 115;
  const order = (slot: Slot): number => {
    const at = HANGING.indexOf(slot);
    return at < 0 ? HANGING.length : at;
  };
  const worn = [...look.worn].sort((a, b) => order(a.slot) - order(b.slot));
  const pieces = worn.map(
    ({ piece, slot }): Hung => ({
      form: job.art(job.piece(piece), 'small', scaleGuess),
      hanging: HANGING.includes(slot),
    }),
  );
  const arranged = arrange(pieces);
  const alt = job.say('look described', { pieces: job.names(worn.map(({ piece }) => piece)) });
  /** No higher than the look is at the scale its width allows. */
  const heightAt = (width: number): number => {
    const scale = scaleOf(arranged, width, height);
    const hung = Math.max(0, ...arranged.hanging.map(({ box }) => box.height)) * scale;
    const piled = Math.max(0, ...arranged.piles.map(stackHeight)) * scale + LEAST_GAP;
    return HOOK + Math.max(hung, piled);
  };
  const rail: Block = {
    height: heightAt,
    paint: (surface, { x, y, width }) => {
      const scale = scaleOf(arranged, width, height);
      const natural =
        arranged.hanging.reduce((sum, { box }) => sum + box.width * scale, 0) +
        arranged.piles.reduce((sum, pile) => sum + widest(pile) * scale, 0);
      const parts = arranged.hanging.length + arranged.piles.length;
      const gap = Math.min(MOST_GAP, Math.max(LEAST_GAP, (width - natural) / Math.max(1, parts)));
      surface.line(x, y, x + width, y, { colour: job.inks.hair, width: 0.45 });
      let at = x + gap / 2;
      for (const form of arranged.hanging) {
        const wide = form.box.width * scale;
        surface.line(at + wide / 2, y, at + wide / 2, y + HOOK + 0.3, { colour: job.inks.hair, width: 0.3 });
        surface.drawing(form, at, y + HOOK, scale);
        at += wide + gap;
      }
      for (const pile of arranged.piles) {
        const wide = widest(pile) * scale;
        let floor = y + heightAt(width);
        for (const { box, ref } of pile) {
          const tall = box.height * scale * LARGER;
          surface.drawing({ box, ref }, at + (wide - box.width * scale * LARGER) / 2, floor - tall, scale * LARGER);
          floor -= tall + LEAST_GAP;
        }
        at += wide + gap;
      }
    },
  };
  return tagged('Figure', rail, { alt });
};
