import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../lib/draw/drawing.ts';
import { drawingSvg } from '../../lib/draw/svg.ts';
import { coarsen, simplifyLine } from '../../lib/print/pdf/coarsen.ts';
import { meanCloth } from '../../lib/print/pdf/mean-cloth.ts';
import { pathBox, readPath } from '../../lib/print/pdf/path.ts';
import { createPress } from '../../lib/print/pdf/press.ts';
import { differing, type Pixels, paintPage } from './reader.ts';
import { SOURCES } from './sources.ts';

const FACTS = { title: 'A drawing', author: 'Nobody', subject: '', language: 'en-GB', dated: '2027-10-02' };

const drawing = (marks: Drawing['marks'], tiles: Drawing['tiles'] = []): Drawing => ({
  box: { x: 0, y: 0, width: 40, height: 40 },
  outline: [],
  tiles,
  marks,
  anchors: {},
  cloth: '#000000',
});

/** A page of so many points, so that it is painted at so many pixels. */
const POINTS = 240;
const SIDE = (POINTS * 25.4) / 72;
const SCALE = SIDE / 40;

/** The drawing printed over the whole of a page. */
const printed = async (of: Drawing): Promise<Pixels> => {
  const press = await createPress(SOURCES.fonts, FACTS);
  const surface = press.addPage({ width: SIDE, height: SIDE });
  surface.tag('Figure', { alt: 'a drawing' }, () => surface.drawing(press.drawings.form(of, SCALE), 0, 0, SCALE));
  const { bytes } = await press.finish();
  return paintPage(bytes, 0, 72);
};

/** The same drawing as SVG, by another engine. */
const asSvg = (of: Drawing, pixels: number): Pixels => {
  const image = new Resvg(drawingSvg(of, { prefix: 'd', width: pixels }), {
    background: '#ffffff',
    fitTo: { mode: 'width', value: pixels },
    font: { loadSystemFonts: false },
  }).render();
  return { width: image.width, height: image.height, data: Uint8Array.from(image.pixels) };
};

const SQUARE = 'M5 5L35 5L35 35L5 35Z';
const DROP = 'M20 2Q38 20 20 38Q2 20 20 2Z';

