import type { Point } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { curvePath, ellipsePath, group, line, type Node, type Painted, pen, shape, tone } from '../kit/index.ts';
import type { OnLast, ShoeArtist } from './artist.ts';

export interface Lacing {
  /** Stations of the eyelet rows, from the toe end up. */
  readonly rows: readonly number[];
  /** `around` of the near eyelets, one a row; the far ones mirror them. */
  readonly near: readonly number[];
  readonly colour: string;
  readonly width?: number;
  readonly eyelets?: 'punched' | 'metal' | 'hooks';
  readonly bow?: boolean;
  /** Bars cross (walking and sports shoes) or lie straight (town shoes). */
  readonly crossed?: boolean;
}

const cord = (artist: ShoeArtist, nodes: readonly Node[], width: number, colour: string): Painted => {
  const path = curvePath(nodes, false);
  const dark = tone(colour, -0.24);
  return group([
    line(path, width + 0.2, dark, 0.85),
    line(path, width, colour),
    ...(artist.small ? [] : [line(path, width * 0.3, tone(colour, 0.12), 0.7)]),
  ]);
};

const bow = (artist: ShoeArtist, at: Point, width: number, colour: string): Painted[] => {
  const [x, y] = at;
  const loop = (side: -1 | 1, drop: number): Node[] => [
    [x, y],
    [x + side * 1.5, y - 0.7],
    [x + side * 2.7, y + 0.1 + drop],
    [x + side * 2.2, y + 0.9 + drop],
    [x, y + 0.1],
  ];
  const end = (side: -1 | 1): Node[] => [
    [x, y],
    [x + side * 0.9, y + 0.9],
    [x + side * 1.5, y + 2.3],
  ];
  return [
    cord(artist, end(1), width, colour),
    cord(artist, end(-1), width, colour),
    cord(artist, loop(1, 0.2), width, colour),
    cord(artist, loop(-1, 0.5), width, colour),
    shape(ellipsePath([x, y + 0.1], width * 0.95, width * 0.8), colour),
    line(ellipsePath([x, y + 0.1], width * 0.95, width * 0.8), 0.1, tone(colour, -0.24), 0.8),
  ];
};

/** Laces over the tongue: from the lowest bar up to the bow. */
export const paintLaces = (artist: ShoeArtist, lacing: Lacing): void => {
  const { garment, last, cloth } = artist;
  const width = lacing.width ?? 0.42;
  const puff = 0.28;
  const rows = lacing.rows.map((t, i) => ({ t, around: lacing.near[i] ?? lacing.near[0] ?? 0.38 }));
  if (!artist.small || lacing.eyelets !== undefined)
    for (const { t, around } of rows)
      for (const side of [around, 1 - around]) {
        if (side > 0.72) continue;
        const at = last.on(t, side, 0.08);
        const metal = lacing.eyelets === 'metal' || lacing.eyelets === 'hooks';
        garment.add(
          shape(ellipsePath(at, 0.34), metal ? '#8d7a55' : cloth.ink),
          ...(metal && !artist.small ? [shape(ellipsePath([at[0] - 0.08, at[1] - 0.1], 0.14), '#e8d9ad')] : []),
        );
      }
  rows.forEach(({ t, around }, i) => {
    const next = rows[i + 1];
    if (lacing.crossed && next) {
      const bar = (from: number, to: number): OnLast[] => [
        [t, from],
        [(t + next.t) / 2, 0.5],
        [next.t, to],
      ];
      garment.add(cord(artist, artist.mapped(bar(1 - around, next.around), false, puff), width, lacing.colour));
      garment.add(cord(artist, artist.mapped(bar(around, 1 - next.around), false, puff), width, lacing.colour));
      return;
    }
    if (lacing.crossed && i > 0) return;
    garment.add(
      cord(
        artist,
        artist.mapped(
          [
            [t, around],
            [t + 0.006, 0.5],
            [t, 1 - around],
          ],
          false,
          puff,
        ),
        width,
        lacing.colour,
      ),
    );
  });
  const top = rows[rows.length - 1];
  if (top && (lacing.bow ?? true)) garment.add(...bow(artist, last.on(top.t + 0.004, 0.5, 0.6), width, lacing.colour));
};

