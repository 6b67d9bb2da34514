import { describe, expect, it } from 'vitest';
import { readContent, wardrobeOn } from '../../lib/content/index.ts';
import { planGuide } from '../../lib/guide/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { PROJECT } from '../cli/run.ts';
import { brokenPlan } from './validator/index.ts';

describe("the demo's plans", async () => {
  const { content } = await readContent(`${PROJECT}/content`);
  if (content === undefined) throw new Error('the demo has problems');
  const all = content.trips.flatMap(({ brief, capsules }) => capsules.map((capsule) => ({ brief, capsule })));

  it.each(all.map((one) => [`${one.brief.id}/${one.capsule.id}`, one] as const))(
    '%s: every occasion is dressed, proven, and nothing is broken',
    async (_, { brief, capsule }) => {
      const wardrobe = wardrobeOn(content.wardrobes, brief, capsule);
      const { plan, pieces } = await planGuide({
        brief,
        capsule,
        wardrobe,
        houseRules: content.houseRules,
        solver: await loadSolver(),
      });
      expect(plan.proven).toBe(true);
      expect(plan.unserved).toEqual([]);
      const fixed = capsule.fixed.map((look) => ({
        ...look,
        occasion: brief.occasions.find(({ what }) => what === look.occasion)?.id ?? look.occasion,
      }));
      expect(brokenPlan(plan, brief, pieces, { ...capsule, fixed })).toEqual([]);
      // each weak point names an occasion that has a look now
      const served = new Set(plan.days.flatMap(({ occasions }) => occasions.map(({ occasion }) => occasion)));
      for (const { loses } of plan.weakPoints) for (const id of loses) expect(served).toContain(id);
    },
  );
});
