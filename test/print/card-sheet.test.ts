import { describe, expect, it } from 'vitest';
import { cardSheetPdf } from '../../lib/print/index.ts';
import { cardPicture } from './cards.ts';
import { makeGuide } from './guide.ts';
import { bytesOf, elements, paintPage, readPdf } from './reader.ts';
import { SOURCES } from './sources.ts';

const guide = makeGuide({ looks: 7 });
const cards = async (): Promise<ReadonlyMap<number, Uint8Array>> =>
  new Map(await Promise.all(guide.looks.map(async ({ number }) => [number, await cardPicture(number)] as const)));

describe('card sheets', () => {
  it.each([
    [4, 'portrait', 2],
    [6, 'portrait', 2],
    [6, 'landscape', 2],
    [4, 'landscape', 2],
  ] as const)('hold %i cards a sheet, %s', async (aPage, orientation, sheets) => {
    const printed = await cardSheetPdf(guide, SOURCES, await cards(), { aPage, orientation });
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages).toHaveLength(sheets);
    const figures = pages.map(({ structure }) => elements(structure).filter(({ role }) => role === 'Figure').length);
    expect(figures).toEqual([aPage, 7 - aPage]);
    expect(printed.findings).toEqual([]);
  });

  it('keeps the shape of a card and leaves room to cut between them', async () => {
    const { data, width, height } = await paintPage(bytesOf(await cardSheetPdf(guide, SOURCES, await cards())), 0, 72);
    const coloured = (x: number, y: number): boolean => {
      const at = (y * width + x) * 4;
      return (data[at + 1] ?? 255) < 140 && (data[at + 2] ?? 255) < 140;
    };
    const middle = Math.round(height * 0.25);
    const run = Array.from({ length: width }, (_, x) => coloured(x, middle));
    const first = run.indexOf(true);
    const last = run.indexOf(false, first);
    const column = Array.from({ length: height }, (_, y) => coloured(first + 10, y));
    const top = column.indexOf(true);
    const bottom = column.indexOf(false, top);
    expect((last - first) / (bottom - top)).toBeCloseTo(1080 / 1350, 1);
    expect(run.indexOf(true, last) - last).toBeGreaterThan(5);
    expect(first).toBeGreaterThan(12);
  });

  it('stores pictures at no more than three hundred dots an inch, PNG as JPEG', async () => {
    const one = makeGuide({ looks: 1 });
    const png = await cardPicture(1, 'png');
    const six = bytesOf(await cardSheetPdf(one, SOURCES, new Map([[1, png]]), { aPage: 6 }));
    const text = Buffer.from(six).toString('latin1');
    const width = Number(/\/Width (\d+)/.exec(text)?.[1]);
    expect(text).toContain('/DCTDecode');
    // Six to an A4 sheet: a card is some 72 mm wide, 72 / 25.4 * 300 = 850 pixels.
    expect(width).toBeGreaterThan(780);
    expect(width).toBeLessThan(920);
  });

  it('names the looks that have no card, or one that cannot be read', async () => {
    const some = new Map([
      [1, await cardPicture(1)],
      [2, new Uint8Array([1, 2, 3])],
    ]);
    const printed = await cardSheetPdf(makeGuide({ looks: 3 }), SOURCES, some);
    expect(printed.findings.map(({ rule, about }) => [rule, ...about])).toEqual([
      ['print-card', 'look-02'],
      ['print-card', 'look-03'],
    ]);
    expect(printed.pages).toBe(1);
  });

  it('prints one empty sheet for a guide without looks', async () => {
    const printed = await cardSheetPdf(makeGuide({ looks: 0 }), SOURCES, new Map());
    expect(printed.pages).toBe(1);
  });
});
