import { curvePath, ellipsePath, polygonPath, rectanglePath, softPath } from '../kit/paths.ts';
import { fill, stroke } from './motifs.ts';
import { bars, type Weave } from './threads.ts';

/** Columns of small V stitches. */
const stitches = (wide: number, tall: number, columns: number, rows: number): string => {
  let path = '';
  for (let c = 0; c < columns; c++)
    for (let r = 0; r < rows; r++) {
      const [x, y] = [c * wide, r * tall];
      path += polygonPath(
        [
          [x + wide * 0.06, y + tall * 0.1],
          [x + wide * 0.5, y + tall * 0.86],
          [x + wide * 0.94, y + tall * 0.1],
        ],
        false,
      );
    }
  return path;
};

export const fineKnit: Weave = (t) => ({
  width: 3.6,
  height: 3,
  marks: [stroke(stitches(0.6, 0.5, 6, 6), t.ink, 0.13, 0.2), fill(bars(6, 0.6, 0.1, 3), t.bright, 0.3)],
});

export const ribKnit: Weave = (t) => ({
  width: 5.5,
  height: 6,
  marks: [fill(bars(5, 1.1, 0.3, 6), t.ink, 0.2), fill(bars(5, 1.1, 0.34, 6, 0.46), t.bright, 0.45)],
});

/** A rope of crossing strands between bands of moss stitch. */
export const cableKnit: Weave = (t) => {
  const width = 9.6;
  const height = 7.2;
  const strand = (x: number, y: number, side: number): readonly (readonly [number, number])[] => [
    [x - side * 1.5, y],
    [x - side * 1.35, y + height * 0.14],
    [x + side * 1.2, y + height * 0.36],
    [x + side * 1.5, y + height * 0.5],
  ];
  const rope = [-1, 0, 1, 2].flatMap((i) => [strand(2.9, (i * height) / 2, i % 2 ? 1 : 1)]);
  const back = [-1, 0, 1, 2].flatMap((i) => [strand(2.9, (i * height) / 2, -1)]);
  const path = (runs: readonly (readonly (readonly [number, number])[])[]) =>
    runs.map((run) => curvePath(run, false)).join('');
  const moss = Array.from({ length: 6 * 9 }, (_, i) => {
    const c = i % 6;
    const r = Math.floor(i / 6);
    return ellipsePath([5.9 + c * 0.6 + (r % 2) * 0.3, r * 0.8 + 0.4], 0.17, 0.2);
  }).join('');
  return {
    width,
    height,
    marks: [
      fill(rectanglePath(0.6, -1, 4.6, height + 2), t.ink, 0.1),
      stroke(path(back), t.ink, 1.7, 0.3),
      stroke(path(back), t.light, 1.25),
      stroke(path(back), t.ground, 0.5, 0.7),
      stroke(path(rope), t.ink, 1.9, 0.34),
      stroke(path(rope), t.light, 1.3),
      stroke(path(rope), t.bright, 0.4, 0.7),
      fill(bars(2, 4.9, 0.24, height, 0.4), t.ink, 0.4),
      fill(bars(2, 4.9, 0.24, height, 0.66), t.bright, 0.5),
      fill(moss, t.ink, 0.2),
    ],
  };
};

export const openKnit: Weave = (t) => {
  let holes = '';
  let bars2 = '';
  for (let r = 0; r < 4; r++)
    for (let c = 0; c < 4; c++) {
      const x = c * 1.5 + (r % 2) * 0.75 + 0.375;
      holes += ellipsePath([x, r * 1.3 + 0.65], 0.36, 0.42);
      bars2 += softPath([
        [x - 0.66, r * 1.3 + 0.9],
        [x, r * 1.3 - 0.1],
        [x + 0.66, r * 1.3 + 0.9],
      ]);
    }
  return {
    width: 6,
    height: 5.2,
    marks: [fill(holes, t.ink, 0.55), stroke(bars2, t.bright, 0.18, 0.6), stroke(bars2, t.ink, 0.08, 0.4)],
  };
};
