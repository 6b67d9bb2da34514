import { weightVerdict } from '../../bag/index.ts';
import type { PackedBag } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import type { Job, SayPrint } from '../job.ts';
import { nums } from '../pdf/numbers.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, drawn, row, space, stack, tagged } from '../set/block.ts';
import { estimateMark } from '../set/ornament.ts';
import { notch } from '../set/signs.ts';
import { text, widthOf } from '../set/text.ts';
import { inked, resized } from '../types.ts';

interface Part {
  readonly name: string;
  readonly grams: number;
  /** Distance of its hatching, millimetres; none for the bag itself. */
  readonly hatch?: number;
}

const SHOES_AND_SO_ON: readonly string[] = ['shoes', 'bags', 'jewellery', 'accessories'];

const partsOf = (say: SayPrint, bag: PackedBag): readonly Part[] => {
  const sum = (wanted: (group: string) => boolean): number =>
    bag.pieces.filter(({ group }) => wanted(group)).reduce((total, { grams }) => total + grams.value, 0);
  const parts: readonly Part[] = [
    { name: say('weight segment bag'), grams: bag.bag.ownGrams },
    { name: say('weight segment clothes'), grams: sum((group) => !SHOES_AND_SO_ON.includes(group)), hatch: 1.2 },
    { name: say('weight segment shoes'), grams: sum((group) => SHOES_AND_SO_ON.includes(group)), hatch: 1.9 },
    {
      name: say('weight segment things'),
      grams: bag.sundries.reduce((total, { grams }) => total + grams.value, 0),
      hatch: 2.8,
    },
  ];
  return parts.filter(({ grams }) => grams > 0);
};

const verdict = (job: Job, bag: PackedBag): { readonly words: string; readonly over: boolean } => {
  const { is, grams, isOver } = weightVerdict(bag);
  return { words: job.sayPhrase(phrase('bag', `weight ${is}`, { grams })), over: isOver };
};

/** What the sums beside the heads of the list and the bag itself come to. */
const madeOf = (job: Job, bag: PackedBag): string => {
  const liquids = bag.sundries
    .filter(({ sundry }) => sundry.group === 'liquids')
    .reduce((sum, { grams }) => sum + grams.value, 0);
  const own = bag.bag.ownGrams;
  return job.say('weight made of', { own, contents: bag.grams.value - own - liquids, liquids });
};

const HEIGHT = 6;
const ABOVE = 5.2;

const hatched = (surface: Surface, x: number, y: number, width: number, step: number, colour: string): void => {
  const lines: string[] = [];
  for (let at = step; at < width + HEIGHT; at += step) {
    const across = Math.min(width, at);
    const back = Math.max(0, at - HEIGHT);
    lines.push(`${nums(x + across, y + at - across)} m ${nums(x + back, y + Math.min(HEIGHT, at))} l`);
  }
  if (lines.length > 0) surface.shape(lines.join(' '), { stroke: { colour, width: 0.3 } });
};

/** The scale under the bar runs in whole kilograms, or pounds, to a little beyond the limit and the heaviest end. */
const fullScale = (bag: PackedBag, unitGrams: number): number =>
  Math.ceil((Math.max(bag.grams.high, (bag.bag.limitKg ?? 0) * 1000) * 1.06) / unitGrams);

