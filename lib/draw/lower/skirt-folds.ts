import { lerp, type Node, type Painted } from '../kit/index.ts';
import type { Skirt } from './skirt.ts';

/** Light left of the middle, shade to the right, down the whole skirt. */
export const skirtShade = ({ garment, down, top, measures: { length, hem } }: Skirt): Painted[] => {
  const { ink, bright, sheen, depth } = garment.cloth;
  return [
    garment.plane(down(0.3, top + 3, length + 2), hem * 0.08, bright, 0.34 * Math.min(1.3, sheen)),
    garment.plane(down(0.78, top + 6, length + 2), hem * 0.09, ink, 0.3 * depth),
    garment.plane(down(0.05, top + 8, length + 2), hem * 0.05, ink, 0.24 * depth),
  ];
};

/** Flutes: folds that rise from the hem between its waves and lose themselves below the hip. */
export const skirtFlutes = (
  { garment, at, flutes, top, hemAt, measures: { length, hem } }: Skirt,
  strength = 1,
): Painted[] =>
  flutes.flatMap((share, i) => {
    const width = Math.min(3, hem / (flutes.length * 5.2)) * (share < 0.5 ? 1 : -1);
    const high = lerp(length, top + 8, 0.5 + 0.4 * garment.random());
    const toMiddle = (s: number) => lerp(share, 0.5, s);
    const nodes: Node[] = [
      [at(share)(length), hemAt(share) + 0.4],
      [at(toMiddle(0.04))(lerp(length, high, 0.5)), lerp(length, high, 0.5)],
      [at(toMiddle(0.1))(high), high],
    ];
    return [garment.fold(nodes, width * 1.15, (i % 2 ? 1 : 1.35) * strength, 0.35)];
  });

/** Short tension folds at the hip from the side seams, and a drag from the waist. */
export const hipFolds = ({ garment, at, top, measures: { length } }: Skirt, strength = 1): Painted[] => {
  const j = (amount = 1) => garment.jitter(amount);
  const lead = garment.random() > 0.5;
  const low = Math.min(length * 0.45, top + 24);
  const f = (points: readonly (readonly [number, number])[], width: number, k: number) =>
    garment.fold(
      points.map(([share, y]): Node => [at(share)(y), y]),
      width,
      k * strength,
      0.28,
    );
  return [
    f(
      [
        [0.01, low + j(2)],
        [0.2, low + 2 + j()],
        [0.42, low + 0.5 + j()],
      ],
      1.7,
      lead ? 0.7 : 0.45,
    ),
    f(
      [
        [0.99, low - 4 + j(2)],
        [0.82, low + j()],
        [0.66, low + 7 + j(2)],
      ],
      -1.8,
      lead ? 0.5 : 0.75,
    ),
    f(
      [
        [0.3 + j(0.04), top + 0.4],
        [0.29, top + 6],
        [0.26, top + 13 + j(2)],
      ],
      1.4,
      0.6,
    ),
    f(
      [
        [0.68 + j(0.04), top + 0.4],
        [0.7, top + 5],
        [0.73, top + 11 + j(2)],
      ],
      -1.3,
      0.5,
    ),
  ];
};

/** Gathers: many short folds below a seam, as where a tier is sewn on. */
export const gatherFolds = (
  { garment, at }: Skirt,
  from: number,
  reach: number,
  count: number,
  strength = 1,
): Painted[] => {
  const many = garment.small ? Math.round(count / 3) : count;
  return Array.from({ length: many }, (_, i) => {
    const share = (i + 0.5 + garment.jitter(0.3)) / many;
    const end = from + reach * (0.4 + 0.6 * garment.random());
    const bend = garment.jitter(0.012);
    return garment.fold(
      [
        [at(share)(from), from - 0.3],
        [at(share + bend)(lerp(from, end, 0.5)), lerp(from, end, 0.5)],
        [at(share + bend * 1.5)(end), end],
      ],
      (i % 2 ? 1 : -1) * 1.1,
      0.95 * strength,
      0.22,
    );
  });
};

/**
 * Cloth cut on the bias: long slanting drapes and a slow sheen, heavier on one side.
 * @param pull whether folds run slantwise from the hips
 */
export const biasDrape = (
  { garment, at, top, measures: { length, hem } }: Skirt,
  from = top,
  pull = true,
): Painted[] => {
  const { bright, ink, sheen, depth } = garment.cloth;
  const lead = garment.random() > 0.5 ? 1 : -1;
  const s = (share: number) => (lead === 1 ? share : 1 - share);
  const y = (t: number) => lerp(from, length, t);
  const run = (points: readonly (readonly [number, number])[]): Node[] =>
    points.map(([share, t]) => [at(s(share))(y(t)), y(t)]);
  const lit = 0.34 * Math.min(1.5, sheen);
  const dark = 0.4 * depth;
  // every sheen starts above the waist and runs out below the hem, so that none ends in a point on the cloth
  const sheens: readonly (readonly [run: Node[], half: number, colour: string, opacity: number])[] = [
    [
      run([
        [0.22, -0.2],
        [0.31, 0.45],
        [0.24, 1.25],
      ]),
      hem * 0.085,
      bright,
      lit,
    ],
    [
      run([
        [0.24, -0.1],
        [0.34, 0.5],
        [0.3, 1.2],
      ]),
      hem * 0.03,
      bright,
      lit * 1.1,
    ],
    [
      run([
        [0.4, -0.2],
        [0.46, 0.5],
        [0.44, 1.3],
      ]),
      hem * 0.06,
      ink,
      dark,
    ],
    [
      run([
        [0.68, -0.3],
        [0.57, 0.4],
        [0.62, 1.3],
      ]),
      hem * 0.06,
      bright,
      lit * 0.8,
    ],
    [
      run([
        [0.8, -0.2],
        [0.74, 0.6],
        [0.78, 1.3],
      ]),
      hem * 0.07,
      ink,
      dark,
    ],
    [
      run([
        [0.96, -0.1],
        [0.88, 0.6],
        [0.91, 1.3],
      ]),
      hem * 0.045,
      bright,
      lit * 0.7,
    ],
  ];
  return [
    ...sheens.map(([line, half, colour, opacity]) => garment.plane(line, half, colour, opacity)),
    ...(pull
      ? [
          garment.fold(
            run([
              [0.98, 0.1],
              [0.72, 0.2],
              [0.4, 0.36],
              [0.26, 0.56],
            ]),
            -2 * lead,
            0.6,
            0.3,
          ),
          garment.fold(
            run([
              [0.02, 0.16],
              [0.2, 0.22],
              [0.42, 0.2],
            ]),
            1.8 * lead,
            0.55,
            0.3,
          ),
        ]
      : []),
    garment.fold(
      run([
        [0.16, 1.02],
        [0.14, 0.78],
        [0.22, 0.5],
      ]),
      2.2 * lead,
      0.42,
      0.3,
    ),
    garment.fold(
      run([
        [0.54, 1.02],
        [0.5, 0.82],
        [0.55, 0.62],
      ]),
      2 * lead,
      0.4,
      0.3,
    ),
    garment.fold(
      run([
        [0.83, 1.02],
        [0.82, 0.75],
        [0.76, 0.48],
      ]),
      -2.3 * lead,
      0.45,
      0.3,
    ),
  ];
};