describe('drawings in print', () => {
  it.each<readonly [string, Drawing]>([
    ['fills, strokes and curves', drawing([{ path: DROP, fill: '#9e4527', stroke: '#222222', width: 0.8 }])],
    [
      'opacity',
      drawing([
        { path: SQUARE, fill: '#2b3a5c' },
        { path: DROP, fill: '#ffffff', opacity: 0.5 },
      ]),
    ],
    ['clipped groups', drawing([{ clip: DROP, marks: [{ path: SQUARE, fill: '#1f4d3a' }] }])],
    [
      'moved groups',
      drawing([{ transform: [0.5, 0.2, -0.2, 0.5, 12, 4], marks: [{ path: SQUARE, fill: '#1f4d3a' }] }]),
    ],
    [
      'groups of one opacity',
      drawing([
        {
          opacity: 0.4,
          marks: [
            { path: SQUARE, fill: '#000000' },
            { path: DROP, fill: '#9e4527' },
          ],
        },
      ]),
    ],
    ['holes', drawing([{ path: `${SQUARE}M12 12L28 12L28 28L12 28Z`, fill: '#2b3a5c', evenOdd: true }])],
    ['dashes', drawing([{ path: 'M5 20L35 20', stroke: '#9e4527', width: 1.5, dash: [3, 2] }])],
    [
      'woven cloth',
      drawing(
        [{ path: SQUARE, fill: { tile: 'check' } }],
        [
          {
            name: 'check',
            width: 6,
            height: 6,
            ground: '#e6dcc4',
            marks: [{ path: 'M0 0L3 0L3 3L0 3Z', fill: '#2b3a5c' }],
          },
        ],
      ),
    ],
    [
      'cloth after a dashed seam',
      drawing(
        [
          { path: 'M2 2L38 2', stroke: '#000000', width: 0.6, dash: [1, 1] },
          { path: SQUARE, fill: { tile: 'lines' } },
        ],
        [
          {
            name: 'lines',
            width: 4,
            height: 4,
            ground: '#ffffff',
            marks: [{ path: 'M-1 2L5 2', stroke: '#000000', width: 1 }],
          },
        ],
      ),
    ],
    [
      'turned cloth over colour',
      drawing(
        [
          { path: SQUARE, fill: '#9e4527' },
          { path: DROP, fill: { tile: 'dots' }, opacity: 0.6 },
        ],
        [
          {
            name: 'dots',
            width: 4,
            height: 4,
            transform: [0.9, 0.3, -0.3, 0.9, 1, 0],
            marks: [{ path: 'M1 1L3 1L3 3L1 3Z', fill: '#ffffff' }],
          },
        ],
      ),
    ],
  ])('look as another engine paints them from SVG: %s', async (_, of) => {
    const paper = await printed(of);
    const screen = asSvg(of, POINTS);
    expect([paper.width, paper.height]).toEqual([screen.width, screen.height]);
    expect(differing(paper, screen)).toBeLessThan(0.03);
  });

  it.each([1, 2.3, 7])('show no seam where tiles of cloth meet, at scale %d', async (scale) => {
    // One tile covers all of itself at half opacity, with shapes and lines that reach over its edges; so does its neighbour.
    const even: Drawing['tiles'] = [
      {
        name: 'even',
        width: 3,
        height: 4,
        transform: [0.9, 0.31, -0.31, 0.9, 0.4, 0.7],
        marks: [
          { path: 'M-1 -1L4 -1L4 5L-1 5Z', fill: '#000000', opacity: 0.4 },
          { path: 'M-1 1L4 1M-1 3L4 3', stroke: '#000000', width: 2, opacity: 0.4 },
        ],
      },
    ];
    const press = await createPress(SOURCES.fonts, FACTS);
    const surface = press.addPage({ width: SIDE, height: SIDE });
    const form = press.drawings.form(drawing([{ path: SQUARE, fill: { tile: 'even' } }], even), scale);
    surface.tag('Figure', { alt: 'cloth' }, () => surface.drawing(form, 0, 0, scale));
    const { width, data } = await paintPage((await press.finish()).bytes, 0, 300);
    const edge = (millimetres: number): number => Math.round((millimetres * 300) / 25.4);
    const shades: number[] = [];
    for (let y = edge(6 * scale); y < Math.min(edge(34 * scale), width - 2); y++)
      for (let x = edge(6 * scale); x < Math.min(edge(34 * scale), width - 2); x++)
        shades.push(data[(y * width + x) * 4] ?? 0);
    expect(shades.length).toBeGreaterThan(5000);
    const mean = shades.reduce((sum, shade) => sum + shade, 0) / shades.length;
    // 255 × 0.6 × 0.6
    expect(mean).toBeCloseTo(91.8, -0.5);
    // an overlap would be near 55, a gap near 255
    expect(shades.filter((shade) => shade < 70 || shade > 125).length / shades.length).toBeLessThan(0.0005);
  });

  it('repeat a fine cloth over a large piece in few operators', async () => {
    const cloth = drawing(
      [{ path: SQUARE, fill: { tile: 'fine' } }],
      [
        {
          name: 'fine',
          width: 0.2,
          height: 0.2,
          ground: '#ffffff',
          marks: [{ path: 'M0 0L0.1 0L0.1 0.1Z', fill: '#000000' }],
        },
      ],
    );
    const press = await createPress(SOURCES.fonts, FACTS);
    const surface = press.addPage({ width: 80, height: 80 });
    surface.tag('Figure', { alt: 'cloth' }, () => surface.drawing(press.drawings.form(cloth, 2), 0, 0, 2));
    expect((await press.finish()).bytes.length).toBeLessThan(8000);
  });

  it('become one colour where the weave is finer than print can show', () => {
    const tile = {
      name: 'a',
      width: 2,
      height: 2,
      ground: '#ffffff',
      marks: [{ path: 'M0 0L1 0L1 2L0 2Z', fill: '#000000' }],
    };
    expect(meanCloth(tile)).toEqual({ colour: '#808080', opacity: 1 });
    const { ground: _, ...veil } = tile;
    expect(meanCloth(veil)).toEqual({ colour: '#000000', opacity: 0.5 });
  });

  it('refuse path commands that a drawing may not hold', () => {
    expect(() => readPath('M0 0A1 1 0 0 1 2 2')).toThrow('not "A"');
  });

  it('read numbers that touch', () => {
    expect(pathBox(readPath('M-1-2L3.5-4'))).toEqual({ x: -1, y: -4, width: 4.5, height: 2 });
  });
});

describe('coarsening', () => {
  const point = fc.tuple(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }));

  it('keeps the ends and strays no further than it may', () => {
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 2, maxLength: 40 }),
        fc.double({ min: 0.05, max: 4, noNaN: true }),
        (points, tolerance) => {
          const kept = simplifyLine(points, tolerance);
          expect(kept[0]).toEqual(points[0]);
          expect(kept.at(-1)).toEqual(points.at(-1));
          for (const [x, y] of points) {
            const nearest = Math.min(
              ...kept.slice(1).map(([bx, by], index) => {
                const [ax, ay] = kept[index] ?? [0, 0];
                const length = (bx - ax) ** 2 + (by - ay) ** 2;
                const along =
                  length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
                return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay));
              }),
            );
            expect(nearest).toBeLessThanOrEqual(tolerance + 1e-9);
          }
        },
      ),
    );
  });

  it('leaves out what cannot be seen, and keeps what can', () => {
    const marks = [
      { path: SQUARE, fill: '#9e4527' },
      { path: 'M5 5L35 5.01L35 5.02L5 5.01Z', fill: '#000000' },
      { path: SQUARE, fill: '#000000', opacity: 0.001 },
    ];
    expect(coarsen(drawing(marks), 0.2).marks).toHaveLength(1);
  });
});
