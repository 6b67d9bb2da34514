import type { Cloth } from '../fabric/index.ts';
import { type Garment, mirrored, type Node, type Painted, pen, ribsBetween } from '../kit/index.ts';
import { both } from './collars.ts';
import type { UpperShape } from './shape.ts';
/** A tube of cloth that stands and is folded down: a roll-neck. */
export const rollCollar = (garment: Garment, shape: UpperShape, height: number, ribbed: boolean): void => {
  const { cloth } = garment;
  const w = shape.neck / 2 - 0.2;
  const top = -height * 0.6;
  const low = height * 0.4;
  const tube: Node[] = [
    [-w, top + 1, 'corner'],
    [-w - 0.8, top * 0.5],
    [-w - 0.7, 0.4],
    [-w - 1, low * 0.45],
    [-w - 0.2, low * 0.7],
    [-w * 0.5, low],
    [w * 0.45, low + 0.2],
    [w + 0.1, low * 0.72],
    [w + 1, low * 0.44],
    [w + 0.8, 0.4],
    [w + 1, top * 0.5],
    [w, top + 1, 'corner'],
    [w * 0.5, top - 0.1],
    [-w * 0.5, top - 0.2],
  ];
  const left: Node[] = [
    [-w, top - 1],
    [-w * 1.1, top * 0.2],
    [-w * 1.14, low + 1.5],
  ];
  const right = mirrored(left);
  const ribs: Painted[] = ribbed ? [ribsBetween(left, right, 25, cloth, { dark: 0.22, small: garment.small })] : [];
  garment.panel(tube, {
    cast: 1.1,
    round: { from: [-w - 1, 0], to: [w + 1, 0], strength: 1 },
    inner: [
      ...ribs,
      garment.fold(
        [
          [-w * 0.95, top * 0.42],
          [-w * 0.2, top * 0.16],
          [w * 0.5, top * 0.24],
        ],
        1.5,
        0.75,
      ),
      garment.fold(
        [
          [w, top * 0.7],
          [w * 0.4, top * 0.54],
          [-w * 0.1, top * 0.58],
        ],
        -1.2,
        0.6,
      ),
      garment.plane(
        [
          [-w, top + 2.2],
          [0, top + 2.8],
          [w, top + 2.2],
        ],
        0.9,
        cloth.bright,
        0.5,
      ),
    ],
  });
  garment.inside(
    [
      [-w + 0.5, top + 0.75, 'corner'],
      [-w * 0.5, top - 0.5],
      [w * 0.5, top - 0.45],
      [w - 0.5, top + 0.75, 'corner'],
      [w * 0.5, top + 1.5],
      [-w * 0.5, top + 1.55],
    ],
    { fill: cloth.lining },
  );
};

/** A standing band closed or open in front: funnel necks, zipped jackets. `gap` is its opening at the top. */
export const standCollar = (
  garment: Garment,
  shape: UpperShape,
  height: number,
  options: { readonly gap?: number; readonly ribs?: boolean; readonly cloth?: Cloth; readonly quilted?: number } = {},
): void => {
  const cloth = options.cloth ?? garment.cloth;
  const half = shape.neck / 2;
  const deep = shape.neckDepth;
  const gap = options.gap ?? 3;
  const top = -height * 0.62;
  // the far side, then the two halves that meet in front
  garment.panel(
    [
      [-half - 0.2, 0.4, 'corner'],
      [-half * 0.95, top * 0.9],
      [-half * 0.4, top - 0.7],
      [half * 0.4, top - 0.7],
      [half * 0.95, top * 0.9],
      [half + 0.2, 0.4, 'corner'],
      [0, deep * 0.7, 'corner'],
    ],
    { cloth, fill: cloth.lining, weave: false, edge: 0.6, wobble: 0.06 },
  );
  both((side) => {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const edgeIn: Node[] = [s(0, deep + 0.6), s(gap * 0.5, top * 0.55 + 2.4)];
    const edgeOut: Node[] = [s(half + 1.4, 1.4), s(half * 0.98, top * 0.95)];
    garment.panel(
      [
        s(0, deep + 0.6, 'corner'),
        s(gap * 0.3, deep * 0.3),
        s(gap * 0.5, top * 0.55 + 2.4, 'corner'),
        s(half * 0.62, top * 0.9 + 1.2),
        s(half * 0.98, top * 0.95, 'corner'),
        s(half + 1, -0.6),
        s(half + 1.4, 1.6, 'corner'),
        s(half * 0.62, deep * 0.78),
      ],
      {
        cloth,
        edge: 0.6,
        wobble: 0.06,
        cast: 0.5,
        turn: side * 20,
        round: { from: [side === 1 ? 0 : -half - 1, 0], to: [side === 1 ? half + 1 : 0, 0], strength: 0.5 },
        inner: [
          ...(options.ribs ? [ribsBetween(edgeIn, edgeOut, 10, cloth, { dark: 0.26, small: garment.small })] : []),
          ...Array.from({ length: options.quilted ?? 0 }, (_, i): Painted => {
            const t = (i + 1) / ((options.quilted ?? 0) + 1);
            return pen(
              [
                s(gap * 0.4 * t, deep + (top * 0.55 + 2.4 - deep) * t),
                s(half * 0.7, 2.4 + (top - 1.4) * t),
                s(half + 1.3, 1.4 + (top - 1.4) * t),
              ],
              0.34,
              cloth.ink,
              0.7,
              0.5,
            );
          }),
        ],
      },
    );
  });
};
