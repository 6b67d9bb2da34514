import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blend,
  clampLength,
  cubics,
  curvePath,
  direction,
  ellipsePath,
  fromOklch,
  type Node,
  oklch,
  polygonPath,
  random,
  resample,
  sampleCurve,
  seedOf,
  signedArea,
  softPath,
  swell,
  tone,
} from '../../../lib/draw/kit/index.ts';
import { compactPath } from '../../../lib/draw/svg-path.ts';

const nodes = fc.array(
  fc.tuple(
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.constantFrom<'corner' | undefined>('corner', undefined),
  ),
  { minLength: 3, maxLength: 9 },
);

describe('seeds', () => {
  it('hashes as FNV-1a does', () => {
    // the reference vectors published with the FNV-1a algorithm (32 bit), from memory
    expect(seedOf('')).toBe(0x811c9dc5);
    expect(seedOf('a')).toBe(0xe40c292c);
    expect(seedOf('foobar')).toBe(0xbf9cf968);
  });

  it('gives the same even numbers for the same seed', () => {
    const run = (seed: number) => Array.from({ length: 4000 }, random(seed));
    expect(run(7)).toEqual(run(7));
    expect(run(7)).not.toEqual(run(8));
    const numbers = run(7);
    expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...numbers)).toBeLessThan(1);
    expect(numbers.reduce((a, b) => a + b, 0) / numbers.length).toBeCloseTo(0.5, 1);
  });
});

describe('curves', () => {
  it('run through every node', () => {
    fc.assert(
      fc.property(nodes, (list: Node[]) => {
        const pieces = cubics(list);
        expect(pieces).toHaveLength(list.length);
        pieces.forEach(([from], i) => {
          expect(from).toEqual([list[i]?.[0], list[i]?.[1]]);
        });
      }),
      { seed: 3 },
    );
  });

  it('keep a straight edge between two corners straight', () => {
    expect(
      curvePath([
        [0, 0, 'corner'],
        [10, 0, 'corner'],
        [10, 20, 'corner'],
      ]),
    ).toBe('M0 0L10 0L10 20L0 0Z');
  });

  it('measure what geometry says they should', () => {
    // area of a circle of radius 5 and of a square of side 10
    const ring = sampleCurve(
      Array.from({ length: 12 }, (_, i): Node => {
        const [x, y] = direction(i * 30);
        return [5 * x, 5 * y];
      }),
      true,
    );
    expect(Math.abs(signedArea(ring)) / 2).toBeCloseTo(Math.PI * 25, 0);
    const square = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ] as const;
    expect(signedArea(square) / 2).toBe(100);
  });

  it('resample into equal steps', () => {
    const points = resample(
      [
        [0, 0],
        [3, 0],
        [3, 9],
      ],
      6,
    );
    expect(points).toHaveLength(7);
    expect(points[0]).toEqual([0, 0]);
    expect(points[6]).toEqual([3, 9]);
    expect(points[3]).toEqual([3, 3]);
  });

  it('swell from nothing to one and back', () => {
    const reach = swell(0.3);
    expect(reach(0)).toBeCloseTo(0, 9);
    expect(reach(0.3)).toBeCloseTo(1, 9);
    expect(reach(1)).toBeCloseTo(0, 9);
  });
});

describe('compact paths', () => {
  const picture = (path: string): Uint8Array =>
    new Resvg(
      `<svg xmlns="http://www.w3.org/2000/svg" width="160" height="160"><path transform="translate(80 80)" d="${path}" fill-rule="evenodd"/></svg>`,
    ).render().pixels;

  it('paint the same picture in fewer letters', () => {
    fc.assert(
      fc.property(nodes, (list: Node[]) => {
        const points = list.map(([x, y]): readonly [number, number] => [x, y]);
        for (const path of [
          curvePath(list),
          polygonPath(points),
          `${softPath(points)}Z`,
          ellipsePath([3, 4], 20, 9, 30) + polygonPath(points),
        ]) {
          const short = compactPath(path);
          // relative numbers far apart can be a sign longer than absolute ones
          expect(short.length).toBeLessThanOrEqual(path.length * 1.08 + 4);
          const [a, b] = [picture(path), picture(short)];
          let off = 0;
          for (let i = 3; i < a.length; i += 4) off += Math.abs((a[i] ?? 0) - (b[i] ?? 0)) > 40 ? 1 : 0;
          expect(off).toBeLessThanOrEqual(3);
        }
      }),
      { numRuns: 40, seed: 5 },
    );
  });

  it('drop what a reader of paths does not need', () => {
    expect(compactPath('M0.5 -0.25L1 0.5L1 0.75Z')).toBe('m.5-.25.5.75 0 .25z');
    expect(compactPath('M0 0L0.5 0.5')).toBe('m0 0 .5.5');
    expect(compactPath('M0 0Q1 1 2 0Q3 -1 4 0')).toBe('m0 0q1 1 2 0t2 0');
    expect(compactPath('')).toBe('');
  });
});

const HEX: Readonly<Record<string, string>> = {
  white: '#ffffff',
  red: '#ff0000',
  lime: '#00ff00',
  blue: '#0000ff',
  black: '#000000',
};

describe('tones', () => {
  it('reads OKLCH as published', () => {
    // the OKLab values the author of the space published for the sRGB primaries; see the table's source column
    const text = readFileSync(new URL('../../reference/oklab_reference.csv', import.meta.url), 'utf8');
    const rows: Record<string, string>[] = parse(text.split('\n\n')[0] ?? '', { columns: true });
    expect(rows.length).toBeGreaterThan(4);
    for (const row of rows) {
      const hex = HEX[row.css_name ?? ''];
      if (hex === undefined) continue;
      const { l, c } = oklch(hex);
      expect(l).toBeCloseTo(Number(row.ok_L), 4);
      expect(c).toBeCloseTo(Math.hypot(Number(row.ok_a), Number(row.ok_b)), 3);
    }
  });

  it('makes shade darker and cooler, light lighter and warmer', () => {
    for (const hex of ['#b8573a', '#8aa07c', '#5d7f99']) {
      const own = oklch(hex);
      const [shade, light] = [oklch(tone(hex, -0.15)), oklch(tone(hex, 0.12))];
      expect(shade.l).toBeLessThan(own.l - 0.08);
      expect(light.l).toBeGreaterThan(own.l + 0.06);
      const away = (h: number, from: number) => Math.abs(((h - from + 540) % 360) - 180);
      expect(away(shade.h, 281)).toBeLessThanOrEqual(away(own.h, 281) + 0.5);
      expect(away(light.h, 74)).toBeLessThanOrEqual(away(own.h, 74) + 0.5);
    }
  });

  it('stays within sRGB', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), fc.double({ min: -0.6, max: 0.6, noNaN: true }), (n, by) => {
        expect(tone(`#${n.toString(16).padStart(6, '0')}`, by)).toMatch(/^#[0-9a-f]{6}$/);
      }),
    );
    expect(fromOklch(0.7, 0.5, 150)).toMatch(/^#[0-9a-f]{6}$/);
    expect(blend('#000000', '#ffffff', 0)).toBe('#000000');
  });
});

describe('lengths', () => {
  it('are held within their bounds', () => {
    expect(clampLength(undefined, 66, 30, 155)).toEqual({ cm: 66, clamped: false });
    expect(clampLength(4, 66, 30, 155)).toEqual({ cm: 30, clamped: true });
    expect(clampLength(Number.POSITIVE_INFINITY, 66, 30, 155)).toEqual({ cm: 66, clamped: true });
  });
});
