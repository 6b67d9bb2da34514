import { plainCloth } from '../fabric/index.ts';
import { corner, group, line, type Node, type Painted, pen, shape, tone } from '../kit/index.ts';
import { fly, hemStitch, slantPocket, topstitch } from './front.ts';
import type { Leg } from './leg.ts';
import { legFolds, legShade } from './leg-folds.ts';
import type { TrouserRecipe, Trousers } from './trousers.ts';
import { beltLoops, sewnBand } from './waistband.ts';

/** Walking trousers: shaped knees, a zipped pocket, a webbing belt. */
export const walking: TrouserRecipe = {
  block: { waist: 37.5, hip: 48, rise: 27, band: 3.8, ease: 1 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.8),
    kneeSeams(t, leg),
    ...(leg.side === 1 ? [thighZip(t, leg)] : []),
    slantPocket(t, leg),
    hemStitch(t, leg, t.garment.cloth.ink, 2, 0.7),
  ],
  front: (t) => fly(t, t.garment.cloth.ink),
  band: (t) => {
    sewnBand(t, { thread: t.garment.cloth.ink, opacity: 0.5, overlap: false });
    webbingBelt(t);
    beltLoops(t, [-0.82, 0.82], { width: 1.6 });
  },
};

/** Seams that shape the knee, with two darts, and a seam to the hem. */
const kneeSeams = (t: Trousers, leg: Leg): Painted => {
  const { rise, length } = t.measures;
  const knee = rise + (length - rise) * 0.45;
  const { ink } = t.garment.cloth;
  const across = (y: number, bow: number): Node[] => [
    [leg.inner(y) - leg.side, y + bow],
    [leg.at(0.5)(y), y - bow * 0.6],
    [leg.outer(y) + leg.side, y + bow],
  ];
  const rows = [across(knee - 7, 1.4), across(knee + 8, -1.2)];
  return group([
    ...rows.flatMap((row) => [
      pen(row, 0.3, ink, 0.75, 0.5),
      topstitch(
        t,
        row.map(([x, y]): Node => [x, y + 0.6]),
        ink,
        0.6,
      ),
    ]),
    ...[knee - 1, knee + 2.4].map((y) =>
      pen(
        [
          [leg.outer(y) + leg.side, y],
          [leg.at(0.72)(y), y + 0.4],
        ],
        0.3,
        ink,
        0.7,
        0.3,
      ),
    ),
    t.garment.plane(across(knee, 0.3), 4.5, t.garment.cloth.bright, 0.28),
  ]);
};

/** A zipped pocket on the thigh. */
const thighZip = (t: Trousers, leg: Leg): Painted => {
  const { rise } = t.measures;
  const top: Node = [leg.at(0.62)(rise + 8), rise + 8];
  const end: Node = [leg.at(0.92)(rise + 17), rise + 17];
  const { ink, bright } = t.garment.cloth;
  const teeth = t.garment.small ? [] : [line([top, end], 0.3, bright, 0.7, [0.18, 0.22])];
  return group([
    line([top, end], 1.2, ink, 0.5),
    line([top, end], 0.5, ink, 0.9),
    ...teeth,
    shape(
      [
        corner(end[0] - 0.5, end[1] - 0.4),
        corner(end[0] + 0.3, end[1] - 0.6),
        corner(end[0] + 0.5, end[1] + 1.8),
        corner(end[0] - 0.3, end[1] + 1.9),
      ],
      '#8d9094',
    ),
  ]);
};

/** Webbing and a flat buckle in front of the band. */
const webbingBelt = ({ garment, measures: { waist, band } }: Trousers): void => {
  const web = plainCloth(tone(garment.cloth.ground, -0.14, 0.6), 'canvas', garment.detail);
  const half = waist / 2;
  const y = 1.7;
  garment.panel(
    [
      corner(-half * 0.8, y),
      [0, y + 0.7],
      corner(half * 0.8, y),
      corner(half * 0.8, y + band - 1.9),
      [0, y + band - 1.2],
      corner(-half * 0.8, y + band - 1.9),
    ],
    { cloth: web, covers: false, edge: 0.3, wobble: 0.05, cast: 0.4, rim: false },
  );
  garment.panel(
    [corner(-2.4, y + 0.1), corner(2.4, y + 0.1), corner(2.4, y + band - 0.7), corner(-2.4, y + band - 0.7)],
    {
      cloth: plainCloth('#4a4c50', 'smooth', garment.detail),
      covers: false,
      edge: 0.3,
      wobble: 0.04,
      cast: 0.5,
      rim: false,
    },
  );
};
