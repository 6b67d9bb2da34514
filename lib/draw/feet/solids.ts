import type { Point } from '../drawing.ts';
import type { Node } from '../kit/index.ts';
import { silhouette } from '../kit/silhouette.ts';
import { type Along, along, type Last, stations } from './last.ts';

/** Four-cornered facets between two rings of equally many points. */
const between = (a: readonly Point[], b: readonly Point[]): Point[][] =>
  a.map((p, i) => {
    const next = (i + 1) % a.length;
    return [p, a[next] as Point, b[next] as Point, b[i] as Point];
  });

const solid = (rings: readonly (readonly Point[])[]): (readonly Point[])[] => [
  ...rings,
  ...rings.slice(1).flatMap((ring, i) => between(rings[i] as Point[], ring)),
];

/** Contour of a body given as rings stacked one after another. */
const stacked = (rings: readonly (readonly Point[])[]): Node[] => silhouette(solid(rings));

const STEPS = 9;
const LENGTHWAYS = stations(26);

/** Height of the mouth's edge above the sole, from the heel to the throat, where it meets the crest. */
export type Topline = Along;
export const throatOf = (topline: Topline): number => topline[topline.length - 1]?.[0] ?? 0;

/** `around` of the mouth's near edge; past the throat the crest itself. */
export const mouthAround = (last: Last, topline: Topline, t: number): number =>
  t >= throatOf(topline) ? 0.5 : last.aroundAt(t, along(topline, t));

export interface Upper {
  readonly outline: Node[];
  /** Closed curve of the mouth: near edge from heel to throat, far edge back. */
  readonly mouth: Point[];
}

/** The upper of a shoe with a mouth. `farTopline` differs where the inner side is cut lower. */
export const upper = (last: Last, topline: Topline, from = 0, to = 1): Upper => {
  const ring = (t: number): Point[] => {
    const mouth = mouthAround(last, topline, t);
    const near = Array.from({ length: STEPS + 1 }, (_, i) => last.on(t, (mouth * i) / STEPS));
    const far = Array.from({ length: STEPS + 1 }, (_, i) => last.on(t, 1 - mouth + (mouth * i) / STEPS));
    return [...near, ...far];
  };
  const edge = stations(14, 0, throatOf(topline));
  const near = edge.map((t) => last.on(t, mouthAround(last, topline, t)));
  const far = edge.map((t) => last.on(t, 1 - mouthAround(last, topline, t)));
  return {
    outline: stacked(LENGTHWAYS.filter((t) => t >= from && t <= to).map(ring)),
    mouth: [...near, ...far.slice(1, -1).reverse()],
  };
};

/** The sole between two levels of its thickness (0 underneath, 1 at the upper), `welt` centimetres beyond the upper. */
export const sole = (last: Last, welt: number, low = 0, high = 1): Node[] => {
  const ring = (level: number): Point[] => [
    ...LENGTHWAYS.map((t) => last.rim(t, 'near', level, welt)),
    ...LENGTHWAYS.slice(1, -1)
      .reverse()
      .map((t) => last.rim(t, 'far', level, welt)),
  ];
  return stacked([ring(low), ring(high)]);
};

export interface HeelShape {
  /** Where the breast (front face) of the heel stands, as a share of the length. */
  readonly breast: number;
  /** Share of the seat's size at levels from the ground (0) to the seat (1). */
  readonly taper: Along;
  /** Where the tip stands under the seat, as a share of the length. */
  readonly over: number;
}

/** A point of the heel's face on the viewer's side: `t` along the seat, `level` from the ground to the seat. */
export const heelPoint = (last: Last, shape: HeelShape, t: number, side: -1 | 1, level: number): Point => {
  const { length, under } = last.shape;
  const size = along(shape.taper, level);
  const [cx, cy] = [shape.over * length, last.centre(shape.over)];
  const y = last.centre(t) + side * last.halfWidth(t) * 0.97;
  return last.project([cx + (t * length - cx) * size, cy + (y - cy) * size, along(under, t) * level]);
};

export const heel = (last: Last, shape: HeelShape): Node[] => {
  const edge = stations(10, 0, shape.breast);
  const ring = (level: number): Point[] => [
    ...edge.map((t) => heelPoint(last, shape, t, -1, level)),
    ...edge
      .slice(1)
      .reverse()
      .map((t) => heelPoint(last, shape, t, 1, level)),
  ];
  return stacked([0, 0.2, 0.4, 0.6, 0.8, 1].map(ring));
};

/** Section of a boot's leg at a height above the ground. */
export interface LegSection {
  readonly z: number;
  /** Front and back of the leg along the shoe, centimetres from the heel. */
  readonly front: number;
  readonly back: number;
  readonly halfWidth: number;
}

export interface Leg {
  /**
   * A point of the leg: `up` from the lowest section (0) to the mouth (1); `around` 0 at the front, 0.25 on the near
   * side, 0.5 at the back, below 0 on the far side.
   */
  readonly on: (up: number, around: number, puff?: number) => Point;
  /** Contour of foot and leg together. */
  readonly outline: Node[];
  readonly mouth: Point[];
}

const tube = (value: number): number => Math.sign(value) * Math.abs(value) ** 0.85;

export const leg = (last: Last, sections: readonly LegSection[]): Leg => {
  const low = sections[0]?.z ?? 0;
  const high = sections[sections.length - 1]?.z ?? 1;
  const knots = (pick: (section: LegSection) => number): Along =>
    sections.map((s) => [(s.z - low) / (high - low), pick(s)]);
  const [front, back, half] = [knots((s) => s.front), knots((s) => s.back), knots((s) => s.halfWidth)];
  const on = (up: number, around: number, puff = 0): Point => {
    const angle = around * 2 * Math.PI;
    const [f, b] = [along(front, up) + puff, along(back, up) - puff];
    return last.project([
      (f + b) / 2 + ((f - b) / 2) * tube(Math.cos(angle)),
      last.centre(0.25) - (along(half, up) + puff) * tube(Math.sin(angle)),
      low + (high - low) * up,
    ]);
  };
  const ring = (up: number): Point[] => Array.from({ length: 28 }, (_, i) => on(up, i / 28));
  const foot = LENGTHWAYS.map((t) => Array.from({ length: 2 * STEPS + 1 }, (_, i) => last.on(t, i / (2 * STEPS))));
  const shaft = Array.from({ length: 13 }, (_, i) => ring(i / 12));
  return { on, outline: silhouette([...solid(foot), ...solid(shaft)]), mouth: ring(1) };
};
