import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { corner, Garment, type Painted, tone } from '../kit/index.ts';
import { blockSide } from './colour-block.ts';
import { type Leg, layLegs } from './leg.ts';
import { type LegMeasures, legMeasures } from './leg-measures.ts';

/** A pair of trousers being drawn. */
export interface Trousers {
  readonly garment: Garment;
  readonly measures: LegMeasures;
  readonly legs: readonly [Leg, Leg];
}

/** What makes one kind of trousers different from another. */
export interface TrouserRecipe {
  /** Block the measures start from. */
  readonly block: Parameters<typeof legMeasures>[1];
  /** Painted on each leg, clipped to it. */
  readonly onLeg: (trousers: Trousers, leg: Leg) => readonly Painted[];
  /** What is sewn to the end of each leg: cuffs, turn-ups. */
  readonly hem?: (trousers: Trousers, leg: Leg) => void;
  /** Fly and pockets, over both legs. */
  readonly front: (trousers: Trousers) => void;
  readonly band: (trousers: Trousers) => void;
  /** Height of a gathered cuff that `hem` sews on, centimetres. */
  readonly cuff?: number;
  /** How rounded the legs are shaded; default 0.75. */
  readonly roundness?: number;
}

/** Draws trousers, shorts or leggings after a recipe: back of the waist, two legs, front, waistband. */
export const drawTrousers = (piece: DrawnPiece, detail: Detail, recipe: TrouserRecipe): Drawing => {
  const garment = new Garment(piece, detail);
  const measures = legMeasures(piece, recipe.block);
  const trousers: Trousers = { garment, measures, legs: layLegs(garment, measures, recipe.cuff) };
  if (piece.tuck !== 'around') backOfWaist(trousers);
  for (const leg of trousers.legs) {
    const half = measures.hip / 2 + 2;
    garment.panel(leg.outline, {
      cast: leg.side === -1 ? 0.55 : 0,
      turn: leg.side * -2,
      shift: [leg.side * 1.3, 0],
      round: {
        from: [leg.side === 1 ? -1 : -half, 0],
        to: [leg.side === 1 ? half : 1, 0],
        strength: recipe.roundness ?? 0.7,
      },
      inner: [...blockSide(garment, leg, measures), ...recipe.onLeg(trousers, leg)],
    });
    recipe.hem?.(trousers, leg);
  }
  recipe.front(trousers);
  recipe.band(trousers);
  return garment
    .anchor('waist', [0, 1])
    .anchor('left waist', [-measures.waist / 2, 0])
    .anchor('right waist', [measures.waist / 2, 0])
    .anchor('fork', [0, measures.rise])
    .anchor('hem', [0, measures.length])
    .finish();
};

const backOfWaist = ({ garment, measures: { waist } }: Trousers): void => {
  const half = waist / 2;
  garment.inside([corner(-half + 0.3, 0.5), [0, -1.4], corner(half - 0.3, 0.5), corner(0, 4)], {
    fill: tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.1 : -0.12, 0.85),
    label: [0, -0.2],
  });
};
