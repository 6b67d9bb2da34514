import { distance, type Garment, move, type Node, nodeAt, type Painted, pen, towards } from '../kit/index.ts';
import { halfWidthAt } from './body.ts';
import type { UpperShape } from './shape.ts';
import type { SleeveFrame } from './sleeve-frame.ts';

const seamsOf = (shape: UpperShape, pitch: number): number[] => {
  const first = shape.armhole - Math.floor((shape.armhole - 8) / pitch) * pitch;
  const ys: number[] = [];
  for (let y = first; y < shape.length - pitch * 0.6; y += pitch) ys.push(y);
  return ys;
};

const cushion = (garment: Garment, run: readonly Node[], below: readonly Node[], pitch: number): Painted[] => {
  const { cloth } = garment;
  return [
    garment.plane(
      below.map(([x, y]): Node => [x, y - pitch * 0.16]),
      pitch * 0.3,
      cloth.ink,
      0.24 * cloth.depth,
    ),
    garment.plane(
      run.map(([x, y]): Node => [x, y + pitch * 0.34]),
      pitch * 0.24,
      cloth.bright,
      0.42,
    ),
    pen(below, garment.small ? 0.6 : 0.42, cloth.ink, 0.75, 0.5),
  ];
};

/** Cushions of down across a body: each with light above and shade at its seam, and small puckers. */
export const bodyBaffles = (garment: Garment, shape: UpperShape, pitch: number): Painted[] => {
  const across = (y: number): Node[] => {
    const half = halfWidthAt(shape, Math.max(y, shape.armhole)) + 1;
    return [
      [-half, y],
      [-half * 0.4, y + 0.9 + garment.jitter(0.2)],
      [half * 0.4, y + 0.9 + garment.jitter(0.2)],
      [half, y],
    ];
  };
  const ys = seamsOf(shape, pitch);
  return ys.flatMap((y) => {
    const below = across(y);
    const run = below.map(([x, at]): Node => [x, at - pitch]);
    const puckers = garment.small
      ? []
      : [-0.7, -0.34, 0.16, 0.5, 0.82].map((share) => {
          const x = share * halfWidthAt(shape, Math.max(y, shape.armhole)) + garment.jitter(2);
          return pen(
            [
              [x, y + 0.7],
              [x + garment.jitter(0.4), y + 1.6],
              [x + garment.jitter(1), y + 2.8],
            ],
            0.24,
            garment.cloth.ink,
            0.45,
            0.2,
          );
        });
    return [...cushion(garment, run, below, pitch), ...puckers];
  });
};

/** The outline of a body with its sides bulging between the seams. */
export const scalloped = (outline: readonly Node[], shape: UpperShape, pitch: number): Node[] => {
  const ys = seamsOf(shape, pitch).filter((y) => y > shape.armhole + 1);
  const side = (sign: 1 | -1): Node[] => {
    const nodes: Node[] = [[sign * (shape.chest / 2), shape.armhole, 'corner']];
    let before = shape.armhole;
    for (const y of [...ys, shape.length - shape.hemDip]) {
      nodes.push(
        [sign * (halfWidthAt(shape, (before + y) / 2) + 0.7), (before + y) / 2],
        [sign * halfWidthAt(shape, y), y, 'corner'],
      );
      before = y;
    }
    return nodes;
  };
  const low = (node: Node) => node[1] > shape.armhole - 0.5;
  const first = outline.findIndex(low);
  const last = outline.findLastIndex(low);
  const hem = outline.slice(first, last + 1).filter(([x]) => Math.abs(x) < shape.hem * 0.4);
  return [...outline.slice(0, first), ...side(1), ...hem, ...side(-1).reverse(), ...outline.slice(last + 1)];
};

/** Cushions of down across a sleeve. */
export const sleeveBaffles = (garment: Garment, f: SleeveFrame, length: number, pitch: number): Painted[] => {
  const across = (at: number): Node[] => {
    const upper = length * 0.52;
    const [base, along, step, rest] =
      at < upper ? [f.shoulder, f.upper, f.acrossUpper, at] : [f.elbowOut, f.fore, f.acrossFore, at - upper];
    const from = move(base, along, rest);
    const wide = at < upper ? distance(f.shoulder, f.underarm) : distance(f.elbowOut, f.elbowIn) + 2;
    const start = move(from, step, -2);
    const end = move(move(from, step, wide), along, 1.6);
    return [nodeAt(start), nodeAt(move(towards(start, end, 0.35), along, 1)), nodeAt(end)];
  };
  const marks: Painted[] = [];
  for (let at = pitch; at < length - 2; at += pitch)
    marks.push(...cushion(garment, across(at - pitch), across(at), pitch));
  return marks;
};
