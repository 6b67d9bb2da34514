import type { PatternScale, PatternType } from '../../vocabulary/index.ts';
import type { Detail, Mark, Matrix, Point, Tile } from '../drawing.ts';
import { turned } from '../kit/geometry.ts';
import { ellipsePath, polygonPath, rectanglePath, softPath } from '../kit/paths.ts';
import { blend, oklch, tone } from '../kit/tone.ts';
import type { Cloth } from './cloth.ts';
import { drop, fill, leaf, petals, rosette, scatter, stroke, wrapped } from './motifs.ts';

export interface PrintColours {
  readonly ground: string;
  readonly first: string;
  readonly second: string;
  readonly third: string;
  /** How many colours the piece itself has, the ground counted. */
  readonly count: number;
}
type Draw = (colours: PrintColours, seed: string) => Omit<Tile, 'name'>;

const square = (size: number, marks: readonly Mark[]): Omit<Tile, 'name'> => ({ width: size, height: size, marks });

export interface Band {
  readonly at: number;
  readonly width: number;
  readonly colour: string;
}

/** Bands of one repeat of a stripe, centimetres: two colours make an even stripe, three and more a grouped one. */
export const stripeBands = ({
  first,
  second,
  third,
  count,
}: PrintColours): { readonly repeat: number; readonly bands: readonly Band[] } => {
  if (count <= 2) return { repeat: 3.3, bands: [{ at: 1, width: 1.25, colour: first }] };
  if (count === 3)
    return {
      repeat: 5.6,
      bands: [
        { at: 0.8, width: 1.8, colour: first },
        { at: 3.5, width: 0.7, colour: second },
      ],
    };
  return {
    repeat: 8,
    bands: [
      { at: 0.6, width: 1.9, colour: first },
      { at: 3.2, width: 0.6, colour: second },
      { at: 4.6, width: 1.3, colour: third },
      { at: 6.6, width: 0.6, colour: second },
    ],
  };
};

const stripe: Draw = (colours) => {
  const { repeat, bands } = stripeBands(colours);
  return {
    width: 6,
    height: repeat,
    marks: bands.map(({ at, width, colour }) => fill(rectanglePath(-1, at, 8, width), colour, 0.93)),
  };
};

const pinstripe: Draw = ({ first }) => ({
  width: 2.4,
  height: 6,
  marks: [fill(rectanglePath(1.1, -1, 0.17, 8), first, 0.62)],
});

const gingham: Draw = ({ first }) =>
  square(2.4, [
    fill(rectanglePath(0.6, -1, 1.2, 4.4), first, 0.52),
    fill(rectanglePath(-1, 0.6, 4.4, 1.2), first, 0.52),
  ]);

const check: Draw = ({ first, second, count }) =>
  square(6, [
    fill(rectanglePath(1, -1, 0.42, 8) + rectanglePath(-1, 1, 8, 0.42), first, 0.72),
    fill(
      rectanglePath(4.1, -1, 0.24, 8) + rectanglePath(-1, 4.1, 8, 0.24),
      count > 2 ? second : first,
      count > 2 ? 0.7 : 0.34,
    ),
  ]);

const tartan: Draw = ({ ground, first, second, third, count }) => {
  const size = 9.6;
  const ink = tone(ground, -0.14, 0.9);
  const bands: readonly (readonly [number, number, string, number])[] = [
    [0, 2.4, first, 0.55],
    [3.1, 0.32, second, 0.8],
    [4.3, 2.6, ink, 0.4],
    [5.45, 0.3, second, 0.6],
    [7.8, 0.42, count > 3 ? third : blend(second, '#efe6d2', 0.5), 0.6],
  ];
  let twill = '';
  for (let k = -size; k < size; k += 0.8)
    twill += polygonPath(
      [
        [-0.4, k - 0.4],
        [size + 0.4, k + size + 0.4],
      ],
      false,
    );
  return square(size, [
    ...bands.map(([x, width, colour, opacity]) => fill(rectanglePath(x + 0.4, -1, width, size + 2), colour, opacity)),
    ...bands.map(([y, width, colour, opacity]) =>
      fill(rectanglePath(-1, y + 0.4, size + 2, width), colour, opacity * 0.8),
    ),
    stroke(twill, ground, 0.12, 0.36),
  ]);
};

