import type { Point } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { type Node, stitch, tone } from '../kit/index.ts';
import type { ShoeArtist } from './artist.ts';
import { stations } from './last.ts';

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
