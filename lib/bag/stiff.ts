import type { Bag, Piece } from '../model/index.ts';
import { type Coverage, euShoeSize, HEEL_CM, KINDS, type KindId, SHAFT_CM, within } from '../vocabulary/index.ts';

/** A size that cannot be folded smaller, centimetres, longest first. */
export type Box = readonly [number, number, number];

/** A shoe's last is measured in Paris points of two thirds of a centimetre; the sole stands out a little. from memory; allowance own */
const PARIS_POINT_CM = 2 / 3;
const SOLE_CM = 1.5;
const SHOE_WIDTH_CM = 10;
const UPPER_CM = 7;
/** Height of a boot by how far up it covers the leg. Own estimates. */
const SHAFTS_CM: readonly (readonly [Coverage, number])[] = [
  ['knees', 45],
  ['calves', 32],
  ['feet', 14],
];

/** Other pieces that keep their shape. Own estimates. */
const STIFF: Readonly<Partial<Record<KindId, Box>>> = {
  'felt hat': [36, 31, 11],
  briefcase: [40, 30, 8],
};

const sorted = (sides: readonly number[]): Box => {
  const [a = 0, b = 0, c = 0] = sides.toSorted((x, y) => y - x);
  return [a, b, c];
};

/** One shoe of a pair, or another piece that keeps its shape; undefined for cloth, which folds to any bag. */
export const stiffBox = (piece: Piece): Box | undefined => {
  if (KINDS[piece.kind].group !== 'shoes') return STIFF[piece.kind];
  const isBoot = piece.kind.includes('boot');
  const usual = SHAFTS_CM.find(([part]) => piece.covers.includes(part))?.[1] ?? UPPER_CM;
  const measured = piece.lengthCm === undefined ? usual : within(SHAFT_CM, piece.lengthCm);
  const shaft = isBoot ? measured : UPPER_CM;
  return sorted([
    euShoeSize(piece.size) * PARIS_POINT_CM + SOLE_CM,
    SHOE_WIDTH_CM,
    shaft + within(HEEL_CM, piece.heelCm),
  ]);
};

/** Each side of the inner box against the outer one, when only that is known: together they leave four fifths. common practice, no source */
const INNER_SIDE = 0.8 ** (1 / 3);

/** The inner box of a bag; undefined when no size is known. */
export const innerBox = ({ cm, innerCm }: Bag): Box | undefined =>
  innerCm ?? (cm === undefined ? undefined : [cm[0] * INNER_SIDE, cm[1] * INNER_SIDE, cm[2] * INNER_SIDE]);

/** Whether a stiff box goes in when laid along the sides, in any of its turns. A bag without a size takes anything. */
export const goesIn = (box: Box | undefined, bag: Bag): boolean => {
  const inner = innerBox(bag);
  return box === undefined || inner === undefined || box.every((side, index) => side <= (inner[index] ?? 0));
};
