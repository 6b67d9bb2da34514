import fc from 'fast-check';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { imposition } from '../../lib/print/booklet/impose.ts';
import { bookletPdf } from '../../lib/print/index.ts';
import { cardPicture } from './cards.ts';
import { makeGuide, PIECES } from './guide.ts';
import { bytesOf, elements, paintPage, readPdf } from './reader.ts';
import { SOURCES } from './sources.ts';

const MILLIMETRES_A_POINT = 25.4 / 72;

/** Folds sheets one inside the other and reads the leaves from the front: what a reader holds in the hand. */
const fold = (sides: readonly (readonly [number, number])[]): readonly number[] => {
  const sheets = Array.from({ length: sides.length / 2 }, (_, sheet) => ({
    front: sides[2 * sheet],
    back: sides[2 * sheet + 1],
  }));
  const firstHalf = sheets.flatMap(({ front, back }) => [front?.[1] ?? 0, back?.[0] ?? 0]);
  const secondHalf = [...sheets].reverse().flatMap(({ front, back }) => [back?.[1] ?? 0, front?.[0] ?? 0]);
  return [...firstHalf, ...secondHalf];
};

describe('imposition', () => {
  it('reads in order when the sheets are folded', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (sheets) => {
        expect(fold(imposition(sheets * 4))).toEqual(Array.from({ length: sheets * 4 }, (_, page) => page + 1));
      }),
    );
  });

  it('puts the last page beside the first: common practice, no source', () => {
    expect(imposition(8)).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ]);
  });

  it('refuses a number of pages that cannot be folded', () => {
    expect(() => imposition(6)).toThrow('multiple of four');
  });
});

