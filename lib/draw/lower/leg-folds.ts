import { type Garment, group, lerp, type Node, type Painted, pen } from '../kit/index.ts';
import type { Leg } from './leg.ts';
import type { LegMeasures } from './leg-measures.ts';

const nodes = (leg: Leg, points: readonly (readonly [share: number, y: number])[]): Node[] =>
  points.map(([share, y]) => [leg.at(share)(y), y]);

/** Light down the front of the thigh, shade towards the side seam on the right and under the fork. */
export const legShade = (garment: Garment, leg: Leg, { rise, length, band }: LegMeasures): Painted[] => {
  const { ink, bright, sheen, depth } = garment.cloth;
  const lit = leg.side === 1 ? 0.36 : 0.62;
  const dark = leg.side === 1 ? 0.86 : 0.14;
  const top = lerp(band, rise, 0.4);
  return [
    garment.plane(leg.down(lit, top, length + 2), 3, bright, 0.4 * Math.min(1.3, sheen)),
    garment.plane(leg.down(dark, top + 4, length + 2), 3.2, ink, 0.34 * depth),
    garment.plane(leg.down(leg.side === 1 ? 0.06 : 0.95, rise - 4, length), 2, ink, 0.3 * depth),
  ];
};

/** Folds that fan out from the fork, and those at hip, knee and hem; more and finer in a thin cloth. */
export const legFolds = (garment: Garment, leg: Leg, { rise, length }: LegMeasures, strength = 1): Painted[] => {
  const { folds } = garment.cloth.drape;
  const { side } = leg;
  const lead = garment.random() > 0.5 ? 1.3 : 0.9;
  const w = -side;
  const inseam = length - rise;
  const knee = rise + inseam * 0.47;
  const j = (amount: number) => garment.jitter(amount);
  const f = (points: readonly (readonly [number, number])[], width: number, k: number, peak = 0.3) =>
    garment.fold(nodes(leg, points), w * width, k * strength * lead, peak);
  const marks: Painted[] = [
    f(
      [
        [0.02, rise + 0.4],
        [0.26, rise - 1.2 + j(0.8)],
        [0.56, rise - 5 + j(1.5)],
      ],
      1.6,
      0.75,
    ),
    f(
      [
        [0.03, rise + 2],
        [0.24, rise + Math.min(7, inseam * 0.25) + j(1)],
        [0.42, rise + Math.min(18, inseam * 0.5) + j(2)],
      ],
      1.7,
      0.7,
    ),
  ];
  if (inseam > 26)
    marks.push(
      f(
        [
          [1.02, lerp(rise, knee, 0.3) + j(3)],
          [0.78, lerp(rise, knee, 0.42) + j(2)],
          [0.5, lerp(rise, knee, 0.38) + j(2)],
        ],
        1.5,
        0.5,
      ),
      f(
        [
          [0.03, knee - 3 + j(3)],
          [0.3, knee + j(2)],
          [0.55, knee - 1 + j(3)],
        ],
        1.5,
        0.6,
      ),
    );
  if (inseam > 45)
    marks.push(
      f(
        [
          [1.02, length - 20 + j(4)],
          [0.72, length - 15 + j(2)],
          [0.4, length - 15.5 + j(2)],
        ],
        1.5,
        0.55,
      ),
      f(
        [
          [0.02, length - 9 + j(2)],
          [0.3, length - 5 + j(1)],
          [0.62, length - 6.5 + j(1)],
        ],
        1.2,
        0.5,
      ),
    );
  if (folds > 1.1 && !garment.small)
    marks.push(
      f(
        [
          [0.06, rise + 6],
          [0.2, rise + 14],
          [0.28, rise + Math.min(30, inseam * 0.6)],
        ],
        1.3,
        0.5,
      ),
      f(
        [
          [0.98, knee + 6 + j(3)],
          [0.7, knee + 8 + j(2)],
          [0.46, knee + 6 + j(2)],
        ],
        1.2,
        0.4,
      ),
    );
  return marks;
};

/** Long soft folds that a wide leg drops from the waist to the hem. */
export const legDrape = (garment: Garment, leg: Leg, { rise, length }: LegMeasures, strength = 1): Painted[] =>
  [0.2, 0.74].map((share, i) => {
    const from = i === 0 ? length + 1 : length + 0.6;
    const top = lerp(rise, length, i === 0 ? 0.15 : 0.32) + garment.jitter(5);
    const s = share + garment.jitter(0.05);
    return garment.fold(
      nodes(leg, [
        [s, from],
        [s - 0.03, lerp(from, top, 0.5)],
        [s + 0.02, top],
      ]),
      -leg.side * 2.4,
      1 * strength,
      0.35,
    );
  });

/** The pressed crease down the middle of a tailored leg. */
export const pressedCrease = (garment: Garment, leg: Leg, { band, length }: LegMeasures, from = band): Painted => {
  const { ink, bright } = garment.cloth;
  const dark = leg.down(0.5, from, length + 1.2, 4);
  const lit = dark.map(([x, y]): Node => [x - 0.32, y]);
  const broad = garment.small ? 2.2 : 1;
  return group([pen(dark, 0.3 * broad, ink, 0.72, 0.5), pen(lit, 0.24 * broad, bright, 0.75, 0.5)]);
};

/** Creases of a crumpled cloth: short, crisp, in every direction. `count` of them within the leg. */
export const legCrumple = (
  garment: Garment,
  leg: Leg,
  { rise, length, band }: LegMeasures,
  count: number,
): Painted[] => {
  const many = garment.small ? Math.round(count / 3) : count;
  return Array.from({ length: many }, () => {
    const y = lerp(lerp(band, rise, 0.4), length - 3, garment.random());
    const share = 0.12 + 0.76 * garment.random();
    const x = leg.at(share)(y);
    const [dx, dy] = [garment.jitter(1), garment.jitter(0.55)];
    const reach = 3 + garment.random() * 4.5;
    return garment.fold(
      [
        [x, y],
        [x + dx * reach * 0.55, y + dy * reach * 0.55 + garment.jitter(0.6)],
        [x + dx * reach, y + dy * reach],
      ],
      0.9 * (garment.random() > 0.5 ? 1 : -1),
      0.6,
      0.3,
    );
  });
};
