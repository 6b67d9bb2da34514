import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { hueAtAngle, wheelAngle } from '../../lib/colour/index.ts';
import { readContent } from '../../lib/content/index.ts';
import { buildGuides, type Guide, piecesToName } from '../../lib/guide/index.ts';
import { placeLabels } from '../../lib/site/svg/labels.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { english } from '../../lib/words/index.ts';
import { builtSite, pagesOf } from './built.ts';

const CONTENT = path.join(import.meta.dirname, '..', '..', 'content');

let site = '';
let guides: readonly Guide[] = [];

beforeAll(async () => {
  site = await builtSite('demo');
  const { content } = await readContent(CONTENT);
  if (content === undefined) throw new Error('the demo cannot be read');
  guides = await buildGuides(content, await loadSolver());
}, 300_000);

const page = (address: string): Promise<string> => readFile(path.join(site, address, 'index.html'), 'utf8');

/** What a sighted reader sees as text: no attributes, no titles of shapes. */
const textOf = (html: string): string =>
  html
    .replaceAll(/<(title|style|script)[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ');

const partOf = (html: string, from: string, to: string): string => {
  const start = html.indexOf(from);
  const end = html.indexOf(to, start);
  return start < 0 || end < 0 ? '' : html.slice(start, end);
};

describe('the palette page of every guide', () => {
  it('shows each colour as a swatch with its name, part and share, and says the wheel in words', async () => {
    expect(guides.length).toBeGreaterThanOrEqual(4);
    for (const guide of guides) {
      const html = await page(`${guide.id}/palette`);
      const table = partOf(html, '<table class="plain hues">', '</table>');
      const [, spoken = ''] = /class="wheel"[^>]*aria-label="([^"]+)"/.exec(html) ?? [];
      for (const { colour } of guide.palette.colours) {
        expect(table).toContain(`fill="${colour.hex}"`);
        expect(textOf(table)).toContain(colour.name);
        expect(spoken.toLowerCase()).toContain(colour.name);
      }
    }
  });

  it('draws every two colours with the name of their relation and its reason', async () => {
    for (const guide of guides) {
      const table = partOf(await page(`${guide.id}/palette`), '<table class="plain relating">', '</table>');
      const rows = table.split('<tr>').slice(2);
      expect(rows).toHaveLength(guide.palette.relations.length);
      guide.palette.relations.forEach(({ one, two, relation }, index) => {
        const row = rows[index] ?? '';
        expect(row).toContain(`fill="${one.hex}"`);
        expect(row).toContain(`fill="${two.hex}"`);
        expect(textOf(row)).toContain(english.colour['relation name']({ relation: relation.relation }));
        expect(textOf(row).length).toBeGreaterThan(30);
      });
    }
  });

  it('shows every top with every bottom, and how many go', async () => {
    for (const guide of guides) {
      const html = await page(`${guide.id}/palette`);
      const cells = partOf(html, '<table class="pairs worn', '</table>').match(/<td class="(ok|no)">/g) ?? [];
      const tops = new Set(guide.palette.pairs.map(({ top }) => top)).size;
      const bottoms = new Set(guide.palette.pairs.map(({ bottom }) => bottom)).size;
      expect(cells).toHaveLength(tops * bottoms);
      expect(cells.filter((cell) => cell.includes('ok'))).toHaveLength(guide.palette.pairsGoing);
    }
  });

  it('shows what one colour more would do, what stands alone, and three further kinds of colour vision', async () => {
    for (const guide of guides) {
      const html = await page(`${guide.id}/palette`);
      for (const { colour } of guide.palette.additions) expect(html).toContain(`fill="${colour.hex}"`);
      const text = textOf(html);
      for (const kind of ['protanopia', 'deuteranopia', 'tritanopia']) expect(text).toContain(kind);
      if (guide.palette.lonely.length === 0) expect(text).toContain('No piece stands alone');
      for (const { rule, about } of guide.findings.filter((finding) => finding.rule.startsWith('colour-'))) {
        for (const id of about) expect(text, rule).toContain(guide.pieces.find((piece) => piece.id === id)?.name);
      }
    }
  });
});

