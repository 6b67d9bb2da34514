import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, mirrored, type Node, pen, reversed, stitch, tone } from '../kit/index.ts';
import { sideAnchors, sideLine } from './body.ts';
import { breastWelt } from './cut-pockets.ts';
import { armBinding, beside } from './finish.ts';
import { bodyShade } from './folds.ts';
import { type UpperShape, upperShape } from './shape.ts';

/** A waistcoat: a deep V, buttons, two points at the hem; the back is lining. */
export const drawWaistcoat = (piece: DrawnPiece, detail: Detail, usual: UpperShape): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, usual);
  const { cloth } = garment;
  const half = shape.neck / 2;
  const deep = Math.min(shape.neckDepth, shape.length - 18);
  const { length, hem } = shape;
  const lining = (piece.pattern.type === 'plain' ? cloth.accents[0] : undefined) ?? tone(cloth.ground, -0.12, 0.8);
  garment.inside(
    [
      [-half - 0.4, 0, 'corner'],
      [0, -1.8],
      [half + 0.4, 0, 'corner'],
      [shape.shoulder * 0.36, 18],
      [hem / 2 - 2, length - 4, 'corner'],
      [-hem / 2 + 2, length - 4, 'corner'],
      [-shape.shoulder * 0.36, 18],
    ],
    { fill: lining, label: [0, 0.6] },
  );
  garment.add(
    garment.fold(
      [
        [0.4, 3],
        [0.9, 12],
        [0.2, 22],
      ],
      1.8,
      0.6,
      0.5,
    ),
  );
  for (const side of [-1, 1] as const) {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const over = 1.4;
    const outer = sideLine({ ...shape, hemDip: 4 }, 2.6);
    const nodes: Node[] = [
      s(half, 0, 'corner'),
      s(half * 0.72, deep * 0.46),
      s(-over, deep, 'corner'),
      s(-over, length - 3, 'corner'),
      s(5.4, length + 4.4, 'corner'),
      s(hem * 0.34, length - 1.6),
      ...reversed(side === 1 ? outer : mirrored(outer)).slice(0, -1),
    ];
    garment.panel(nodes, {
      cast: 0.5,
      shift: [side * 1.1, 0],
      round:
        side === 1
          ? { from: [-8, 0], to: [shape.chest / 2, 0], strength: 0.8 }
          : { from: [-shape.chest / 2, 0], to: [8, 0], strength: 0.8 },
      inner: [
        ...bodyShade(garment, shape, 0.45),
        pen([s(9.4, 22), s(9.8, 36), s(9.2, length + 1)], 0.26, cloth.ink, 0.5),
        ...(garment.small
          ? []
          : [stitch(beside([s(half, 0), s(half * 0.72, deep * 0.46), s(-over, deep)], side * -0.8), cloth.ink, 0.5)]),
      ],
    });
    for (const y of [25, 40])
      if (y < length - 9 && (y > 30 || side === 1)) breastWelt(garment, side * shape.chest * 0.27, y, 9.5);
  }
  armBinding(garment, shape, 2.6, 0.9);
  const colour = tone(cloth.ground, cloth.depth === 0.75 ? 0.14 : -0.22, 0.7);
  for (let i = 0; i < 5; i++)
    garment.button(garment.jitter(0.06), deep + 2.2 + (i * (length - deep - 7)) / 4, 0.8, colour);
  sideAnchors(garment, shape);
  return garment.finish();
};
