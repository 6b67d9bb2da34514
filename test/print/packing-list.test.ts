import { describe, expect, it } from 'vitest';
import { drawPiece, drawSundry } from '../../lib/draw/index.ts';
import type { Sundry } from '../../lib/model/index.ts';
import { type PaperChoice, packingListPdf } from '../../lib/print/index.ts';
import { makeGuide, PIECES } from './guide.ts';
import { bytesOf, elements, paintPage, readPdf } from './reader.ts';
import { SOURCES } from './sources.ts';

const CHOICES: readonly PaperChoice[] = [
  { paper: 'A4', orientation: 'portrait' },
  { paper: 'A4', orientation: 'landscape' },
  { paper: 'Letter', orientation: 'portrait' },
  { paper: 'Letter', orientation: 'landscape' },
];

const many = (count: number) =>
  Array.from({ length: count }, (_, index) => {
    const base = PIECES[index % PIECES.length];
    if (base === undefined) throw new Error('no pieces');
    return index < PIECES.length ? base : { ...base, id: `${base.id}-${index}` };
  });

const THINGS = 19;

describe('the packing list', () => {
  const guide = makeGuide();

  // ISO 216: A4 is 210 by 297 mm. ANSI/ASME Y14.1: Letter is 8.5 by 11 inches.
  it.each(CHOICES)('is one page of $paper $orientation', async (choice) => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(guide, SOURCES, choice)));
    const upright = choice.paper === 'A4' ? [210, 297] : [8.5 * 25.4, 11 * 25.4];
    const [width = 0, height = 0] = choice.orientation === 'portrait' ? upright : [...upright].reverse();
    expect(pages).toHaveLength(1);
    expect(pages[0]?.width).toBeCloseTo(width, 1);
    expect(pages[0]?.height).toBeCloseTo(height, 1);
  });

  it('is set on the paper of the studio when none is asked for', async () => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(makeGuide({ studio: { paper: 'Letter' } }), SOURCES)));
    expect(pages[0]?.width).toBeCloseTo(215.9, 1);
  });

  it('has a box to tick for every line, in reading order, each read out by name', async () => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(guide, SOURCES)));
    const fields = pages[0]?.fields ?? [];
    expect(fields).toHaveLength(PIECES.length + THINGS);
    expect(new Set(fields.map(({ name }) => name)).size).toBe(fields.length);
    expect(fields.every(({ type }) => type === 'Btn')).toBe(true);
    const labels = fields.map(({ label }) => label);
    expect(labels[0]).toBe('Rust corduroy overshirt: packed');
    expect(labels).toContain('Knickers, 7: packed');
    const at = (name: string): number => labels.findIndex((label) => label.startsWith(name));
    expect(at('Oxblood pumps')).toBeLessThan(at('Knickers'));
    expect(at('Knickers')).toBeLessThan(at('Herringbone wool coat'));
    expect(at('Herringbone wool coat')).toBeLessThan(at('Passport'));
    expect(at('Passport')).toBeLessThan(at('Toothpaste'));
  });

  it('tells the limits of liquids and batteries on a trip that flies, and none by rail', async () => {
    const occasions = guide.brief.occasions.map((occasion) =>
      occasion.what === 'Train home' ? { ...occasion, what: 'Flight home' } : occasion,
    );
    const flown = { ...guide, brief: { ...guide.brief, occasions } };
    const [byRail, byAir] = await Promise.all(
      [guide, flown].map(
        async (of) => (await readPdf(bytesOf(await packingListPdf(of, SOURCES)))).pages[0]?.text ?? '',
      ),
    );
    for (const rule of ['No container over 100 ml', 'of 1,000 ml', 'Spare batteries', 'ask your carrier'])
      expect([rule, byRail?.includes(rule), byAir?.includes(rule)]).toEqual([rule, false, true]);
    for (const text of [byRail, byAir]) expect(text).toContain('Toothpaste');
  });

  it('says how the weight of a bag is made of its own, what is in it and its liquids', async () => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(guide, SOURCES)));
    const found = /([\d.]+)\s?kg the bag itself \+ ([\d.]+)\s?kg in it/.exec(pages[0]?.text ?? '');
    const whole = /([\d.]+)\s?kg, give or take/.exec(pages[0]?.text ?? '');
    // Each of the three is rounded to a tenth.
    expect(Math.abs(Number(found?.[1]) + Number(found?.[2]) - Number(whole?.[1]))).toBeLessThan(0.16);
    expect(pages[0]?.text).toContain(`${found?.[2]} kg`);
  });

  it('gives every piece with its grams, and the weight of each bag as the sum of its lines', async () => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(guide, SOURCES)));
    const text = pages[0]?.text ?? '';
    for (const { name } of PIECES) expect(text).toContain(name);
    for (const { grams } of PIECES) expect(text).toContain(grams.value.toLocaleString('en-GB'));
    const worn = guide.packing.worn.reduce((sum, { grams }) => sum + grams.value, 0);
    expect(text).toContain(`${(worn / 1000).toFixed(1)} kg`);
    for (const { bag, grams } of guide.packing.bags) {
      const own = `with its own ${(bag.ownGrams / 1000).toFixed(1)} kg ${(grams.value / 1000).toFixed(1)} kg`;
      expect(text, `${bag.name}, its own weight counted as on the site`).toContain(own);
    }
    expect(text).toContain('limit 10 kg');
    expect(text).toContain('estimated, not weighed');
  });

  it('tells how each piece goes in by a sign that is read out, and keeps the signs in a key', async () => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(guide, SOURCES)));
    const inBags = guide.packing.bags.flatMap(({ pieces }) => pieces);
    const signs = elements(pages[0]?.structure).filter(({ alt }) => /^(folded|rolled|laid flat|in a)/.test(alt ?? ''));
    expect(signs).toHaveLength(inBags.length);
    const text = pages[0]?.text ?? '';
    const key = text.slice(text.indexOf('How it goes in:'));
    for (const { alt = '' } of signs) expect(key).toContain(alt);
  });

  it('keeps every figure and its mark of an estimate inside its column', async () => {
    const bytes = bytesOf(await packingListPdf(guide, SOURCES));
    const { width, height, data } = await paintPage(bytes, 0, 72);
    const millimetres = width / 210;
    // the sheet's right margin, 15 mm, between the head and the foot
    for (let y = Math.round(40 * millimetres); y < height - 30 * millimetres; y++) {
      for (let x = Math.ceil(195.6 * millimetres); x < width; x++) {
        const at = (y * width + x) * 4;
        expect(data[at], `ink in the margin at ${x}, ${y}`).toBeGreaterThan(250);
      }
    }
  });

  it('does not call an overrun of the best estimate the heavy end', async () => {
    const over = (limitKg: number) => {
      const { packing } = guide;
      return {
        ...guide,
        packing: { ...packing, bags: packing.bags.map((one) => ({ ...one, bag: { ...one.bag, limitKg } })) },
      };
    };
    const said = async (limitKg: number): Promise<string> =>
      (await readPdf(bytesOf(await packingListPdf(over(limitKg), SOURCES)))).pages[0]?.text ?? '';
    const grams = guide.packing.bags[0]?.grams;
    if (grams === undefined || grams.high - grams.low < 400) throw new Error('the case is not estimated');
    expect(await said((grams.value - 100) / 1000)).toContain('Over the limit by 100 g, as far as is known');
    expect(await said((grams.low - 500) / 1000)).toContain('something has to stay at home');
    expect(await said((grams.value + 100) / 1000)).toContain('At the heavy end');
  });

  it('names the journeys above their columns', async () => {
    const { pages } = await readPdf(bytesOf(await packingListPdf(guide, SOURCES)));
    const words = pages[0]?.words ?? [];
    const heads = words.filter(({ text }) => text.trim() === 'train');
    expect(heads.length).toBeGreaterThanOrEqual(2);
    const line = words.filter(
      ({ y, x }) => Math.abs(y - (heads[0]?.y ?? 0)) < 0.5 && x > (heads[0]?.x ?? 0) && x < 270,
    );
    expect(line.flatMap(({ text }) => text.trim().split(/\s+/)).slice(0, 4)).toEqual(['2', '5', '8', '10']);
    const flying = makeGuide({
      brief: {
        occasions: guide.brief.occasions.map((occasion) =>
          occasion.transit ? { ...occasion, what: 'Ride north' } : occasion,
        ),
      },
    });
    const other = await readPdf(bytesOf(await packingListPdf(flying, SOURCES)));
    expect(other.pages[0]?.words.some(({ text }) => text.trim() === 'journey')).toBe(true);
  });

  it.each(CHOICES)('holds sixty lines on one page of $paper $orientation, nothing under 7 points', async (choice) => {
    const pieces = many(60 - THINGS);
    const printed = await packingListPdf(makeGuide({ pieces }), SOURCES, choice);
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages).toHaveLength(1);
    expect(printed.findings).toEqual([]);
    expect(pages[0]?.fields).toHaveLength(60);
    expect(Math.min(...(pages[0]?.words ?? []).map(({ points }) => points))).toBeGreaterThanOrEqual(7 - 1e-3);
    const lowest = Math.min(...(pages[0]?.fields ?? []).map(({ rectangle }) => rectangle[1] ?? 0));
    expect(lowest).toBeGreaterThan(40);
  });

  it('takes more pages and says so when the lines do not fit', async () => {
    const printed = await packingListPdf(makeGuide({ pieces: many(200) }), SOURCES);
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages.length).toBeGreaterThan(1);
    expect(pages.flatMap(({ fields }) => fields)).toHaveLength(200 + THINGS);
    expect(pages[1]?.text).toContain(`Page 2 of ${pages.length}`);
    expect(printed.findings.map(({ rule }) => rule)).toEqual(['print-list-pages']);
    expect(printed.findings[0]?.message.values).toEqual({ lines: 200 + THINGS, pages: pages.length });
  });

  it('prints a sheet that says so when there is nothing to pack', async () => {
    const printed = await packingListPdf(makeGuide({ pieces: [], caseThings: [], dayThings: [], looks: 0 }), SOURCES);
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.fields).toEqual([]);
    expect(pages[0]?.text).toContain('Nothing is packed yet');
  });

  it('sets names of three hundred characters whole, with and without spaces', async () => {
    const spaced = 'A very long name of a very warm coat '.repeat(9).slice(0, 300);
    const solid = 'Donaudampfschifffahrtsgesellschaftskapitänsjacke'.repeat(7).slice(0, 300);
    const [first, second, ...rest] = PIECES;
    if (first === undefined || second === undefined) throw new Error('no pieces');
    const pieces = [{ ...first, name: spaced }, { ...second, name: solid }, ...rest];
    const printed = await packingListPdf(makeGuide({ pieces }), SOURCES);
    const { pages } = await readPdf(bytesOf(printed));
    const plain = pages
      .map(({ text }) => text)
      .join('')
      .replaceAll(/[\s-]/g, '');
    expect(plain).toContain(spaced.replaceAll(/[\s-]/g, ''));
    expect(plain).toContain(solid.replaceAll(/[\s-]/g, ''));
  });

  it('weighs in pounds and ounces for a studio that does', async () => {
    const { pages } = await readPdf(
      bytesOf(await packingListPdf(makeGuide({ studio: { language: 'en-US', weight: 'lb', length: 'in' } }), SOURCES)),
    );
    // 1 oz = 28.349523125 g exactly (international avoirdupois ounce, 1959): 1450 g are 51.1 oz.
    expect(pages[0]?.text).toContain('51.1');
    expect(pages[0]?.text).toMatch(/limit 22 lb/);
  });

  it('is under 100 kB, and the same bytes every time', async () => {
    const bytes = bytesOf(await packingListPdf(guide, SOURCES));
    expect(bytes.length).toBeLessThan(100_000);
    expect(Buffer.from(bytesOf(await packingListPdf(makeGuide(), SOURCES))).equals(Buffer.from(bytes))).toBe(true);
  });

  it('is under 100 kB with sixty lines as well, every garment drawn', async () => {
    const drawn = { ...SOURCES, drawPiece, drawSundry: (sundry: Sundry) => drawSundry(sundry) };
    for (const choice of CHOICES) {
      const printed = await packingListPdf(makeGuide({ pieces: many(60 - THINGS) }), drawn, choice);
      expect(bytesOf(printed).length).toBeLessThan(100_000);
    }
  });

  it('says when the bag is over its limit, surely or perhaps', async () => {
    const heavy = makeGuide();
    const [suitcase, ...others] = heavy.packing.bags;
    if (suitcase === undefined) throw new Error('no bag');
    const at = async (low: number, value: number, high: number): Promise<string> => {
      const grams = { ...suitcase.grams, low, value, high };
      const packing = { ...heavy.packing, bags: [{ ...suitcase, grams }, ...others] };
      const { pages } = await readPdf(bytesOf(await packingListPdf({ ...heavy, packing }, SOURCES)));
      return pages[0]?.text ?? '';
    };
    expect(await at(8000, 8500, 9000)).toContain('1 kg to spare');
    expect(await at(9000, 9600, 10400)).toContain('400 g over the limit: weigh the bag');
    expect(await at(11000, 12000, 13000)).toContain('Over the limit by 2 kg');
  });
});
