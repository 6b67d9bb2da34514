import type { Garment, Node, Painted } from '../kit/index.ts';
import { halfWidthAt, WAIST } from './body.ts';
import type { UpperShape } from './shape.ts';

export interface Fold {
  readonly nodes: readonly Node[];
  readonly width: number;
  readonly strength: number;
}

/**
 * Folds of a body lying flat: one dominant diagonal from an underarm, a short answer from the other, flutes at the
 * hem, a drag at the shoulder. Light and fluid cloth makes more of them, thick wool few and broad.
 */
export const bodyFoldLines = (garment: Garment, shape: UpperShape, until = shape.length): Fold[] => {
  const lead = garment.random() > 0.5 ? 1 : -1;
  const { armhole: top, slope, shoulder } = shape;
  const ch = shape.chest / 2;
  const rest = until - top;
  const j = (amount = 1.4) => garment.jitter(amount);
  const at = (side: number, share: number, y: number): Node => [side * share * halfWidthAt(shape, Math.max(y, top)), y];
  const long = Math.min(rest * 0.62, 30);
  const fold = (side: number, width: number, strength: number, ...nodes: Node[]): Fold => ({
    nodes,
    width: -width * side,
    strength,
  });
  const a = lead;
  const b = -lead;
  const flute = (side: number, share: number, width: number, strength: number, height: number): Fold =>
    fold(
      side,
      width,
      strength,
      at(side, share + j(0.04), until),
      at(side, share - 0.06 + j(0.04), until - height * 0.4),
      at(side, share - 0.02 + j(0.06), until - height),
    );
  const all: Fold[] = [
    fold(
      a,
      2.6,
      0.9,
      [a * (ch - 0.2), top + 0.6],
      [a * ch * 0.66, top + long * 0.2 + j()],
      [a * ch * 0.2 + j(), top + long * 0.52 + j(2)],
      [-a * ch * 0.16, top + long],
    ),
    flute(a, 0.62, 1.9, 0.8, Math.min(24, rest * 0.5)),
    fold(b, 1.9, 0.8, [b * (ch - 0.2), top + 0.6], [b * ch * 0.74, top + 3 + j()], [b * ch * 0.44, top + 2.4 + j()]),
    fold(
      a,
      2,
      0.75,
      [a * (ch - 0.1), top + 2.6],
      [a * ch * 0.8, top + long * 0.36 + j()],
      [a * ch * 0.6, top + long * 0.8 + j(2)],
    ),
    flute(b, 0.5, 1.7, 0.65, Math.min(15, rest * 0.38)),
    fold(
      b,
      1.5,
      0.55,
      [b * (shoulder / 2 - 1.4), slope + 8],
      [b * ch * 0.6, slope + 11.5 + j()],
      [b * ch * 0.38, slope + 11],
    ),
    fold(
      b,
      1.9,
      0.55,
      at(b, 0.99, top + rest * 0.5 + j()),
      at(b, 0.7, top + rest * 0.56 + j()),
      at(b, 0.34, top + rest * 0.53),
    ),
    flute(1, 0.1, 1.3, 0.55, Math.min(13, rest * 0.3)),
    fold(
      a,
      1.5,
      0.6,
      at(a, 0.98, top + rest * 0.36 + j()),
      at(a, 0.7, top + rest * 0.43 + j()),
      at(a, 0.42, top + rest * 0.56 + j()),
    ),
    fold(
      a,
      1.3,
      0.45,
      [a * shape.neck * 0.56, slope + 3],
      [a * shape.neck * 0.5, slope + 10],
      [a * shape.neck * 0.58, slope + 16],
    ),
    flute(b, 0.82, 1.4, 0.5, Math.min(20, rest * 0.45)),
    fold(
      b,
      1.4,
      0.5,
      [b * (ch - 0.1), top + 3],
      [b * ch * 0.85, top + 10 + j(0.8)],
      [b * ch * 0.83, top + Math.min(22, rest * 0.6)],
    ),
  ];
  // a long garment falls in flutes below the hip
  if (until > 84) {
    const reach = until - WAIST - 14;
    all.splice(2, 0, flute(a, 0.78, 2.4, 0.85, reach), flute(b, 0.3, 2.2, 0.75, reach * 0.7));
  }
  return all.slice(0, Math.max(3, Math.round(8 * garment.cloth.drape.folds)));
};

/** Planes of light and shade and the folds of a body. */
export const bodyShade = (
  garment: Garment,
  shape: UpperShape,
  strength = 1,
  until = shape.length,
  folds = bodyFoldLines(garment, shape, until),
): Painted[] => {
  const { cloth } = garment;
  const { armhole: top } = shape;
  const w = (share: number, y: number): Node => [share * halfWidthAt(shape, Math.max(y, top)), y];
  const mid = top + (until - top) * 0.5;
  const planes = [
    garment.plane(
      [w(-0.44, top - 7), w(-0.36, mid), w(-0.44, until)],
      shape.chest * 0.085,
      cloth.bright,
      0.32 * cloth.sheen * strength,
    ),
    garment.plane(
      [w(0.54, top - 2), w(0.46, mid), w(0.56, until)],
      shape.chest * 0.085,
      cloth.ink,
      0.22 * cloth.depth * strength,
    ),
    garment.plane(
      [w(-0.88, top + 3), w(-0.82, mid), w(-0.88, until)],
      shape.chest * 0.05,
      cloth.ink,
      0.18 * cloth.depth * strength,
    ),
  ];
  return [...planes, ...folds.map((fold) => garment.fold(fold.nodes, fold.width, fold.strength * strength, 0.26))];
};