/** A tongue under the laces, from below the lowest bar up out of the mouth. */
export const paintTongue = (artist: ShoeArtist, from: number, to: number, half: number, fill?: string): void => {
  artist.patch(
    [
      [from, 0.5 - half * 0.8, 'corner'],
      [(from + to) / 2, 0.5 - half],
      [to + 0.012, 0.5 - half * 1.05],
      [to, 0.5],
      [to + 0.012, 0.5 + half * 1.05],
      [(from + to) / 2, 0.5 + half],
      [from, 0.5 + half * 0.8, 'corner'],
    ],
    {
      puff: 0.02,
      edge: 0.35,
      ...(fill !== undefined && { fill }),
      inner: [
        artist.plane(
          [
            [from, 0.5],
            [to, 0.5],
          ],
          1.2,
          artist.cloth.ink,
          0.5,
        ),
      ],
    },
  );
};

export const METAL = '#b9975a';

/** A band across the shoe or round it, given as its middle line; true width in centimetres. */
export const paintStrap = (
  artist: ShoeArtist,
  middle: readonly Point[],
  width: number,
  options: { readonly colour?: string; readonly stitched?: boolean; readonly under?: boolean } = {},
): void => {
  const { garment, cloth } = artist;
  const colour = options.colour ?? cloth.ground;
  const nodes = middle.map((p): Node => [p[0], p[1]]);
  const path = curvePath(nodes, false);
  const dark = plainCloth(colour, 'leather', garment.detail);
  garment.add(
    { path, stroke: dark.ink, width: width + 0.22 },
    { path, stroke: options.under ? dark.deep : colour, width },
  );
  if (options.under) return;
  garment.add(
    group([{ path, stroke: dark.ink, width: width * 0.3, opacity: 0.22 }], { move: [0.05, width * 0.34] }),
    group([{ path, stroke: dark.bright, width: width * 0.2, opacity: 0.5 }], { move: [-0.03, -width * 0.3] }),
  );
  if (options.stitched && !artist.small)
    garment.add(
      group([line(path, 0.1, dark.bright, 0.6, [0.36, 0.3])], { move: [0, width * 0.3] }),
      group([line(path, 0.1, dark.bright, 0.6, [0.36, 0.3])], { move: [0, -width * 0.3] }),
    );
};

/** A small frame buckle with its prong. */
export const paintBuckle = (
  artist: ShoeArtist,
  at: Point,
  size: readonly [width: number, height: number],
  degrees: number,
  metal = METAL,
): void => {
  const [w, h] = size;
  const angle = (degrees * Math.PI) / 180;
  const turn = (x: number, y: number): Node => [
    at[0] + x * Math.cos(angle) - y * Math.sin(angle),
    at[1] + x * Math.sin(angle) + y * Math.cos(angle),
    'corner',
  ];
  const frame = curvePath([turn(-w / 2, -h / 2), turn(w / 2, -h / 2), turn(w / 2, h / 2), turn(-w / 2, h / 2)]);
  artist.garment.add(
    { path: frame, stroke: tone(metal, -0.28), width: 0.46, round: true },
    { path: frame, stroke: metal, width: 0.3, round: true },
    line([turn(-w / 2, 0), turn(w / 2, 0)], 0.22, tone(metal, -0.12)),
  );
  if (!artist.small)
    artist.garment.add(pen([turn(-w / 2, -h / 2 - 0.02), turn(w / 2, -h / 2 - 0.02)], 0.16, tone(metal, 0.2), 0.9));
};

/** Elastic set into a boot's side or a collar: ribs between two edges on the last. */
export const paintElastic = (artist: ShoeArtist, outline: readonly Node[], ribs: string): void => {
  artist.garment.panel(outline, {
    covers: false,
    edge: 0.3,
    wobble: 0.02,
    weave: false,
    rim: false,
    fill: artist.cloth.deep,
    inner: [
      line(ribs, 0.2, artist.cloth.ink, 0.75),
      ...(artist.small ? [] : [line(ribs, 0.08, artist.cloth.bright, 0.4)]),
    ],
  });
};

/** Rows of punched holes along a seam: a large one between pairs of small ones. */
export const paintBroguing = (artist: ShoeArtist, nodes: readonly OnLast[], pitch = 0.75): void => {
  const along = artist.mapped(nodes, false, 0, 8);
  let path = '';
  let walked = pitch / 2;
  let count = 0;
  along.forEach(([x, y], i) => {
    const before = along[i - 1];
    if (before === undefined) return;
    walked += Math.hypot(x - before[0], y - before[1]);
    if (walked < pitch / 2) return;
    walked = 0;
    count += 1;
    path += ellipsePath([x, y], count % 2 === 0 ? 0.2 : 0.11);
  });
  if (path !== '') artist.garment.add(shape(path, artist.cloth.ink, 0.9));
};
