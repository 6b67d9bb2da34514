import { describe, expect, it } from 'vitest';
import { dayPlanPdf, type Printed, packingListPdf } from '../../lib/print/index.ts';
import { makeGuide, PIECES } from './guide.ts';
import { bytesOf, readPdf } from './reader.ts';
import { SOURCES } from './sources.ts';

const named = (name: string): Promise<Printed> => {
  const [first, ...rest] = PIECES;
  if (first === undefined) throw new Error('no pieces');
  return packingListPdf(makeGuide({ pieces: [{ ...first, name }, ...rest] }), SOURCES);
};

describe('scripts', () => {
  it.each([
    ['German', 'Straßenbahnschaffnerinnenregenmäntel'],
    ['Czech and Polish', 'Příliš žluťoučký kůň, zażółć gęślą jaźń'],
    ['Greek', 'Μάλλινο παλτό με ψαροκόκαλο'],
    ['Cyrillic', 'Шерстяное пальто в ёлочку'],
    ['Ukrainian', 'Твідовий піджак із ґудзиками'],
    ['Vietnamese', 'Áo dài truyền thống'],
  ])('sets %s', async (_, name) => {
    const printed = await named(name);
    expect(printed.findings).toEqual([]);
    const { pages } = await readPdf(bytesOf(printed));
    const letters = (text: string): string => text.normalize('NFC').replaceAll(/[\s-]/g, '');
    expect(letters(pages[0]?.text ?? '')).toContain(letters(name));
  });

  it.each([
    ['right to left', 'מעיל צמר wool', 'wool'],
    ['East Asian', '毛衣 Grey jumper 🧥', 'Grey jumper'],
    ['shaped', 'เสื้อโค้ท and coat', 'and coat'],
    ['signs', 'Wool coat 🧥 number ☃', 'Wool coat number'],
  ])('prints a name without the letters no font has: %s', async (_, name, shown) => {
    const printed = await named(name);
    expect(printed.findings).toMatchObject([
      { level: 'warning', rule: 'print-glyph', message: { values: { text: name } } },
    ]);
    const { pages } = await readPdf(bytesOf(printed));
    const words = (pages[0]?.text ?? '').replaceAll(/\s+/gu, ' ');
    expect(words).toContain(shown);
    expect(words).not.toContain('U+');
  });

  it('prints an ellipsis for a name of which nothing is left', async () => {
    const { pages } = await readPdf(bytesOf(await named('羊毛のコート')));
    expect(pages[0]?.text).toContain('…');
  });

  it('quotes long names by whole characters', async () => {
    const { findings } = await named(`${'🧥'.repeat(59)} 🧦🧦`);
    const quoted = String(findings[0]?.message.values.text);
    expect(quoted).toBe(`${'🧥'.repeat(59)} …`);
    expect(quoted).not.toMatch(/\p{Surrogate}/u);
  });

  it('sets decomposed accents as composed ones', async () => {
    const { pages } = await readPdf(bytesOf(await named('Ma\u0308ntelchen')));
    expect(pages[0]?.text).toContain('M\u00E4ntelchen');
  });

  it('prints a day plan with them as well', async () => {
    const guide = makeGuide();
    const [first, ...rest] = guide.brief.occasions;
    if (first === undefined) throw new Error('no occasions');
    const printed = await dayPlanPdf(
      { ...guide, brief: { ...guide.brief, occasions: [{ ...first, what: 'Supper ארוחת ערב' }, ...rest] } },
      SOURCES,
    );
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages.map(({ text }) => text).join(' ')).toContain('Supper');
  });
});
