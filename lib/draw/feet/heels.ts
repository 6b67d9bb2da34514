import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { type Node, stitch, tone } from '../kit/index.ts';
import type { ShoeArtist } from './artist.ts';
import { paintBody } from './body.ts';
import { paintBuckle, paintStrap } from './fastenings.ts';
import { stations } from './last.ts';
import { courtLast, heelOf } from './lasts.ts';
import { IN_PROFILE, pair } from './pair.ts';
import { paintSole, type SoleStyle } from './soles.ts';
import type { HeelShape, Topline } from './solids.ts';
import { leatherSole } from './town.ts';

/** Heels by shape: how they narrow from the seat down. */
const HEELS = {
  stiletto: {
    breast: 0.15,
    taper: [
      [0, 0.2],
      [0.45, 0.23],
      [0.72, 0.42],
      [0.88, 0.74],
      [1, 1],
    ],
    over: 0.06,
  },
  kitten: {
    breast: 0.16,
    taper: [
      [0, 0.24],
      [0.35, 0.26],
      [0.7, 0.5],
      [0.88, 0.78],
      [1, 1],
    ],
    over: 0.07,
  },
  cone: {
    breast: 0.2,
    taper: [
      [0, 0.42],
      [1, 1],
    ],
    over: 0.09,
  },
  block: {
    breast: 0.22,
    taper: [
      [0, 0.84],
      [0.5, 0.86],
      [1, 1],
    ],
    over: 0.1,
  },
  slim: {
    breast: 0.17,
    taper: [
      [0, 0.5],
      [0.5, 0.54],
      [0.8, 0.72],
      [1, 1],
    ],
    over: 0.085,
  },
} as const satisfies Record<string, HeelShape>;
type HeelName = keyof typeof HEELS;

/** Sole and heel of a light shoe; the heel is covered in the upper's own leather. */
export const coveredHeel = (artist: ShoeArtist, heel: HeelName): SoleStyle => ({
  kind: 'plain',
  colour: leatherSole(artist.cloth.ground),
  welt: 0.03,
  heel: { ...HEELS[heel], colour: artist.cloth.ground },
});

const LINING = '#c9ac84';
const INSOLE = '#e0cba6';

/** A strap round the ankle as an ellipse over the seat: the far run behind, the near one in front. */
export const ankleRing = (artist: ShoeArtist, z: number): { readonly far: Point[]; readonly near: Point[] } => {
  const { last } = artist;
  const { length } = last.shape;
  const at = (degrees: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    const x = length * 0.195 + length * 0.18 * Math.cos(angle);
    return last.project([x, last.centre(0.2) - 3 * Math.sin(angle), last.floor(0.08) + z - 0.5 * Math.cos(angle)]);
  };
  const run = (from: number, to: number): Point[] =>
    Array.from({ length: 10 }, (_, i) => at(from + ((to - from) * i) / 9));
  return { far: run(174, 366), near: run(-10, 190) };
};

const court =
  (toe: 'pointed' | 'almond', paint: (artist: ShoeArtist, heelCm: number) => void) =>
  (piece: DrawnPiece, detail: Detail): Drawing =>
    pair(piece, detail, () => ({
      shape: courtLast(piece.heelCm, toe),
      stance: IN_PROFILE,
      paint: (artist) => paint(artist, heelOf(piece.heelCm)),
    }));

const PUMP: Topline = [
  [0, 5.3],
  [0.1, 4.5],
  [0.28, 3],
  [0.48, 2],
  [0.64, 2],
  [0.72, 2.9],
  [0.76, 3.6],
];

export const pumps = court('pointed', (artist, heelCm) => {
  paintSole(artist, coveredHeel(artist, heelCm > 5.5 ? 'stiletto' : 'kitten'));
  paintBody(artist, { topline: PUMP, creases: 0, lining: LINING, insole: INSOLE, collar: 0.18 });
});

