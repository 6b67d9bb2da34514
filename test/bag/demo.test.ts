import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Content, readContent } from '../../lib/content/index.ts';
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
