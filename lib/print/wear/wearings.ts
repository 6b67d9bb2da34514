import type { Guide } from '../../guide/record.ts';
import type { IsoDate, Piece } from '../../model/index.ts';
import { KINDS, type KindGroup } from '../../vocabulary/index.ts';
import type { Job, SayPrint } from '../job.ts';

export type Worn = 'day' | 'evening' | 'not';

export interface WearLine {
  readonly piece: Piece;
  /** By date. */
  readonly worn: ReadonlyMap<IsoDate, Worn>;
  /** Days on which it is worn. */
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

/** What a piece does on each day: worn by day, in the evening only, or not. */
const wornDays = ({ plan, brief }: Guide, id: string): ReadonlyMap<IsoDate, Worn> => {
  const parts = new Map(brief.occasions.map((occasion) => [occasion.id, occasion.part]));
  return new Map(
    plan.days.map((day): [IsoDate, Worn] => {
      const found = day.occasions
        .filter(({ look }) => look?.worn.some(({ piece }) => piece === id) === true)
        .map(({ occasion }) => parts.get(occasion));
      if (found.length === 0) return [day.date, 'not'];
      return [day.date, found.every((part) => part === 'evening' || part === 'night') ? 'evening' : 'day'];
    }),
  );
};

/** Every piece with its days, most used first within each part of the body. */
export const wearGroups = (job: Job): readonly WearGroup[] => {
  const { guide } = job;
  return (Object.keys(PARTS) as Part[]).flatMap((part) => {
    const lines = guide.pieces
      .filter(({ kind }) => PARTS[part].includes(KINDS[kind].group))
      .map((piece): WearLine => {
        const worn = wornDays(guide, piece.id);
        const days = [...worn.values()].filter((how) => how !== 'not').length;
        return { piece, worn, days, times: guide.plan.wears[piece.id] ?? days };
      })
      .sort((a, b) => b.days - a.days || b.times - a.times);
    return lines.length === 0 ? [] : [{ title: job.say(TITLES[part]), lines }];
  });
};
