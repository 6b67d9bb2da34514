import type { Brief, Packing, Sundry } from '../model/index.ts';
import { BAG_GUIDELINES, BATTERIES, LIQUIDS } from './guidelines.ts';
import { isFlight } from './journeys.ts';

/** One rule of the air, and how what is packed stands to it. */
export interface AirRule {
  readonly rule: 'container' | 'liquids' | 'battery' | 'spare battery' | 'cabin size';
  /** What comes nearest to the limit, or breaks it; empty when nothing is under the rule. */
  readonly things: readonly string[];
  /** Millilitres or watt hours of it; 0 where nothing is counted. */
  readonly amount: number;
  readonly keeps: boolean;
}

/** Millilitres of all of a sundry together. */
export const millilitresOf = ({ millilitres = 0, count }: Sundry): number => millilitres * count;

export const hasFlight = ({ occasions }: Pick<Brief, 'occasions'>): boolean => occasions.some(isFlight);

/** Every rule for liquids, batteries and the size of a cabin bag beside the packed things, whether or not the trip flies. */
export const airRules = ({ bags }: Packing): readonly AirRule[] => {
  const held = bags.flatMap(({ bag, sundries }) => sundries.map(({ sundry }) => ({ sundry, role: bag.role })));
  const liquids = held
    .filter(({ sundry, role }) => role !== 'hold' && sundry.group !== 'medicines' && millilitresOf(sundry) > 0)
    .map(({ sundry }) => sundry);
  const largest = Math.max(0, ...liquids.map(({ millilitres = 0 }) => millilitres));
  const inAll = liquids.reduce((sum, sundry) => sum + millilitresOf(sundry), 0);
  const powered = held.filter(({ sundry: { wattHours = 0 } }) => wattHours > 0);
  const strongest = Math.max(0, ...powered.map(({ sundry: { wattHours = 0 } }) => wattHours));
  const spares = held.filter(({ sundry }) => sundry.spareBattery === true);
  const misplaced = spares.filter(({ role }) => role === 'hold');
  const cabin = bags.map(({ bag }) => bag).filter(({ role, cm }) => role === 'cabin' && cm !== undefined);
  const large = cabin.filter(({ cm = [] }) =>
    cm.some((side, index) => side > (BAG_GUIDELINES.cabin.cm[index] ?? Number.POSITIVE_INFINITY)),
  );
  const names = (found: readonly { readonly sundry: Sundry }[]): readonly string[] =>
    found.map(({ sundry }) => sundry.name);
  return [
    {
      rule: 'container',
      things: liquids.filter(({ millilitres = 0 }) => millilitres === largest).map(({ name }) => name),
      amount: largest,
      keeps: largest <= LIQUIDS.containerMl,
    },
    { rule: 'liquids', things: liquids.map(({ name }) => name), amount: inAll, keeps: inAll <= LIQUIDS.bagMl },
    {
      rule: 'battery',
      things: names(powered.filter(({ sundry }) => sundry.wattHours === strongest)),
      amount: strongest,
      keeps: strongest <= BATTERIES.freeWh,
    },
    {
      rule: 'spare battery',
      things: names(misplaced.length > 0 ? misplaced : spares),
      amount: 0,
      keeps: misplaced.length === 0,
    },
    {
      rule: 'cabin size',
      things: (large.length > 0 ? large : cabin).map(({ name }) => name),
      amount: 0,
      keeps: large.length === 0,
    },
  ];
};
