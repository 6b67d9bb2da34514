import { readFile } from 'node:fs/promises';
import path from 'node:path';
import axe from 'axe-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { DESK, PHONE, visitSite } from '../browser/visit.ts';
import { builtSite, pagesOf } from './built.ts';

const RAIL = 'october-by-rail';
const WEDDING = 'wedding-in-the-alentejo';
let demo: string;
let client: string;
let german: string;
beforeAll(async () => {
  demo = await builtSite('demo');
  client = await builtSite('client');
  german = await builtSite('german');
}, 900_000);

const page = (site: string, address: string): Promise<string> =>
  readFile(path.join(site, address, 'index.html'), 'utf8');
const told = (html: string): string =>
  html
    .replaceAll(/<(style|script)[\s\S]*?<\/\1>/g, '')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', '’')
    .replaceAll(/\s+/g, ' ');

describe('the page of two moods', () => {
  it('is there for every capsule that has another of its wardrobe, and for no other', async () => {
    const pages = (await pagesOf(demo)).filter((file) => file.endsWith('/moods/'));
    expect(pages.toSorted()).toEqual(
      ['chestnut-and-rain', 'ink-and-rose'].map((capsule) => `${RAIL}/${capsule}/moods/`),
    );
    expect(await page(demo, `${WEDDING}/linen-and-ink`)).not.toContain('href="./moods/"');
  });

  it('sets the list side by side, counts both together, and shows looks of both', async () => {
    const html = await page(demo, `${RAIL}/chestnut-and-rain/moods`);
    const text = told(html);
    expect(text).toContain('19 and 19 pieces, of which 4 are shared, make 34 pieces together.');
    expect(text).toMatch(/Together they make \d+ core, [\d,]+ layered and [\d,]+ complete looks\./);
    const table = /<table class="lines">[\s\S]*?<\/table>/.exec(html)?.[0] ?? '';
    expect([...table.matchAll(/<th scope="row">/g)]).toHaveLength(8);
    expect(told(table)).toContain('Ink knitted dress');
    expect([...html.matchAll(/<ol class="crossed">/g)]).toHaveLength(1);
    const looks = [...html.matchAll(/<div class="drawn">([\s\S]*?)<\/div><ul class="plist">([\s\S]*?)<\/ul>/g)];
    expect(looks.length).toBeGreaterThan(2);
    // each piece is drawn and named
    for (const [, drawn = '', named = ''] of looks)
      expect([...drawn.matchAll(/<picture>/g)]).toHaveLength([...named.matchAll(/<li>/g)].length);
  });
});

describe('the page of travellers', () => {
  it('is there for each of two travellers, and not for one alone', async () => {
    const pages = (await pagesOf(demo)).filter((file) => file.endsWith('/together/'));
    expect(pages.toSorted()).toEqual(
      ['linen-and-ink', 'terracotta-and-sage'].map((capsule) => `${WEDDING}/${capsule}/together/`),
    );
  });

  it('shows both looks of every occasion, what each can lend, and the bags', async () => {
    const html = await page(demo, `${WEDDING}/linen-and-ink/together`);
    const couples = [...html.matchAll(/<div class="couple">[\s\S]*?<\/div>/g)].map(([couple]) => couple);
    expect(couples).toHaveLength(8);
    for (const couple of couples) expect([...couple.matchAll(/<picture>/g)]).toHaveLength(2);
    expect(told(html)).toMatch(/Together [\d.]+ kg of 16 kg/);
    expect(told(html)).toContain('the carrier’s own rule');
  });

  it('speaks German to a German studio', async () => {
    const text = told(await page(german, `${WEDDING}/linen-and-ink/together`));
    expect(text).toContain('Nebeneinander');
    expect(text).toMatch(/Zusammen [\d,]+ kg von 16 kg/);
    expect(text).not.toMatch(/\b(together|room for|picture)\b/i);
  });
});

