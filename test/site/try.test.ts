import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readContent } from '../../lib/content/index.ts';
import { random } from '../../lib/draw/kit/index.ts';
import { engineFor, piecesOfCapsule } from '../../lib/guide/index.ts';
import type { WardrobeEngine } from '../../lib/outfit/index.ts';
import { told } from '../../lib/site/browser/try/told.ts';
import type { TryData } from '../../lib/site/try-data.ts';
import { createFormats, languageOf, type Phrase, say } from '../../lib/words/index.ts';
import { DESK, PHONE, type Visit, visitSite } from '../browser/visit.ts';
import { PROJECT, run } from '../cli/run.ts';
import { builtSite } from './built.ts';

const RAIL = 'october-by-rail/chestnut-and-rain';
const INK = 'october-by-rail/ink-and-rose';
const BEACH = 'wedding-in-the-alentejo/terracotta-and-sage';

let visit: Visit;
beforeAll(async () => {
  visit = await visitSite(await builtSite('client'));
});
afterAll(() => visit.close());

interface Read {
  readonly state: string | null;
  readonly reasons: readonly string[];
  readonly missing: readonly string[];
  readonly advice: readonly string[];
}

/** Picks exactly these pieces, as a reader would leave the boxes, and reads what the page says. */
const readPage = (page: Page, sets: readonly (readonly string[])[]): Promise<readonly Read[]> =>
  page.evaluate((wanted) => {
    const boxes = [...document.querySelectorAll<HTMLInputElement>('input[name=piece]')];
    const lines = (name: string): string[] =>
      [...document.querySelectorAll(`[data-try-${name}] li`)].map(({ textContent }) => textContent ?? '');
    return wanted.map((ids) => {
      for (const box of boxes) box.checked = ids.includes(box.value);
      boxes[0]?.dispatchEvent(new Event('change', { bubbles: true }));
      return {
        state: document.querySelector('[data-try-state]')?.getAttribute('data-try-state') ?? null,
        reasons: lines('reasons'),
        missing: lines('missing'),
        advice: lines('advice'),
      };
    });
  }, sets);

/** The engine of a capsule of the demo, and its sentences in a language. */
const engineOf = async (guide: string, language?: string) => {
  const { content } = await readContent(path.join(PROJECT, 'content'));
  const [trip, name] = guide.split('/');
  const capsule = content?.trips.find(({ brief }) => brief.id === trip)?.capsules.find(({ id }) => id === name);
  if (content === undefined || capsule === undefined) throw new Error(`no capsule ${guide}`);
  const pieces = piecesOfCapsule(capsule, content.wardrobes.get(capsule.wardrobe) ?? []);
  const studio = language === undefined ? content.studio : { ...content.studio, language };
  const formats = createFormats(studio);
  return {
    engine: engineFor(pieces, capsule, content.houseRules),
    ids: pieces.map(({ id }) => id),
    said: (phrase: Phrase) => say(languageOf(studio.language), formats, phrase),
  };
};

const expected = (engine: WardrobeEngine, said: (phrase: Phrase) => string, ids: readonly string[]): Read => {
  const { goes, complete, reasons, missing } = engine.explain(ids);
  const of = (severity: string) => reasons.filter((reason) => reason.severity === severity);
  return {
    state: goes ? (complete ? 'goes' : 'so far') : 'not',
    reasons: of('rules out').map(({ message }) => said(message)),
    missing: goes ? missing.map(said) : [],
    advice: of('lowers the score').map(({ message }) => said(message)),
  };
};

/** Sets of one to eight pieces; half of them begin with looks of the capsule, so that many go and many nearly do. */
const randomSets = (engine: WardrobeEngine, ids: readonly string[], count: number): readonly (readonly string[])[] => {
  const chance = random(20271002);
  const oneOf = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const looks = engine.varied(12).map(({ look }) => look.worn.map(({ piece }) => piece));
  return Array.from({ length: count }, (_, index) => {
    const set = new Set(index % 2 === 0 ? oneOf(looks) : []);
    const size = 1 + Math.floor(chance() * 8);
    while (set.size < size) set.add(oneOf(ids));
    if (chance() < 0.5) set.delete(oneOf([...set]));
    if (set.size === 0) set.add(oneOf(ids));
    return [...set];
  });
};

