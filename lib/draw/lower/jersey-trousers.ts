import { alongEdge } from '../kit/edges.ts';
import { corner, lerp, type Node, pen, stitch } from '../kit/index.ts';
import { gathers, ribCuff } from './cuffs.ts';
import { cordColour, waistGathers } from './easy-waist.ts';
import { hemStitch, slantPocket, topstitch } from './front.ts';
import { legFolds, legShade } from './leg-folds.ts';
import { seamPen } from './seam-pen.ts';
import type { TrouserRecipe, Trousers } from './trousers.ts';
import { drawCord, gatheredBand } from './waistband.ts';

const CUFF = 6.5;

/** Joggers: ribbed waist and cuffs, a cord. */
export const joggers: TrouserRecipe = {
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

/** Leggings: close legs, a broad band cut to a V. */
export const leggings: TrouserRecipe = {
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