const houndstooth: Draw = ({ first }) => {
  const u = 3.2 / 24;
  const at = (...points: readonly number[]): string =>
    polygonPath(
      Array.from(
        { length: points.length / 2 },
        (_, i): Point => [(points[i * 2] ?? 0) * u, (points[i * 2 + 1] ?? 0) * u],
      ),
    );
  return square(3.2, [
    fill(
      at(0, 18, 6, 18, 12, 12, 12, 18, 18, 18, 12, 24, 0, 24) +
        at(24, 18, 24, 24, 18, 24) +
        at(24, 0, 18, 6, 12, 6, 18, 0) +
        at(12, 0, 12, 6, 0, 18, 0, 12, 6, 6, 0, 6, 0, 0),
      first,
      0.94,
    ),
  ]);
};

const herringbone: Draw = ({ ground, first }) => {
  const wide = 1.7;
  const pitch = 0.95;
  let path = '';
  for (let c = 0; c < 2; c++)
    for (let k = -3; k < 11; k++) {
      const rising = c % 2 === 0;
      path += polygonPath(
        [
          [c * wide, k * pitch + (rising ? wide : 0)],
          [c * wide + wide, k * pitch + (rising ? 0 : wide)],
        ],
        false,
      );
    }
  return {
    width: wide * 2,
    height: pitch * 8,
    marks: [
      { path, stroke: first, width: 0.36, opacity: 0.55 },
      fill(
        rectanglePath(0.1, -1, 0.09, pitch * 8 + 2) + rectanglePath(wide + 0.1, -1, 0.09, pitch * 8 + 2),
        tone(ground, -0.2),
        0.3,
      ),
    ],
  };
};

const dot: Draw = ({ first, second, count }) => {
  const spots: readonly Point[] = [
    [1, 1],
    [3, 3],
  ];
  const paths = spots.map((at) => ellipsePath(at, 0.55));
  return square(
    4,
    count > 2
      ? [fill(paths[0] ?? '', first, 0.95), fill(paths[1] ?? '', second, 0.95)]
      : [fill(paths.join(''), first, 0.95)],
  );
};