const agree = async (open: Visit, guide: string, count: number, language?: string): Promise<ReadonlySet<string>> => {
  const { engine, ids, said } = await engineOf(guide, language);
  const sets = randomSets(engine, ids, count);
  const page = await open.open(`${guide}/try/`);
  const read = await readPage(page, sets);
  for (const [index, set] of sets.entries()) expect(read[index], set.join(' ')).toEqual(expected(engine, said, set));
  expect(open.complaints()).toEqual([]);
  await page.context().close();
  return new Set(read.map(({ state }) => state ?? ''));
};

describe('the page for trying says what the engine says', () => {
  it.each([
    [RAIL, 130],
    [INK, 130],
  ])('of %s, on %i random sets of pieces', async (guide, count) => {
    expect(await agree(visit, guide, count)).toEqual(new Set(['goes', 'so far', 'not']));
  });

  /** The page leaves the span of dress codes to the page of a look. */
  const isOfDress = (line: string): boolean =>
    /^(Dress codes?:|No (plainer|dressier) than )|no dress code in common/.test(line);

  it('and what the command line says', async () => {
    const { engine, ids } = await engineOf(RAIL);
    const sets = randomSets(engine, ids, 24).filter(({ length }) => length > 1);
    expect(sets.length).toBeGreaterThan(15);
    const page = await visit.open(`${RAIL}/try/`);
    const read = await readPage(page, sets);
    for (const [index, set] of sets.entries()) {
      const { out } = await run(['explain', RAIL, ...set]);
      const { state, reasons = [], advice = [], missing = [] } = read[index] ?? {};
      const answer = { goes: 'Yes', 'so far': 'Yes, as far as it goes', not: 'No' }[state ?? ''];
      expect(out.startsWith(`${answer}: `), set.join(' ')).toBe(true);
      const lines = out
        .split('\n')
        .slice(1)
        .map((line) => line.replace(/^ {2}((no|but) +)?/, '').replace(/ \[[^\]]+\]$/, ''))
        .filter((line) => !isOfDress(line));
      const told = [...reasons, ...advice, ...missing].filter((line) => !isOfDress(line));
      expect(told, set.join(' ')).toEqual(lines);
    }
    await page.context().close();
  });

  it('in German as well', async () => {
    const german = await visitSite(await builtSite('german'));
    expect((await agree(german, BEACH, 60, 'de')).size).toBe(3);
    await german.close();
  });
});

const LOOK = ['rust-fine-roll-neck', 'charcoal-wide-trousers', 'herringbone-coat', 'brown-lace-up-boots'];
const asked = (ids: readonly string[]): string => `?${ids.map((id) => `piece=${id}`).join('&')}`;
const checked = (page: Page): Promise<readonly string[]> =>
  page
    .locator('input[name=piece]:checked')
    .evaluateAll((all) => all.map((box) => (box as HTMLInputElement).value).sort());
const lain = (page: Page) =>
  page.locator('[data-try-board] image').evaluateAll((all) =>
    all.map((image) => ({
      file: (image.getAttribute('href') ?? '').split('/').at(-1) ?? '',
      matrix: (image.getAttribute('transform') ?? '').match(/-?[\d.]+(e-?\d+)?/g)?.map(Number) ?? [],
      box: (image as SVGGraphicsElement).getBoundingClientRect().toJSON() as DOMRect,
      width: Number(image.getAttribute('width')),
    })),
  );
const drawn = (page: Page, count: number) =>
  page.waitForFunction((n) => document.querySelectorAll('[data-try-board] image').length === n, count);

