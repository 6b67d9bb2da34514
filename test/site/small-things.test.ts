import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { weightBar } from '../../lib/site/svg/tape.ts';
import { PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { builtSite } from './built.ts';

const GUIDE = 'october-by-rail/ink-and-rose/';

let site: string;
let visit: Visit;
beforeAll(async () => {
  site = await builtSite('client');
  visit = await visitSite(site);
}, 600_000);
afterAll(() => visit.close());

const page = (address: string): Promise<string> => readFile(path.join(site, GUIDE, address, 'index.html'), 'utf8');

describe('a bar of weights', () => {
  const labels = (grams: number, limit?: number): readonly string[] =>
    weightBar([{ grams, fill: '#000000', title: 'Coat' }], 0, limit, (kilograms) => `${kilograms} kg`).ticks.flatMap(
      ({ label }) => label ?? [],
    );

  it('has a number at its end, unless the one before stands too near', () => {
    expect(labels(1100)).toEqual(['0 kg', '2 kg']);
    expect(labels(5200, 8)).toEqual(['0 kg', '3 kg', '6 kg', '8 kg']);
    expect(labels(5200, 10)).toEqual(['0 kg', '3 kg', '6 kg', '9 kg']);
    expect(labels(9000, 23)).toEqual(['0 kg', '5 kg', '10 kg', '15 kg', '20 kg']);
  });
});

describe('the foot of a page', () => {
  it('claims one scale only where there is one', async () => {
    for (const tiled of ['', 'looks', 'days']) expect(await page(tiled)).not.toContain('Drawn to scale');
    for (const scaled of ['pieces', 'pairs', 'looks/look-01']) expect(await page(scaled)).toContain('Drawn to scale');
  });
});

describe('the sheets to print', () => {
  it('stand on the cover a row a paper', async () => {
    const rows = /<dl class="papers">[\s\S]*?<\/dl>/.exec(await page(''))?.[0] ?? '';
    expect([...rows.matchAll(/<dt>([^<]*)<\/dt>/g)].map(([, paper]) => paper)).toEqual(['A4']);
    expect([...rows.matchAll(/<a href/g)]).toHaveLength(4);
  });
});

describe('the plot of weight against looks', () => {
  it('leaves out what only finishes a look', async () => {
    const html = await page('numbers');
    const titles = [...html.matchAll(/<circle[^>]*><title>([^<]*)<\/title>/g)].map(([, name]) => name ?? '');
    expect(titles.length).toBeGreaterThan(8);
    expect(titles.filter((name) => /boots|shoes|trainers|bag|tote|hoops|bangle|scarf/i.test(name))).toEqual([]);
  });
});

describe('on a phone', () => {
  it('a look has one tape, with its numbers', async () => {
    const seen = await visit.open(`${GUIDE}looks/look-01/`, { viewport: PHONE });
    expect(await seen.locator('body > .tape').isVisible()).toBe(true);
    // the pictures here are stand-ins, so that the board has no tape until it is given one
    await seen.locator('.board').evaluate((board) => {
      board.insertAdjacentHTML(
        'afterbegin',
        '<svg class="ruler rule" viewBox="0 0 64 900"><text x="34" y="90">10</text></svg>',
      );
    });
    expect(await seen.locator('body > .tape').isVisible()).toBe(false);
    expect(await seen.locator('.board .ruler text').first().isVisible()).toBe(true);
    await seen.context().close();
  });

  it('tables of the bag have no column one word wide, and that of costs ends within the page', async () => {
    const seen = await visit.open(`${GUIDE}bag/`, { viewport: PHONE });
    const widths = await seen
      .locator('.lighter tbody td:last-child:not(:empty)')
      .evaluateAll((cells) => cells.map((cell) => cell.getBoundingClientRect().width));
    expect(widths.length).toBeGreaterThan(3);
    expect(Math.min(...widths)).toBeGreaterThan(250);
    await seen.context().close();
    const costs = await visit.open(`${GUIDE}shopping/`, { viewport: PHONE });
    const [shown, whole] = await costs
      .locator('.helps .scroll')
      .first()
      .evaluate((box) => [box.clientWidth, box.scrollWidth]);
    expect(whole).toBeLessThanOrEqual(shown ?? 0);
    await costs.context().close();
  });
});
