import { alongEdge, type Edge, edgeBetween, edgeThrough } from '../kit/edges.ts';
import { corner, type Garment, lerp, type Node, reversed } from '../kit/index.ts';
import type { LegMeasures } from './leg-measures.ts';

/** One leg lying flat; `side` 1 is on the right of the paper. */
export interface Leg {
  readonly side: 1 | -1;
  readonly outline: readonly Node[];
  readonly outer: Edge;
  /** Centre front above the crotch, inside leg below it. */
  readonly inner: Edge;
  /** The edge a share of the way out: 0 at the inside leg, 1 at the side seam. */
  readonly at: (share: number) => Edge;
  /** Nodes down the leg at a share of its width. */
  readonly down: (share: number, from: number, to: number, steps?: number) => Node[];
}

/** Half the gap between the legs at the hem: narrow legs lie further apart. */
const gapAtHem = ({ hip, hem }: LegMeasures): number => 1.8 + 0.32 * Math.max(0, hip / 2 - 2 - hem);

/**
 * The two legs of a pair of trousers, right one first, laid as a hand lays them: one leg a little further out.
 * @param cuff height of a gathered cuff, which the cloth of the leg puffs out above
 */
export const layLegs = (garment: Garment, measures: LegMeasures, cuff = 0): readonly [Leg, Leg] => {
  const { rise, length } = measures;
  const far = Math.min(1.5, (length - rise) * 0.02);
  const swing = garment.jitter(1) * far;
  const kick = garment.jitter(0.6) * Math.min(1, (length - rise) / 60);
  return [oneLeg(1, measures, cuff, far + swing, kick), oneLeg(-1, measures, cuff, far - swing, -kick * 0.4)];
};

const oneLeg = (side: 1 | -1, measures: LegMeasures, cuff: number, spread: number, kick: number): Leg => {
  const { waist, hip, rise, length, knee, hem, band } = measures;
  const half = hip / 2;
  const kneeHeight = rise + (length - rise) * 0.47;
  const gap = gapAtHem(measures) + spread;
  const gapKnee = lerp(0.9, gap, 0.5) + kick;
  const widest = half + 0.3;
  const short = length - rise < 40;
  // short legs hang on outwards from the hip
  const [upperHip, lowerHip] = short ? [0.43, 0.85] : [0.5, 0.93];
  const outer: Node[] = [
    [side * (waist / 2), band - 0.4, 'corner'],
    [side * lerp(waist / 2, half, upperHip), lerp(band, rise, 0.36)],
    [side * lerp(waist / 2, half, lowerHip), lerp(band, rise, 0.8)],
    ...(short
      ? [[side * lerp(widest, gap + hem, 0.5), lerp(rise, length, 0.45)] as const]
      : ([
          [side * lerp(widest, gapKnee + knee, 0.42), lerp(rise, kneeHeight, 0.4)],
          [side * (gapKnee + knee), kneeHeight],
          [side * lerp(gapKnee + knee, gap + hem, 0.6), lerp(kneeHeight, length, 0.6)],
        ] as const)),
    [side * (gap + hem), length - 0.4, 'corner'],
  ];
  const inner: Node[] = [
    [side * 0.3, rise + 1],
    [side * 0.8, rise + 6 * Math.min(1, (length - rise) / 40)],
    [side * gapKnee, kneeHeight],
    [side * lerp(gapKnee, gap, 0.6), lerp(kneeHeight, length, 0.6)],
    [side * gap, length + 0.2, 'corner'],
  ];
  const outerEdge = edgeThrough(outer);
  const insideLeg = edgeThrough(inner);
  const innerEdge: Edge = (y) => (y < rise ? 0 : insideLeg(y));
  const at = (share: number): Edge => edgeBetween(innerEdge, outerEdge, share);
  return {
    side,
    outer: outerEdge,
    inner: innerEdge,
    at,
    down: (share, from, to, steps = 3) => alongEdge(at(share), from, to, 0, steps),
    outline: [
      ...(cuff > 0
        ? gathered(outer, length - cuff, side * 1.6)
        : [...outer, [side * (gap + hem * 0.52), length + 0.9] as const]),
      ...reversed(cuff > 0 ? gathered(inner, length - cuff, side * -1.6) : inner),
      [-side * 0.9, rise - 0.8, 'corner'],
      corner(0, band - 0.2),
    ],
  };
};

/** An edge that ends in a cuff at `end`: it puffs out and is drawn in by `by`. */
const gathered = (edge: readonly Node[], end: number, by: number): Node[] => {
  const at = edgeThrough(edge);
  return [
    ...edge.filter(([, y]) => y < end - 12),
    [at(end - 6) + by * 0.25, end - 6],
    [at(end - 1.5) - by * 0.05, end - 1.5],
    corner(at(end) - by, end + 0.8),
  ];
};