describe('the address', () => {
  it('holds the pieces: sent on, it opens the same combination with the same verdict and the same lay', async () => {
    const page = await visit.open(`${RAIL}/try/`);
    for (const id of LOOK) await page.locator(`label:has([value="${id}"])`).click();
    await drawn(page, LOOK.length);
    expect(new URL(page.url()).searchParams.getAll('piece').toSorted()).toEqual(LOOK.toSorted());
    const sent = await visit.open(page.url().slice(visit.server.address.length));
    await drawn(sent, LOOK.length);
    expect(await checked(sent)).toEqual(LOOK.toSorted());
    expect(await sent.locator('.told').textContent()).toBe(await page.locator('.told').textContent());
    expect((await lain(sent)).map(({ matrix }) => matrix)).toEqual((await lain(page)).map(({ matrix }) => matrix));
    await sent.getByRole('button', { name: 'Start again' }).click();
    expect(new URL(sent.url()).search).toBe('');
    expect(await checked(sent)).toEqual([]);
    expect(visit.complaints()).toEqual([]);
    await page.context().close();
    await sent.context().close();
  });

  it('of an old link says which piece this book does not have, and keeps the rest', async () => {
    const page = await visit.open(`${RAIL}/try/${asked(['gone-with-the-moths', ...LOOK])}&piece=%3Cimg%20src%3Dx%3E`);
    expect(await checked(page)).toEqual(LOOK.toSorted());
    expect(await page.locator('[data-try-state]').getAttribute('data-try-state')).toBe('goes');
    const said = await page.locator('[data-try-advice]').textContent();
    expect(said).toContain('There is no piece "gone-with-the-moths" here.');
    expect(said).toContain('<img src=x>');
    expect(visit.complaints()).toEqual([]);
    await page.context().close();
  });

  it('is where a look, a pair and the menu lead', async () => {
    const page = await visit.open(`${RAIL}/looks/look-01/`);
    const worn = await page
      .locator('.made .plist a')
      .evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).pathname.split('/').at(-2)));
    await page.getByRole('link', { name: 'Change this look' }).click();
    await page.waitForURL(/\/try\/\?/);
    expect(await checked(page)).toEqual(worn.toSorted());
    await page.getByRole('link', { name: /^This is look 1\b/ }).click();
    await page.waitForURL(/look-01/);
    await page.locator('.swaps a').first().click();
    await page.waitForURL(/\/try\/\?/);
    expect(await page.locator('[data-try-state]').getAttribute('data-try-state')).toBe('goes');
    expect(await checked(page)).not.toEqual(worn.toSorted());
    await page.getByRole('navigation').getByRole('link', { name: 'Try' }).click();
    await page.waitForURL(/\/try\/$/);
    expect(await checked(page)).toEqual([]);
    await page.context().close();
  });
});

describe('the flat lay', () => {
  it('shows every picked piece inside the paper, all at one scale, and names them', async () => {
    const page = await visit.open(`${RAIL}/try/${asked([...LOOK, 'gold-hoops', 'tan-flap-bag'])}`, { viewport: DESK });
    await drawn(page, 6);
    const pieces = await lain(page);
    const scales = pieces.map(({ matrix: [a = 0, b = 0] }) => Math.hypot(a, b));
    for (const scale of scales) expect(scale).toBeCloseTo(scales[0] as number, 6);
    const paper = await page.locator('[data-try-board]').evaluate((svg) => svg.getBoundingClientRect().toJSON());
    for (const { box, file } of pieces) {
      expect(box.left, file).toBeGreaterThan(paper.left - 4);
      expect(box.right, file).toBeLessThan(paper.right + 4);
      expect(box.top, file).toBeGreaterThan(paper.top - 4);
      expect(box.bottom, file).toBeLessThan(paper.bottom + 4);
    }
    // from memory: a woman's coat is some 110 to 125 cm long laid flat, a pair of trousers 95 to 115
    const tallOf = (name: string): number => {
      const { box } = pieces.find(({ file }) => file.startsWith(name)) ?? { box: { height: 0 } };
      return box.height;
    };
    expect(tallOf('herringbone-coat') / tallOf('charcoal-wide-trousers')).toBeGreaterThan(0.9);
    expect(tallOf('herringbone-coat') / tallOf('rust-fine-roll-neck')).toBeGreaterThan(1.3);
    const label = (await page.locator('[data-try-board]').getAttribute('aria-label')) ?? '';
    for (const name of ['Rust fine roll-neck', 'Charcoal wide trousers', 'Gold hoops']) expect(label).toContain(name);
    await page.context().close();
  });

  it('takes the pictures made for the night when the page is dark, and changes with it', async () => {
    const page = await visit.open(`${RAIL}/try/${asked(LOOK)}`, { colorScheme: 'dark' });
    await drawn(page, LOOK.length);
    for (const { file } of await lain(page)) expect(file).toContain('-night-');
    await page.emulateMedia({ colorScheme: 'light' });
    await page.waitForFunction(() => document.querySelector('[data-try-board] image[href*=-clear-]') !== null);
    await page.context().close();
  });

  it('lays out everything there is, or says that there is no room', async () => {
    const page = await visit.open(`${RAIL}/try/`);
    const all = await page
      .locator('input[name=piece]')
      .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
    await page.goto(`${visit.server.address}${RAIL}/try/${asked(all)}`);
    await page.waitForFunction(
      (n) =>
        document.querySelectorAll('[data-try-board] image').length === n ||
        document.querySelector('[data-try-crowded]')?.textContent !== '',
      all.length,
    );
    expect(visit.complaints()).toEqual([]);
    await page.context().close();
  });
});