describe('the booklet', () => {
  const guide = makeGuide();

  // ISO 216: A5 is 148 by 210 mm; a Letter sheet cut in half is 5.5 by 8.5 inches.
  it.each([
    ['A4', 148, 210],
    ['Letter', 5.5 * 25.4, 8.5 * 25.4],
  ] as const)('has pages of half a sheet of %s', async (paper, width, height) => {
    const { pages } = await readPdf(bytesOf(await bookletPdf(guide, SOURCES, { paper })));
    expect(pages.length % 4).toBe(0);
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 1);
      expect(page.height).toBeCloseTo(height, 1);
    }
  });

  it('names on its cover what some cannot tell apart by colour', async () => {
    const [hero, ...others] = guide.looks;
    const [one, two] = hero?.look.worn.map(({ piece }) => PIECES.find(({ id }) => id === piece)) ?? [];
    if (hero === undefined || one === undefined || two === undefined) throw new Error('no look of two pieces');
    const unclear = { ...hero, hardToTell: [{ one: one.id, two: two.id, visions: ['protanopia' as const] }] };
    const coverOf = async (looks: typeof guide.looks): Promise<string> =>
      (await readPdf(bytesOf(await bookletPdf({ ...guide, looks }, SOURCES)))).pages[0]?.text ?? '';
    expect(await coverOf(guide.looks)).not.toContain(two.name);
    expect((await coverOf([unclear, ...others])).replaceAll(/\s+/g, ' ')).toContain(`${one.name} and ${two.name}`);
  });

  it('lies two pages to a sheet when it is imposed', async () => {
    const plain = await readPdf(bytesOf(await bookletPdf(guide, SOURCES)));
    const { pages } = await readPdf(bytesOf(await bookletPdf(guide, SOURCES, { imposed: true })));
    expect(pages).toHaveLength(plain.pages.length / 2);
    expect(pages[0]?.width).toBeCloseTo(297, 1);
    expect(pages[0]?.height).toBeCloseTo(210, 1);
    const front = pages[0]?.words ?? [];
    const title = front.find(({ text }) => text.includes('Ljubljana'));
    expect(title?.x).toBeGreaterThan((297 / 2 / 25.4) * 72);
    expect(front.find(({ text }) => text.includes('Dressing for journeys'))?.x).toBeLessThan((297 / 2 / 25.4) * 72);
  });

  it('has three millimetres of bleed around the trimmed page, and marks outside it', async () => {
    const file = await PDFDocument.load(bytesOf(await bookletPdf(guide, SOURCES, { bleed: true })), {
      updateMetadata: false,
    });
    const page = file.getPage(0);
    const [trim, bleed, media] = [page.getTrimBox(), page.getBleedBox(), page.getMediaBox()];
    expect(trim.width * MILLIMETRES_A_POINT).toBeCloseTo(148, 1);
    expect((bleed.width - trim.width) * MILLIMETRES_A_POINT).toBeCloseTo(6, 1);
    expect((trim.x - bleed.x) * MILLIMETRES_A_POINT).toBeCloseTo(3, 1);
    expect(media.width).toBeGreaterThan(bleed.width);
  });

  it.each([2, 4] as const)('shows %i looks to a page', async (looksAPage) => {
    const { pages } = await readPdf(bytesOf(await bookletPdf(guide, SOURCES, { looksAPage })));
    const titles = pages.map(
      ({ structure }) =>
        elements(structure).filter(
          ({ role, children }) =>
            role === 'Sect' && children.some((child) => 'role' in child && child.role === 'Figure'),
        ).length,
    );
    expect(Math.max(...titles)).toBe(looksAPage);
    expect(titles.reduce((sum, count) => sum + count, 0)).toBe(guide.looks.length);
  });

  it('has no page left over: where folding would leave some, the first looks are shown larger', async () => {
    for (const looks of [13, 16, 20, 24]) {
      const { pages } = await readPdf(bytesOf(await bookletPdf(makeGuide({ looks }), SOURCES)));
      const shown = pages.map(
        ({ structure }) =>
          elements(structure).filter(
            ({ role, children }) =>
              role === 'Sect' && children.some((child) => 'role' in child && child.role === 'Figure'),
          ).length,
      );
      expect(pages.length % 4).toBe(0);
      expect(shown.reduce((sum, count) => sum + count, 0)).toBe(looks);
      expect(pages.filter(({ text }) => text.startsWith('Notes')).length).toBe(0);
    }
  });

  it('begins the words under looks beside each other at one height', async () => {
    const { pages } = await readPdf(bytesOf(await bookletPdf(guide, SOURCES, { looksAPage: 4 })));
    const numbers = pages.flatMap(({ words }) =>
      words.filter(({ text, points }) => /^\d+$/.test(text.trim()) && Math.abs(points - 12) < 0.1),
    );
    expect(numbers).toHaveLength(guide.looks.length);
    for (let at = 0; at + 1 < numbers.length; at += 2) expect(numbers[at]?.y).toBeCloseTo(numbers[at + 1]?.y ?? 0, 1);
  });

  it('holds every piece, the palette in words, the notes from Markdown, and the cautions', async () => {
    const { pages } = await readPdf(bytesOf(await bookletPdf(guide, SOURCES)));
    const text = pages.map((page) => page.text).join(' ');
    const plain = text.replaceAll(/[\s-]/g, '');
    for (const { name } of PIECES) expect(plain).toContain(name.replaceAll(/[\s-]/g, ''));
    for (const { name } of guide.capsule.mood.palette) expect(text).toContain(name);
    expect(text).toContain('Collar up');
    expect(text).not.toContain('*');
    expect(text).toContain('lanolin');
    expect(text).toContain('ask your doctor or pharmacist');
  });

  it('shows a photo in place of the drawing, and says which cannot be read', async () => {
    const photos = new Map([
      ['coat', await cardPicture(3)],
      ['boots', new Uint8Array([9, 9, 9])],
    ]);
    const printed = await bookletPdf(guide, { ...SOURCES, photos });
    expect(printed.findings).toMatchObject([{ rule: 'print-picture', about: ['boots'] }]);
    const { pages } = await readPdf(bytesOf(printed));
    const alts = pages.flatMap(({ structure }) => elements(structure)).map(({ alt }) => alt);
    expect(alts).toContain('Photograph of Herringbone wool coat.');
    expect(alts).toContain('Drawing of Chestnut ankle boots, chestnut.');
  });

  it('breaks a long note over pages without losing one', async () => {
    const long = Array.from({ length: 3000 }, (_, word) => `word${word}`).join(' ');
    const base = makeGuide({ looks: 1 });
    const { pages } = await readPdf(
      bytesOf(await bookletPdf({ ...base, capsule: { ...base.capsule, rationale: `${long}\n\n${long}` } }, SOURCES)),
    );
    const words = pages.flatMap((page) => page.text.match(/word\d+/g) ?? []);
    expect(words).toHaveLength(6000);
    expect(words.at(-1)).toBe('word2999');
  });

  it('can be made without pieces, looks or plan', async () => {
    const printed = await bookletPdf(makeGuide({ pieces: [], looks: 0 }), SOURCES);
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages.length % 4).toBe(0);
    expect(pages.map(({ text }) => text).join(' ')).toContain('The capsule has no pieces yet.');
  });

  it.each(['A4', 'Letter'] as const)('leaves no page of half a sheet of %s nearly blank', async (paper) => {
    for (const looks of [24, 20, 12, 5]) {
      const bytes = bytesOf(await bookletPdf(makeGuide({ looks }), SOURCES, { paper }));
      const { pages } = await readPdf(bytes);
      for (const page of pages.keys()) {
        const { width, height, data } = await paintPage(bytes, page, 24);
        const inked = (from: number, to: number): boolean => {
          for (let y = Math.floor(from * height); y < to * height; y++)
            for (let x = 0; x < width; x++) if ((data[(y * width + x) * 4] ?? 255) < 235) return true;
          return false;
        };
        // ten bands from the head to the folio
        const bands = Array.from({ length: 10 }, (_, band) => inked(0.07 + band * 0.085, 0.07 + (band + 1) * 0.085));
        const filled = bands.filter(Boolean).length;
        expect(filled, `${looks} looks, page ${page + 1} of ${pages.length}`).toBeGreaterThanOrEqual(5);
      }
    }
  });

  it('is the same bytes every time', async () => {
    const first = Buffer.from(bytesOf(await bookletPdf(guide, SOURCES)));
    expect(first.equals(Buffer.from(bytesOf(await bookletPdf(makeGuide(), SOURCES))))).toBe(true);
  });
});
