import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visitSite } from '../browser/visit.ts';
import { builtSite } from './built.ts';

const LIST = 'october-by-rail/chestnut-and-rain/packing/';

let visit: Visit;
beforeAll(async () => {
  visit = await visitSite(await builtSite('client'));
});
afterAll(() => visit.close());

const tick = (page: Page, at: number): Promise<void> => page.locator('.ticks-l label').nth(at).click();
const ticked = (page: Page): Promise<number> => page.locator('input[data-tick]:checked').count();
const counted = async (page: Page): Promise<number> => Number(await page.locator('[data-ticks-count]').textContent());

describe('ticks of the packing list', () => {
  it('survive a reload and are counted', async () => {
    const page = await visit.open(LIST);
    expect(await counted(page)).toBe(0);
    for (const at of [0, 3, 5]) await tick(page, at);
    expect(await counted(page)).toBe(3);
    await page.reload();
    expect(await counted(page)).toBe(3);
    expect(
      await page
        .locator('input[data-tick]')
        .evaluateAll((boxes) => boxes.flatMap((box, at) => ((box as HTMLInputElement).checked ? at : []))),
    ).toEqual([0, 3, 5]);
    await tick(page, 3);
    await page.reload();
    expect(await ticked(page)).toBe(2);
    await page.context().close();
  });

  it('say out of how many, and every line of the list has one', async () => {
    const page = await visit.open(LIST);
    const boxes = await page.locator('input[data-tick]').count();
    expect(boxes).toBeGreaterThan(19);
    expect(await page.locator('[data-ticks-tools]').textContent()).toContain(`/ ${boxes}`);
    expect(await page.locator('.ticks-l li').count()).toBe(boxes);
    const ids = await page
      .locator('input[data-tick]')
      .evaluateAll((all) => all.map((box) => (box as HTMLElement).dataset.tick));
    expect(new Set(ids).size).toBe(boxes);
    await page.context().close();
  });

  it('are kept for each capsule by itself', async () => {
    const page = await visit.open(LIST);
    await tick(page, 0);
    const other = await visit.also(page.context(), 'october-by-rail/ink-and-rose/packing/');
    expect(await ticked(other)).toBe(0);
    await page.context().close();
  });

  it('are taken back only after a second thought', async () => {
    const page = await visit.open(LIST);
    await tick(page, 0);
    await tick(page, 1);
    page.once('dialog', (dialog) => dialog.dismiss());
    await page.locator('[data-ticks-reset]').click();
    expect(await ticked(page)).toBe(2);
    page.once('dialog', (dialog) => dialog.accept());
    await page.locator('[data-ticks-reset]').click();
    expect(await ticked(page)).toBe(0);
    await page.reload();
    expect(await counted(page)).toBe(0);
    await page.context().close();
  });

  it('are saved as a text file, a line a thing', async () => {
    const page = await visit.open(LIST, { acceptDownloads: true });
    await tick(page, 1);
    const names = await page.locator('.ticks-l .nm').allTextContents();
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('[data-ticks-export]').click()]);
    expect(download.suggestedFilename()).toBe('october-by-rail-chestnut-and-rain.txt');
    const lines = (await readFile(await download.path(), 'utf8')).trimEnd().split('\n');
    expect(lines).toEqual(names.map((name, at) => `[${at === 1 ? 'x' : ' '}] ${name}`));
    await page.context().close();
  });

  it('are worked by keyboard', async () => {
    const page = await visit.open(LIST);
    await page.locator('input[data-tick]').first().focus();
    await page.keyboard.press('Space');
    expect(await counted(page)).toBe(1);
    await page.context().close();
  });
});

describe('a browser that keeps nothing', () => {
  const REFUSALS: readonly (readonly [string, () => void])[] = [
    [
      'is full',
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
    ],
    [
      'refuses',
      () => {
        Object.defineProperty(globalThis, 'localStorage', {
          get() {
            throw new DOMException('denied', 'SecurityError');
          },
        });
      },
    ],
  ];

  it.each(REFUSALS)('storage that %s: says so, and ticks and counts all the same', async (_, refuse) => {
    const context = await visit.browser.newContext({ serviceWorkers: 'block' });
    await context.addInitScript(refuse);
    const page = await visit.also(context, LIST);
    await tick(page, 0);
    await tick(page, 2);
    expect(await counted(page)).toBe(2);
    expect(await page.locator('[data-ticks-refused]').isVisible()).toBe(true);
    expect(visit.complaints()).toEqual([]);
    await context.close();
  });

  it.each(['{', '5', '{"a":1}', '[1,null,"no such thing"]', 'null'])(
    'kept text that makes no sense, %s, is no ticks',
    async (text) => {
      const page = await visit.open(LIST);
      await page.evaluate(
        (kept) => localStorage.setItem('wayfold ticks october-by-rail/chestnut-and-rain', kept),
        text,
      );
      await page.reload();
      expect(await ticked(page)).toBe(0);
      await tick(page, 0);
      await page.reload();
      expect(await ticked(page)).toBe(1);
      expect(visit.complaints()).toEqual([]);
      await page.context().close();
    },
  );

  it('says nothing where ticks are kept', async () => {
    const page = await visit.open(LIST);
    await tick(page, 0);
    expect(await page.locator('[data-ticks-refused]').isVisible()).toBe(false);
    await page.context().close();
  });
});
