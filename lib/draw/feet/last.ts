import type { Point } from '../drawing.ts';

/** A value along the shoe, 0 at the back of the heel and 1 at the tip of the toe, as knots to interpolate. */
export type Along = readonly (readonly [at: number, value: number])[];

const knot = (knots: Along, i: number): readonly [at: number, value: number] => knots[i] ?? [0, 0];
const rise = (knots: Along, i: number): number =>
  (knot(knots, i + 1)[1] - knot(knots, i)[1]) / (knot(knots, i + 1)[0] - knot(knots, i)[0]);

const slope = (knots: Along, i: number): number => {
  if (i === 0) return rise(knots, 0);
  if (i === knots.length - 1) return rise(knots, i - 1);
  const before = knot(knots, i)[0] - knot(knots, i - 1)[0];
  const after = knot(knots, i + 1)[0] - knot(knots, i)[0];
  const [a, b] = [rise(knots, i - 1), rise(knots, i)];
  const through = (a * after + b * before) / (before + after);
  return (Math.sign(a) + Math.sign(b)) * Math.min(Math.abs(a), Math.abs(b), Math.abs(through) / 2);
};

/** Steffen's monotone interpolation: no overshoot between knots. M. Steffen, Astron. Astrophys. 239, 443 (1990). */
export const along = (knots: Along, at: number): number => {
  const end = knots.length - 1;
  if (at <= knot(knots, 0)[0]) return knot(knots, 0)[1];
  if (at >= knot(knots, end)[0]) return knot(knots, end)[1];
  let i = 0;
  while (knot(knots, i + 1)[0] < at) i++;
  const [x, y] = knot(knots, i);
  const h = knot(knots, i + 1)[0] - x;
  const s = rise(knots, i);
  const [m0, m1] = [slope(knots, i), slope(knots, i + 1)];
  const t = at - x;
  return y + m0 * t + ((3 * s - 2 * m0 - m1) / h) * t * t + ((m0 + m1 - 2 * s) / (h * h)) * t * t * t;
};

export type ToeShape = 'round' | 'almond' | 'pointed' | 'square' | 'broad';

/** Half the width of the sole, centimetres, for a foot of 26; squared inside so that both ends come out round. */
const TOES: Readonly<Record<ToeShape, Along>> = {
  round: [
    [0.68, 4.5],
    [0.8, 4.25],
    [0.9, 3.35],
    [0.96, 2.2],
    [1, 0],
  ],
  broad: [
    [0.68, 4.75],
    [0.8, 4.7],
    [0.9, 4],
    [0.96, 2.8],
    [1, 0],
  ],
  almond: [
    [0.68, 4.3],
    [0.8, 3.7],
    [0.9, 2.6],
    [0.96, 1.6],
    [1, 0],
  ],
  pointed: [
    [0.66, 4.1],
    [0.78, 3.2],
    [0.88, 2],
    [0.95, 1.05],
    [1, 0],
  ],
  square: [
    [0.68, 4.3],
    [0.8, 3.9],
    [0.9, 3.2],
    [0.97, 2.6],
    [1, 0],
  ],
};
const HEEL: Along = [
  [0, 0],
  [0.025, 1.5],
  [0.08, 2.6],
  [0.16, 3.1],
  [0.28, 3.05],
  [0.42, 3],
  [0.55, 3.75],
];

/** How far the middle of the sole swings towards the big toe, centimetres. */
const LEAN: Along = [
  [0, 0],
  [0.25, 0],
  [0.45, -0.25],
  [0.66, 0.1],
  [0.85, 0.75],
  [1, 1],
];

export interface LastShape {
  /** Centimetres from heel to toe, on the level. */
  readonly length: number;
  readonly toe: ToeShape;
  /** 1 is a woman's or man's medium; a knit trainer 1.05, a court shoe 0.92. */
  readonly breadth: number;
  /** Height of the outsole's underside above the ground: 0 on flat soles, the heel's height under a raised back. */
  readonly under: Along;
  /** Thickness of the sole. */
  readonly sole: Along;
  /** Height of the instep's crest above the sole. */
  readonly crest: Along;
  /** Which way the big toe lies, seen by the viewer. */
  readonly inner: 'near' | 'far';
}

/** Where the viewer stands: the toe turned towards them by `turn` degrees, looking down by `down` degrees. */
export interface View {
  readonly turn: number;
  readonly down: number;
  /** Share of true height that is seen; side views keep it whole, so that shafts and heels measure true. */
  readonly tall: number;
  /** Where the middle of the heel stands on the paper. */
  readonly at: Point;
}

