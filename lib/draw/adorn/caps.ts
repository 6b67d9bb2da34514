import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import {
  curvePath,
  ellipsePath,
  Garment,
  group,
  line,
  type Node,
  type Painted,
  pen,
  shape,
  tone,
} from '../kit/index.ts';
import { points } from '../kit/points.ts';

/** Felt blocked to a flat disc, pulled to one side over a narrow band. */
export const beret = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const gather = (nodes: string, width: number): Painted => garment.fold(points(nodes), width, 0.75);
  garment.inside(points('-8.4 6.2!, -4 4.4, 3 4, 8 5!, 6 8.4, 0 9.6, -6 8.8'), { fill: tone(cloth.ground, -0.22) });
  // The soft body: high at the left, hanging over the band at the right.
  garment.panel(
    points(
      '-14.2 1.4, -13 -2.6, -8.4 -5.8, -1 -7.3, 6.6 -6.8, 13.4 -3.8, 17.2 1, 17.4 5.4, 14.6 7.9, 10.6 7.6, 7.4 5.8, 3 6.6, -2 6.9, -7.4 6.2, -9.6 4.6, -12.6 4.2',
    ),
    {
      edge: 1.1,
      wobble: 0.08,
      inner: [
        garment.plane(points('-9.6 -2.2, -3 -4.9, 5 -5'), 2.6, cloth.bright, 0.5),
        garment.plane(points('-11.6 2.4, -4 4.6, 4 4.4'), 1.7, cloth.ink, 0.5),
        // the edge of the disc, where the top turns under
        garment.plane(points('2 1.4, 9 1.2, 15.6 3.6'), 1.5, cloth.bright, 0.34),
        garment.plane(points('1 3.6, 8.6 3.6, 15.4 6'), 1.9, cloth.ink, 0.55),
        garment.plane(points('13.6 -2.6, 16.4 1.6, 16.4 5'), 1.1, cloth.ink, 0.4),
        gather('-7.8 6, -9.4 3.4, -9 0.6', 1.2),
        gather('-4.2 6.6, -5 3.8, -4.2 1.4', 1.1),
        gather('-0.6 6.8, -0.6 4.2, 0.4 2.2', 1),
        gather('3.2 6.4, 4.2 4, 6 2.6', -1.1),
        gather('6.6 5.8, 8.6 3.6, 11.4 2.6', -1.2),
        garment.fold(points('-12.6 0.4, -8 -1.6, -3.6 -2'), 1.1, 0.4),
      ],
    },
  );
  garment.panel(points('-8.8 5.6!, -4 7, 1.6 7.1, 7.6 5.5!, 7.5 7.4!, 2 9.1, -4 9, -8.6 7.5!'), {
    edge: 0.3,
    wobble: 0.03,
    cast: 0.2,
    fill: cloth.shade,
    inner: [
      garment.plane(points('-7 6.6, -2 7.8, 3 7.8'), 0.5, cloth.bright, 0.6),
      ...(small ? [] : [line(points('-8.5 6.9, -4 8.4, 2 8.5, 7.4 6.8'), 0.12, cloth.bright, 0.6, [0.42, 0.34])]),
    ],
  });
  garment.add(group([garment.plane(points('-1.6 -5.3, 0.2 -5, 2 -5.3'), 0.5, cloth.ink, 0.9)]));
  garment.panel(points('-0.3 -5.3!, -0.2 -7, 0.4 -8.4!, 0.9 -8.1!, 0.7 -6.8, 0.8 -5.2!'), {
    edge: 0.15,
    wobble: 0.02,
    rim: false,
  });
  return garment.finish();
};

