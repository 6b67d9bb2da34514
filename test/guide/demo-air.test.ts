import { describe, expect, it } from 'vitest';
import { lookComfort } from '../../lib/comfort/index.ts';
import { briefFor, readContent, wardrobeOn } from '../../lib/content/index.ts';
import { planGuide } from '../../lib/guide/index.ts';
import { describeLooks } from '../../lib/guide/looks.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { PROJECT } from '../cli/run.ts';

/** Sentences that say colder air is expected than a look is shown to be good for. */
const COOL: readonly string[] = ['too cool for it', 'cool inside', 'cool without'];

describe('the degrees shown with the looks of the demo', async () => {
  const { content } = await readContent(`${PROJECT}/content`);
  if (content === undefined) throw new Error('the demo has problems');
  const all = content.trips.flatMap(({ brief, capsules }) =>
    capsules.map((capsule) => ({ brief: briefFor(brief, capsule.traveller), capsule })),
  );

  it.each(all.map((one) => [`${one.brief.id}/${one.capsule.id}`, one] as const))(
    '%s: those of its occasion, and they cover the air expected or say that they do not',
    async (_, { brief, capsule }) => {
      const { plan, pieces, engine } = await planGuide({
        brief,
        capsule,
        wardrobe: wardrobeOn(content.wardrobes, brief, capsule),
        houseRules: content.houseRules,
        solver: await loadSolver(),
      });
      const byId = new Map(pieces.map((piece) => [piece.id, piece]));
      const planned = plan.days.flatMap(({ occasions }) => occasions);
      const shown = planned.flatMap(({ look }) => (look === undefined ? [] : [{ look, favourite: false }]));
      const looks = describeLooks(shown, capsule, brief, plan, byId, engine, new Set());
      let outside = 0;
      for (const look of looks) {
        for (const id of look.occasions) {
          const occasion = brief.occasions.find((one) => one.id === id);
          const air = planned.find((one) => one.occasion === id)?.airC;
          if (occasion === undefined || air === undefined || occasion.needs.includes('swim')) continue;
          const { where } = occasion.setting;
          const told = look.wearIt.find(
            ({ key, values }) => key === `wear it ${where}` && values.activity === occasion.activity,
          );
          const { lowC, highC } = lookComfort(look.look, byId, occasion.activity, where);
          expect(told?.values, occasion.what).toMatchObject({ low: lowC, high: highC });
          outside += where === 'outdoors' ? 1 : 0;
          const lacks = look.wearIt.map(({ key }) => key);
          expect(lowC <= Math.round(air.low) || lacks.some((key) => COOL.includes(key)), `${occasion.what}, cool`).toBe(
            true,
          );
          expect(Math.round(air.high) <= highC || lacks.includes('too warm for it'), `${occasion.what}, warm`).toBe(
            true,
          );
        }
      }
      expect(outside).toBeGreaterThan(1);
    },
  );
});
