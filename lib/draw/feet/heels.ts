import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import type { ShoeArtist } from './artist.ts';
import { paintBody } from './body.ts';
import { paintBuckle, paintStrap } from './fastenings.ts';
import { archBand, paintCounter, paintFootbed } from './footbed.ts';
import { coveredHeel } from './heel-shapes.ts';
import { courtLast, heelOf } from './lasts.ts';
import { IN_PROFILE, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Topline } from './solids.ts';

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
