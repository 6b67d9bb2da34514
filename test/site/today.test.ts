import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visitSite } from '../browser/visit.ts';
import { builtSite } from './built.ts';

const GUIDE = 'october-by-rail/chestnut-and-rain/';

let visit: Visit;
beforeAll(async () => {
  visit = await visitSite(await builtSite('client'));
});
afterAll(() => visit.close());

const at = async (address: string, now: string, timezoneId = 'Europe/Vienna'): Promise<Page> => {
  const context = await visit.browser.newContext({
    viewport: { width: 390, height: 844 },
    timezoneId,
    serviceWorkers: 'block',
  });
  await context.clock.setFixedTime(new Date(now));
  return visit.also(context, address);
};

const shownDays = (page: Page): Promise<readonly (string | undefined)[]> =>
  page.locator('.today:visible').evaluateAll((days) => days.map((day) => (day as HTMLElement).dataset.day));

describe('the cover by the date', () => {
  it.each([
    ['before the trip the first day, not called today', '2027-09-20T09:00:00Z', '2027-10-02', false],
    ['on the first day that day', '2027-10-02T09:00:00Z', '2027-10-02', true],
    ['in the middle the day it is', '2027-10-06T05:58:00Z', '2027-10-06', true],
    ['on the last day that day', '2027-10-10T20:00:00Z', '2027-10-10', true],
    ['after the trip the first day again', '2027-11-01T09:00:00Z', '2027-10-02', false],
  ])('%s', async (_, now, day, called) => {
    const page = await at(GUIDE, now);
    expect(await shownDays(page)).toEqual([day]);
    expect(await page.locator('.today:visible [data-flag]').isVisible()).toBe(called);
    expect(await page.locator('.route .now').count()).toBe(called ? 1 : 0);
    await page.context().close();
  });

  it("goes by the reader's own calendar: late evening in Vienna is the next day already in Tokyo", async () => {
    const now = '2027-10-04T21:30:00Z';
    const vienna = await at(GUIDE, now);
    expect(await shownDays(vienna)).toEqual(['2027-10-04']);
    const tokyo = await at(GUIDE, now, 'Asia/Tokyo');
    expect(await shownDays(tokyo)).toEqual(['2027-10-05']);
    await vienna.context().close();
    await tokyo.context().close();
  });

  it('shows another day when the address asks for it, without calling it today', async () => {
    const page = await at(`${GUIDE}?day=2027-10-08`, '2027-10-04T09:00:00Z');
    expect(await shownDays(page)).toEqual(['2027-10-08']);
    expect(await page.locator('.today:visible [data-flag]').isVisible()).toBe(false);
    await page.context().close();
  });

  it('shows the picture of the day it is', async () => {
    const page = await at(GUIDE, '2027-10-06T09:00:00Z');
    const hero = page.locator('.today:visible img').first();
    await hero.scrollIntoViewIfNeeded();
    await page.waitForFunction(() =>
      [...document.querySelectorAll<HTMLImageElement>('.today:not([hidden]) .hero img')].every(
        (image) => image.complete && image.naturalWidth > 0,
      ),
    );
    await page.context().close();
  });
});

describe('the days by the date', () => {
  it('opens at today and marks it', async () => {
    const page = await at(`${GUIDE}days/`, '2027-10-07T09:00:00Z');
    const today = page.locator('[data-day="2027-10-07"]');
    expect(await today.locator('[data-flag]').isVisible()).toBe(true);
    expect(await page.locator('[data-flag]:visible').count()).toBe(1);
    const top = await today.evaluate((element) => element.getBoundingClientRect().top);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(400);
    await page.context().close();
  });

  it('opens at the top on any other date, and where the address says', async () => {
    const before = await at(`${GUIDE}days/`, '2027-09-01T09:00:00Z');
    expect(await before.evaluate(() => scrollY)).toBe(0);
    expect(await before.locator('[data-flag]:visible').count()).toBe(0);
    const asked = await at(`${GUIDE}days/#d2027-10-04`, '2027-10-07T09:00:00Z');
    expect(
      await asked.locator('#d2027-10-04').evaluate((day) => Math.abs(day.getBoundingClientRect().top)),
    ).toBeLessThan(100);
    await before.context().close();
    await asked.context().close();
  });
});