const LOW: Topline = [
  [0, 5.2],
  [0.1, 4.5],
  [0.28, 3.2],
  [0.46, 2.5],
  [0.6, 2.6],
  [0.67, 3.4],
  [0.7, 4.1],
];

/** A closed almond toe on a block heel, a strap over the instep. */
export const blockHeels = court('almond', (artist) => {
  paintSole(artist, coveredHeel(artist, 'block'));
  paintBody(artist, { topline: LOW, creases: 0, lining: LINING, insole: INSOLE, collar: 0.2 });
  const at = archBand(artist, { near: 0.44, far: 0.46, lift: 5.2, base: 2.2, width: 1.2, reach: 0.97 });
  paintBuckle(artist, [at[0], at[1] + 0.3], [0.9, 1.5], 76);
});

/** A strap from the sides round behind the heel: 0 degrees is the near end, 90 the back, 180 the far end. */
export const slingRun = (
  artist: ShoeArtist,
  shape: { readonly front: number; readonly low: number; readonly high: number },
  from: number,
  to: number,
): Point[] =>
  Array.from({ length: 9 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / 8) * Math.PI) / 180;
    const back = Math.sin(angle);
    return artist.last.bed(
      shape.front * (1 - back) + 0.002,
      -Math.cos(angle),
      shape.low + (shape.high - shape.low) * back,
    );
  });

const SLING: Topline = [
  [0.34, 0.2],
  [0.4, 1.6],
  [0.5, 2.2],
  [0.64, 2.2],
  [0.72, 3],
  [0.77, 3.6],
];

export const slingbacks = court('pointed', (artist) => {
  const { last } = artist;
  paintSole(artist, coveredHeel(artist, 'kitten'));
  paintFootbed(artist, INSOLE, 0, 0.8);
  const sling = (from: number, to: number): Point[] => slingRun(artist, { front: 0.42, low: 1.5, high: 4.6 }, from, to);
  paintStrap(artist, sling(80, 180), 0.62, { under: true });
  paintBody(artist, { topline: SLING, from: 0.36, creases: 0, lining: LINING, insole: INSOLE, collar: 0.18 });
  paintStrap(artist, sling(0, 104), 0.62);
  paintBuckle(artist, sling(20, 20)[0] ?? last.bed(0.3, -1), [0.8, 1.1], 24);
});

/** The insole of an open shoe, seen from above, with its edge. */
export const paintFootbed = (artist: ShoeArtist, colour: string, from = 0, to = 1, lift = 0.02): void => {
  const { last, garment, cloth } = artist;
  const edge = stations(16, from, to);
  garment.panel(
    [
      ...edge.map((t): [number, number] => [...last.bed(t, -0.98, lift)]),
      ...edge
        .slice(1, -1)
        .reverse()
        .map((t): [number, number] => [...last.bed(t, 0.98, lift)]),
    ],
    {
      cloth: { ...cloth, ground: colour, tiles: [] },
      fill: colour,
      weave: false,
      wobble: 0.02,
      edge: 0.4,
      rim: false,
      inner: [
        garment.plane(
          [0.08, 0.2, 0.34].map((t): [number, number] => [...last.bed(t, 0.1, lift)]),
          1.6,
          tone(colour, -0.24),
          0.3,
        ),
        garment.plane(
          [0.55, 0.7, 0.86].map((t): [number, number] => [...last.bed(t, 0.1, lift)]),
          2,
          tone(colour, -0.24),
          0.24,
        ),
      ],
    },
  );
};

export interface Band {
  /** Where the band's middle leaves the sole on the near and the far side, as shares of the length. */
  readonly near: number;
  readonly far: number;
  /** Centimetres it stands above the foot bed in the middle, and at its ends. */
  readonly lift: number;
  readonly base?: number;
  /** Breadth along the foot, centimetres. */
  readonly width: number;
  readonly colour?: string;
  /** How far out its ends lie, 1 being the sole's edge. */
  readonly reach?: number;
}

