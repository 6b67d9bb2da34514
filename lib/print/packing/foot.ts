import { hasFlight } from '../../bag/index.ts';
import { daysPanel } from '../days-strip.ts';
import type { Job } from '../job.ts';
import { type Block, type Cell, drawn, row, space, stack, tagged } from '../set/block.ts';
import { stitchRule } from '../set/ornament.ts';
import { text, widthOf } from '../set/text.ts';
import { GUTTER } from '../sheet-head.ts';
import { type Fold, linesOf, type PackSection } from './lines.ts';
import { FOLD_SIGN, foldSign, foldWords } from './rows.ts';
import { weightPanel } from './weight.ts';

/** In the order of their key. */
const FOLDS: readonly Fold[] = ['fold', 'roll', 'flat', 'shoe bag', 'pouch', 'fill'];
/** The rule above the foot with the air below it, millimetres. */
const RULE = 3.2;

const cautionWords = (job: Job): readonly string[] => {
  const { packing, brief } = job.guide;
  const flies = hasFlight(brief);
  const things = packing.bags.flatMap(({ bag, sundries }) => sundries.map(({ sundry }) => ({ bag, sundry })));
  return [
    ...(packing.weighedShare < 1 && packing.bags.length > 0
      ? [job.say('weighed share', { share: packing.weighedShare })]
      : []),
    ...packing.notes.map(job.sayPhrase),
    ...(packing.bags.some(({ pieces }) => pieces.length > 1) ? [job.say('packing order')] : []),
    ...(flies && things.some(({ bag, sundry }) => bag.role !== 'hold' && sundry.group === 'liquids')
      ? [job.say('liquids caution')]
      : []),
    ...(flies && things.some(({ sundry }) => sundry.spareBattery === true) ? [job.say('battery caution')] : []),
  ];
};

/** The signs of how things go in, as far as they are used. */
const foldKey = (job: Job, sections: readonly PackSection[]): readonly Block[] => {
  const { setter } = job.press;
  const { types } = job;
  const used = new Set(sections.flatMap(linesOf).map(({ fold }) => fold));
  const folds = FOLDS.filter((fold) => used.has(fold));
  if (folds.length === 0) return [];
  const words = (content: string): Cell => ({
    width: widthOf(setter, content, types.key) + 0.2,
    block: text(setter, content, types.key),
    stand: 'middle',
  });
  const cells = folds.flatMap((fold): Cell[] => [
    {
      width: FOLD_SIGN,
      block: drawn(FOLD_SIGN, (surface, { x, y }) => surface.artifact(() => foldSign(job, surface, fold, x, y))),
    },
    words(`${foldWords(job, fold)}  `),
  ]);
  return [space(1.6), tagged('P', row([words(job.say('how it goes in')), ...cells], { gap: 1.4 }))];
};

/** Weights, days and cautions, under the list, in so many columns. */
export const listFoot = (job: Job, sections: readonly PackSection[], columns: number): Block => {
  const { setter } = job.press;
  const { types, inks, guide } = job;
  const weighed = guide.packing.bags.filter(
    ({ bag, pieces, sundries }) => bag.limitKg !== undefined && pieces.length + sundries.length > 0,
  );
  const words = [
    ...weighed
      .slice(columns - 1)
      .map(
        (bag) =>
          `${job.say('weight of', { bag: bag.bag.name })}: ${job.say('weight range', { grams: bag.grams.value, spread: (bag.grams.high - bag.grams.low) / 2 })}.`,
      ),
    ...cautionWords(job),
  ];
  const notes = stack(
    words.map((sentence) => tagged('P', text(setter, sentence, types.key))),
    0.8,
  );
  const panels: Block[] = [...weighed.slice(0, columns - 1).map((bag) => weightPanel(job, bag)), daysPanel(job)];
  const beside = words.length > 0 && panels.length % columns > 0;
  if (beside) {
    const heading = tagged('H2', text(setter, job.say('before you leave'), types.panel));
    panels.push(tagged('Sect', stack([heading, space(2.4), notes])));
  }
  const rows: Block[] = [];
  for (let at = 0; at < panels.length; at += columns) {
    const some = panels.slice(at, at + columns);
    const cells = Array.from({ length: columns }, (_, index) => ({
      width: { share: 1 },
      block: some[index] ?? space(0),
    }));
    rows.push(row(cells, { gap: GUTTER }));
  }
  return stack([
    stitchRule(inks.hair, { width: 0.6, height: RULE }),
    ...rows,
    ...foldKey(job, sections),
    ...(words.length > 0 && !beside ? [space(2.4), notes] : []),
  ]);
};
