import { rectanglePath } from '../kit/paths.ts';
import { tone } from '../kit/tone.ts';
import { fill, stroke } from './motifs.ts';
import { bars, diagonals, slubs, specks, square, type Weave } from './threads.ts';
export const twill: Weave = (t) =>
  square(6, [stroke(diagonals(6, 0.6), t.bright, 0.16, 0.2), stroke(diagonals(6, 0.6, 0.3), t.deep, 0.14, 0.2)]);

export const denim: Weave = (t) =>
  square(6, [
    stroke(diagonals(6, 0.5), tone(t.ground, 0.16, 0.6), 0.14, 0.42),
    fill(slubs('denim light', 12, 6, false), tone(t.ground, 0.2, 0.5), 0.3),
    fill(slubs('denim dark', 10, 6, false), t.ink, 0.22),
  ]);

export const corduroy: Weave = (t) => ({
  width: 8.5,
  height: 12,
  marks: [
    fill(bars(10, 0.85, 0.3, 12), t.ink, 0.4),
    fill(bars(10, 0.85, 0.16, 12, 0.3), t.shade, 0.3),
    fill(bars(10, 0.85, 0.2, 12, 0.52), t.bright, 0.46),
  ],
});

export const linen: Weave = (t) =>
  square(9, [
    fill(slubs('linen across', 44, 9, true), t.deep, 0.2),
    fill(slubs('linen along', 40, 9, false), t.deep, 0.16),
    fill(slubs('linen light', 34, 9, true), t.bright, 0.4),
  ]);

export const velvet: Weave = (t) =>
  square(7, [
    fill(slubs('velvet dark', 40, 7, false), t.deep, 0.28),
    fill(slubs('velvet light', 34, 7, false), t.bright, 0.26),
  ]);

export const tweed: Weave = (t) => {
  const rust = tone(t.ground, 0.1, 1.6);
  return square(7, [
    stroke(diagonals(7, 0.7), t.bright, 0.2, 0.24),
    stroke(diagonals(7, 0.7, 0.35), t.ink, 0.16, 0.16),
    fill(specks('tweed dark', 50, 7, 0.08, 0.18), t.ink, 0.4),
    fill(specks('tweed light', 46, 7, 0.08, 0.18), t.bright, 0.6),
    fill(specks('tweed fleck', 14, 7, 0.1, 0.2), rust, 0.6),
  ]);
};

export const canvas: Weave = (t) => {
  let path = '';
  for (let r = 0; r < 10; r++)
    for (let c = 0; c < 10; c++) if ((r + c) % 2) path += rectanglePath(c * 0.5 + 0.06, r * 0.5 + 0.08, 0.38, 0.34);
  return square(5, [fill(path, t.bright, 0.3), fill(slubs('canvas', 12, 5, true), t.deep, 0.2)]);
};

export const straw: Weave = (t) => {
  let light = '';
  let dark = '';
  for (let r = 0; r < 6; r++)
    for (let c = 0; c < 6; c++) {
      const [x, y] = [c, r];
      const level = (r + c) % 2 === 0;
      light += level
        ? rectanglePath(x + 0.06, y + 0.16, 0.88, 0.3) + rectanglePath(x + 0.06, y + 0.56, 0.88, 0.3)
        : rectanglePath(x + 0.16, y + 0.06, 0.3, 0.88) + rectanglePath(x + 0.56, y + 0.06, 0.3, 0.88);
      dark += level ? rectanglePath(x + 0.02, y + 0.88, 0.96, 0.14) : rectanglePath(x + 0.88, y + 0.02, 0.14, 0.96);
    }
  return square(6, [fill(dark, t.ink, 0.5), fill(light, t.bright, 0.5)]);
};
