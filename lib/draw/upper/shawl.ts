import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { clampLength, FROM_SHOULDER, Garment, line, type Node, type Painted, shape } from '../kit/index.ts';

/** Half the breadth of the folded cloth, centimetres. */
const HALF = 21;
/** How much of the cloth a hand lays over as the last fold. */
const LAP = 0.62;

/** A large fringed cloth folded in four, its last fold laid over askew: every layer shows its edge and its fringe. */
export const drawShawl = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const byWord = piece.length === 'none' ? 0 : FROM_SHOULDER[piece.length] - FROM_SHOULDER.hip;
  const drop = clampLength(piece.lengthCm, 66 + byWord, 30, 155).cm;
  const half = HALF * (piece.cut === 'slim' || piece.cut === 'fitted' ? 0.8 : 1);
  leaf(garment, { left: -half + 1.6, right: half + 2.2, top: 1.4, low: drop + 3.6, lean: 1.2, turn: 2 });
  leaf(garment, { left: -half - 0.8, right: half + 0.6, top: 0.5, low: drop + 0.4, lean: -0.8, turn: -2 });
  lap(garment, half, drop);
  garment.anchor('neck', [0, 0]).anchor('hem', [0, drop]);
  return garment.finish();
};

interface Leaf {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly low: number;
  /** How far the left corner of the hem hangs below the right one. */
  readonly lean: number;
  readonly turn: number;
}

/** One layer of the folded cloth, from the rounded fold at the top down to its fringe. */
const leaf = (garment: Garment, { left, right, top, low, lean, turn }: Leaf): void => {
  const middle = (left + right) / 2;
  const [leftLow, rightLow] = [low + lean, low - lean];
  fringe(garment, [left + 0.8, leftLow], [right - 0.6, rightLow]);
  garment.panel(
    [
      [left + 0.6, top + 0.6, 'corner'],
      [middle - 6, top - 0.5],
      [middle + 8, top - 0.2],
      [right - 0.4, top + 0.9, 'corner'],
      [right + 0.3, low * 0.36],
      [right - 0.5, low * 0.7],
      [right - 0.3, rightLow, 'corner'],
      [middle + 5, low + 0.5],
      [middle - 7, low - 0.2],
      [left + 0.4, leftLow, 'corner'],
      [left - 0.5, low * 0.68],
      [left + 0.2, low * 0.32],
    ],
    {
      turn,
      cast: 0.7,
      round: { from: [left, 0], to: [right, 0], strength: 0.8 },
      inner: hanging(garment, [left * 0.82, left * 0.5, left * 0.2], top, low),
    },
  );
};

/** The part that is folded over last: narrower, a little askew, its rolled edge running down the middle. */
const lap = (garment: Garment, half: number, drop: number): void => {
  const width = 2 * half * LAP;
  const [inner, outer] = [half + 0.9 - width, half + 1.1];
  const low = drop - 5.2;
  const edge: Node[] = [
    [inner + 3.4, 0.2],
    [inner + 1.5, drop * 0.3],
    [inner + 0.9, drop * 0.62],
    [inner - 1.6, low + 1.4],
  ];
  fringe(garment, [inner - 1.2, low + 1.4], [outer - 2.6, low - 1.8]);
  garment.panel(
    [
      [inner + 3.4, 0.2, 'corner'],
      [half * 0.45, -0.9],
      [outer - 1.4, 0.3, 'corner'],
      [outer + 0.2, 2.4],
      [outer - 0.2, drop * 0.4],
      [outer - 1, drop * 0.74],
      [outer - 2.4, low - 1.8, 'corner'],
      [half * 0.4, low + 0.4],
      [inner - 1.6, low + 1.4, 'corner'],
      ...edge.slice(1, -1).reverse(),
    ],
    {
      turn: 3,
      cast: 1.2,
      round: { from: [inner, 0], to: [outer, 0], strength: 1 },
      inner: [
        ...hanging(garment, [inner + width * 0.34, inner + width * 0.58, inner + width * 0.82], 0, low),
        garment.plane(
          edge.map(([x, y]): Node => [x + 1.1, y]),
          1.2,
          garment.cloth.bright,
          0.5,
        ),
        garment.fold(
          [
            [outer - 0.6, drop * 0.2],
            [half * 0.5, drop * 0.27],
            [inner + 4, drop * 0.24],
          ],
          1.5,
          0.5,
        ),
      ],
    },
  );
};

/** Soft folds that hang from the top fold and open towards the fringe. */
const hanging = (garment: Garment, places: readonly number[], top: number, low: number): Painted[] =>
  places.map((x, i) =>
    garment.fold(
      [
        [x + garment.jitter(0.8), top + 1 + i * 1.2],
        [x + 0.8 + garment.jitter(1), low * 0.4],
        [x - 0.5 + garment.jitter(1.4), low * (0.78 + (i % 2) * 0.16)],
      ],
      i % 2 === 0 ? 2.2 : -1.8,
      0.8,
      0.4,
    ),
  );

/** Twisted threads along a hem. */
const fringe = (garment: Garment, from: readonly [number, number], to: readonly [number, number]): void => {
  const { cloth } = garment;
  const count = garment.small ? 12 : 44;
  let path = '';
  for (let i = 0; i <= count; i++) {
    const x = from[0] + ((to[0] - from[0]) * i) / count;
    const y = from[1] + ((to[1] - from[1]) * i) / count;
    path += `M${Math.round(x * 100) / 100} ${Math.round((y - 0.5) * 100) / 100}L${Math.round((x + garment.jitter(0.5)) * 100) / 100} ${Math.round((y + 5 + garment.jitter(0.5)) * 100) / 100}`;
  }
  garment.add(
    shape(
      [
        [from[0], from[1] - 0.3, 'corner'],
        [to[0], to[1] - 0.3, 'corner'],
        [to[0], to[1] + 3.4, 'corner'],
        [from[0], from[1] + 3.4, 'corner'],
      ],
      cloth.shade,
      0.55,
    ),
    line(path, garment.small ? 0.7 : 0.42, cloth.ink, 0.7),
    line(path, garment.small ? 0.5 : 0.28, cloth.ground),
  );
  garment.cover([
    [from[0], from[1]],
    [to[0], to[1]],
    [to[0], to[1] + 4.4],
    [from[0], from[1] + 4.4],
  ]);
};
