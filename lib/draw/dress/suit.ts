import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength, Garment, lerp, type Node, type Painted, pen } from '../kit/index.ts';
import { blockSide } from '../lower/colour-block.ts';
import { type Leg, layLegs } from '../lower/leg.ts';
import { type LegMeasures, legMeasures, sideLength } from '../lower/leg-measures.ts';
import type { Trousers } from '../lower/trousers.ts';
import { armholeSeam } from '../upper/body.ts';
import type { UpperShape } from '../upper/shape.ts';
import { drawSleeve, type SleeveOptions } from '../upper/sleeve.ts';
import { dressUpper, type TopLine } from './frame.ts';

/** A one-piece with legs being drawn; the legs' heights are counted from the shoulder too. */
export interface Suit extends Trousers {
  readonly upper: UpperShape;
  readonly waistAt: number;
}

/** What makes one kind different from another. */
export interface SuitDesign {
  readonly upper: UpperShape;
  readonly waistAt: number;
  readonly legs: Parameters<typeof legMeasures>[1];
  readonly line: (upper: UpperShape) => TopLine;
  readonly beneath: (suit: Suit) => void;
  readonly sleeve?: SleeveOptions;
  readonly onBodice: (suit: Suit) => readonly Painted[];
  readonly onLeg: (suit: Suit, leg: Leg) => readonly Painted[];
  readonly hem?: (suit: Suit, leg: Leg) => void;
  readonly over: (suit: Suit) => void;
}

const SHORTEST = 66;
const LONGEST = 170;

/** Length from the shoulder to the hem of the leg; what the stylist measured counts, within what a person can wear. */
export const suitLength = (piece: Pick<DrawnPiece, 'length' | 'lengthCm'>, waistAt = 40): DrawnLength =>
  clampLength(piece.lengthCm, waistAt + sideLength({ length: piece.length }).cm, SHORTEST, LONGEST);

const lowered = (measures: LegMeasures, by: number): LegMeasures => ({
  ...measures,
  band: by,
  rise: measures.rise + by,
  length: measures.length + by,
});

/** Draws a bodice and two legs, joined at the waist. */
export const drawSuit = (piece: DrawnPiece, detail: Detail, design: SuitDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const { waistAt } = design;
  const length = suitLength(piece, waistAt).cm;
  const upper = dressUpper(piece, design.upper, 100);
  const below = { cut: piece.cut, length: piece.length, lengthCm: length - waistAt };
  const measures = lowered(legMeasures(below, { ...design.legs, waist: upper.waist }), waistAt);
  const suit: Suit = { garment, measures, upper, waistAt, legs: layLegs(garment, measures) };
  design.beneath(suit);
  const half = measures.hip / 2 + 2;
  for (const leg of suit.legs) {
    garment.panel(leg.outline, {
      cast: leg.side === -1 ? 0.5 : 0,
      turn: leg.side * -2,
      shift: [leg.side * 1.3, 0],
      round: { from: [leg.side === 1 ? -1 : -half, 0], to: [leg.side === 1 ? half : 1, 0], strength: 0.65 },
      inner: [...blockSide(garment, leg, measures), ...design.onLeg(suit, leg)],
    });
    design.hem?.(suit, leg);
  }
  garment.add(
    pen(
      [
        [0.1, waistAt],
        [0.3, waistAt + 14],
        [-0.7, measures.rise],
      ],
      0.32,
      garment.cloth.ink,
      0.75,
      0.5,
    ),
  );
  if (upper.sleeve && design.sleeve)
    for (const side of [-1, 1] as const) drawSleeve(garment, upper, side, design.sleeve);
  garment.panel(bodiceOf(suit, design.line(upper)), {
    cast: 0.45,
    shift: [0.6, 1],
    round: { from: [-upper.chest / 2, 0], to: [upper.chest / 2, 0], strength: 0.75 },
    inner: design.onBodice(suit),
  });
  if (upper.sleeve)
    garment.add(...([1, -1] as const).map((side) => pen(armholeSeam(upper, side), 0.3, garment.cloth.ink, 0.6, 0.5)));
  design.over(suit);
  return garment
    .anchor('neck', [0, 0])
    .anchor('left shoulder', [-upper.shoulder / 2, upper.slope])
    .anchor('right shoulder', [upper.shoulder / 2, upper.slope])
    .anchor('waist', [0, waistAt])
    .anchor('fork', [0, measures.rise])
    .anchor('hem', [0, measures.length])
    .finish();
};

const bodiceOf = ({ upper, waistAt }: Suit, { neck, right }: TopLine): Node[] => {
  const side = (s: 1 | -1): Node[] => [
    ...right.map(([x, y, c]): Node => [s * x, y, c]),
    [(s * lerp(upper.chest, upper.waist, 0.66)) / 2, lerp(upper.armhole, waistAt, 0.58)],
    [(s * upper.waist) / 2 + s * 0.2, waistAt + 0.3, 'corner'],
  ];
  const left = side(-1);
  return [left[0] ?? [0, 0], ...neck, ...side(1), [0, waistAt + 1.3], ...[...left].reverse().slice(0, -1)];
};
