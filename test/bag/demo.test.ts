import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Content, readContent } from '../../lib/content/index.ts';
import { planGuide } from '../../lib/guide/build.ts';
import { buildGuides, type Guide } from '../../lib/guide/index.ts';
import type { Bag } from '../../lib/model/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { run } from '../cli/run.ts';

const RAIL = 'october-by-rail/chestnut-and-rain';
let content: Content;
beforeAll(async () => {
  const read = await readContent(path.join(import.meta.dirname, '..', '..', 'content'));
  if (read.content === undefined) throw new Error(JSON.stringify(read.problems));
  content = read.content;
});

const inBag = async (bags: readonly Bag[]): Promise<Guide> => {
  const trips = content.trips.flatMap(({ brief, capsules }) => {
    const chosen = capsules.filter(({ id }) => `${brief.id}/${id}` === RAIL);
    return chosen.length === 0 ? [] : [{ brief: { ...brief, bags }, capsules: chosen }];
  });
  const [guide] = await buildGuides({ ...content, trips }, await loadSolver());
  if (guide === undefined) throw new Error('no guide');
  return guide;
};

const planOf = async (capsule: Guide['capsule']): Promise<Guide['plan']> => {
  const trip = content.trips.find(({ brief }) => RAIL.startsWith(brief.id));
  const wardrobe = content.wardrobes.get(capsule.wardrobe) ?? [];
  if (trip === undefined) throw new Error('no trip');
  const { brief } = trip;
  const { plan } = await planGuide({
    brief,
    capsule,
    wardrobe,
    houseRules: content.houseRules,
    solver: await loadSolver(),
  });
  return plan;
};

const bag = (litres: number, limitKg: number): Bag => ({
  name: 'Case',
  role: 'cabin',
  litres,
  ownGrams: 2000,
  limitKg,
});

describe('the demo in three bags', () => {
  it('generous: fits, with nothing to leave out', async () => {
    const { bagReport } = await inBag([bag(60, 15)]);
    expect(bagReport.fits).toBe(true);
    expect(bagReport.leaveOut).toEqual({ steps: [], fits: true });
  });

  it('tight: does not fit, and says what to leave out so that it does', async () => {
    const { bagReport, findings, pieces, capsule } = await inBag([bag(60, 8)]);
    expect(bagReport.fits).toBe(false);
    expect(bagReport.leaveOut.fits).toBe(true);
    expect(bagReport.leaveOut.steps.length).toBeLessThan(pieces.length / 2);
    // planned again without them, wears and washes counted: the same plan that the capsule without them gets
    const out = new Set(bagReport.leaveOut.steps.map(({ piece }) => piece));
    const isWhole = ({ pieces: all }: { readonly pieces: readonly string[] }): boolean =>
      all.every((id) => !out.has(id));
    const broken = capsule.fixed.filter((look) => !isWhole(look)).map(({ occasion }) => occasion);
    const fewer = await planOf({
      ...capsule,
      pieces: capsule.pieces.filter((id) => !out.has(id)),
      fixed: capsule.fixed.filter(isWhole),
      favourites: capsule.favourites.filter(isWhole),
    });
    const { planned = [] } = bagReport.leaveOut;
    for (const { occasion } of fewer.unserved) expect(planned).toContain(occasion);
    expect(planned).toHaveLength(fewer.unserved.length + broken.length);
    expect(findings.some(({ rule }) => rule === 'bag-over-weight')).toBe(true);
    expect(capsule.pieces.length).toBe(pieces.length);
  });

  it('impossible: says that leaving out does not help', async () => {
    const { bagReport, findings } = await inBag([bag(2, 2.5)]);
    expect(bagReport.fits).toBe(false);
    expect(bagReport.leaveOut.fits).toBe(false);
    expect(findings.find(({ rule }) => rule === 'bag-over-weight')?.mend?.key).toBe('leave out in vain');
  });

  it('says the same on the command line, as text and as JSON', async () => {
    const text = await run(['bag', RAIL]);
    expect(text.code).toBe(0);
    expect(text.out).toMatch(/^It fits\.\n[\d.]+ kg ± [\d.]+ in all, worn and packed, of which \d+\s?% weighed/);
    expect(text.out).toMatch(/Day bag: [\d.]+ kg ± [\d.]+, its own 0\.5 kg included;/);
    const told = JSON.parse((await run(['bag', RAIL, '--json'])).out) as {
      report: { fits: boolean; front: { points: unknown[] } };
    };
    expect(told.report.fits).toBe(true);
    expect(told.report.front.points.length).toBeGreaterThan(5);
  });
});
