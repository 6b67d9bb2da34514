import { describe, expect, it } from 'vitest';
import { readContent } from '../../lib/content/index.ts';
import { buildGuide } from '../../lib/guide/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { fabricRefused, isFabricWord } from '../../lib/vocabulary/index.ts';
import { PROJECT } from '../cli/run.ts';

describe('cloth a client refuses', () => {
  it('is known by fibre, by cloth and by the word in its description', () => {
    // Merino, tweed and worsted are wool: ISO 2076 names the fibre, the trade the cloth; from memory.
    expect(fabricRefused({ fabric: 'fine wool', fabricText: 'merino' }, ['wool'])).toBe('wool');
    expect(fabricRefused({ fabric: 'tweed', fabricText: 'boucle' }, ['wool'])).toBe('wool');
    expect(fabricRefused({ fabric: 'fine wool', fabricText: 'cashmere' }, ['merino'])).toBe('merino');
    expect(fabricRefused({ fabric: 'cotton poplin', fabricText: 'poplin with silk trim' }, ['silk'])).toBe('silk');
    expect(fabricRefused({ fabric: 'cotton poplin', fabricText: 'poplin' }, ['wool'])).toBeUndefined();
    expect(isFabricWord('wool')).toBe(true);
    expect(isFabricWord('wooool')).toBe(false);
  });

  it('is an error of the check, and no planned or shown look wears it', async () => {
    const { content } = await readContent(`${PROJECT}/content`);
    const trip = content?.trips.find(({ brief }) => brief.id === 'october-by-rail');
    const capsule = trip?.capsules.find(({ id }) => id === 'chestnut-and-rain');
    if (content === undefined || trip === undefined || capsule === undefined) throw new Error('no demo');
    const guide = await buildGuide({
      studio: content.studio,
      houseRules: content.houseRules,
      brief: { ...trip.brief, avoid: { ...trip.brief.avoid, fabrics: ['wool'] } },
      capsule: { ...capsule, favourites: [], fixed: [] },
      wardrobe: content.wardrobes.get('nora') ?? [],
      list: undefined,
      sundries: content.sundries,
      solver: await loadSolver(),
    });
    const refused = guide.findings.filter(({ rule }) => rule === 'fabric-refused').flatMap(({ about }) => about);
    expect(refused).toContain('rust-fine-roll-neck');
    expect(refused).toContain('herringbone-coat');
    const counted = guide.earnings.filter(({ piece }) => refused.includes(piece));
    expect(counted.map(({ completeLooks }) => completeLooks)).toEqual(refused.map(() => 0n));
    const worn = [
      ...guide.looks.flatMap(({ look }) => look.worn),
      ...guide.plan.days.flatMap(({ occasions }) => occasions.flatMap(({ look }) => look?.worn ?? [])),
    ].map(({ piece }) => piece);
    expect(worn.length).toBeGreaterThan(0);
    expect(worn.filter((id) => refused.includes(id))).toEqual([]);
  });
});
