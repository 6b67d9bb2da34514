import type { DrawKind } from '../drawing.ts';
import { lerp, type Node, pen, stitch, tone } from '../kit/index.ts';
import { hemStitch, slantPocket } from '../lower/front.ts';
import { legFolds, legShade } from '../lower/leg-folds.ts';
import { drawTrousers, type TrouserRecipe } from '../lower/trousers.ts';
import { drawCord, gatheredBand } from '../lower/waistband.ts';

const CORD = '#efe9da';

const shorts: TrouserRecipe = {
  block: { waist: 37, hip: 51, rise: 27, band: 4, ease: 1 },
  onLeg: (t, leg) => {
    const { garment, measures } = t;
    const { length, band } = measures;
    const split: Node[] = [
      [leg.outer(length - 8) + leg.side * 0.2, length - 8],
      [leg.outer(length - 4) - leg.side * 1, length - 4],
      [leg.outer(length) - leg.side * 3.2, length + 1],
    ];
    return [
      ...legShade(garment, leg, measures),
      ...legFolds(garment, leg, measures, 1.1),
      ...[0.2, 0.42, 0.64, 0.84].map((share, i) => {
        const x = (leg.side * measures.waist * share) / 2;
        return garment.fold(
          [
            [x, band],
            [x * 1.04, band + 4],
            [x * 1.08, band + 7 + i * 1.6],
          ],
          (i % 2 ? 1 : -1) * 1.1,
          0.85,
          0.22,
        );
      }),
      pen(split, 0.5, garment.cloth.ink, 0.85, 0.6),
      slantPocket(t, leg, garment.cloth.ink),
      hemStitch(t, leg, garment.cloth.ink, 2, 0.7),
      ...(garment.small
        ? []
        : [
            stitch(
              split.map(([x, y]): Node => [x - leg.side * 0.8, y - 0.2]),
              garment.cloth.ink,
              0.5,
            ),
          ]),
    ];
  },
  front: (t) => {
    const { band, rise } = t.measures;
    t.garment.add(
      pen(
        [
          [0.1, band],
          [0.3, lerp(band, rise, 0.5)],
          [-0.6, rise],
        ],
        0.34,
        t.garment.cloth.ink,
        0.75,
        0.5,
      ),
    );
  },
  band: (t) => {
    gatheredBand(t, { ribs: 24, strength: 0.9 });
    drawCord(t, t.garment.cloth.depth < 0.6 ? tone(t.garment.cloth.ground, -0.4) : CORD, { length: 12 });
  },
};

/** Swim shorts: gathered waist with a cord, rounded slits at the sides. */
export const swimShorts: DrawKind = (piece, detail) => drawTrousers(piece, detail, shorts);