/** Six panels, a button and a peak, seen from the side. */
export const cap = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const peak = plainCloth(cloth.accents[0] ?? cloth.ground, cloth.surface, detail);
  garment.panel(
    points('-9.6 3.6!, -8.8 -2, -5.6 -7.4, -0.6 -9.8, 4.6 -9.2, 8.4 -5.8, 9.9 -0.6, 9.7 4.4!, 4 5.5, -3 5.1'),
    {
      edge: 0.8,
      wobble: 0.06,
      round: { from: [-9.6, -4], to: [9.9, 0], strength: 0.7 },
      inner: [
        garment.plane(points('-6.4 -4, -3.6 -7, 0 -8.2'), 1.2, cloth.bright, 0.7),
        pen(points('0.4 -9.7, -3 -4, -3.6 4.9'), 0.24, cloth.ink, 0.85, 0.5),
        pen(points('0.6 -9.7, 4.6 -4.6, 5.6 5'), 0.24, cloth.ink, 0.85, 0.5),
        ...(small
          ? []
          : [
              line(points('-0.1 -9, -3.5 -4, -4.2 4.9'), 0.12, cloth.bright, 0.6, [0.4, 0.3]),
              line(points('1.1 -9, 5.2 -4.6, 6.2 5'), 0.12, cloth.bright, 0.6, [0.4, 0.3]),
            ]),
        garment.fold(points('8.6 3.6, 7 1, 7.2 -2'), 1, 0.5),
      ],
    },
  );
  if (!small)
    for (const [x, y] of [
      [-6, -3.4],
      [1, -5.4],
      [7.2, -3.2],
    ] as const)
      garment.add(shape(ellipsePath([x, y], 0.34), cloth.deep), shape(ellipsePath([x, y], 0.17), cloth.ink));
  garment.panel(points('-0.5 -9.6!, -0.2 -10.3, 0.6 -10.4, 1.1 -9.7!'), {
    cloth: peak,
    edge: 0.15,
    wobble: 0.02,
    rim: false,
  });
  // underside, then the peak itself
  garment.panel(points('-9.7 3.2!, -13 3.2, -17.4 5.2, -19.4 7.6!, -14 6.5, -8 6, -2.6 5.8!, -3 4.6'), {
    cloth: peak,
    edge: 0.5,
    cast: 0.35,
    wobble: 0.05,
    inner: [
      garment.plane(points('-16.6 5.6, -12 4.3, -8 4.2'), 0.7, peak.bright, 0.8),
      ...(small
        ? []
        : [
            '-18.4 6.9, -13.6 5.6, -8 5.2, -3 5.1',
            '-17.6 6, -13.2 4.8, -8 4.4, -4 4.6',
            '-16.4 5.2, -13 4.1, -9.4 3.7',
          ].map((n) => line(points(n), 0.12, peak.ink, 0.5, [0.4, 0.3]))),
    ],
  });
  return garment.finish();
};

/** Tweed drawn down to a short peak. */
export const flatCap = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  garment.inside(points('-8 4.6!, 0 3.4, 10.6 3.2!, 9.6 5.6, 2 6.6, -6 6.4'), { fill: tone(cloth.ground, -0.22) });
  garment.panel(points('-12.6 5.3!, -17 6.2, -18.8 7.4!, -15 8.6, -9 8.2, -4.6 6.9!, -8 5.2'), {
    edge: 0.5,
    wobble: 0.04,
    turn: -14,
    inner: [
      garment.plane(points('-16.6 6.9, -12 6.6, -8 6.4'), 0.6, cloth.bright, 0.7),
      line(points('-18 7.7, -14.6 8.1, -9.4 7.7, -5.4 6.6'), 0.12, cloth.ink, 0.6, [0.4, 0.3]),
    ],
  });
  garment.panel(
    points('-15.4 6, -16 4.4, -12.6 0.4, -6 -4, 2 -6.1, 8.4 -5, 11.8 -1, 12.2 3, 10.8 5.4!, 4 6.2, -3 6.7, -9.6 6.6'),
    {
      edge: 0.9,
      wobble: 0.08,
      turn: -8,
      cast: 0.25,
      inner: [
        garment.plane(points('-12 2.2, -5 -2.2, 3 -4.2'), 1.8, cloth.bright, 0.75),
        garment.plane(points('-13 5.2, -4 5.2, 6 4.4'), 1.2, cloth.ink, 0.6),
        garment.plane(points('9.6 -3.4, 11.2 0, 10.8 3.4'), 1.3, cloth.ink, 0.5),
        pen(points('-14.4 4.9, -6 2.4, 3.4 1.6, 11.8 1.6'), 0.24, cloth.ink, 0.8, 0.5),
        ...(small ? [] : [line(points('-14 5.4, -6 3, 3.4 2.2, 11.8 2.2'), 0.12, cloth.bright, 0.55, [0.42, 0.34])]),
        pen(points('1.6 -6, -1 -2.4, -2.4 1.8'), 0.2, cloth.ink, 0.6, 0.5),
        garment.fold(points('10.4 4.4, 7.4 2.8, 5 3'), 1.1, 0.5),
        garment.fold(points('-13.4 4, -10.6 3.6, -8 1.8'), 1, 0.5),
      ],
    },
  );
  garment.add(
    group([
      shape(ellipsePath([1.7, -5.9], 0.8, 0.4, 6), cloth.deep),
      line(ellipsePath([1.7, -5.9], 0.8, 0.4, 6), 0.12, cloth.ink),
    ]),
  );
  return garment.finish();
};

