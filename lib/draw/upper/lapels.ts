import type { Cloth } from '../fabric/index.ts';
import { type Garment, lerp, type Node, pen, stitch } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';

export type LapelStyle = 'notch' | 'peak' | 'shawl';

export interface Lapel {
  readonly style: LapelStyle;
  /** Where the fronts meet: height and, for the front of this side, how far beyond the middle. */
  readonly breakY: number;
  /** Width of the lapel at its widest. */
  readonly width: number;
  readonly cloth?: Cloth;
  readonly collarCloth?: Cloth;
  readonly stitched?: boolean;
}

/** Turned-back fronts. `meets` is the x of the break on each side. Draw before `tailoredCollar`. */
export const drawLapel = (garment: Garment, shape: UpperShape, side: 1 | -1, meets: number, lapel: Lapel): void => {
  const cloth = lapel.cloth ?? garment.cloth;
  const half = shape.neck / 2;
  const { breakY, width, style } = lapel;
  const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
  const bx = side * meets;
  const gorge = Math.min(9, breakY * 0.26);
  const tipX = half + width * (style === 'peak' ? 1.02 : 0.92);
  const tipY = style === 'peak' ? gorge * 0.52 : gorge;
  const roll: Node[] = [s(half - 1, 1), s(lerp(half - 1, bx, 0.5) + 0.5, lerp(1, breakY, 0.52)), s(bx, breakY)];
  const outer: Node[] =
    style === 'shawl'
      ? [
          s(lerp(half + width * 0.6, bx, 0.52) + width * 0.24, lerp(8, breakY, 0.6)),
          s(half + width * 0.66, lerp(4, breakY, 0.36)),
          s(half + width * 0.6, 7),
          s(half + 3.6, 0.8),
          s(half + 0.4, -2.8),
          s(5, -4.7),
          s(-0.4, -5, 'corner'),
          s(-0.4, -2.2, 'corner'),
          s(4, -1.6),
        ]
      : style === 'peak'
        ? [
            s(lerp(tipX, bx, 0.56) + width * 0.16, lerp(tipY, breakY, 0.58)),
            s(tipX - 1.9, tipY + 7),
            s(tipX, tipY, 'corner'),
            s(half + width * 0.46, gorge * 0.86, 'corner'),
            s(half + 0.6, gorge * 0.56, 'corner'),
          ]
        : [
            s(lerp(tipX, bx, 0.56) + width * 0.2, lerp(tipY, breakY, 0.6)),
            s(tipX - 1.4, tipY + 4.4),
            s(tipX, tipY, 'corner'),
            s(half + width * 0.44, gorge * 0.9),
            s(half + 0.6, gorge * 0.58, 'corner'),
          ];
  const nodes: Node[] = [s(half - 1, 1, 'corner'), ...roll.slice(1, -1), s(bx, breakY + 0.6, 'corner'), ...outer];
  garment.panel(nodes, {
    cloth,
    turn: side * -22,
    edge: 0.7,
    shift: [side, 0],
    cast: 1,
    wobble: 0.08,
    round: {
      from: side === 1 ? [1, 10] : [-half - width, 12],
      to: side === 1 ? [half + width, 12] : [-1, 10],
      strength: 0.45,
    },
    inner: [
      garment.plane(roll, 1.5, cloth.bright, 0.5),
      ...(lapel.stitched && !garment.small && style !== 'shawl'
        ? [
            stitch(
              [
                s(tipX - 1, tipY + 0.7),
                s(tipX - 2.2, tipY + 4.6),
                s(lerp(tipX, bx, 0.56) + width * 0.1, lerp(tipY, breakY, 0.6) - 0.6),
                s(bx + 0.5, breakY - 1.4),
              ],
              cloth.ink,
              0.5,
            ),
          ]
        : []),
      ...(style === 'shawl' ? [pen([s(half + 1, -2), s(half - 0.4, 0.4)], 0.16, cloth.ink, 0.35)] : []),
    ],
  });
};

/** The collar that meets the lapels at the gorge. */
export const tailoredCollar = (garment: Garment, shape: UpperShape, lapel: Lapel): void => {
  if (lapel.style === 'shawl') return;
  const cloth = lapel.collarCloth ?? garment.cloth;
  const half = shape.neck / 2;
  const gorge = Math.min(9, lapel.breakY * 0.26);
  const w = lapel.width;
  for (const side of [-1, 1] as const) {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const endX = half + w * (lapel.style === 'peak' ? 0.5 : 0.52);
    garment.panel(
      [
        s(-0.4, -5, 'corner'),
        s(5, -4.8),
        s(half + 0.3, -2.8),
        s(half + w * 0.38, gorge * 0.1),
        s(endX - 0.3, gorge * 0.42),
        s(endX, gorge * 0.9, 'corner'),
        s(half + w * 0.24, gorge * 0.78),
        s(half + 0.2, gorge * 0.54, 'corner'),
        s(half - 1.6, 0.7),
        s(4, -1.6),
        s(-0.4, -2.2, 'corner'),
      ],
      {
        cloth,
        turn: side * 50,
        shift: [side * 2, 0],
        edge: 0.7,
        cast: 0.85,
        wobble: 0.06,
        round: { from: side === 1 ? [0, -4] : [-half - 5, 8], to: side === 1 ? [half + 5, 8] : [0, -4], strength: 0.4 },
      },
    );
    garment.add(
      pen(
        [s(half - 1, gorge * 0.34), s(half + w * 0.16, gorge * 0.66), s(endX, gorge * 0.94)],
        0.36,
        cloth.ink,
        0.75,
        0.6,
      ),
    );
  }
};
