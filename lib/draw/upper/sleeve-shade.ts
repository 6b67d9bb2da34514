import type { Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import { type Garment, lerp, line, move, type Node, nodeAt, type Painted, ribsBetween, towards } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';
import type { Side, SleeveFrame } from './sleeve-frame.ts';
/** Shade an arm laid over the body throws on it. */
export const armShade = (garment: Garment, f: SleeveFrame, shape: UpperShape, side: Side): Painted => {
  const from = towards(f.underarm, f.elbowIn, 0.35);
  const low = move(f.wristIn, f.fore, 1);
  const cuff = shape.sleeve?.cuff ?? 10;
  const run: Node[] = [nodeAt(from), nodeAt(f.elbowIn), nodeAt(low), nodeAt(move(low, f.acrossFore, -cuff * 0.8))];
  return {
    marks: (garment.small ? [2] : [3.2, 1.5]).map((width) =>
      line(
        run.map(([x, y]) => [x - side * 0.2, y + 0.3]),
        width,
        garment.cloth.ink,
        0.13,
      ),
    ),
  };
};

export const ribMarks = (
  garment: Garment,
  cloth: Cloth,
  outer: readonly Node[],
  inner: readonly Node[],
  count: number,
): Painted[] => {
  // ribs run from the cap towards the cuff: the inner edge is followed from above the underarm so that they do not fan
  const start = outer[0] ?? [0, 0];
  const under = inner[0] ?? [0, 0];
  const across: Node[] = [[lerp(start[0], under[0], 0.9), lerp(start[1], under[1], 0.9)], ...inner.slice(1)];
  return [
    ribsBetween(outer, across, count, cloth, { width: 0.17, to: 1.2, small: garment.small, aside: [0.24, 0.06] }),
  ];
};

interface FoldFrame {
  readonly short: boolean;
  readonly gathered: boolean;
  readonly strength: number;
  readonly outEnd: Point;
  readonly inEnd: Point;
}

export const sleeveFolds = (
  garment: Garment,
  f: SleeveFrame,
  side: Side,
  cloth: Cloth,
  frame: FoldFrame,
): Painted[] => {
  const k = frame.strength;
  const at = (t: number, along: number): Node => nodeAt(move(towards(f.elbowOut, f.elbowIn, t), f.upper, along));
  const fold = (width: number, strength: number, ...nodes: Node[]): Painted =>
    garment.fold(nodes, width * side, strength * k, 0.3, cloth);
  const underarm = [
    fold(
      1.9,
      0.8,
      nodeAt(move(f.underarm, f.upper, 1)),
      nodeAt(move(towards(f.underarm, f.shoulder, 0.3), f.upper, frame.short ? 2.4 : 4)),
      nodeAt(move(towards(f.underarm, f.shoulder, 0.62), f.upper, 3)),
    ),
  ];
  if (frame.short)
    return [
      ...underarm,
      fold(
        1.3,
        0.55,
        nodeAt(towards(f.wristOut, f.wristIn, 0.6)),
        nodeAt(move(towards(f.wristOut, f.wristIn, 0.55), f.fore, -4)),
        nodeAt(move(towards(f.wristOut, f.wristIn, 0.42), f.fore, -9)),
      ),
    ];
  const count = cloth.drape.folds;
  const folds: Painted[] = [
    garment.plane([at(0.62, -14), at(0.6, -2), at(0.55, 12)], 2.2, cloth.ink, 0.2 * cloth.depth),
    garment.plane([at(0.26, -16), at(0.25, 0), at(0.25, 14)], 1.5, cloth.bright, 0.3 * cloth.sheen),
    ...underarm,
    fold(1.7, 0.95, at(1.02, -2.5 + garment.jitter(0.8)), at(0.62, -0.6), at(0.22, -1.6)),
  ];
  if (count > 0.5) folds.push(fold(1.5, 0.75, at(1.02, 1.4), at(0.7, 2.4 + garment.jitter(0.6)), at(0.4, 2)));
  if (count > 0.75)
    folds.push(
      fold(
        1.4,
        0.55,
        nodeAt(move(f.underarm, f.upper, 5)),
        nodeAt(move(towards(f.underarm, f.elbowOut, 0.4), f.upper, -1)),
        nodeAt(towards(f.shoulder, f.elbowOut, 0.62)),
      ),
    );
  if (count > 0.95) folds.push(fold(1.3, 0.6, at(-0.02, 3.5), at(0.25, 4.6), at(0.6, 6.6)));
  if (frame.gathered && count > 0.4)
    for (const [t, reach, aside] of [
      [0.32, 9, 0.04],
      [0.66, 7, -0.06],
    ] as const)
      folds.push(
        fold(
          1.05,
          0.7,
          nodeAt(move(towards(frame.outEnd, frame.inEnd, t), f.fore, 0.4)),
          nodeAt(move(towards(frame.outEnd, frame.inEnd, t + aside), f.fore, -reach * 0.5)),
          nodeAt(move(towards(frame.outEnd, frame.inEnd, t - aside), f.fore, -reach)),
        ),
      );
  return folds;
};
