import { type Wearing, wearingOf } from '../../guide/wearing.ts';
import type { IsoDate, Piece } from '../../model/index.ts';
import { KINDS, type KindGroup } from '../../vocabulary/index.ts';
import type { Job, SayPrint } from '../job.ts';

export interface WearLine {
  readonly piece: Piece;
  /** By date. */
  readonly worn: ReadonlyMap<IsoDate, Wearing>;
  /** Days on which it is worn or taken along. */
  readonly days: number;
  /** Times the plan wears it. */
  readonly times: number;
}

export interface WearGroup {
  readonly title: string;
  readonly lines: readonly WearLine[];
}

type Part = 'upper' | 'lower' | 'swim' | 'feet' | 'finishing';

const PARTS: Readonly<Record<Part, readonly KindGroup[]>> = {
  upper: ['coats', 'layers', 'tops', 'knits'],
  lower: ['bottoms', 'one-pieces'],
  swim: ['swimwear'],
  feet: ['shoes', 'legwear'],
  finishing: ['bags', 'jewellery', 'accessories'],
};

const TITLES = {
  upper: 'table upper',
  lower: 'group lower',
  swim: 'group swim',
  feet: 'group feet',
  finishing: 'group finishing',
} as const satisfies Record<Part, Parameters<SayPrint>[0]>;

/** Every piece with its days, most used first within each part of the body. */
export const wearGroups = (job: Job): readonly WearGroup[] => {
  const { guide } = job;
  return (Object.keys(PARTS) as Part[]).flatMap((part) => {
    const lines = guide.pieces
      .filter(({ kind }) => PARTS[part].includes(KINDS[kind].group))
      .map((piece): WearLine => {
        const worn = wearingOf(guide.plan, guide.brief, piece.id);
        const days = [...worn.values()].filter((how) => how !== 'not').length;
        return { piece, worn, days, times: guide.plan.wears[piece.id] ?? days };
      })
      .sort((a, b) => b.days - a.days || b.times - a.times);
    return lines.length === 0 ? [] : [{ title: job.say(TITLES[part]), lines }];
  });
};
