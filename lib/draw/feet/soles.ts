import type { Point } from '../drawing.ts';
import { type Cloth, plainCloth } from '../fabric/index.ts';
import { line, type Node, type Painted, pen, polygonPath, shape, stitch, tone } from '../kit/index.ts';
import type { ShoeArtist } from './artist.ts';
import { type HeelShape, heel, heelPoint, sole } from './solids.ts';

type SoleKind = 'welted' | 'plain' | 'cup' | 'lug' | 'rope' | 'cork';

export interface SoleStyle {
  readonly kind: SoleKind;
  readonly colour: string;
  /** Centimetres the sole stands out beyond the upper. */
  readonly welt: number;
  /** A line or foxing stripe of another colour. */
  readonly stripe?: string;
  readonly heel?: HeelShape & { readonly colour: string; readonly lifts?: number };
}

/** Short bars on the near face of the sole, one every `pitch` centimetres, between two levels. */
const bars = (artist: ShoeArtist, pitch: number, low: number, high: number, welt: number, slant = 0): string => {
  const count = Math.round(artist.last.shape.length / pitch);
  let path = '';
  for (let i = 1; i < count; i++) {
    const t = i / count;
    path += polygonPath(
      [artist.last.rim(t, 'near', low, welt), artist.last.rim(Math.min(1, t + slant / count), 'near', high, welt)],
      false,
    );
  }
  return path;
};

const lugs = (artist: ShoeArtist, colour: string, welt: number): Painted => {
  const { last } = artist;
  const count = artist.small ? 11 : 15;
  let path = '';
  for (let i = 0; i < count; i++) {
    const [from, to] = [(i + 0.09) / count, (i + 0.86) / count];
    const corner = (t: number, level: number, out: number): Point => last.rim(t, 'near', level, welt + out);
    path += polygonPath([
      corner(from, 0.46, 0.06),
      corner(to, 0.46, 0.06),
      corner(to, 0.02, 0.04),
      corner(from, 0.02, 0.04),
    ]);
  }
  return shape(path, colour);
};

const face = (artist: ShoeArtist, style: SoleStyle, cloth: Cloth): Painted[] => {
  const { garment, small } = artist;
  const { welt } = style;
  const light = (level: number, opacity: number): Painted =>
    pen(artist.rim(level, welt), 0.26, cloth.bright, opacity, 0.5);
  if (style.kind === 'rope') {
    const strand = (low: number, high: number): Painted =>
      line(bars(artist, small ? 1.3 : 0.75, low, high, welt, 0.8), small ? 0.24 : 0.2, cloth.ink, 0.55);
    return [
      strand(0.02, 0.34),
      strand(0.36, 0.68),
      strand(0.7, 0.98),
      ...[0.35, 0.69].map((level) => line(artist.rim(level, welt), 0.14, cloth.ink, 0.6)),
      garment.plane(artist.rim(0.8, welt), 0.3, cloth.bright, 0.5),
    ];
  }
  const marks: Painted[] = [garment.plane(artist.rim(0.15, welt), 0.5, cloth.ink, 0.5), light(0.9, 0.7)];
  if (style.kind === 'cup') {
    marks.push(line(artist.rim(0.28, welt), 0.12, cloth.ink, 0.5));
    if (!small) marks.push(stitch(artist.rim(0.86, welt), cloth.ink, 0.55));
  }
  if (style.kind === 'welted' && !small) marks.push(stitch(artist.rim(0.98, welt * 0.5), cloth.bright, 0.7));
  if (style.kind === 'cork' && !small)
    marks.push(
      line(bars(artist, 0.55, 0.2, 0.3, welt), 0.16, cloth.ink, 0.5),
      line(bars(artist, 0.9, 0.55, 0.62, welt), 0.2, cloth.ink, 0.4),
    );
  if (style.stripe) marks.push(line(artist.rim(0.62, welt), 0.34, style.stripe));
  return marks;
};

const paintHeel = (artist: ShoeArtist, style: NonNullable<SoleStyle['heel']>): void => {
  const { garment, last } = artist;
  const cloth = plainCloth(style.colour, 'leather', garment.detail);
  const side = (t: number, low = 0, high = 1): Node[] =>
    Array.from({ length: 5 }, (_, i) => {
      const [x, y] = heelPoint(last, style, t, -1, low + ((high - low) * i) / 4);
      return [x, y];
    });
  const level = (z: number): Node[] =>
    Array.from({ length: 8 }, (_, i) => {
      const [x, y] = heelPoint(last, style, (style.breast * i) / 7, -1, z);
      return [x, y];
    });
  const lifts = artist.small ? 0 : (style.lifts ?? 0);
  garment.panel(heel(last, style), {
    cloth,
    weave: false,
    edge: 0.3,
    wobble: 0.02,
    inner: [
      garment.plane(side(style.breast * 0.45), Math.min(0.9, style.breast * 3), cloth.bright, 0.55),
      garment.plane(side(style.breast * 0.96), 0.8, cloth.ink, 0.7),
      garment.plane(side(0.005), 0.5, cloth.ink, 0.5),
      ...Array.from({ length: lifts }, (_, i) => line(level((i + 1) / (lifts + 1)), 0.1, cloth.ink, 0.6)),
      line(level(0.06), 0.26, cloth.ink, 0.7),
    ],
  });
};

/** The heel, then the sole over it. */
export const paintSole = (artist: ShoeArtist, style: SoleStyle): void => {
  const { garment, last } = artist;
  if (style.heel) paintHeel(artist, style.heel);
  const cloth = plainCloth(
    style.colour,
    style.kind === 'lug' || style.kind === 'cup' ? 'rubber' : 'leather',
    garment.detail,
  );
  if (style.kind === 'lug') garment.add(lugs(artist, cloth.ink, style.welt));
  garment.panel(sole(last, style.welt, style.kind === 'lug' ? 0.2 : 0), {
    cloth,
    weave: false,
    edge: 0.22,
    wobble: 0.02,
    inner: face(artist, style, cloth),
  });
  if (style.kind === 'lug') garment.add(lugs(artist, tone(style.colour, 0.02), style.welt));
};