type Space = readonly [x: number, y: number, z: number];

/** A shoe's last as a surface: `t` runs from heel to toe, `around` from the near edge (0) over the crest (0.5) to the far one. */
export interface Last {
  readonly shape: LastShape;
  readonly project: (at: Space) => Point;
  /** A point of the upper. `puff` lifts it outwards by centimetres. */
  readonly on: (t: number, around: number, puff?: number) => Point;
  /** A point of the sole's rim on the near (0) to far (1) side, `welt` outwards, at a share of the sole's thickness. */
  readonly rim: (t: number, side: 'near' | 'far', level: number, welt: number) => Point;
  /** A point inside the plan at foot-bed height: `across` from −1 (near) to 1 (far), lifted by `z`. */
  readonly bed: (t: number, across: number, z?: number) => Point;
  /** `around` at which the upper is `height` centimetres above the sole. */
  readonly aroundAt: (t: number, height: number) => number;
  readonly halfWidth: (t: number) => number;
  readonly centre: (t: number) => number;
  readonly floor: (t: number) => number;
}

const SIDE = 0.62;
const TOP = 0.8;
const shaped = (value: number, power: number): number => Math.sign(value) * Math.abs(value) ** power;

/** The tip rounds off as an ellipse over the last tenth of the length. */
const NOSE = 0.1;
const nose = (t: number): number =>
  t <= 1 - NOSE ? 1 : Math.sqrt(Math.max(0, 1 - 0.97 * ((t - 1 + NOSE) / NOSE) ** 2));

/** Centimetres the back of the heel swells out at a height above the seat; higher up it leans in towards the ankle. */
const backCurve = (t: number, height: number): number =>
  t >= 0.12 ? 0 : (1 - t / 0.12) * (0.75 * Math.sin(Math.min(Math.PI, (height / 5) * Math.PI)) - 0.11 * height);

export const last = (shape: LastShape, view: View): Last => {
  const turn = (view.turn * Math.PI) / 180;
  const down = (view.down * Math.PI) / 180;
  const scale = shape.length / 26;
  const widths: Along = [...HEEL, ...TOES[shape.toe]].map(([at, w]) => [at, (w * shape.breadth * scale) ** 2]);
  const project = ([x, y, z]: Space): Point => [
    view.at[0] - (x * Math.cos(turn) + y * Math.sin(turn)),
    view.at[1] + (x * Math.sin(turn) - y * Math.cos(turn)) * Math.sin(down) - z * view.tall,
  ];
  const halfWidth = (t: number): number => Math.sqrt(Math.max(0, along(widths, t)));
  const centre = (t: number): number => along(LEAN, t) * scale * (shape.inner === 'far' ? 1 : -1);
  const floor = (t: number): number => along(shape.under, t) + along(shape.sole, t);
  const crest = (t: number): number => along(shape.crest, t) * nose(t);
  const on = (t: number, around: number, puff = 0): Point => {
    const [c, s] = [Math.cos(around * Math.PI), Math.sin(around * Math.PI)];
    const height = crest(t) * shaped(Math.max(0, s), TOP);
    return project([
      t * shape.length - backCurve(t, height) * scale,
      centre(t) - (halfWidth(t) + puff) * shaped(c, SIDE),
      floor(t) + height + puff * shaped(Math.max(0, s), TOP),
    ]);
  };
  return {
    shape,
    project,
    on,
    rim: (t, side, level, welt) => {
      // Past the ends the rim is swung round them, so that a welt also stands out at toe and heel.
      const w = halfWidth(t);
      const out = welt * (w < 1e-6 ? 0 : 1);
      const end =
        w < 2.2 * scale ? (t > 0.5 ? 1 : -1) * welt * Math.sqrt(Math.max(0, 1 - (w / (2.2 * scale)) ** 2)) : 0;
      return project([
        t * shape.length + end,
        centre(t) + (side === 'near' ? -1 : 1) * (w + out),
        along(shape.under, t) + along(shape.sole, t) * level,
      ]);
    },
    bed: (t, across, z = 0) => project([t * shape.length, centre(t) + across * halfWidth(t), floor(t) + z]),
    aroundAt: (t, height) => {
      const share = Math.min(1, Math.max(0, height / Math.max(0.01, crest(t))));
      return Math.asin(share ** (1 / TOP)) / Math.PI;
    },
    halfWidth,
    centre,
    floor,
  };
};

/** Stations from heel to toe, close together at the ends where the plan turns fast. */
export const stations = (count: number, from = 0, to = 1): number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * (1 - Math.cos((Math.PI * i) / count))) / 2);
