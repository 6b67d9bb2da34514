import { FABRICS } from '../../vocabulary/fabrics.ts';
import type { KindId } from '../../vocabulary/kinds.ts';
import { phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { COMMON_PRACTICE, ORDINARY_POINTS, type PairRule } from './rule.ts';
import { inSlot, pairIn } from './traits.ts';

/** Bags for papers and evenings, whatever they are made of. common practice, no source */
const NOT_FOR_TOWELS: ReadonlySet<KindId> = new Set<KindId>(['clutch', 'briefcase']);

const isSpoiltByWater = ({ piece }: Worn): boolean =>
  FABRICS[piece.fabric].fibre === 'leather' || NOT_FOR_TOWELS.has(piece.kind);

/** Wet things and sand go into cloth or straw. */
export const BAG_BY_THE_WATER: PairRule = {
  id: 'bag-by-the-water',
  says: phrase('outfit', 'rule bag-by-the-water', {}),
  shape: 'pair',
  severity: 'lowers the score',
  points: ORDINARY_POINTS,
  source: COMMON_PRACTICE,
  between: (a, b) => {
    const found = pairIn(a, b, inSlot('swim'), inSlot('bag'));
    return found !== undefined && isSpoiltByWater(found[1])
      ? phrase('outfit', 'bag not by water', { bag: found[1].piece.name })
      : undefined;
  },
};