describe('the shopping page', () => {
  it('tells the stylist what to buy, to add and to swap, each with its drawing, and what pieces cost', async () => {
    const html = await page(demo, `${RAIL}/ink-and-rose/shopping`);
    const text = told(html);
    expect(text).toContain('1 piece of this capsule is still to buy.');
    expect(text).toMatch(/Silver bangle €95/);
    expect(text).toContain('€95 in all.');
    for (const heading of ['Worth buying', 'To add from the wardrobe', 'To swap', 'What it costs'])
      expect(text).toContain(heading);
    const drawings = [...html.matchAll(/src="([^"]+\.svg)"/g)].map((match) => match[1] ?? '');
    expect(drawings.length).toBeGreaterThan(10);
    for (const drawing of drawings) {
      const svg = await readFile(path.join(demo, RAIL, 'ink-and-rose', 'shopping', drawing), 'utf8');
      expect(svg).toMatch(/^<svg [\s\S]*<\/svg>\s*$/);
    }
  });

  it('tells the client what is still to buy and nothing else, and is not there when nothing is', async () => {
    const text = told(await page(client, `${RAIL}/ink-and-rose/shopping`));
    expect(text).toMatch(/Silver bangle €95/);
    expect(text).not.toContain('To swap');
    expect(text).not.toContain('To add from the wardrobe');
    expect((await pagesOf(client)).filter((file) => file.includes('/shopping/'))).toEqual([
      `${RAIL}/ink-and-rose/shopping/`,
    ]);
    expect(await page(client, `${RAIL}/chestnut-and-rain`)).not.toContain('shopping/');
  });

  it('speaks German to a German studio', async () => {
    const text = told(await page(german, `${WEDDING}/terracotta-and-sage/shopping`));
    expect(text).toContain('Kaufen und Tauschen');
    expect(text).toContain('Looks mit Schichten mehr');
    expect(text).toMatch(/(Hemdjacke|Leinensakko|Stola|Leinenhose|Chino) in /);
    expect(text).not.toMatch(/\b(more|would|wardrobe|occasions|estimated)\b/i);
  });
});

describe('the page of findings', () => {
  it('lays the pieces beside their list, line by line', async () => {
    const html = await page(demo, `${RAIL}/ink-and-rose/findings`);
    const table = /<table class="lines sole">[\s\S]*?<\/table>/.exec(html)?.[0] ?? '';
    expect([...table.matchAll(/<th scope="row">/g)]).toHaveLength(8);
    expect([...table.matchAll(/<a href/g)]).toHaveLength(19);
    expect(told(html)).toContain('Navy pea coat and Olive rain jacket are both short.');
  });
});

describe('for every reader', () => {
  const PAGES = [
    `${RAIL}/ink-and-rose/moods/`,
    `${RAIL}/ink-and-rose/shopping/`,
    `${RAIL}/ink-and-rose/findings/`,
    `${WEDDING}/linen-and-ink/together/`,
  ];
  it('no page has a fault against WCAG 2.2 AA or is wider than its screen, small or large, light or dark', async () => {
    const visit = await visitSite(demo);
    for (const [viewport, colorScheme] of [
      [PHONE, 'dark'],
      [DESK, 'light'],
    ] as const) {
      for (const address of PAGES) {
        const seen = await visit.open(address, { viewport, colorScheme, bypassCSP: true });
        await seen.addScriptTag({ content: axe.source });
        const faults = await seen.evaluate(async () => {
          const tool = (globalThis as unknown as { axe: typeof axe }).axe;
          const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
          return (await tool.run({ runOnly: tags })).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
        });
        expect(faults, address).toEqual([]);
        expect(await seen.evaluate(() => document.documentElement.scrollWidth), address).toBeLessThanOrEqual(
          viewport.width,
        );
        await seen.context().close();
      }
    }
    expect(visit.complaints()).toEqual([]);
    await visit.close();
  }, 240_000);
});
