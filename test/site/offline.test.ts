import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { writeWorker } from '../../lib/site/offline.ts';
import { PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { builtSite, pagesOf } from './built.ts';

const GUIDE = 'october-by-rail/chestnut-and-rain';
const OTHER = 'october-by-rail/ink-and-rose';

let site: string;
let visit: Visit;
beforeAll(async () => {
  site = await builtSite('client');
  visit = await visitSite(site);
});
afterAll(() => visit.close());
beforeEach(() => {
  visit.server.signal(true);
  visit.server.swap(site);
});

/** Resolves once the worker has kept everything: only then is it active. */
const ready = (page: Page): Promise<void> => page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));

const firstVisit = async (address = `${GUIDE}/`): Promise<{ context: BrowserContext; page: Page }> => {
  const context = await visit.browser.newContext({ viewport: PHONE, serviceWorkers: 'allow' });
  const page = await visit.also(context, address);
  await ready(page);
  return { context, page };
};

const cacheNames = (page: Page): Promise<readonly string[]> => page.evaluate(() => caches.keys());
const kept = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const names = await caches.keys();
    const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return requests.flat().map(({ url }) => new URL(url).pathname);
  });

describe('without signal, after the first visit', () => {
  it('every page of the guide opens, with its styles, script and pictures', async () => {
    const { context, page } = await firstVisit();
    visit.server.signal(false);
    const pages = (await pagesOf(site)).filter((each) => each.startsWith(`${GUIDE}/`));
    expect(pages.length).toBeGreaterThan(40);
    for (const each of pages) {
      const answer = await page.goto(visit.server.address + each);
      expect(answer?.status(), each).toBe(200);
      const state = await page.evaluate(() => ({
        title: document.title,
        styled: [...document.styleSheets].length,
        font: getComputedStyle(document.body).fontFamily,
        heading: document.querySelector('h1')?.textContent ?? '',
      }));
      expect(state.styled, each).toBe(2);
      expect(state.font, each).toContain('Noto Sans');
      expect(state.heading, each).not.toBe('');
    }
    await context.close();
  });

  it.each([
    ['one of the looks', 'looks/look-01/', 2],
    ['all looks', 'looks/', 3],
    ['the pieces', 'pieces/', 2],
    ['the cover', '', 3],
    ['the moods, with the cloth of the other one', 'moods/', 2],
  ])('pictures are there on %s, also on a sharp screen', async (_, address, deviceScaleFactor) => {
    const context = await visit.browser.newContext({ viewport: PHONE, deviceScaleFactor, serviceWorkers: 'allow' });
    const page = await visit.also(context, `${GUIDE}/`);
    await ready(page);
    visit.server.signal(false);
    await page.goto(`${visit.server.address}${GUIDE}/${address}`);
    const missing = await page.evaluate(async () => {
      const own = [...document.images].filter((image) => image.checkVisibility());
      for (const image of own) image.loading = 'eager';
      await Promise.all(own.map((image) => image.decode().catch(() => undefined)));
      return own.filter(({ naturalWidth }) => naturalWidth === 0).map(({ currentSrc }) => currentSrc);
    });
    expect(missing).toEqual([]);
    await context.close();
  });

  it('a combination is laid out, with the pictures of its pieces', async () => {
    const { context, page } = await firstVisit();
    visit.server.signal(false);
    await page.goto(`${visit.server.address}${GUIDE}/try/?piece=white-poplin-shirt&piece=charcoal-wide-trousers`);
    const addresses = await page
      .locator('[data-try-board] image')
      .evaluateAll((all) => all.map((image) => new URL(image.getAttribute('href') ?? '', document.baseURI).href));
    expect(addresses).toHaveLength(2);
    expect(await kept(page)).toEqual(expect.arrayContaining(addresses.map((address) => new URL(address).pathname)));
    const widths = await page.evaluate(
      (all) => Promise.all(all.map(async (src) => (await createImageBitmap(await (await fetch(src)).blob())).width)),
      addresses,
    );
    expect(Math.min(...widths)).toBeGreaterThan(0);
    await context.close();
  });

  it('ticking and filtering go on', async () => {
    const { context, page } = await firstVisit();
    visit.server.signal(false);
    await page.goto(`${visit.server.address}${GUIDE}/packing/`);
    await page.locator('.ticks-l label').first().click();
    await page.reload();
    expect(await page.locator('[data-ticks-count]').textContent()).toBe('1');
    await page.goto(`${visit.server.address}${GUIDE}/looks/?warmth=nonsense`);
    expect(await page.locator('[data-filters]').isVisible()).toBe(true);
    await context.close();
  });

  it('keeps nothing but the guide and what its pages share', async () => {
    const { context, page } = await firstVisit();
    const paths = await kept(page);
    expect(paths.length).toBeGreaterThan(100);
    const foreign = paths.filter(
      (each) => !each.startsWith(`/guides/${GUIDE}/`) && !each.startsWith('/guides/assets/'),
    );
    expect(foreign.length, 'pictures of the other mood, which stands beside this one').toBeGreaterThan(0);
    expect(
      foreign.filter((each) => !/\/pictures\/(cloth|pieces)\//.test(each) || !each.startsWith(`/guides/${OTHER}/`)),
    ).toEqual([]);
    expect(
      paths.filter((each) => /\.(pdf|png)$|\/cards\//.test(each)),
      'what is to print and the cards are left out',
    ).toEqual([]);
    await context.close();
  });
});

describe('a new build', () => {
  /** The same site with one sentence changed, as after another build. */
  const rebuilt = async (): Promise<string> => {
    const folder = path.join(await mkdtemp(path.join(tmpdir(), 'wayfold-rebuilt-')), 'site');
    await cp(site, folder, { recursive: true });
    const file = path.join(folder, GUIDE, 'days', 'index.html');
    await writeFile(file, (await readFile(file, 'utf8')).replace('<h1>', '<h1>Anew: '));
    await writeWorker(folder, GUIDE);
    return folder;
  };

  it('gives the same worker for the same files, and another when one file changes, for that guide alone', async () => {
    const folder = await rebuilt();
    const worker = (of: string, guide: string): Promise<string> => readFile(path.join(of, guide, 'sw.js'), 'utf8');
    expect(await worker(folder, GUIDE)).not.toBe(await worker(site, GUIDE));
    await writeWorker(folder, OTHER);
    expect(await worker(folder, OTHER)).toBe(await worker(site, OTHER));
    await rm(path.dirname(folder), { recursive: true });
  });

  it('takes the place of the old one: the next visit shows it, the old cache goes, the other guide keeps its own', async () => {
    const folder = await rebuilt();
    const { context, page } = await firstVisit();
    const other = await visit.also(context, `${OTHER}/`);
    await ready(other);
    const [before = ''] = (await cacheNames(page)).filter((name) => name.includes(GUIDE));
    const [others = ''] = (await cacheNames(page)).filter((name) => name.includes(OTHER));
    expect(before).not.toBe('');
    expect(others).not.toBe('');
    visit.server.swap(folder);
    await page.goto(`${visit.server.address}${GUIDE}/`);
    await expect.poll(() => cacheNames(page), { timeout: 30_000 }).not.toContain(before);
    const names = await cacheNames(page);
    expect(names.filter((name) => name.includes(GUIDE))).toHaveLength(1);
    expect(names).toContain(others);
    visit.server.signal(false);
    await page.goto(`${visit.server.address}${GUIDE}/days/`);
    expect(await page.locator('h1').textContent()).toContain('Anew: ');
    await context.close();
    await rm(path.dirname(folder), { recursive: true });
  });

  it('that is half gone leaves the last good guide in place', async () => {
    const folder = await rebuilt();
    await rm(path.join(folder, GUIDE, 'packing'), { recursive: true });
    const { context, page } = await firstVisit();
    const before = await cacheNames(page);
    visit.server.swap(folder);
    await page.goto(`${visit.server.address}${GUIDE}/`);
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => undefined);
      const { installing } = registration;
      if (installing !== null)
        await new Promise<void>((resolve) => {
          installing.addEventListener('statechange', () => resolve());
          if (installing.state !== 'installing') resolve();
        });
    });
    visit.server.signal(false);
    await page.goto(`${visit.server.address}${GUIDE}/days/`);
    expect(await page.locator('h1').textContent()).not.toContain('Anew: ');
    expect(await cacheNames(page)).toEqual(expect.arrayContaining([...before]));
    await context.close();
    await rm(path.dirname(folder), { recursive: true });
  });
});

describe('a browser without service workers', () => {
  it('shows the guide all the same', async () => {
    const context = await visit.browser.newContext({ serviceWorkers: 'allow' });
    await context.addInitScript(() => {
      Object.defineProperty(Navigator.prototype, 'serviceWorker', {
        get: () => ({ register: () => Promise.reject(new Error('refused')) }),
      });
    });
    visit.complaints();
    const page = await visit.also(context, `${GUIDE}/looks/`);
    expect(await page.locator('[data-filters]').isVisible()).toBe(true);
    expect(visit.complaints()).toEqual([]);
    await context.close();
  });
});
