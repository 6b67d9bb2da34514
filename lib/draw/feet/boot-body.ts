import { plainCloth } from '../fabric/index.ts';
import { curvePath, group, line, type Node, oklch, type Painted, pen, shape, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { type Leg, type LegSection, leg } from './solids.ts';

/** Nodes on a boot's leg: height up (0 to 1) and share around, set on paper. */
export const onLeg = (of: Leg, nodes: readonly Node[], puff = 0): Node[] =>
  nodes.map(([up, around, corner]) => {
    const [x, y] = of.on(up, around, puff);
    return [x, y, corner];
  });

/** A boot's leg by the height of its mouth above the seat and its girth there; `calf` widens it below the mouth. */
export const legSections = (
  artist: ShoeArtist,
  shaft: number,
  options: { readonly front?: number; readonly half?: number; readonly calf?: number; readonly ankle?: number } = {},
): LegSection[] => {
  const seat = artist.last.floor(0.1);
  const { front = 12.6, half = 4.3, calf = 0, ankle = 1 } = options;
  const sections: LegSection[] = [
    { z: seat + 2.5, front: 13.4, back: 0.1, halfWidth: 3 },
    { z: seat + 6, front: 14.1, back: 0.2, halfWidth: 3.5 },
    { z: seat + 9, front: 11.6 + (1 - ankle) * 1.4, back: 0.2 + 0.75 * ankle, halfWidth: 3.7 },
  ];
  if (shaft > 22)
    sections.push(
      { z: seat + 13, front: 11.4 + (1 - ankle) * 1.4, back: 0.5 * ankle, halfWidth: 3.9 },
      { z: seat + shaft * 0.75, front: front + 0.2, back: -0.2 - calf, halfWidth: half },
    );
  sections.push({ z: seat + shaft, front, back: calf > 0 ? -calf * 0.6 : 0.5, halfWidth: half });
  return sections;
};

export interface BootStyle {
  readonly sections: readonly LegSection[];
  readonly lining?: string;
  readonly collar?: number;
  /** Creases at the ankle, 0 to 3. */
  readonly creases: number;
  /** Painted on foot and leg, under the edge shade. */
  readonly inner?: (of: Leg) => readonly Painted[];
}

const modelling = (artist: ShoeArtist, of: Leg, creases: number): Painted[] => {
  const { cloth, garment } = artist;
  const dark = oklch(cloth.ground).l < 0.42;
  const upright = (around: number, from: number, to: number): Node[] =>
    onLeg(of, [
      [to, around],
      [(from + to) / 2, around],
      [from, around],
    ]);
  const marks: Painted[] = [
    artist.plane(points('0 0.06, 0.3 0.06, 0.6 0.05, 0.97 0.1'), 1, cloth.ink, 0.6 * cloth.depth + 0.1),
    artist.plane(points('0.56 0.33, 0.68 0.33, 0.8 0.36, 0.94 0.42'), 0.95, cloth.bright, 0.55 * cloth.sheen, 0.6),
    garment.plane(upright(0.16, 0.12, 0.98), 1.5, cloth.bright, 0.42 * cloth.sheen),
    garment.plane(upright(0.42, 0.05, 0.98), 1.5, cloth.ink, 0.6 * cloth.depth + 0.1),
    garment.plane(upright(0.02, 0.3, 0.98), 0.6, cloth.ink, 0.3),
  ];
  if (!artist.behind)
    marks.push(artist.plane(points('0.8 0.3, 0.88 0.34, 0.94 0.4'), 0.5, cloth.bright, 0.5 * cloth.sheen));
  if (dark)
    marks.push(
      pen(
        artist.mapped(points('0.56 0.45, 0.72 0.46, 0.86 0.45, 0.965 0.4')),
        artist.small ? 0.6 : 0.3,
        cloth.bright,
        0.75,
      ),
      pen(upright(0.06, 0.35, 0.95), artist.small ? 0.8 : 0.3, cloth.bright, artist.small ? 0.75 : 0.5),
      ...(artist.small ? [garment.plane(upright(0.18, 0.12, 0.95), 1, cloth.bright, 0.9)] : []),
    );
  if (artist.small || artist.behind) return marks;
  const seat = of.on(0.3, 0.06);
  for (let i = 0; i < creases; i++) {
    const [x, y] = [seat[0] + 0.4 - i * 0.5 + garment.jitter(0.2), seat[1] + i * 1.25];
    marks.push(
      garment.fold(
        [
          [x, y],
          [x + 2.6, y + 0.6],
          [x + 5 - i * 0.5, y + 2 + garment.jitter(0.3)],
        ],
        0.8,
        0.75,
      ),
    );
  }
  return marks;
};

/** Foot and leg in one, with the mouth on top. Returns the leg to draw on. */
export const paintBoot = (artist: ShoeArtist, style: BootStyle): Leg => {
  const { garment, cloth } = artist;
  const of = leg(artist.last, style.sections);
  garment.panel(of.outline, {
    edge: 0.5,
    wobble: 0.015,
    inner: [...modelling(artist, of, style.creases), ...(style.inner?.(of) ?? [])],
  });
  const mouth: Node[] = of.mouth.filter((_, i) => i % 2 === 0).map((p) => [p[0], p[1]]);
  const path = curvePath(mouth);
  const lining = style.lining ?? cloth.lining;
  const dark = plainCloth(lining, 'smooth', garment.detail);
  const collar = style.collar ?? 0.34;
  const near: Node[] = Array.from({ length: 9 }, (_, i) => [...of.on(1, i / 16)]);
  garment.add(
    // deep down a shaft no light comes in
    shape(path, tone(lining, style.lining === undefined ? -0.09 : -0.05)),
    group([garment.plane(near, 1.1, dark.ink, 0.8), line(path, 1.4, dark.ink, 0.2)], { clip: path }),
    line(path, collar + 0.16, cloth.ink, 0.9),
    line(path, collar, cloth.light),
    pen(near, collar * 0.5, cloth.bright, 0.7),
  );
  return of;
};
