import type { PackedBag } from '../model/index.ts';

/** How a bag stands to its limit on its heaviest journey, and by how many grams. */
export interface WeightVerdict {
  /**
   * Of the estimate and its uncertainty: all of it below the limit, only the heavy end above, the best estimate above, or
   * all of it above.
   */
  readonly is: 'spare' | 'over' | 'likely over' | 'certainly over' | 'no limit';
  readonly grams: number;
  /** True from the moment that the heavy end of the estimate is above the limit. */
  readonly isOver: boolean;
}

/** Judges the journey on which the bag is heaviest. */
export const weightVerdict = ({ bag, grams, heaviest }: PackedBag): WeightVerdict => {
  if (bag.limitKg === undefined) return { is: 'no limit', grams: 0, isOver: false };
  const limit = bag.limitKg * 1000;
  const most = heaviest?.grams ?? grams;
  if (most.low > limit) return { is: 'certainly over', grams: most.value - limit, isOver: true };
  if (most.value > limit) return { is: 'likely over', grams: most.value - limit, isOver: true };
  if (most.high > limit) return { is: 'over', grams: most.high - limit, isOver: true };
  return { is: 'spare', grams: limit - most.high, isOver: false };
};
