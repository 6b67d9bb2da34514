import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import {
  clampLength,
  type DrawnLength,
  Garment,
  lerp,
  linesBetween,
  move,
  type Node,
  type Painted,
  pen,
  turned,
} from '../kit/index.ts';
import {
  archBand,
  bands,
  gores,
  mouth,
  type Place,
  patches,
  type SockDesign,
  sockFolds,
  turnedCuff,
} from './sock-parts.ts';

const SHORTEST = 6;

const LONGEST = 58;

/** Height of a sock from the top of its cuff to the heel. */
export const sockHeight = (piece: Pick<DrawnPiece, 'lengthCm'>, usual: number): DrawnLength =>
  clampLength(piece.lengthCm, usual, SHORTEST, LONGEST);

/** A pair: the far sock turned and set behind the near one. */
export const drawSocks = (piece: DrawnPiece, detail: Detail, design: SockDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const height = sockHeight(piece, design.shaft(piece)).cm;
  const lean = 5 + garment.jitter(1.5);
  const far: Place = (nodes) =>
    nodes.map(([x, y, c]): Node => {
      const [a, b] = move(turned([x, y], lean, [0, height]), [6.5, -9]);
      return [a, b, c];
    });
  oneSock(garment, design, height, far, detail);
  oneSock(garment, design, height, (nodes) => [...nodes], detail);
  return garment
    .anchor('neck', [0, 0])
    .anchor('heel', [4, height])
    .anchor('hem', [0, height + 6])
    .finish();
};

const oneSock = (garment: Garment, design: SockDesign, height: number, place: Place, detail: Detail): void => {
  const { cloth } = garment;
  const { top, calf, thick: t } = design;
  const ankle = 7.4 + t;
  const half = (y: number): number => {
    const share = y / height;
    if (height < 20) return lerp(top, ankle, share) / 2;
    return (share < 0.35 ? lerp(top, calf, share / 0.35) : lerp(calf, ankle, Math.min(1, (share - 0.35) / 0.5))) / 2;
  };
  const s = height;
  const back: Node[] = [
    [half(0), 0, 'corner'],
    [half(s * 0.3), s * 0.3],
    ...(s > 20 ? ([[half(s * 0.62) - 0.2, s * 0.62]] as const) : []),
    [ankle / 2 - 0.3, s - 5.4],
  ];
  const front: Node[] = [
    [-half(0), 0, 'corner'],
    [-half(s * 0.3), s * 0.3],
    ...(s > 20 ? ([[-half(s * 0.62), s * 0.62]] as const) : []),
    [-ankle / 2 - 0.5, s - 6.6],
  ];
  const foot = footOf(place, s);
  const outline = [
    ...place([[-half(0), 0, 'corner'], ...back, [ankle / 2 + 0.9 + t * 0.4, s - 1.2]]),
    ...foot([
      [ankle / 2 + 0.9 + t * 0.4, s + 1.6],
      [ankle / 2 - 1.4, s + 4.4 + t],
      [-5, s + 4.6 + t],
      [-13.4, s + 5 + t],
      [-18.4, s + 3.6 + t * 0.6],
      [-19.2, s + 0.2],
      [-16.4, s - 2.6 - t],
      [-10.5, s - 3.7 - t],
    ]),
    ...place([[-ankle / 2 - 1.2, s - 4.6], ...front.slice(1).reverse()]),
  ];
  const accent =
    design.patches || design.stripes > 0 ? (cloth.accents[0] ?? (design.patches ? cloth.deep : undefined)) : undefined;
  const trim = accent === undefined ? cloth : plainCloth(accent, cloth.surface, detail);
  const down = design.ribbed ? s - 2 : design.cuff + 0.6;
  const column = (edge: readonly Node[], to: number): Node[] =>
    place([0, 0.33, 0.66, 1].map((k): Node => [(edge === back ? 1 : -1) * half(lerp(0, to, k)), lerp(-0.4, to, k)]));
  const count = garment.small ? 4 : Math.round(top / (design.thick > 0.8 ? 1.1 : 0.72));
  const inner: Painted[] = [
    ...(accent !== undefined && design.patches ? patches(foot, accent, s, ankle, t) : []),
    ...bands(design, place, half, trim.ground),
    linesBetween(column(front, down), column(back, down), count, 0.24, cloth.ink, design.ribbed ? 0.26 : 0.34),
    ...(garment.small
      ? []
      : [linesBetween(column(front, down), column(back, down), count, 0.2, cloth.bright, 0.5, 0.02, 1.02)]),
    ...(design.arch ? [archBand(garment, foot, s, t)] : []),
    ...(design.patches ? [] : gores(garment, foot, s, ankle, t)),
    ...sockFolds(garment, place, foot, s, ankle),
  ];
  if (!design.ribbed)
    inner.push(
      pen(
        place([
          [-half(design.cuff) - 1, design.cuff],
          [0, design.cuff + 0.5],
          [half(design.cuff) + 1, design.cuff],
        ]),
        0.26,
        cloth.ink,
        0.6,
        0.5,
      ),
    );
  garment.panel(outline, {
    cast: 0.5,
    wobble: 0.07,
    round: {
      from: point(place, [-ankle / 2 - 1, s * 0.4]),
      to: point(place, [ankle / 2 + 1.6, s * 0.4]),
      strength: 0.6,
    },
    inner,
  });
  mouth(garment, place, half(0));
  if (design.turned) turnedCuff(garment, place, half, design.cuff);
};

/** The foot hangs a little below the square: a sock lies as it was knitted. */
const footOf =
  (place: Place, height: number): Place =>
  (nodes) =>
    place(
      nodes.map(([x, y, c]): Node => {
        const [a, b] = turned([x, y], -13, [1, height]);
        return [a, b, c];
      }),
    );

const point = (place: Place, [x, y]: readonly [number, number]): readonly [number, number] => {
  const [a, b] = place([[x, y]])[0] ?? [0, 0];
  return [a, b];
};
