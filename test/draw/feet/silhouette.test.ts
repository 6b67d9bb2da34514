import { describe, expect, test } from 'vitest';
import type { Point } from '../../../lib/draw/drawing.ts';
import { signedArea } from '../../../lib/draw/kit/index.ts';
import { points } from '../../../lib/draw/kit/points.ts';
import { silhouette } from '../../../lib/draw/kit/silhouette.ts';

const square = (x: number, y: number, side: number): Point[] => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];
const area = (ring: readonly (readonly [number, number, ('corner' | undefined)?])[]): number =>
  Math.abs(signedArea(ring.map(([x, y]): Point => [x, y]))) / 2;

describe('silhouette', () => {
  test('of overlapping squares has the area of their union', () => {
    expect(area(silhouette([square(0, 0, 10), square(6, 6, 10)]))).toBeCloseTo(184, -0.4);
    expect(area(silhouette([square(0, 0, 10), square(10, 0, 10)]))).toBeGreaterThan(196);
  });
  test('does not mind which way round a polygon runs, nor one that crosses itself', () => {
    const one = area(silhouette([square(0, 0, 10)]));
    expect(area(silhouette([[...square(0, 0, 10)].reverse()]))).toBeCloseTo(one, 6);
    const bow: Point[] = [
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ];
    expect(area(silhouette([bow]))).toBeGreaterThan(40);
  });
  test('of a disc is round and keeps no corners', () => {
    const disc = Array.from(
      { length: 60 },
      (_, i): Point => [8 * Math.cos((i * Math.PI) / 30), 8 * Math.sin((i * Math.PI) / 30)],
    );
    const ring = silhouette([disc]);
    expect(ring.every((node) => node[2] === undefined)).toBe(true);
    for (const [x, y] of ring) expect(Math.hypot(x, y)).toBeCloseTo(8, 0);
    expect(ring.length).toBeLessThan(60);
  });
  test('of nothing is nothing', () => {
    expect(
      silhouette([
        [
          [0, 0],
          [0, 0],
          [0, 0],
        ],
      ]).length,
    ).toBeLessThan(20);
  });
});

describe('points', () => {
  test('reads pairs and corners', () => {
    expect(points('0 1!, -2.5 .5')).toEqual([
      [0, 1, 'corner'],
      [-2.5, 0.5],
    ]);
  });
  test('refuses what is not a pair', () => {
    expect(() => points('1 2, 3')).toThrow(RangeError);
    expect(() => points('a b')).toThrow('not a point');
  });
});