const bar = (job: Job, bag: PackedBag): Block => {
  const { inks, types } = job;
  const { setter } = job.press;
  const pounds = job.guide.studio.weight === 'lb';
  const unitGrams = pounds ? 453.59237 : 1000;
  const units = fullScale(bag, unitGrams);
  const step = units > 40 ? 10 : units > 16 ? 4 : 2;
  const { limitKg } = bag.bag;
  const alt = job.say('weight described', {
    bag: bag.bag.name,
    grams: bag.grams.value,
    low: bag.grams.low,
    high: bag.grams.high,
    kg: limitKg ?? 0,
  });
  const paint = (surface: Surface, { x, y, width }: { x: number; y: number; width: number }): void => {
    const label = (
      words: string,
      at: number,
      base: number,
      colour: string,
      from: 'left' | 'centre' | 'right',
    ): void => {
      const line = setter.line([{ text: words, type: inked(types.key, colour) }]);
      surface.text(line.runs, at - (from === 'centre' ? line.width / 2 : from === 'right' ? line.width : 0), base);
    };
    const at = (grams: number): number => x + (grams / unitGrams / units) * width;
    const top = y + ABOVE;
    const gapless = { ink: { colour: inks.ink, width: 0.5 }, hair: { colour: inks.hair, width: 0.3 } };
    let from = x;
    let free = x;
    for (const part of partsOf(job.say, bag)) {
      const wide = at(part.grams) - x;
      if (part.hatch !== undefined) hatched(surface, from, top, wide, part.hatch, inks.hair);
      surface.rectangle({ x: from, y: top, width: wide, height: HEIGHT }, { stroke: gapless.ink });
      const needed = widthOf(setter, part.name, types.key) + 1;
      if (from >= free && needed <= wide + 2) {
        label(part.name, from + 0.2, top + HEIGHT + 3, inks.soft, 'left');
        free = from + needed;
      }
      from += wide;
    }
    const [low, high] = [at(bag.grams.low), at(bag.grams.high)];
    const needle = { colour: inks.thread, width: 0.8 };
    surface.rectangle(
      { x: low, y: top - 2.4, width: Math.max(0.4, high - low), height: 1.4 },
      { stroke: { ...needle, width: 0.5 } },
    );
    surface.line(at(bag.grams.value), top - 2.4, at(bag.grams.value), top - 1, needle);
    if (limitKg !== undefined) {
      const limit = at(limitKg * 1000);
      surface.line(limit, top - 2.8, limit, top + HEIGHT + 1, { ...needle, width: 1.1 });
      notch(surface, limit, top - 2.2, 1.1, inks.thread, true);
      const words = job.say('weight limit', { kg: limitKg });
      const half = widthOf(setter, words, types.key) / 2;
      label(words, Math.min(limit, x + width - half), top + HEIGHT + 3, inks.thread, 'centre');
    }
    const scaleTop = top + HEIGHT + 4.6;
    const marks = Array.from({ length: units * 2 + 1 }, (_, mark) => {
      const across = x + (mark / 2 / units) * width;
      return `${nums(across, scaleTop)} m ${nums(across, scaleTop + (mark % 2 === 0 ? 1.8 : 1))} l`;
    });
    surface.shape([`${nums(x, scaleTop)} m ${nums(x + width, scaleTop)} l`, ...marks].join(' '), {
      stroke: gapless.hair,
    });
    for (let unit = 0; unit <= units; unit += step)
      label(String(unit), x + (unit / units) * width, scaleTop + 4.6, inks.soft, 'centre');
  };
  return tagged('Figure', drawn(ABOVE + HEIGHT + 4.6 + 5.4, paint), { alt });
};

const estimateKey = (job: Job): Block => {
  const { types, inks } = job;
  return tagged(
    'P',
    row(
      [
        {
          width: 3,
          block: drawn(2.4, (surface, { x, y }) =>
            surface.tag('Figure', { alt: job.say('estimated') }, () => estimateMark(surface, x, y + 2.1, inks.soft)),
          ),
        },
        { width: { share: 1 }, block: text(job.press.setter, job.say('estimated key'), types.key) },
      ],
      { gap: 0.4 },
    ),
  );
};

/** What a bag weighs, how sure that is, and what the limit leaves. */
export const weightPanel = (job: Job, bag: PackedBag): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const spread = (bag.grams.high - bag.grams.low) / 2;
  const total = job.say('weight range', { grams: bag.grams.value, spread });
  const { words, over } = verdict(job, bag);
  const heading = job.say('weight of', { bag: bag.bag.name });
  const totalWidth = widthOf(setter, total, types.factStrong) + 0.2;
  const headingAt = (width: number): Block => {
    let type = types.panel;
    while (type.points > 9 && widthOf(setter, heading, type) > width) type = resized(type, type.points - 0.5);
    return text(setter, heading, type);
  };
  const fitted: Block = {
    height: (width) => headingAt(width).height(width),
    paint: (surface, area) => headingAt(area.width).paint(surface, area),
  };
  const keyWidth = widthOf(setter, job.say('estimated key'), types.key) + 4;
  return tagged(
    'Sect',
    stack([
      row(
        [
          { width: { share: 1 }, block: tagged('H2', fitted), stand: 'bottom' },
          { width: totalWidth, block: tagged('P', text(setter, total, types.factStrong)), stand: 'bottom' },
        ],
        { gap: 3 },
      ),
      space(0.6),
      bar(job, bag),
      space(1.6),
      row(
        [
          {
            width: { share: 1 },
            block: tagged('P', text(setter, words, over ? inked(types.keyStrong, inks.thread) : types.key)),
          },
          { width: keyWidth, block: estimateKey(job) },
        ],
        { gap: 3 },
      ),
      space(1),
      tagged('P', text(setter, madeOf(job, bag), types.key)),
    ]),
  );
};
