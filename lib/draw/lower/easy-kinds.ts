import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { alongEdge } from '../kit/edges.ts';
import { corner, group, lerp, line, type Node, type Painted, pen, shape, stitch, tone } from '../kit/index.ts';
import { gathers, hemSlit, ribCuff, turnUp } from './cuffs.ts';
import { fly, hemStitch, slantPocket, topstitch, waistPleats } from './front.ts';
import type { Leg } from './leg.ts';
import { legCrumple, legDrape, legFolds, legShade, pressedCrease } from './leg-folds.ts';
import { seamPen } from './seam-pen.ts';
import { drawTrousers, type TrouserRecipe, type Trousers } from './trousers.ts';
import { beltLoops, drawCord, gatheredBand, sewnBand } from './waistband.ts';

const dull = (hex: string): string => tone(hex, -0.12, 0.6);
const cordColour = (hex: string): string => (tone(hex, 0.2) === hex ? '#efe6d4' : tone(hex, 0.22, 0.5));

/** Tucks that a gathered waist sends down the hip. */
const waistGathers = ({ garment, measures: { band, waist } }: Trousers, leg: Leg): Painted =>
  group(
    [0.14, 0.3, 0.46, 0.62, 0.8].map((share, i) => {
      const x = (leg.side * waist * share) / 2;
      const drop = band + 6 + garment.random() * 8;
      return garment.fold(
        [
          [x, band - 0.3],
          [x * 1.03, lerp(band, drop, 0.5)],
          [x * 1.08 + garment.jitter(0.5), drop],
        ],
        (i % 2 ? 1 : -1) * 1.1,
        0.8,
        0.2,
      );
    }),
  );

const cropped: TrouserRecipe = {
  block: { waist: 36, hip: 47, rise: 28, band: 4 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.8),
    pressedCrease(t.garment, leg, t.measures, t.measures.rise * 0.7),
    slantPocket(t, leg),
    hemSlit(t, leg, 5),
  ],
  front: (t) => fly(t, t.garment.cloth.ink),
  band: (t) => {
    sewnBand(t, { thread: t.garment.cloth.ink, overlap: false });
    const { band } = t.measures;
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.2, 1],
          [0.1, band + 1.2],
        ],
        0.34,
        0.9,
      ),
    );
    for (const x of [1.6, -1.6]) t.garment.button(x, band / 2 + 1.1, 0.7, dull(t.garment.cloth.ground));
  },
};

const linen: TrouserRecipe = {
  block: { waist: 35, hip: 50, rise: 30, band: 4.4 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.9),
    ...legDrape(t.garment, leg, t.measures, 0.8),
    ...legCrumple(t.garment, leg, t.measures, 9),
    waistGathers(t, leg),
    slantPocket(t, leg, t.garment.cloth.ink),
    hemStitch(t, leg, t.garment.cloth.ink, 3.4, 0.6),
  ],
  front: (t) => {
    const { band, rise } = t.measures;
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.1, band],
          [0.3, lerp(band, rise, 0.5)],
          [-0.6, rise],
        ],
        0.32,
        0.7,
        0.5,
      ),
    );
  },
  band: (t) => {
    gatheredBand(t, { ribs: 22, strength: 0.7 });
    drawCord(t, cordColour(t.garment.cloth.ground), { length: 13 });
  },
};

const walking: TrouserRecipe = {
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

const CUFF = 6.5;
const joggers: TrouserRecipe = {
  block: { waist: 34, hip: 49, rise: 29, band: 5.2, ease: 1 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures),
    waistGathers(t, leg),
    slantPocket(t, leg, t.garment.cloth.ink),
    gathers(t, leg, CUFF),
  ],
  cuff: CUFF,
  hem: (t, leg) => ribCuff(t, leg, CUFF),
  front: (t) =>
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.1, t.measures.band],
          [0.2, 16],
          [-0.5, t.measures.rise],
        ],
        0.26,
        0.6,
        0.5,
      ),
    ),
  band: (t) => {
    gatheredBand(t, { ribs: 30 });
    drawCord(t, cordColour(t.garment.cloth.ground), { length: 15, knot: false });
  },
};

const leggings: TrouserRecipe = {
  block: { waist: 30, hip: 38.5, rise: 27, band: 8 },
  roundness: 1,
  onLeg: (t, leg) => [
    t.garment.plane(leg.down(0.45, 14, t.measures.length), 2.2, t.garment.cloth.bright, 0.5),
    ...legFolds(t.garment, leg, t.measures, 0.55),
    topstitch(t, alongEdge(leg.outer, 10, t.measures.length, -leg.side * 2.2), t.garment.cloth.bright, 0.5),
    hemStitch(t, leg, t.garment.cloth.bright, 1.4, 0.6),
  ],
  front: () => {},
  band: (t) => highBand(t),
};

