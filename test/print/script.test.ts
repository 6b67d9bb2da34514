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
    ['right to left', 'מעיל צמר'],
    ['right to left', 'معطف صوف'],
    ['East Asian', '羊毛のコート'],
    ['East Asian', '모직 코트'],
    ['shaped', 'เสื้อโค้ท'],
  ])('refuses text %s and says why', async (script, name) => {
    const printed = await named(name);
    expect(printed.bytes).toBeUndefined();
    expect(printed.findings).toHaveLength(1);
    expect(printed.findings[0]).toMatchObject({
      level: 'error',
      rule: 'print-script',
      message: { key: 'script refused', values: { text: name, script } },
    });
  });

  it('reports a sign that no font has, and prints its number in its place', async () => {
    const printed = await named('Wool coat 🧥 number ☃');
    expect(printed.findings).toMatchObject([
      { level: 'warning', rule: 'print-glyph', message: { values: { characters: ['🧥', '☃'] } } },
    ]);
    const { pages } = await readPdf(bytesOf(printed));
    expect(pages[0]?.text.replaceAll(/\s/g, '')).toContain('Woolcoat[U+1F9E5]number[U+2603]');
  });

  it('sets decomposed accents as composed ones', async () => {
    const { pages } = await readPdf(bytesOf(await named('Ma\u0308ntelchen')));
    expect(pages[0]?.text).toContain('M\u00E4ntelchen');
  });

  it('refuses it in a day plan as well', async () => {
    const guide = makeGuide();
    const [first, ...rest] = guide.brief.occasions;
    if (first === undefined) throw new Error('no occasions');
    const printed = await dayPlanPdf(
      { ...guide, brief: { ...guide.brief, occasions: [{ ...first, what: 'ארוחת ערב' }, ...rest] } },
      SOURCES,
    );
    expect(printed.bytes).toBeUndefined();
  });
});