describe('by keyboard alone, by ear and without help', () => {
  it('every piece is reached with Tab, picked with Space, seen to have the focus, and never hidden by the board', async () => {
    const page = await visit.open(`${RAIL}/try/`);
    const boxes = page.locator('input[name=piece]');
    const wanted = await boxes.evaluateAll((all) => all.map((box) => (box as HTMLInputElement).value));
    const reached: string[] = [];
    for (let step = 0; step < wanted.length + 20 && reached.length < wanted.length; step += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const { activeElement } = document;
        if (!(activeElement instanceof HTMLInputElement)) return undefined;
        const label = activeElement.labels?.[0] as HTMLElement;
        const box = label.getBoundingClientRect();
        const board = document.querySelector('.fitting')?.getBoundingClientRect();
        return {
          id: activeElement.value,
          ring: getComputedStyle(label).outlineStyle,
          free: box.top >= (board?.bottom ?? 0) - 1 && box.bottom <= innerHeight + 1,
        };
      });
      if (at === undefined) continue;
      reached.push(at.id);
      expect(at, at.id).toMatchObject({ ring: 'dashed', free: true });
      if (LOOK.includes(at.id)) await page.keyboard.press('Space');
    }
    expect(reached).toEqual(wanted);
    expect(await checked(page)).toEqual(LOOK.toSorted());
    expect(await page.locator('[data-try-verdict]').textContent()).toBe('They go together.');
    while (!(await page.evaluate(() => document.activeElement?.hasAttribute('data-try-clear'))))
      await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await checked(page)).toEqual([]);
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.value)).toBe(wanted[0]);
    expect(visit.complaints()).toEqual([]);
    await page.context().close();
  });

  it('marks what would not go with the pieces picked, in words too, and takes a rival for a change', async () => {
    const { engine } = await engineOf(RAIL);
    const page = await visit.open(`${RAIL}/try/${asked(['striped-boat-neck'])}`);
    await drawn(page, 1);
    const against = (id: string) =>
      page
        .getByRole('checkbox', { name: /does not go with these/ })
        .and(page.locator(`[value="${id}"]`))
        .count();
    expect(engine.explain(['striped-boat-neck', 'tartan-pleated-skirt']).goes).toBe(false);
    expect(await against('tartan-pleated-skirt')).toBe(1);
    expect(engine.explain(['striped-boat-neck', 'charcoal-wide-trousers']).goes).toBe(true);
    expect(await against('charcoal-wide-trousers')).toBe(0);
    // another top cannot be worn with it, but could be worn instead
    expect(engine.explain(['striped-boat-neck', 'white-poplin-shirt']).goes).toBe(false);
    expect(await against('white-poplin-shirt')).toBe(0);
    await page.context().close();
  });

  it.each([PHONE, DESK])('is free of faults against WCAG 2.2 AA in each state, %o', async (viewport) => {
    const page = await visit.open(`${RAIL}/try/`, { viewport, bypassCSP: true });
    await page.addScriptTag({ content: axe.source });
    for (const set of [
      [],
      LOOK,
      ['striped-boat-neck', 'tartan-pleated-skirt', 'olive-rain-jacket', 'printed-neckerchief', 'chestnut-loafers'],
    ]) {
      await readPage(page, [set]);
      await page.waitForTimeout(100);
      const faults = await page.evaluate(async () => {
        const tool = (globalThis as unknown as { axe: typeof axe }).axe;
        const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
        return (await tool.run({ runOnly: tags })).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
      });
      expect(faults, set.join(' ')).toEqual([]);
    }
    const region = page.locator('[data-try-state]');
    expect(await region.getAttribute('aria-live')).toBe('polite');
    await page.context().close();
  });

  it('offers looks to begin with until something is picked; each is there whole, and goes', async () => {
    const page = await visit.open(`${RAIL}/try/`, { viewport: DESK });
    const starts = page.locator('.starts a');
    expect(await starts.count()).toBe(6);
    expect(await starts.first().isVisible()).toBe(true);
    expect(await page.locator('[data-try-board]').isVisible(), 'nothing to lay out yet').toBe(false);
    await starts.nth(1).click();
    await page.waitForURL(/\?piece=/);
    expect(await page.locator('[data-try-state]').getAttribute('data-try-state')).toBe('goes');
    expect(await page.locator('[data-try-look]').isVisible(), 'it is a look of the book').toBe(true);
    expect(await page.locator('[data-try-board]').isVisible()).toBe(true);
    expect(await starts.first().isVisible()).toBe(false);
    await page.locator('[data-try-clear]').click();
    expect(await starts.first().isVisible()).toBe(true);
    await page.context().close();
  });

  it('says without JavaScript that it needs it, and where the answer is otherwise', async () => {
    const page = await visit.open(`${RAIL}/try/`, { javaScriptEnabled: false });
    expect(await page.locator('[data-try-needs]').textContent()).toContain('needs JavaScript');
    expect(await page.locator('[data-try]').isVisible()).toBe(false);
    await page.locator('[data-try-needs] a').click();
    expect(page.url()).toMatch(/pairs\/$/);
    await page.context().close();
  });
});

