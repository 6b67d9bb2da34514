import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DESK, PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { builtSite, kindsOf, pagesOf } from './built.ts';

const GUIDE = 'october-by-rail/chestnut-and-rain';
/** Web Content Accessibility Guidelines 2.2, levels A and AA, as axe-core tests them. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

let visit: Visit;
let pages: readonly string[];
let kinds: ReadonlyMap<string, string>;
beforeAll(async () => {
  const site = await builtSite('demo');
  visit = await visitSite(site);
  pages = await pagesOf(site);
  kinds = kindsOf(pages, GUIDE);
});
afterAll(() => visit.close());

const violations = async (page: Page, address: string): Promise<readonly string[]> => {
  await page.goto(visit.server.address + address);
  // What is folded away is to be read as well.
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  await page.addScriptTag({ content: axe.source });
  return page.evaluate(async (runOnly) => {
    const tool = (globalThis as unknown as { axe: typeof axe }).axe;
    const { violations: found } = await tool.run({ runOnly });
    return found.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary ?? ''}`),
    );
  }, RULES);
};

const everyViolation = async (
  addresses: Iterable<string>,
  options: Parameters<Visit['open']>[1],
): Promise<readonly string[]> => {
  const page = await visit.open('', { bypassCSP: true, reducedMotion: 'reduce', ...options });
  const all: string[] = [];
  for (const address of addresses) for (const found of await violations(page, address)) all.push(`${address} ${found}`);
  await page.context().close();
  return all;
};

describe('axe finds nothing at WCAG 2.2 AA', () => {
  it('on every page of a guide, by day', async () => {
    expect(
      await everyViolation(
        pages.filter((page) => page.startsWith(`${GUIDE}/`)),
        { viewport: PHONE, colorScheme: 'light' },
      ),
    ).toEqual([]);
  });

  it.each([
    ['light', DESK],
    ['dark', PHONE],
    ['dark', DESK],
  ] as const)('on every kind of page, %s, on a screen of %o', async (colorScheme, viewport) => {
    expect(await everyViolation(['', ...kinds.values()], { viewport, colorScheme })).toEqual([]);
  });

  it.each(['light', 'dark'] as const)('in the accent colours of every guide, %s', async (colorScheme) => {
    const covers = pages
      .filter((page) => page.split('/').length === 3)
      .flatMap((page) => [page, `${page}looks/look-01/`, `${page}days/`]);
    expect(covers.length).toBeGreaterThan(8);
    expect(await everyViolation(covers, { viewport: PHONE, colorScheme })).toEqual([]);
  });
});

/** Where the focus is: what it is on, where it lies, and whether something marks it. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    // A tick box is drawn by the mark beside it.
    const marked = [element, element.nextElementSibling, element.closest('label')].filter((each) => each !== null);
    const { top, left, width, height } = element.getBoundingClientRect();
    return {
      tag: element.tagName.toLowerCase(),
      text: (element.textContent ?? '').trim().slice(0, 40),
      href: element.getAttribute('href') ?? '',
      seen: width > 0 && height > 0,
      top: top + scrollY,
      left,
      outlined: marked.some((each) => {
        const { outlineStyle, outlineWidth } = getComputedStyle(each);
        return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
      }),
    };
  });

/** Tab stops of a page, by pressing the key until the focus leaves the page. */
const tabStops = async (page: Page) => {
  const stops = [];
  for (let pressed = 0; pressed < 400; pressed += 1) {
    await page.keyboard.press('Tab');
    const stop = await focused(page);
    if (stop.tag === 'body') break;
    stops.push(stop);
  }
  return stops;
};

describe('by keyboard alone', () => {
  it('the first stop leads past the navigation, and is seen once it has the focus', async () => {
    for (const address of ['', ...kinds.values()]) {
      const page = await visit.open(address, { viewport: DESK });
      await page.keyboard.press('Tab');
      const skip = await focused(page);
      expect(skip.href, address).toBe('#content');
      const box = await page.locator('.skip').boundingBox();
      expect(box?.width ?? 0, address).toBeGreaterThan(40);
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      const next = await page.evaluate(() => {
        const main = document.querySelector('main');
        return (
          main?.querySelector('a, summary, select, button, input, [tabindex]') === null ||
          main?.contains(document.activeElement)
        );
      });
      expect(next, `${address}: the next stop is in the page`).toBe(true);
      await page.context().close();
    }
  });

  it.each(['cover', 'looks', 'packing', 'one of looks', 'pairs', 'days'])(
    'every stop of %s is seen, is marked, and comes in the order of the text',
    async (kind) => {
      const page = await visit.open(kinds.get(kind) ?? '', { viewport: DESK });
      const stops = await tabStops(page);
      expect(stops.length).toBeGreaterThan(8);
      expect(
        stops.filter(({ seen, outlined }) => !seen || !outlined).map(({ tag, text, href }) => `${tag} ${text} ${href}`),
      ).toEqual([]);
      const inOrder = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('[tabindex]')].every(({ tabIndex }) => tabIndex <= 0),
      );
      expect(inOrder).toBe(true);
      await page.context().close();
    },
  );

  it('filters by keyboard', async () => {
    const page = await visit.open(kinds.get('looks') ?? '', { viewport: DESK });
    await page.locator('select[name=piece]').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    expect(new URL(page.url()).searchParams.get('piece')).not.toBeNull();
    await page.context().close();
  });
});

describe('motion', () => {
  it('there is none: nothing moves by itself, and nothing glides, whatever the reader prefers', async () => {
    for (const reducedMotion of ['reduce', 'no-preference'] as const) {
      for (const address of kinds.values()) {
        const page = await visit.open(address, { reducedMotion });
        const moving = await page.evaluate(() => ({
          running: document.getAnimations().length,
          gliding: [...document.querySelectorAll('*')].filter((element) => {
            const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
            return (
              animationName !== 'none' ||
              scrollBehavior === 'smooth' ||
              transitionDuration.split(', ').some((time) => time !== '0s')
            );
          }).length,
        }));
        expect(moving, address).toEqual({ running: 0, gliding: 0 });
        await page.context().close();
      }
    }
  });
});