/** A wide flat waistband cut in a shallow V at the front. */
const highBand = ({ garment, measures: { waist, band, rise } }: Trousers): void => {
  const half = waist / 2;
  const low = half + 0.4;
  const seam: Node[] = [
    [low + 0.2, band - 0.6],
    [low * 0.5, band + 1],
    [0, band + 3],
    [-low * 0.5, band + 1],
    [-low - 0.2, band - 0.6],
  ];
  const left = -lerp(half, low, 0.5) - 0.1;
  const first = seam[0] ?? [0, 0];
  const last = seam[seam.length - 1] ?? [0, 0];
  const hem: Node[] = [corner(first[0], first[1]), ...seam.slice(1, -1), corner(last[0], last[1])];
  garment.panel([corner(-half, 0), [0, 1.1], corner(half, 0), [-left, band * 0.5], ...hem, [left, band * 0.5]], {
    edge: 0.5,
    cast: 0.45,
    wobble: 0.05,
    round: { from: [-half, 0], to: [half, 0], strength: 1 },
    inner: garment.small
      ? []
      : [
          stitch(
            seam.map(([x, y]): Node => [x, y - 0.7]),
            garment.cloth.bright,
            0.5,
          ),
          stitch(
            [
              [-half, 1],
              [0, 2.1],
              [half, 1],
            ],
            garment.cloth.bright,
            0.5,
          ),
        ],
  });
  garment.add(
    pen(
      [
        [0, band + 3],
        [0.2, lerp(band, rise, 0.6)],
        [-0.3, rise],
      ],
      0.2,
      garment.cloth.bright,
      0.4,
      0.5,
    ),
  );
};

const culottes: TrouserRecipe = {
  block: { waist: 35, hip: 49, rise: 32, band: 4.6 },
  roundness: 0.6,
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legDrape(t.garment, leg, t.measures, 1.1),
    ...inverted(t, leg),
    slantPocket(t, leg),
    hemStitch(t, leg, t.garment.cloth.ink, 2.6, 0.5),
  ],
  front: (t) =>
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.1, t.measures.band],
          [0.2, 18],
          [-0.5, t.measures.rise],
        ],
        0.3,
        0.7,
        0.5,
      ),
    ),
  band: (t) => sewnBand(t, { overlap: false }),
};

/** A deep pleat that opens from the waistband down to the hem. */
const inverted = ({ garment, measures: { band, length } }: Trousers, leg: Leg): Painted[] => {
  const run = leg.down(0.46, band, length + 1, 4);
  return [
    garment.plane(
      run.map(([x, y]): Node => [x + 0.9, y]),
      1.6,
      garment.cloth.ink,
      0.42,
      0.75,
    ),
    seamPen(garment, run, 0.42, 0.8, 0.6),
    garment.plane(
      run.map(([x, y]): Node => [x - 1.4, y]),
      1.1,
      garment.cloth.bright,
      0.5,
      0.6,
    ),
  ];
};

const shorts: TrouserRecipe = {
  block: { waist: 38, hip: 49, rise: 26, band: 3.8 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures),
    slantPocket(t, leg),
    hemStitch(t, leg, t.garment.cloth.ink, 2.8, 0.7),
  ],
  front: (t) => fly(t, t.garment.cloth.ink),
  band: (t) => {
    sewnBand(t, { thread: t.garment.cloth.ink, opacity: 0.5 });
    beltLoops(t, [-0.88, -0.48, 0.48, 0.88]);
    t.garment.button(0.8, t.measures.band / 2 + 1.1, 0.72, dull(t.garment.cloth.ground));
  },
};

const tailoredShorts: TrouserRecipe = {
  block: { waist: 35.5, hip: 48.5, rise: 29, band: 4.6 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.7),
    waistPleats(t, leg, 2),
    pressedCrease(t.garment, leg, t.measures),
    slantPocket(t, leg),
  ],
  hem: (t, leg) => turnUp(t, leg, 4.2),
  front: (t) => fly(t, t.garment.cloth.bright),
  band: (t) => {
    sewnBand(t, { overlap: false });
    beltLoops(t, [-0.86, -0.5, 0.5, 0.86]);
    t.garment.add(
      seamPen(
        t.garment,
        [
          [-4.2, 1],
          [-4.4, t.measures.band + 1.2],
        ],
        0.32,
        0.9,
      ),
    );
    t.garment.button(-2.8, t.measures.band / 2 + 1.1, 0.7, dull(t.garment.cloth.ground));
  },
};

const kind =
  (recipe: TrouserRecipe): DrawKind =>
  (piece, detail) =>
    drawTrousers(piece, detail, recipe);

/** Easy trousers, leggings, culottes and shorts. */
export const EASY_TROUSERS = {
  'cropped trousers': kind(cropped),
  'linen trousers': kind(linen),
  'walking trousers': kind(walking),
  joggers: kind(joggers),
  leggings: kind(leggings),
  culottes: kind(culottes),
  shorts: kind(shorts),
  'tailored shorts': kind(tailoredShorts),
} satisfies Partial<Record<KindId, DrawKind>>;
