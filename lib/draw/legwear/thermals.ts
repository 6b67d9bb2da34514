import type { DrawKind } from '../drawing.ts';
import { group, line, type Node, type Painted, pen } from '../kit/index.ts';
import { ribCuff } from '../lower/cuffs.ts';
import type { Leg } from '../lower/leg.ts';
import { legFolds, legShade } from '../lower/leg-folds.ts';
import { drawTrousers, type TrouserRecipe, type Trousers } from '../lower/trousers.ts';
import { gatheredBand } from '../lower/waistband.ts';

const CUFF = 7;

/** A flat seam: a dark line with zigzag stitches on it. */
const flatSeam = ({ garment }: Trousers, nodes: readonly Node[]): Painted =>
  group([
    pen(nodes, 0.4, garment.cloth.ink, 0.55, 0.5),
    ...(garment.small ? [] : [line(nodes, 0.5, garment.cloth.bright, 0.75, [0.16, 0.3])]),
  ]);

const thermals: TrouserRecipe = {
  block: { waist: 31, hip: 40, rise: 28, band: 4.4 },
  cuff: CUFF,
  roundness: 0.9,
  onLeg: (t, leg) => {
    const { garment, measures } = t;
    const { rise, length } = measures;
    return [
      ...legShade(garment, leg, measures),
      ...legFolds(garment, leg, measures, 0.7),
      ...waffle(t, leg),
      flatSeam(t, leg.down(0.16, rise + 2, length, 3)),
      flatSeam(t, leg.down(0.9, 6, length, 4)),
    ];
  },
  hem: (t, leg) => ribCuff(t, leg, CUFF),
  front: (t) => {
    const { rise, band } = t.measures;
    t.garment.add(
      flatSeam(t, [
        [-5.6, band],
        [-5, rise * 0.6],
        [-0.4, rise + 1],
      ]),
      flatSeam(t, [
        [5.6, band],
        [5, rise * 0.6],
        [0.6, rise + 1],
      ]),
    );
  },
  band: (t) => gatheredBand(t, { ribs: 30 }),
};

/** Rows of a fine honeycomb across the leg. */
const waffle = ({ garment, measures: { band, length } }: Trousers, leg: Leg): Painted[] => {
  if (garment.small) return [];
  let path = '';
  for (let y = band + 2; y < length - CUFF; y += 1.5)
    path += `M${leg.inner(y).toFixed(2)} ${y.toFixed(2)}L${leg.outer(y).toFixed(2)} ${y.toFixed(2)}`;
  return [line(path, 0.26, garment.cloth.ink, 0.1)];
};

/** Thermal leggings: a close knit with flat seams, ribbed at waist and ankle. */
export const drawThermals: DrawKind = (piece, detail) => drawTrousers(piece, detail, thermals);
