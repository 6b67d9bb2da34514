import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { curvePath, ellipsePath, Garment, line, type Painted, shape, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';

/** A ribbon round the foot of the crown. */
const ribbon = (garment: Garment, outline: string, colour: string, bow: boolean): void => {
  const cloth = plainCloth(colour, 'satin', garment.detail);
  garment.panel(points(outline), {
    cloth,
    weave: false,
    covers: false,
    edge: 0.35,
    wobble: 0.04,
    rim: false,
    inner: [garment.plane(points('-6 -1, 0 0.4, 5 -0.4'), 0.6, cloth.bright, 0.5)],
  });
  if (!bow) return;
  garment.panel(points('7 -1.8!, 9.4 -2.4, 9.6 0.4, 7.4 0.8!'), {
    cloth,
    weave: false,
    covers: false,
    edge: 0.25,
    wobble: 0.04,
    rim: false,
    cast: 0.25,
  });
  garment.panel(points('6.7 -2.1!, 7.7 -2.2!, 7.9 1.1!, 7 1.2!'), {
    cloth,
    weave: false,
    covers: false,
    edge: 0.2,
    wobble: 0.03,
    rim: false,
    cast: 0.2,
  });
};

const arcs = (rx: number, ry: number, cy: number, steps: number, from = 0.35): string =>
  Array.from({ length: steps }, (_, i) =>
    ellipsePath(
      [0, cy],
      rx * (from + ((1 - from) * (i + 0.5)) / steps),
      ry * (from + ((1 - from) * (i + 0.5)) / steps),
    ),
  ).join('');

/** Straw, with a brim broad enough to shade the shoulders. */
export const sunHat = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  garment.panel(
    points(
      '-21.4 3, -18.6 -2.4, -10 -5.4, 0 -6.2, 10 -5.6, 18.4 -2.8, 21.6 2.4, 19 6.6, 11.6 10, 1 11.3, -9.6 10.3, -18.4 7.2',
    ),
    {
      edge: 0.9,
      wobble: 0.1,
      inner: [
        line(arcs(21.4, 8.9, 2.5, small ? 4 : 9), 0.16, cloth.ink, 0.32),
        garment.plane(points('-17 1, -15 5.6, -8 8.4'), 1.8, cloth.bright, 0.6),
        garment.plane(points('-9.6 2, 0 4.6, 10 2.4'), 2.6, cloth.ink, 0.55),
        garment.plane(points('6 9.6, 14 7.6, 19.4 3.4'), 1.5, cloth.ink, 0.4),
        garment.plane(points('-10 -4.6, 0 -5.4, 10 -4.8'), 1, cloth.ink, 0.4),
      ],
    },
  );
  garment.panel(
    points('-9.4 1.6!, -9.2 -4, -7.4 -8.6, -3 -10.7, 3 -10.8, 7.4 -8.8, 9.2 -4.2, 9.4 1.3!, 5 3.3, 0 3.8, -5 3.4'),
    {
      cast: 0.5,
      edge: 0.7,
      wobble: 0.06,
      round: { from: [-9.4, -5], to: [9.4, -2], strength: 0.8 },
      inner: [
        line(
          Array.from({ length: small ? 4 : 8 }, (_, i) =>
            curvePath(
              [
                [-9.6, -8.6 + i * 1.5],
                [0, -6.4 + i * 1.5],
                [9.6, -8.8 + i * 1.5],
              ],
              false,
            ),
          ).join(''),
          0.16,
          cloth.ink,
          0.35,
        ),
        garment.plane(points('-5 -9, -1 -9.8, 4 -9.4'), 0.8, cloth.bright, 0.8),
      ],
    },
  );
  ribbon(
    garment,
    '-9.6 -2!, -5 0, 0 0.5, 5 -0.1, 9.6 -2.3!, 9.6 1.2!, 5 3.3, 0 3.9, -5 3.4, -9.6 1.5!',
    cloth.accents[0] ?? '#3d3833',
    false,
  );
  return garment.finish();
};