describe('looks whose pieces some cannot tell apart by colour', () => {
  it('carry the names in words on every page that shows their picture to choose or wear it', async () => {
    const seen = new Map<string, number>();
    // a cover's few small pictures lead on to the looks; their alternative texts name the pieces
    const covers = ['', ...guides.map(({ id }) => `${id}/`)];
    for (const address of await pagesOf(site)) {
      if (covers.includes(address)) continue;
      const html = await page(address);
      const text = textOf(html).toLowerCase();
      for (const [, src = '', slug = ''] of html.matchAll(
        /<img[^>]* src="([^"]*pictures\/looks\/(look-\d+)-[^"]*)"/g,
      )) {
        const id = path.posix.relative('.', path.posix.join(address, src.replace(/pictures\/.*$/, '')));
        const guide = guides.find((candidate) => candidate.id === id);
        const look = guide?.looks.find((candidate) => candidate.slug === slug);
        if (guide === undefined || look === undefined) throw new Error(`${address} shows an unknown look: ${src}`);
        const names = piecesToName(look).map((piece) => guide.pieces.find(({ id: own }) => own === piece)?.name ?? '');
        for (const name of names) expect(text, `${address} shows ${slug}`).toContain(name.toLowerCase());
        if (names.length > 0)
          seen.set(address.split('/').at(2) ?? '', (seen.get(address.split('/').at(2) ?? '') ?? 0) + 1);
      }
    }
    // the check would be empty if no page showed such a look
    for (const kind of ['looks', 'days', 'pieces']) expect(seen.get(kind), `pages of ${kind}`).toBeGreaterThan(0);
  });

  it('say once a page what the names in words are for', async () => {
    const note = english.site['with pieces note']();
    let pages = 0;
    for (const address of await pagesOf(site)) {
      const text = textOf(await page(address));
      const named = text.includes('In words: ');
      expect(text.split(note), address).toHaveLength(named ? 2 : 1);
      pages += named ? 1 : 0;
    }
    expect(pages).toBeGreaterThan(2);
  });

  it('are found in the check, with the looks they are in', () => {
    for (const guide of guides) {
      const pairs = new Set(
        guide.looks.flatMap(({ hardToTell }) => hardToTell.map(({ one, two }) => [one, two].sort().join(' '))),
      );
      const found = guide.findings.filter(({ rule }) => rule === 'colour-hard-to-tell');
      expect(new Set(found.map(({ about }) => [...about].sort().join(' ')))).toEqual(pairs);
    }
    expect(guides.some(({ looks }) => looks.some(({ hardToTell }) => hardToTell.length > 0))).toBe(true);
  });
});

describe('the colour wheel', () => {
  // Itten 1961: red faces green, orange blue, yellow violet; from memory
  it('lays opposites across the middle, and knows the way back', () => {
    for (let angle = 0; angle < 360; angle += 7) {
      const away = Math.abs(wheelAngle(hueAtAngle(angle)) - angle) % 360;
      expect(Math.min(away, 360 - away)).toBeLessThan(1e-6);
    }
    expect(wheelAngle(hueAtAngle(0) + 0)).toBe(0);
    expect(wheelAngle(hueAtAngle(180))).toBeCloseTo(180, 6);
  });

  it('sets names beside dots without overlap, and leaves out what has no room', () => {
    const dots = Array.from({ length: 30 }, (_, index) => ({
      x: 180 + (index % 6) * 8,
      y: 180 + Math.floor(index / 6) * 8,
      radius: 6,
      text: `colour ${index}`,
    }));
    const labels = placeLabels(dots, { middle: 200, radius: 180 });
    expect(labels.length).toBeGreaterThan(0);
    expect(labels.length).toBeLessThan(dots.length);
    for (const { x, y } of labels) {
      expect(Math.hypot(x - 200, y - 200)).toBeLessThanOrEqual(180);
      for (const dot of dots) expect(Math.hypot(dot.x - x, dot.y - y)).toBeGreaterThan(4);
    }
  });
});