const floral: Draw = ({ ground, first, second, third }, seed) => {
  const size = 13;
  const spots = scatter(`${seed} floral`, size, 13, 2.7);
  const large = spots.slice(0, 6);
  const small = spots.slice(6);
  const green = blend(tone(ground, oklch(ground).l > 0.6 ? -0.28 : 0.2, 1), '#5f7048', 0.55);
  const all = (list: typeof spots, reach: number, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    list.map((s) => wrapped(s, reach, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(
      all(spots, 2.4, (at, s) => leaf(at, 1.7 + s.roll * 0.7, s.turn) + leaf(at, 1.5 + s.roll * 0.6, s.turn + 70)),
      green,
      0.9,
    ),
    fill(
      all(large, 1.6, (at, s) => petals(at, 1.35 + s.roll * 0.25, 6, s.turn)),
      first,
      0.96,
    ),
    stroke(
      all(large, 1.6, (at, s) => petals(at, 0.85 + s.roll * 0.2, 6, s.turn + 30)),
      tone(first, -0.14),
      0.09,
      0.7,
    ),
    fill(
      all(small, 1.1, (at, s) => petals(at, 0.85 + s.roll * 0.25, 5, s.turn)),
      second,
      0.96,
    ),
    fill(
      all(large, 0.5, (at) => ellipsePath(at, 0.34)),
      third,
    ),
    fill(
      all(small, 0.4, (at) => ellipsePath(at, 0.2)),
      first,
    ),
  ]);
};

const animal: Draw = ({ ground, first, second }, seed) => {
  const size = 12;
  const spots = scatter(`${seed} animal`, size, 44, 1.45);
  const rings = spots.slice(0, 30);
  const flecks = spots.slice(30);
  const heart = second === first ? blend(ground, first, 0.35) : second;
  const all = (list: typeof spots, reach: number, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    list.map((s) => wrapped(s, reach, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(
      all(rings, 0.8, (at, s) => ellipsePath(at, 0.52 + s.roll * 0.14, 0.44, s.turn)),
      heart,
      0.75,
    ),
    fill(
      all(rings, 1, (at, s) => rosette(at, 0.72 + s.roll * 0.16, s.turn)),
      first,
      0.94,
    ),
    fill(
      all(flecks, 0.6, (at, s) => ellipsePath(at, 0.3 + s.roll * 0.14, 0.2, s.turn)),
      first,
      0.94,
    ),
  ]);
};

const abstract: Draw = ({ first, second, third }, seed) => {
  const size = 15;
  const spots = scatter(`${seed} abstract`, size, 11, 3.4);
  const blob = (at: Point, r: number, turn: number): string => {
    const p = (angle: number, k: number): Point => turned([at[0], at[1] - r * k], turn + angle, at);
    return `${softPath([p(0, 1), p(50, 1.25), p(105, 0.8), p(160, 1.2), p(215, 0.9), p(265, 1.3), p(315, 0.75), p(360, 1)])}Z`;
  };
  const sweep = (at: Point, r: number, turn: number): string => {
    const p = (x: number, y: number): Point => turned([at[0] + x * r, at[1] + y * r], turn, at);
    return softPath([p(-1.5, 0.4), p(-0.6, -0.7), p(0.4, 0.5), p(1.5, -0.4)]);
  };
  const all = (list: typeof spots, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    list.map((s) => wrapped(s, 3.2, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(
      all(spots.slice(0, 4), (at, s) => blob(at, 1.6 + s.roll * 0.7, s.turn)),
      first,
      0.92,
    ),
    fill(
      all(spots.slice(4, 7), (at, s) => blob(at, 1 + s.roll * 0.6, s.turn)),
      second,
      0.92,
    ),
    stroke(
      all(spots.slice(7), (at, s) => sweep(at, 1.5, s.turn)),
      third,
      0.55,
      0.9,
    ),
    stroke(
      all(spots.slice(0, 3), (at, s) => sweep(at, 1, s.turn + 40)),
      second,
      0.22,
      0.9,
    ),
  ]);
};

const geometric: Draw = ({ first, second, third, count }) => {
  const s = 5;
  const diamond = (x: number, y: number, r: number): string =>
    polygonPath([
      [x, y - r],
      [x + r, y],
      [x, y + r],
      [x - r, y],
    ]);
  const half = (x: number, y: number): string =>
    `${softPath([
      [x - 1.1, y],
      [x - 1.1, y - 1.5],
      [x + 1.1, y - 1.5],
      [x + 1.1, y],
    ])}Z`;
  return square(s, [
    fill(diamond(s / 2, s / 2, 2.1), first, 0.94),
    fill(
      diamond(0, 0, 1.3) + diamond(s, 0, 1.3) + diamond(0, s, 1.3) + diamond(s, s, 1.3),
      count > 2 ? second : first,
      0.94,
    ),
    fill(half(s / 2, s / 2 + 0.2), count > 3 ? third : count > 2 ? second : blend(first, '#ffffff', 0.4), 0.9),
  ]);
};

const paisley: Draw = ({ ground, first, second, third }, seed) => {
  const size = 13;
  const spots = scatter(`${seed} paisley`, size, 9, 3.5);
  const dots = scatter(`${seed} dots`, size, 34, 1.3);
  const all = (reach: number, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    spots.map((s) => wrapped(s, reach, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(dots.map((s) => wrapped(s, 0.2, size, (at) => ellipsePath(at, 0.14))).join(''), second, 0.9),
    fill(
      all(2.2, (at, s) => drop(at, 3.1, s.turn)),
      first,
      0.95,
    ),
    stroke(
      all(2.4, (at, s) => drop(at, 3.5, s.turn)),
      second,
      0.13,
      0.9,
    ),
    fill(
      all(1.6, (at, s) => drop(at, 1.9, s.turn)),
      ground,
    ),
    fill(
      all(1.2, (at, s) => drop(at, 1.2, s.turn)),
      second,
      0.95,
    ),
    fill(
      all(0.8, (at) => ellipsePath(at, 0.22)),
      third,
    ),
  ]);
};

/** Colour block is cut from several cloths, not printed: the garments do that. */
export const PRINTS: Partial<Record<PatternType, Draw>> = {
  stripe,
  pinstripe,
  gingham,
  check,
  tartan,
  houndstooth,
  herringbone,
  dot,
  floral,
  animal,
  abstract,
  geometric,
  paisley,
};

export const PRINT_SCALE: Readonly<Record<PatternScale, number>> = { small: 0.6, medium: 1, large: 1.7 };

/** Colours of a print from the piece's own; what is missing is a tone of what is there. */
export const printColours = (colours: readonly string[]): PrintColours | undefined => {
  const ground = colours[0];
  if (ground === undefined) return undefined;
  const first = colours[1] ?? tone(ground, oklch(ground).l > 0.5 ? -0.24 : 0.26, 0.8);
  const second = colours[2] ?? blend(first, ground, 0.42);
  return {
    ground,
    first,
    second,
    third:
      colours[3] ??
      (colours[2] === undefined ? tone(first, oklch(first).l > 0.5 ? -0.16 : 0.2) : blend(second, ground, 0.3)),
    count: colours.length,
  };
};

/** Prints whose medium repeat is larger than drawn here. */
const LARGER: Partial<Record<PatternType, number>> = {
  dot: 1.2,
  floral: 1.35,
  animal: 1.45,
  paisley: 1.45,
  abstract: 1.2,
  geometric: 1.2,
};

const printScale = (pattern: { readonly type: PatternType; readonly scale: PatternScale }, detail: Detail): number => {
  const own = PRINT_SCALE[pattern.scale] * (LARGER[pattern.type] ?? 1);
  // a small picture needs a coarser print, or it turns grey
  return detail === 'small' ? Math.max(1.7, own * 1.6) : own;
};

/** The stripe of a cloth as data, in centimetres at its own scale. */
export const crosswiseStripes = (scale: PatternScale, colours: readonly string[], detail: Detail): Cloth['stripes'] => {
  const own = printColours(colours);
  if (own === undefined) return undefined;
  const k = printScale({ type: 'stripe', scale }, detail);
  const { repeat, bands } = stripeBands(own);
  return { repeat: repeat * k, bands: bands.map((band) => ({ ...band, at: band.at * k, width: band.width * k })) };
};

/**
 * The print of a cloth as a tile in the piece's own colours, or nothing for a plain one. `upright` stripes run down the
 * cloth, as on woven shirting; knitted ones run across.
 */
export const print = (
  pattern: { readonly type: PatternType; readonly scale: PatternScale },
  colours: readonly string[],
  detail: Detail,
  seed: string,
  upright: boolean,
): Tile | undefined => {
  const draws = PRINTS[pattern.type];
  const own = printColours(colours);
  if (draws === undefined || own === undefined) return undefined;
  // a small picture needs a coarser print, or it turns grey
  const least = detail === 'small' ? 1.7 : 0;
  const scale = Math.max(
    least,
    PRINT_SCALE[pattern.scale] * (LARGER[pattern.type] ?? 1) * (detail === 'small' ? 1.6 : 1),
  );
  const transform: Matrix =
    upright && pattern.type === 'stripe' ? [0, scale, -scale, 0, 0, 0] : [scale, 0, 0, scale, 0, 0];
  return { name: 'print', ...draws(own, seed), transform };
};
