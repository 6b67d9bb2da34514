import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visitSite } from '../browser/visit.ts';
import { builtSite } from './built.ts';

const LOOKS = 'october-by-rail/chestnut-and-rain/looks/';
const NAMES = ['piece', 'occasion', 'warmth', 'dress'] as const;

let visit: Visit;
beforeAll(async () => {
  visit = await visitSite(await builtSite('client'));
});
afterAll(() => visit.close());

interface Tile {
  readonly href: string;
  readonly data: Readonly<Record<string, string>>;
  readonly shown: boolean;
}

const tiles = (page: Page): Promise<readonly Tile[]> =>
  page.locator('[data-look]').evaluateAll((all) =>
    all.map((element) => ({
      href: element.querySelector('a')?.getAttribute('href') ?? '',
      data: { ...(element as HTMLElement).dataset } as Record<string, string>,
      shown: element.getBoundingClientRect().height > 0,
    })),
  );

const choicesOf = (page: Page, name: string): Promise<readonly string[]> =>
  page
    .locator(`select[name=${name}] option`)
    .evaluateAll((all) => all.map((option) => (option as HTMLOptionElement).value));

/** What each filter asks, written once more from the words beside it: with a piece, for an occasion, on a day of about so many degrees, of a dress code. */
const WISHES: Readonly<Record<(typeof NAMES)[number], (data: Tile['data'], value: string) => boolean>> = {
  piece: ({ pieces = '' }, value) => ` ${pieces} `.includes(` ${value} `),
  occasion: ({ occasions = '' }, value) => ` ${occasions} `.includes(` ${value} `),
  warmth: ({ low, high }, value) => Number(value) >= Number(low) && Number(value) <= Number(high),
  dress: ({ dress = '' }, value) => ` ${dress} `.includes(` ${value} `),
};

describe('the filters of the looks', () => {
  it('offer pieces, occasions, weather and dress codes, each with "any" first', async () => {
    const page = await visit.open(LOOKS);
    expect(await page.locator('[data-show-all]').isVisible(), 'all are shown').toBe(false);
    for (const name of NAMES) {
      const choices = await choicesOf(page, name);
      expect(choices[0], name).toBe('');
      expect(choices.length, name).toBeGreaterThan(2);
    }
    await page.context().close();
  });

  it.each(NAMES)('by %s: show what has it and nothing else, for every choice', async (name) => {
    const page = await visit.open(LOOKS);
    const found = new Set<number>();
    for (const value of (await choicesOf(page, name)).slice(1)) {
      await page.selectOption(`select[name=${name}]`, value);
      const all = await tiles(page);
      for (const { data, shown, href } of all) expect(shown, `${value} ${href}`).toBe(WISHES[name](data, value));
      const shown = all.filter((tile) => tile.shown).length;
      expect(Number(await page.locator('[data-shown]').textContent())).toBe(shown);
      expect(new URL(page.url()).searchParams.get(name)).toBe(value);
      found.add(shown);
    }
    expect(Math.min(...found), 'the narrowest choice').toBeLessThan((await tiles(page)).length);
    await page.context().close();
  });

  it('stand in the address: the same address shows the same looks, and going back from a look finds them again', async () => {
    const page = await visit.open(LOOKS);
    const [, piece = ''] = await choicesOf(page, 'piece');
    await page.selectOption('select[name=piece]', piece);
    const before = (await tiles(page)).filter(({ shown }) => shown).map(({ href }) => href);
    const address = page.url();
    await page.locator('[data-look]:visible a').first().click();
    await page.waitForURL(/look-\d+/);
    await page.goBack();
    expect(page.url()).toBe(address);
    await page.waitForFunction(
      (wanted) => document.querySelectorAll('[data-look]:not([hidden])').length === wanted,
      before.length,
    );
    expect(await page.locator('select[name=piece]').inputValue()).toBe(piece);
    const sent = await visit.also(page.context(), address.slice(visit.server.address.length));
    expect((await tiles(sent)).filter(({ shown }) => shown).map(({ href }) => href)).toEqual(before);
    await page.context().close();
  });

  it('say so when nothing matches, and let go of every wish at once', async () => {
    const page = await visit.open(LOOKS);
    const all = await tiles(page);
    let asked = '';
    for (const piece of (await choicesOf(page, 'piece')).slice(1)) {
      for (const occasion of (await choicesOf(page, 'occasion')).slice(1)) {
        const any = all.some(({ data }) => WISHES.piece(data, piece) && WISHES.occasion(data, occasion));
        if (!any) asked = `piece=${piece}&occasion=${occasion}`;
      }
    }
    expect(asked).not.toBe('');
    await page.goto(`${visit.server.address}${LOOKS}?${asked}`);
    expect(await page.locator('[data-none]').isVisible()).toBe(true);
    expect((await tiles(page)).some(({ shown }) => shown)).toBe(false);
    await page.locator('[data-show-all]').click();
    expect(await page.locator('[data-show-all]').isVisible(), 'there is nothing more to show').toBe(false);
    expect((await tiles(page)).every(({ shown }) => shown)).toBe(true);
    expect(await page.locator('[data-none]').isVisible()).toBe(false);
    expect(new URL(page.url()).search).toBe('');
    expect(await page.evaluate(() => (document.activeElement as HTMLSelectElement | null)?.name)).toBe('piece');
    await page.context().close();
  });

  it.each(['?piece=no-such-piece', '?warmth=hot', '?piece=%22%3E%3Cimg%20src%3Dx%3E', '?colour=red'])(
    'ask nothing by words they do not know: %s',
    async (search) => {
      const page = await visit.open(LOOKS + search);
      expect((await tiles(page)).every(({ shown }) => shown)).toBe(true);
      expect(visit.complaints()).toEqual([]);
      await page.context().close();
    },
  );

  it('go along to the looks of the other mood', async () => {
    const page = await visit.open(`${LOOKS}?dress=smart-casual`);
    const [dress = ''] = (await choicesOf(page, 'dress')).slice(1);
    await page.selectOption('select[name=dress]', dress);
    await page.locator('[data-carry]').first().click();
    await page.waitForURL(/ink-and-rose\/looks\//);
    expect(new URL(page.url()).searchParams.get('dress')).toBe(dress);
    expect(await page.locator('select[name=dress]').inputValue()).toBe(dress);
    await page.context().close();
  });
});
