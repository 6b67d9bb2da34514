import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as print from '../../lib/print/index.ts';
import { makeGuide } from './guide.ts';
import { bytesOf, comparePicture, paintPage } from './reader.ts';
import { SOURCES } from './sources.ts';

const { bookletPdf, cardSheetPdf, dayPlanPdf, packingListPdf, wearTablePdf } = print;
const guide = makeGuide();
const PAPERS = ['A4', 'Letter'] as const;

it('offers five documents and nothing else', () => {
  expect(Object.keys(print).sort()).toEqual([
    'bookletPdf',
    'cardSheetPdf',
    'dayPlanPdf',
    'packingListPdf',
    'wearTablePdf',
  ]);
});

describe('pictures of the sheets', () => {
  it.each([
    ['packing-a4', () => packingListPdf(guide, SOURCES, { paper: 'A4' }), 0],
    [
      'packing-letter-landscape',
      () => packingListPdf(guide, SOURCES, { paper: 'Letter', orientation: 'landscape' }),
      0,
    ],
    ['day-plan-a4', () => dayPlanPdf(guide, SOURCES, { paper: 'A4' }), 0],
    ['wear-table-a4', () => wearTablePdf(guide, SOURCES, { paper: 'A4' }), 0],
    ['booklet-cover', () => bookletPdf(guide, SOURCES, { paper: 'A4' }), 0],
    ['booklet-looks', () => bookletPdf(guide, SOURCES, { paper: 'A4', looksAPage: 2 }), 5],
  ] as const)('%s is as it was when it was last looked at', async (name, make, page) => {
    const painted = await paintPage(bytesOf(await make()), page, 72);
    expect(await comparePicture(name, painted)).toBeLessThan(0.002);
  });

  it('cost little ink: under a tenth of the packing list is dark', async () => {
    const { data, width, height } = await paintPage(bytesOf(await packingListPdf(guide, SOURCES)), 0, 72);
    let dark = 0;
    for (let at = 0; at < data.length; at += 4)
      dark += 255 - ((data[at] ?? 0) + (data[at + 1] ?? 0) + (data[at + 2] ?? 0)) / 3;
    expect(dark / 255 / (width * height)).toBeLessThan(0.1);
  });
});

describe('the whole set', () => {
  it('of a guide of 20 pieces and 24 looks is under 5 MB', async () => {
    const sizes = await Promise.all(
      [
        ...PAPERS.flatMap((paper) => [
          packingListPdf(guide, SOURCES, { paper }),
          dayPlanPdf(guide, SOURCES, { paper }),
          wearTablePdf(guide, SOURCES, { paper }),
        ]),
        bookletPdf(guide, SOURCES),
        bookletPdf(guide, SOURCES, { imposed: true }),
        cardSheetPdf(guide, SOURCES),
      ].map(async (made) => bytesOf(await made).length),
    );
    expect(guide.looks).toHaveLength(24);
    expect(guide.pieces).toHaveLength(20);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(5_000_000);
  });
});

const installed = (command: string): boolean => {
  try {
    execFileSync(command, ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    try {
      execFileSync(command, ['-v'], { stdio: 'ignore' });
      return true;
    } catch {
      return false;
    }
  }
};

describe('other readers, where they are installed', () => {
  let folder = '';
  let files: readonly string[] = [];

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'wayfold-print-'));
    const made = await Promise.all([
      packingListPdf(guide, SOURCES),
      dayPlanPdf(guide, SOURCES),
      wearTablePdf(guide, SOURCES),
      bookletPdf(guide, SOURCES, { imposed: true, bleed: true }),
    ]);
    files = made.map((printed, index) => {
      const file = join(folder, `${index}.pdf`);
      writeFileSync(file, bytesOf(printed));
      return file;
    });
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.skipIf(!installed('qpdf'))('qpdf finds no fault in them', () => {
    for (const file of files) expect(() => execFileSync('qpdf', ['--check', file], { stdio: 'pipe' })).not.toThrow();
  });

  it.skipIf(!installed('pdftotext'))('poppler reads the text in order', () => {
    const [file = ''] = files;
    execFileSync('pdftotext', [file, join(folder, 'list.txt')]);
    const text = readFileSync(join(folder, 'list.txt'), 'utf8');
    const at = (words: string): number => text.indexOf(words);
    expect(at('Packing list for Ada')).toBeLessThan(at('Cabin case'));
    expect(at('Cabin case')).toBeLessThan(at('On you'));
    expect(at('Liquids')).toBeGreaterThan(at('Day bag'));
  });

  it.skipIf(!installed('pdffonts'))('poppler finds every font embedded, as a subset, with its letters', () => {
    for (const file of files) {
      const rows = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2);
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+.*yes yes yes/);
    }
  });
});
