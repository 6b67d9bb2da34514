import { alongEdge } from '../kit/edges.ts';
import { corner, group, lerp, type Node, type Painted, stitch, tone } from '../kit/index.ts';
import { ellipsePath } from '../kit/paths.ts';
import { line, shape } from '../kit/pens.ts';
import type { Leg } from './leg.ts';
import { seamPen } from './seam-pen.ts';
import type { Trousers } from './trousers.ts';

const NOTHING: Painted = group([]);

/** Topstitching, left out of small drawings. */
export const topstitch = (
  { garment }: Pick<Trousers, 'garment'>,
  nodes: readonly Node[],
  colour: string,
  opacity = 0.75,
): Painted => (garment.small ? NOTHING : stitch(nodes, colour, opacity));

/** Front seam from the waistband to the fork, with the J-shaped stitching of the fly. */
export const fly = (trousers: Trousers, thread: string, rows = 1): void => {
  const { garment, measures } = trousers;
  const { band, rise } = measures;
  const bottom = Math.min(rise - 5, band + 17);
  garment.add(
    seamPen(
      garment,
      [
        [0.1, band],
        [0.3, lerp(band, rise, 0.5)],
        [-0.8, rise],
      ],
      0.42,
      0.9,
      0.5,
    ),
    garment.plane(
      [
        [0.7, band],
        [0.9, lerp(band, rise, 0.5)],
        [-0.2, rise],
      ],
      0.7,
      garment.cloth.ink,
      0.28,
    ),
  );
  for (let row = 0; row < rows; row++) {
    const x = 3.1 + row * 0.55;
    garment.add(
      topstitch(
        trousers,
        [
          [x, band + 0.6],
          [x + 0.05, bottom - 5],
          [x * 0.66, bottom - 1 + row * 0.4],
          [0, bottom + 1.4 + row * 0.5],
        ],
        thread,
        0.8,
      ),
    );
  }
};

/** Slanted front pocket: a welt from the waistband to the side seam. */
export const slantPocket = ({ garment, measures }: Trousers, leg: Leg, thread = garment.cloth.bright): Painted => {
  const { band, waist } = measures;
  const { side } = leg;
  const top: Node = [side * (waist / 2 - 4.6), band];
  const low = band + 15.5;
  const end: Node = [leg.outer(low) + side * 0.4, low];
  const middle: Node = [lerp(top[0], end[0], 0.42), lerp(top[1], end[1], 0.55)];
  const inside = (away: number): Node[] => [top, middle, end].map(([x, y]): Node => [x - side * away, y + away * 0.15]);
  return group([
    garment.plane(inside(-0.7), 0.9, garment.cloth.ink, 0.5),
    seamPen(garment, [top, middle, end], 0.4, 0.9, 0.5),
    garment.small ? NOTHING : stitch(inside(0.75), thread, 0.45),
  ]);
};

/** Rounded front pocket of five-pocket trousers, with its facing, topstitching and, on the right hand, the coin pocket. */
export const scoopPocket = ({ garment, measures }: Trousers, leg: Leg, thread: string, rivet?: string): Painted => {
  const { band, waist } = measures;
  const { side } = leg;
  const { ink, deep } = garment.cloth;
  const half = waist / 2;
  const low = band + 8.6;
  const mouth = (grow: number): Node[] => [
    [side * (half - 10.4 - grow), band - 0.2],
    [side * (half - 8.9 - grow), band + 4.6 + grow * 0.6],
    [side * (half - 4.6), band + 7.8 + grow],
    [leg.outer(low) + side * 0.6, low + grow * 0.7],
  ];
  const facing: Node[] = [...mouth(0), corner(leg.outer(band) + side * 1.2, band - 0.2)];
  const marks: Painted[] = [
    shape(facing, deep, 0.34),
    garment.plane(mouth(-0.9), 0.9, ink, 0.4),
    seamPen(garment, mouth(0), 0.34, 0.85, 0.5),
  ];
  if (!garment.small) {
    marks.push(stitch(mouth(0.7), thread, 0.9), stitch(mouth(1.25), thread, 0.7));
    if (side === -1) {
      const coin: Node[] = [
        [-half + 1.4, band + 3.2],
        [-half + 4.6, band + 3.7],
        [-half + 7.8, band + 3.4],
      ];
      marks.push(
        seamPen(garment, coin, 0.26, 0.8, 0.5),
        stitch(
          coin.map(([x, y]): Node => [x, y + 0.55]),
          thread,
          0.85,
        ),
      );
    }
    if (rivet)
      for (const [x, y] of [
        [side * (half - 10.2), band + 1.2],
        [leg.outer(low) - side * 1, low - 0.1],
      ] as const)
        marks.push(
          shape(ellipsePath([x, y], 0.42), tone(rivet, -0.15)),
          shape(ellipsePath([x - 0.06, y - 0.08], 0.3), rivet),
        );
  } else marks.push(line(mouth(0.9), 0.7, thread, 0.75));
  return group(marks);
};

/** A slit pocket with a welt, hanging from the waistband's pleat. */
export const weltPocket = ({ garment }: Trousers, from: Node, to: Node): Painted =>
  group([
    garment.plane(
      [
        [from[0], from[1] + 0.7],
        [to[0], to[1] + 0.7],
      ],
      0.6,
      garment.cloth.ink,
      0.5,
    ),
    seamPen(garment, [from, to], 0.44, 0.9, 0.5),
  ]);

/** Pleats folded in at the waistband, towards the side seam. */
export const waistPleats = ({ garment, measures }: Trousers, leg: Leg, count: number): Painted =>
  group(
    Array.from({ length: count }, (_, i) => {
      const x = measures.waist * (0.22 + 0.1 * i);
      const drop = measures.band + 13 - i * 3;
      return garment.fold(
        [
          [leg.side * x, measures.band - 0.4],
          [leg.side * (x + 0.3), lerp(measures.band, drop, 0.5)],
          [leg.side * (x + 0.9), drop],
        ],
        1.5 * leg.side,
        1.1,
        0.2,
      );
    }),
  );

/** Two rows of stitching along the side seam and the inside leg. */
export const seamStitching = (trousers: Trousers, leg: Leg, thread: string): Painted => {
  const { measures, garment } = trousers;
  if (garment.small) return NOTHING;
  const { rise, length } = measures;
  return group([
    stitch(alongEdge(leg.inner, rise + 2, length, leg.side * 0.7, 4), thread, 0.75),
    stitch(alongEdge(leg.outer, measures.band + 9, measures.band + 19, -leg.side * 0.7, 2), thread, 0.75),
  ]);
};

/** A line of stitching round the hem, `up` centimetres from its edge. */
export const hemStitch = (trousers: Trousers, leg: Leg, thread: string, up: number, opacity = 0.6): Painted => {
  const { length } = trousers.measures;
  const y = length - up;
  const middle = leg.at(0.5)(length);
  return topstitch(
    trousers,
    [
      [leg.inner(y), y + 0.2],
      [middle, y + 0.9],
      [leg.outer(y), y - 0.3],
    ],
    thread,
    opacity,
  );
};
