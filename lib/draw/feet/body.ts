import { plainCloth } from '../fabric/index.ts';
import { curvePath, group, line, type Node, oklch, type Painted, pen, shape, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { along, stations } from './last.ts';
import { mouthAround, type Topline, throatOf, upper } from './solids.ts';

export interface BodyStyle {
  readonly topline: Topline;
  readonly lining?: string;
  readonly insole?: string;
  /** Breadth of the edge of the mouth, centimetres: a padded collar is 0.7, a cut edge 0.25. */
  readonly collar?: number;
  /** Part of the length that the upper covers; mules and slingbacks begin later. */
  readonly from?: number;
  /** Creases across the flex point, 0 for none. */
  readonly creases?: number;
  readonly fill?: string;
}

/** Light from the upper left: the crest catches it, the side near the sole and the far side lie in shade. */
const modelling = (artist: ShoeArtist, style: BodyStyle): Painted[] => {
  const { cloth, last } = artist;
  const { topline } = style;
  const throat = throatOf(topline);
  const from = style.from ?? 0;
  const dark = oklch(cloth.ground).l < 0.42;
  const side = (share: number): [number, number][] =>
    [0.03, 0.12, 0.25, 0.4]
      .filter((t) => t < throat && t >= from)
      .map((t) => [t, mouthAround(last, topline, t) * share]);
  const wide = along(last.shape.crest, 0.7) * 0.2;
  const marks: Painted[] = [
    artist.plane(
      [
        [from, 0.05],
        [0.25, 0.05],
        [0.5, 0.05],
        [0.75, 0.05],
        [0.97, 0.1],
      ],
      wide * 1.05,
      cloth.ink,
      0.62 * cloth.depth + 0.1,
    ),
    artist.plane(
      [
        [Math.max(from, throat - 0.02), 0.6],
        [0.75, 0.62],
        [0.9, 0.6],
        [0.98, 0.5],
      ],
      wide * 0.9,
      cloth.ink,
      0.5,
    ),
    artist.plane(points('0.5 0.33, 0.62 0.33, 0.76 0.36, 0.93 0.42'), wide, cloth.bright, 0.55 * cloth.sheen, 0.6),
    artist.plane(points('0.8 0.3, 0.87 0.34, 0.94 0.4'), wide * 0.5, cloth.bright, 0.5 * cloth.sheen),
  ];
  if (side(0.6).length > 1) {
    marks.push(
      artist.plane([...side(0.62), [Math.max(throat, 0.45), 0.3]], wide * 0.85, cloth.bright, 0.36 * cloth.sheen),
      artist.plane(
        [
          [0.005, 0.1],
          [0.015, mouthAround(last, topline, 0.02) * 0.9],
        ],
        0.7,
        cloth.ink,
        0.5,
      ),
    );
  }
  if (dark)
    marks.push(
      pen(
        artist.mapped([
          [throat + 0.02, 0.47],
          [0.72, 0.46],
          [0.86, 0.45],
          [0.965, 0.4],
        ]),
        0.3,
        cloth.bright,
        0.75,
      ),
    );
  const creases = artist.behind || artist.small ? 0 : (style.creases ?? 2);
  for (let i = 0; i < creases; i++) {
    const t = Math.max(throat + 0.05, 0.6) + i * 0.04 + artist.garment.jitter(0.008);
    marks.push(
      artist.fold(
        [
          [t, 0.42],
          [t + 0.012, 0.28],
          [t - 0.01, 0.12],
        ],
        0.55 - i * 0.1,
        0.55,
      ),
    );
  }
  return marks;
};

const mouthEdge = (artist: ShoeArtist, style: BodyStyle, side: 'near' | 'far'): Node[] =>
  stations(14, style.from ?? 0, throatOf(style.topline)).map((t) => {
    const around = mouthAround(artist.last, style.topline, t);
    const [x, y] = artist.last.on(t, side === 'near' ? around : 1 - around);
    return [x, y];
  });

const paintMouth = (artist: ShoeArtist, style: BodyStyle, mouth: readonly Node[]): void => {
  const { garment, cloth, last } = artist;
  const lining = style.lining ?? cloth.lining;
  const dark = plainCloth(lining, 'smooth', garment.detail);
  const insole = style.insole ?? tone(lining, 0.1);
  const path = curvePath(mouth);
  const bed: Node[] = [
    ...stations(12, 0.015, 0.9).map((t): Node => [...last.bed(t, -0.9, 0.25)]),
    ...stations(12, 0.015, 0.9)
      .reverse()
      .map((t): Node => [...last.bed(t, 0.9, 0.25)]),
  ];
  garment.add(
    shape(path, lining),
    group(
      [
        line(path, 2.4, dark.ink, 0.22),
        shape(bed, insole),
        line(curvePath(bed), 0.5, dark.ink, 0.25),
        garment.plane(mouthEdge(artist, style, 'near'), 1.5, dark.ink, 0.75),
        garment.plane(mouthEdge(artist, style, 'far'), 0.9, dark.bright, 0.35),
      ],
      { clip: path },
    ),
  );
};

/** The upper with its mouth; what is sewn on comes after. */
export const paintBody = (artist: ShoeArtist, style: BodyStyle): void => {
  const { garment, cloth } = artist;
  const { outline, mouth } = upper(artist.last, style.topline, style.from ?? 0);
  garment.panel(outline, {
    edge: 0.42,
    wobble: 0.015,
    inner: modelling(artist, style),
    ...(style.fill !== undefined && { fill: style.fill }),
  });
  const throat = mouth.map((p, i): Node => [p[0], p[1], i === 0 ? 'corner' : undefined]);
  paintMouth(artist, style, throat);
  const collar = style.collar ?? 0.3;
  const near = mouthEdge(artist, style, 'near');
  const far = mouthEdge(artist, style, 'far');
  garment.add(
    line(far, collar + 0.14, cloth.ink, 0.9),
    line(far, collar, cloth.light),
    line(near, collar + 0.16, cloth.ink, 0.85),
    line(near, collar, cloth.light),
    pen(near, collar * 0.5, cloth.bright, 0.8, 0.4),
  );
};