/** Ribbed, with a turned-up cuff; a second colour makes a bobble. */
export const beanie = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const bobble = cloth.accents[0];
  const ribs = (low: number, high: number, half: number, top: number, count: number): string =>
    Array.from({ length: count }, (_, i) => {
      const s = -1 + (2 * (i + 0.5)) / count;
      const bow = Math.sin(s * 1.35) / Math.sin(1.35);
      return curvePath(
        [
          [bow * half, low],
          [bow * half * 1.03, (low + high) / 2],
          [bow * top, high],
        ],
        false,
      );
    }).join('');
  if (bobble) {
    const pile = plainCloth(bobble, 'fleece', detail);
    const ring = Array.from({ length: 26 }, (_, i): Node => {
      const a = (i / 26) * 2 * Math.PI;
      const r = 3.4 + (i % 2 ? 0.3 : -0.25) + garment.jitter(0.15);
      return [r * Math.cos(a), -13.2 + r * Math.sin(a)];
    });
    garment.panel(ring, {
      cloth: pile,
      edge: 0.9,
      wobble: 0,
      inner: [garment.plane(points('-1.6 -14.6, -0.6 -15, 0.8 -15'), 1, pile.bright, 0.8)],
    });
  }
  const count = small ? 8 : 15;
  garment.panel(points('-11 3!, -11.2 -2, -9.4 -7.2, -5 -10.6, 0 -11.4, 5 -10.6, 9.4 -7.2, 11.2 -2, 11 3!, 0 4.6'), {
    edge: 0.9,
    wobble: 0.08,
    weave: false,
    round: { from: [-11, -3], to: [11, 0], strength: 0.8 },
    inner: [
      line(
        Array.from({ length: count }, (_, i) => {
          const s = Math.sin((-1 + (2 * (i + 0.5)) / count) * 1.35) / Math.sin(1.35);
          return curvePath(
            [
              [s * 10.8, 4],
              [s * 10.6, -3],
              [s * 6.4, -8.6],
              [s * 1.6, -11.2],
            ],
            false,
          );
        }).join(''),
        small ? 0.4 : 0.26,
        cloth.ink,
        0.45,
      ),
      garment.plane(points('-5.6 -7, -6.2 -3, -5.8 1'), 1.4, cloth.bright, 0.6),
      garment.fold(points('9 1, 6.4 -1.6, 5.6 -5'), -1.2, 0.5),
      garment.fold(points('-4 -10, -2.6 -7.8, -2.8 -5'), 0.9, 0.5),
    ],
  });
  garment.panel(
    points(
      '-11.6 2.2!, -5 3.6, 0 3.9, 5 3.6, 11.6 2.2!, 11.9 5.4, 11.3 8.7!, 5 10, 0 10.3, -5 10, -11.3 8.7!, -11.9 5.4',
    ),
    {
      edge: 0.6,
      cast: 0.4,
      wobble: 0.06,
      weave: false,
      round: { from: [-11.6, 4], to: [11.6, 7], strength: 0.8 },
      inner: [
        line(ribs(10.6, 2.4, 11.2, 11.4, count + 2), small ? 0.42 : 0.3, cloth.ink, 0.5),
        line(ribs(10.6, 2.4, 11.2, 11.4, count + 2), 0.12, cloth.bright, 0.35),
        garment.plane(points('-8.4 5, -3 6.4, 2 6.6'), 1, cloth.bright, 0.5),
      ],
    },
  );
  return garment.finish();
};
