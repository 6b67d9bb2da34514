import { describe, expect, it } from 'vitest';
import { cardSheetPdf } from '../../lib/print/index.ts';
import { makeGuide } from './guide.ts';
import { bytesOf, elements, paintPage, readPdf } from './reader.ts';
import { SOURCES } from './sources.ts';

const guide = makeGuide({ looks: 7 });
const POINTS_A_MILLIMETRE = 72 / 25.4;

describe('card sheets', () => {
  it.each([
    [4, 'portrait', 2],
    [6, 'portrait', 2],
    [6, 'landscape', 2],
    [4, 'landscape', 2],
  ] as const)(
    'hold %i cards a sheet, %s, each with its look and nothing under 7 points',
    async (aPage, orientation, sheets) => {
      const printed = await cardSheetPdf(guide, SOURCES, { aPage, orientation });
      const { pages } = await readPdf(bytesOf(printed));
      expect(pages).toHaveLength(sheets);
      const figures = pages.map(({ structure }) => elements(structure).filter(({ role }) => role === 'Figure').length);
      expect(figures).toEqual([aPage, 7 - aPage]);
      expect(printed.findings).toEqual([]);
      const words = pages.flatMap((page) => page.words);
      expect(Math.min(...words.map(({ points }) => points))).toBeGreaterThanOrEqual(7 - 1e-3);
      const text = pages.map((page) => page.text).join(' ');
      for (const { look } of guide.looks)
        for (const { piece } of look.worn) expect(text).toContain(guide.pieces.find(({ id }) => id === piece)?.name);
    },
  );

  it('cuts to the shape of a card, with room between, and keeps every word inside its card', async () => {
    const bytes = bytesOf(await cardSheetPdf(guide, SOURCES));
    const { data, width, height } = await paintPage(bytes, 0, 144);
    const isDark = (x: number, y: number): boolean => (data[(y * width + x) * 4] ?? 255) < 200;
    const perMillimetre = 144 / 25.4;
    // crop marks stand above the cards: the columns of the topmost ink are the cuts
    const top = Array.from({ length: height }, (_, y) => y).find((y) =>
      Array.from({ length: width }, (_, x) => isDark(x, y)).some(Boolean),
    );
    if (top === undefined) throw new Error('an empty sheet');
    const cuts = Array.from({ length: width }, (_, x) => x).filter(
      (x) => isDark(x, top + 4) && !isDark(x - 1, top + 4),
    );
    expect(cuts).toHaveLength(4);
    const [left = 0, right = 0, next = 0, last = 0] = cuts.map((x) => x / perMillimetre);
    expect(last - next).toBeCloseTo(right - left, 0);
    expect(next - right).toBeGreaterThan(4);
    const { pages } = await readPdf(bytes);
    const cards = pages[0]?.words.filter(({ y }) => y > 60) ?? [];
    for (const { x, text } of cards) {
      const at = x / POINTS_A_MILLIMETRE;
      expect((at > left && at < right) || (at > next && at < last), text).toBe(true);
    }
  });

  it('prints one empty sheet for a guide without looks', async () => {
    const printed = await cardSheetPdf(makeGuide({ looks: 0 }), SOURCES);
    expect(printed.pages).toBe(1);
  });
});
