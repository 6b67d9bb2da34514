import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DESK, PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { builtSite, kindsOf, pagesOf, type SiteName } from './built.ts';

const visits = new Map<SiteName, Visit>();
beforeAll(async () => {
  for (const name of ['many', 'one', 'blind'] as const) visits.set(name, await visitSite(await builtSite(name)));
});
afterAll(async () => {
  for (const visit of visits.values()) await visit.close();
});

const open = async (
  name: SiteName,
  address: string,
  viewport: { width: number; height: number } = PHONE,
): Promise<Page> => {
  const visit = visits.get(name);
  if (visit === undefined) throw new Error(name);
  return visit.open(address, { viewport });
};

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe('a guide of 300 looks', () => {
  const LOOKS = 'october-by-rail/chestnut-and-rain/looks/';

  it('has a tile and a page for each, numbered so that files sort as they count', async () => {
    const page = await open('many', LOOKS);
    expect(await page.locator('.look').count()).toBe(300);
    const hrefs = await page
      .locator('.look a')
      .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    expect(hrefs.toSorted()).toEqual(hrefs);
    const pages = await pagesOf(await builtSite('many'));
    expect(pages.filter((each) => each.startsWith(LOOKS) && each !== LOOKS)).toHaveLength(300);
    expect(await sideways(page)).toBe(0);
    await page.context().close();
  });

  it('loads the pictures one is about to see, not three hundred', async () => {
    const visit = visits.get('many');
    visit?.server.asked();
    const page = await open('many', LOOKS);
    await page.waitForLoadState('networkidle');
    const pictures = visit?.server.asked().filter(({ path }) => path.includes('/pictures/looks/')) ?? [];
    expect(pictures.length).toBeGreaterThan(0);
    expect(pictures.length).toBeLessThan(60);
    await page.context().close();
  });

  it('filters them all', async () => {
    const page = await open('many', LOOKS);
    const piece = (await page.locator('select[name=piece] option').nth(1).getAttribute('value')) ?? '';
    await page.selectOption('select[name=piece]', piece);
    const shown = await page.locator('.look:visible').count();
    expect(shown).toBeGreaterThan(0);
    expect(shown).toBeLessThan(300);
    expect(await page.locator('[data-shown]').textContent()).toBe(String(shown));
    await page.context().close();
  });
});

describe.each([
  ['one look', 'one'],
  ['no picture of anything', 'blind'],
] as const)('a guide of %s', (_, name) => {
  it('has every kind of page, none of which is broken or empty', async () => {
    const kinds = kindsOf(await pagesOf(await builtSite(name)), 'graz/plain');
    expect(kinds.size).toBeGreaterThan(11);
    for (const [kind, address] of kinds) {
      const page = await open(name, address, DESK);
      expect((await page.locator('h1').textContent())?.trim(), kind).not.toBe('');
      expect(await page.locator('main').textContent(), kind).not.toMatch(/undefined|NaN|\[object|null/);
      const broken = await page.evaluate(async () => {
        for (const image of document.images) image.loading = 'eager';
        await Promise.all([...document.images].map((image) => image.decode().catch(() => undefined)));
        return [...document.images]
          .filter((image) => image.checkVisibility() && image.naturalWidth === 0)
          .map(({ src }) => src);
      });
      expect(broken, kind).toEqual([]);
      const emptyLinks = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLAnchorElement>('main a')]
          .filter((link) => link.checkVisibility() && link.getAttribute('aria-hidden') !== 'true')
          .filter(
            (link) => (link.textContent ?? '').trim() === '' && link.querySelector('img[alt]:not([alt=""])') === null,
          )
          .map(({ outerHTML }) => outerHTML),
      );
      expect(emptyLinks, kind).toEqual([]);
      expect(await sideways(page), kind).toBe(0);
      await page.context().close();
    }
    expect(visits.get(name)?.complaints()).toEqual([]);
  });
});
