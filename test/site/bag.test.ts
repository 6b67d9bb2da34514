import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { builtSite } from './built.ts';

const GUIDE = 'october-by-rail/chestnut-and-rain';
let bag: string;
let list: string;
beforeAll(async () => {
  const site = await builtSite('demo');
  const read = (page: string): Promise<string> => readFile(path.join(site, GUIDE, page, 'index.html'), 'utf8');
  bag = await read('bag');
  list = await read('packing');
});

const all = (html: string, pattern: RegExp): readonly string[] =>
  [...html.matchAll(pattern)].map(([, found = '']) => found);

describe('the bag page', () => {
  it('and the list to tick lead to each other', () => {
    expect(bag).toContain('href="../packing/"');
    expect(list).toContain('href="../bag/"');
  });

  it('says what each bag is and may hold, and counts its own weight, as the list does', () => {
    expect(bag).toContain('For the cabin, 55 × 40 × 23 cm, 2.4 kg empty, up to 10 kg, room for 41 l');
    for (const html of [bag, list]) expect(html).toContain('its own 2.4 kg included');
  });

  it('has the pieces of the list in the order of packing, shoes first', () => {
    const inside = all(bag, /<ol class="inside">([\s\S]*?)<\/ol>/g).join('');
    const order = all(inside, /class="nm">([^<]+?) </g);
    const ticks = all(list, /class="nm">([^<]+?) <span class="how"/g);
    expect(order.length).toBeGreaterThan(5);
    expect(order).toEqual(ticks);
    expect(order[0]).toBe('Chestnut loafers');
  });

  it('shows looks against kilograms in a picture that never scrolls sideways, and says that savings are in all', () => {
    expect(bag).toMatch(/<svg class="plot"[^>]+aria-label="Looks against weight: \d+ choices/);
    expect(bag).not.toMatch(/class="scroll"[^>]*>\s*<svg class="plot"/);
    expect(bag).toContain('>Saved in all<');
    expect(list).not.toContain('class="plot"');
  });

  it('leaves out the rules of the air on a trip by rail', () => {
    for (const html of [bag, list]) expect(html).not.toMatch(/100 ml|ICAO|carrier/);
  });

  it('tells the rules of the air with the month they were read on a trip that flies', async () => {
    const flown = path.join(await builtSite('demo'), 'wedding-in-the-alentejo/linen-and-ink/bag/index.html');
    const html = await readFile(flown, 'utf8');
    expect(html).toContain('no container over 100 ml');
    expect(html).toContain('Read in November 2026. Sources: ICAO');
    expect(html).not.toContain('no flight');
  });
});