describe('the weight', () => {
  it.each(['client', 'german'] as const)(
    'of all script of the page stays under 20 kB on the wire: %s',
    async (name) => {
      const site = await builtSite(name);
      const assets = await readdir(path.join(site, 'assets'));
      const page = await readFile(path.join(site, name === 'client' ? RAIL : BEACH, 'try', 'index.html'), 'utf8');
      const scripts = assets.filter((file) => page.includes(`assets/${file}"`) && file.endsWith('.js'));
      expect(scripts).toHaveLength(2);
      let bytes = 0;
      for (const file of scripts) bytes += gzipSync(await readFile(path.join(site, 'assets', file))).length;
      expect(bytes).toBeLessThan(20_000);
      expect(page.match(/<script(?![^>]*\bsrc=)/)).toBeNull();
    },
  );
});

describe('a piece that the client refuses', () => {
  it('never goes, whatever the rules say of it', () => {
    const words = {
      goes: 'yes',
      goesSoFar: 'so far',
      not: 'no',
      empty: '',
      board: '',
      crowded: '',
      copied: '',
      heading: '',
    };
    const data = {
      words,
      looks: {},
      pieces: { jumper: { refused: 'Jumper (wool) meets “wool”.' } },
    } as unknown as TryData;
    const verdict = { goes: true, complete: true, reasons: [], missing: [] };
    expect(told(['jumper'], verdict, data, () => '')).toMatchObject({
      state: 'not',
      verdict: 'no',
      reasons: ['Jumper (wool) meets “wool”.'],
    });
    expect(told(['shirt'], verdict, data, () => '')).toMatchObject({ state: 'goes', verdict: 'yes', reasons: [] });
  });
});
