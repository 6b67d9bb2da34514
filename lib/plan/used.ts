import type { Capsule, Finding, Piece, Plan } from '../model/index.ts';
import { phrase } from '../words/index.ts';

/** Pieces that the plan has a use for: worn, there or on the way, taken along, or the nearest to what nothing serves. */
export const usedIn = ({ wears, unserved }: Pick<Plan, 'wears' | 'unserved'>): ReadonlySet<string> =>
  new Set([
    ...Object.keys(wears).filter((id) => (wears[id] ?? 0) > 0),
    ...unserved.flatMap(({ nearest }) => nearest?.worn.map(({ piece }) => piece) ?? []),
  ]);

/** Packed pieces that no day of the plan wears, in one finding. */
export const findingsOfUse = (
  plan: Plan,
  { file }: Pick<Capsule, 'file'>,
  pieces: readonly Piece[],
): readonly Finding[] => {
  const used = usedIn(plan);
  const idle = pieces.filter(({ id }) => !used.has(id));
  if (idle.length === 0 || plan.of === 0) return [];
  return [
    {
      level: 'advice',
      rule: 'never-worn',
      message: phrase('plan', 'never worn', { pieces: idle.map(({ name }) => name), of: pieces.length }),
      mend: phrase('plan', 'never worn mend', {}),
      about: idle.map(({ id }) => id),
      file,
    },
  ];
};