/** A pinched crown and a snap brim. */
export const feltHat = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  garment.panel(
    points('-16.6 1.2, -13.4 -1.6, -6 -2.6, 6 -2.8, 13 -2.2, 16.4 -0.4, 16.2 2, 11.6 5, 3 6.8, -6 6.4, -13.4 4.2'),
    {
      edge: 0.7,
      wobble: 0.06,
      inner: [
        garment.plane(points('-14 1.6, -10 4, -3 5.4'), 1.1, cloth.bright, 0.7),
        garment.plane(points('-8.6 1.6, 0 3.6, 9 1.4'), 1.7, cloth.ink, 0.6),
        garment.plane(points('4 6, 11 4.4, 15.6 1.6'), 0.9, cloth.ink, 0.45),
        line(points('-16 1.7, -13 4, -6 5.9, 3 6.3, 11.4 4.6, 15.9 1.9'), 0.12, cloth.ink, 0.5),
      ],
    },
  );
  garment.panel(
    points(
      '-9 1.4!, -8.8 -4, -7.4 -8.6, -4.6 -10.6, -1.6 -9.8, 1 -9.3, 4 -10.4, 7 -9, 8.6 -4.4, 9 1.2!, 5 3.3, 0 3.8, -5 3.4',
    ),
    {
      cast: 0.4,
      edge: 0.8,
      wobble: 0.06,
      round: { from: [-9, -5], to: [9, -2], strength: 0.7 },
      inner: [
        garment.plane(points('-5.8 -9.4, -2 -8.6, 2 -8.2, 6 -9'), 0.9, cloth.ink, 0.6),
        garment.fold(points('-4 -10, -3.4 -7.4, -4.6 -4.4'), 1.5, 1),
        garment.fold(points('4 -9.8, 3.6 -7.2, 4.8 -4.4'), -1.4, 0.9),
        garment.plane(points('-6.4 -7.6, -6.6 -5, -6.2 -2.6'), 0.9, cloth.bright, 0.7),
      ],
    },
  );
  ribbon(
    garment,
    '-9.2 -2.2!, -5 -0.2, 0 0.3, 5 -0.3, 9.2 -2.4!, 9.2 1!, 5 3.2, 0 3.8, -5 3.4, -9.2 1.3!',
    cloth.accents[0] ?? tone(cloth.ground, -0.2, 0.8),
    true,
  );
  return garment.finish();
};

/** A sewn crown and a sloping brim with rows of stitches. */
export const bucketHat = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const rows = (count: number): Painted[] =>
    Array.from({ length: count }, (_, i) => {
      const k = (i + 0.6) / count;
      return line(
        curvePath(
          [
            [-10.4 - 4.2 * k, 1.8 + 3.6 * k],
            [-6 - 2 * k, 3.9 + 4.4 * k],
            [0, 4.6 + 4.8 * k],
            [6 + 2 * k, 3.8 + 4.4 * k],
            [10.4 + 4.2 * k, 1.6 + 3.6 * k],
          ],
          false,
        ),
        0.12,
        cloth.ink,
        0.55,
        [0.4, 0.3],
      );
    });
  garment.inside(points('-14 6, -7 9.2, 0 10, 7 9, 14 5.8, 7 4.4, -7 4.6'), { fill: cloth.lining });
  garment.panel(
    points('-9.6 -0.4!, -5 1.6, 0 2.1, 5 1.5, 9.6 -0.6!, 12.4 3, 14.9 5.8!, 8 9.2, 0 10.2, -8 9.3, -14.9 6!, -12.4 3'),
    {
      edge: 0.7,
      wobble: 0.06,
      inner: [
        garment.plane(points('-9.4 0.6, 0 3, 9.4 0.4'), 1.2, cloth.ink, 0.6),
        garment.plane(points('-11 3.8, -6 6.6, -1 7.4'), 1.4, cloth.bright, 0.55),
        garment.fold(points('11 1.8, 12 4.4, 11.4 7'), -1, 0.5),
        ...(small ? [] : rows(4)),
      ],
    },
  );
  garment.panel(
    points('-9.7 0.2!, -9.2 -5, -7.6 -9.4, -3.4 -10.7, 3.4 -10.8, 7.6 -9.6, 9.2 -5.2, 9.7 0!, 5 2.1, 0 2.6, -5 2.2'),
    {
      edge: 0.7,
      wobble: 0.06,
      round: { from: [-9.6, -5], to: [9.6, -2], strength: 0.7 },
      inner: [
        line(points('-7.7 -9, -3.4 -8.2, 0 -8, 3.4 -8.2, 7.7 -9.2'), 0.2, cloth.ink, 0.8),
        line(points('-7.8 -8.4, -3.4 -7.6, 0 -7.4, 3.4 -7.6, 7.8 -8.6'), 0.12, cloth.ink, 0.5, [0.4, 0.3]),
        garment.fold(points('-7.4 1, -6 -3, -7 -6.4'), 1.3, 0.5),
        garment.fold(points('6.4 1, 5.6 -2.6, 6.6 -6'), -1.3, 0.45),
        line(points('1 2.4, 1.2 -3, 0.8 -7.8'), 0.14, cloth.ink, 0.5),
      ],
    },
  );
  if (!small)
    for (const [x, y] of [
      [-4.6, -3.6],
      [-2.6, -3.2],
    ] as const)
      garment.add(shape(ellipsePath([x, y], 0.42), '#9d927c'), shape(ellipsePath([x, y], 0.2), cloth.ink));
  return garment.finish();
};