/** A band arching over an empty shoe: outside on the near half, its lining on the far. Returns the middle of its near side. */
export const archBand = (artist: ShoeArtist, band: Band): Point => {
  const { last, garment, cloth } = artist;
  const { near, far, lift, base = 0, width, reach = 1.02 } = band;
  const half = width / 2 / last.shape.length;
  const edge = (aside: number): Node[] =>
    stations(10).map((s): Node => {
      const across = reach * (2 * s - 1);
      const arch = Math.sqrt(Math.max(0, 1 - Math.abs(2 * s - 1) ** 2.6));
      const ends = s === 0 || s === 1;
      return [
        ...last.bed(near + (far - near) * s + aside, across, base + 0.04 + arch * (lift - base)),
        ends ? 'corner' : undefined,
      ];
    });
  const colour = band.colour ?? cloth.ground;
  const front = edge(half);
  const back = edge(-half);
  const leather = plainCloth(colour, cloth.surface, garment.detail);
  garment.panel([...front.slice(5), ...back.slice(5).reverse()], {
    cloth: leather,
    fill: leather.lining,
    weave: false,
    edge: 0.3,
    wobble: 0.01,
    rim: false,
  });
  const middle = (from: number, to: number): Node[] =>
    front.slice(from, to).map(([x, y], i) => {
      const [u, v] = back[from + i] ?? [x, y];
      return [(x + u) / 2, (y + v) / 2];
    });
  const trim = (share: number): Node[] =>
    front.slice(0, 8).map(([x, y], i) => {
      const [u, v] = back[i] ?? [x, y];
      return [x + (u - x) * share, y + (v - y) * share];
    });
  garment.panel([...front.slice(0, 8), ...back.slice(0, 8).reverse()], {
    ...(band.colour === undefined ? {} : { cloth: leather, weave: false }),
    edge: 0.35,
    wobble: 0.01,
    inner: [
      garment.plane(middle(3, 7), width * 0.36, leather.bright, 0.6 * leather.sheen),
      garment.plane(middle(0, 4), width * 0.5, leather.ink, 0.4),
      ...(artist.small ? [] : [stitch(trim(0.14), leather.bright, 0.6), stitch(trim(0.86), leather.bright, 0.6)]),
    ],
  });
  const [x, y] = middle(2, 3)[0] ?? [0, 0];
  return [x, y];
};

/** The closed back of a sandal, up to the ankle strap. */
export const paintCounter = (artist: ShoeArtist, height: number, colour?: string): void => {
  const { last } = artist;
  artist.garment.panel(
    [
      [...last.bed(0.17, -0.98, 0.1), 'corner'],
      [...last.bed(0.11, -0.93, height * 0.45)],
      [...last.bed(0.075, -0.8, height), 'corner'],
      [...last.bed(0.012, -0.2, height + 0.1), 'corner'],
      [...last.bed(0.002, 0, height * 0.5)],
      [...last.bed(0.01, -0.4, 0.1), 'corner'],
    ],
    { edge: 0.4, wobble: 0.02, ...(colour !== undefined && { fill: colour, weave: false }) },
  );
};

export const heeledSandals = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: courtLast(piece.heelCm, 'almond'),
    stance: { ...IN_PROFILE, down: 26 },
    paint: (artist) => {
      paintSole(artist, coveredHeel(artist, heelOf(piece.heelCm) > 8 ? 'stiletto' : 'slim'));
      paintFootbed(artist, INSOLE);
      const strap = ankleRing(artist, 6.2);
      paintStrap(artist, strap.far, 0.7, { under: true });
      archBand(artist, { near: 0.76, far: 0.82, lift: 3, width: 1.7 });
      // The counter that carries the ankle strap.
      paintCounter(artist, 6.6);
      paintStrap(artist, strap.near, 0.7, { stitched: true });
      const mid = strap.near[4];
      if (mid) paintBuckle(artist, mid, [0.7, 1.1], 4);
    },
  }));
