import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import {
  Garment,
  lerp,
  type Node,
  offsetLine,
  type Painted,
  pen,
  resample,
  reversed,
  ribbonPath,
  sampleCurve,
  shape,
  swell,
} from '../kit/index.ts';
import { backOfWaist, finishSkirt, hangSkirt, type Skirt, skirtFor } from './skirt.ts';
import { skirtMeasures } from './skirt-measures.ts';
import { sewnBand } from './waistband.ts';

/** A soft stripe of light or shade down a pleat: two lenses. */
const stripe = (nodes: readonly Node[], aside: number, half: number, colour: string, opacity: number): Painted[] => {
  const points = resample(offsetLine(sampleCurve(nodes), aside), 3);
  const body = swell(0.62, 0.4);
  return [1, 0.5].map((share) => {
    const reach = (t: number) => half * share * body(Math.min(0.94, t + 0.05));
    return shape(ribbonPath(points, reach, reach), colour, opacity / 2);
  });
};

/** Left edge of a pleat, from the waist down; the skirt's sides spread below the hip. */
const pleatEdge = (skirt: Skirt, share: number, drop: number): Node[] => {
  const {
    at,
    top,
    measures: { length },
  } = skirt;
  const sag = Math.sin(Math.PI * share);
  const middle = (t: number): Node => [at(share)(lerp(top, length, t)), lerp(top, length, t) + sag * 0.6];
  return [
    [at(share)(top), top + sag * 1.2, 'corner'],
    middle(0.24),
    middle(0.6),
    [at(share)(length), skirt.hemAt(share) + drop, 'corner'],
  ];
};

/** Knife pleats as panels of their own, each with its grain and pattern turned and its hem a step lower than the next. */
export const drawPleats = (skirt: Skirt, count: number): void => {
  const { garment } = skirt;
  const { ink, bright, depth, sheen } = garment.cloth;
  const edges = Array.from({ length: count + 1 }, (_, i) =>
    i === 0 || i === count ? i / count : (i + garment.jitter(0.14)) / count,
  );
  for (let i = count - 1; i >= 0; i--) {
    const step = 0.35 + garment.random() * 0.3;
    const a = pleatEdge(skirt, edges[i] ?? 0, step);
    const b = pleatEdge(skirt, edges[i + 1] ?? 1, -step);
    const under = b.map(([x, y, c], k): Node => [x + [0.15, 0.3, 0.6, 1.1][k]!, y, c]);
    const low = a[3] ?? [0, 0];
    const high = a[0] ?? [0, 0];
    const wide = (b[3]?.[0] ?? 0) - low[0];
    const turn = (Math.atan2(high[0] - low[0] + (high[0] - low[0]), 2 * (low[1] - high[1])) * 180) / Math.PI;
    garment.panel([...a, ...reversed(under)], {
      wobble: 0.07,
      turn,
      shift: [high[0] + i * 2.7, 0],
      edge: 0.2,
      rim: false,
      inner: [
        ...stripe(a, -wide * 0.3, wide * 0.22, bright, 0.46 * sheen),
        ...(sheen > 1.4 ? stripe(a, -wide * 0.36, wide * 0.1, bright, 0.6) : []),
        ...stripe(b, wide * 0.14, wide * 0.3, ink, 0.42 * depth),
      ],
    });
    garment.add(
      pen(
        a.map(([x, y]): Node => [x, y]),
        0.26,
        ink,
        0.65,
        0.7,
      ),
    );
  }
  const shadow = skirt.down(0.82, skirt.top + 4, skirt.measures.length, 2);
  garment.add(
    garment.plane(
      skirt.down(0.24, skirt.top + 4, skirt.measures.length - 1, 2),
      skirt.measures.hem * 0.06,
      bright,
      0.18,
    ),
    garment.plane(shadow, skirt.measures.hem * 0.08, ink, 0.22 * depth),
  );
};

/** A skirt pleated all round. */
export const pleatedSkirt = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { hem, hip } = skirtMeasures(piece);
  // whatever cut was written, cloth folded into pleats springs open below the hip
  const skirt = hem > hip * 1.15 ? skirtFor(piece, garment, {}) : sprung(piece, garment);
  if (piece.tuck !== 'around') backOfWaist(skirt);
  drawPleats(skirt, garment.small ? 9 : Math.round(lerp(11, 14, garment.random())));
  sewnBand(skirt, { thread: garment.cloth.ink, opacity: 0.5, overlap: false });
  return finishSkirt(skirt);
};

const sprung = (piece: DrawnPiece, garment: Garment): Skirt => {
  const measures = skirtMeasures(piece);
  return hangSkirt(garment, {
    ...measures,
    hem: measures.hip + (measures.length - 20) * 0.26,
    top: measures.band - 0.3,
    hipAt: 20,
    bottom: measures.length,
  });
};
