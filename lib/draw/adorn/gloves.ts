import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, Garment, line, type Node, type Painted, pen, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';

/** A hand's outline from the cuff up, thumb to the left; centimetres, cuff at y = 0. */
const HAND =
  '-4.2 0.4!, -4.4 -4.4, -5.2 -6.6, -7 -9.6, -7.5 -11.6, -6.6 -12.5, -5.4 -11.6, -4.1 -9.4, -3.9 -12.2, -4.3 -16.6, -3.6 -18, -2.5 -17.9, -1.9 -16.4, -1.6 -12.4!, -1.5 -17.4, -0.7 -18.9, 0.5 -18.8, 1 -17.2, 1 -12.4!, 1.5 -16.6, 2.4 -17.8, 3.4 -17.2, 3.6 -15.6, 3.1 -11.6!, 3.9 -13.9, 4.8 -14.5, 5.6 -13.7, 5.5 -12, 4.6 -8.4, 4.4 -4.4, 4.2 0.4!';
const MITTEN =
  '-4.6 0.4!, -4.8 -4, -5.6 -5.8, -7.4 -8, -7.8 -10.2, -6.4 -11.4, -4.9 -10.4, -4.2 -9!, -4.6 -13, -3.6 -17, -0.4 -19.2, 3 -18.2, 4.9 -14.6, 5.2 -9, 4.8 -4, 4.6 0.4!';

type Turn = (nodes: readonly Node[]) => Node[];

/** Where a glove of the pair lies: the back one mirrored and turned, the front one straighter. */
const lay = (behind: boolean): Turn => {
  const angle = ((behind ? 20 : -8) * Math.PI) / 180;
  const flip = behind ? -1 : 1;
  const [dx, dy] = behind ? [4.6, -1.6] : [-2.4, 1.6];
  return (nodes) =>
    nodes.map(([x, y, c]): Node => {
      const [u, v] = [x * flip, y];
      return [u * Math.cos(angle) - v * Math.sin(angle) + dx, u * Math.sin(angle) + v * Math.cos(angle) + dy, c];
    });
};

const pairOf = (
  piece: DrawnPiece,
  detail: Detail,
  paint: (garment: Garment, at: Turn, behind: boolean) => void,
): Drawing => {
  const garment = new Garment(piece, detail);
  paint(garment, lay(true), true);
  paint(garment, lay(false), false);
  return garment.finish();
};

const between = (from: string, to: string, count: number, at: Turn): string => {
  const [a, b] = [points(from), points(to)];
  return Array.from({ length: count }, (_, i) => {
    const s = (i + 0.5) / count;
    return curvePath(
      at(a.map(([x, y], k): Node => [x + ((b[k]?.[0] ?? x) - x) * s, y + ((b[k]?.[1] ?? y) - y) * s])),
      false,
    );
  }).join('');
};

const knitHand = (garment: Garment, at: Turn, outline: string, turn: number, extra: readonly Painted[]): void => {
  const { cloth } = garment;
  garment.panel(at(points(outline)), {
    edge: 0.6,
    wobble: 0.05,
    turn,
    cast: 0.3,
    inner: [
      garment.plane(at(points('-2 -2, -2.4 -7, -2.6 -12')), 1.4, cloth.bright, 0.6),
      garment.plane(at(points('3.6 -1, 3.8 -6, 4.2 -11')), 1, cloth.ink, 0.5),
      garment.fold(at(points('-4.4 -5, -2.6 -6.6, -2 -9')), 1, 0.8),
      ...extra,
    ],
  });
};

const ribbedCuff = (garment: Garment, at: Turn, half: number, length: number): void => {
  const { cloth, small } = garment;
  const cuff = `${-half} -0.4!, 0 0.2, ${half} -0.4!, ${half + 0.25} ${length / 2}, ${half} ${length}!, 0 ${length + 0.5}, ${-half} ${length}!, ${-half - 0.25} ${length / 2}`;
  garment.panel(at(points(cuff)), {
    edge: 0.45,
    wobble: 0.04,
    weave: false,
    cast: 0.2,
    fill: cloth.accents[0] ?? cloth.ground,
    inner: [
      line(
        between(`${-half} -0.4, ${-half} ${length + 0.4}`, `${half} -0.4, ${half} ${length + 0.4}`, small ? 6 : 12, at),
        small ? 0.34 : 0.26,
        cloth.ink,
        0.5,
      ),
      line(
        between(
          `${-half + 0.2} -0.4, ${-half + 0.2} ${length + 0.4}`,
          `${half + 0.2} -0.4, ${half + 0.2} ${length + 0.4}`,
          small ? 6 : 12,
          at,
        ),
        0.1,
        cloth.bright,
        0.4,
      ),
    ],
  });
};

export const gloves = (piece: DrawnPiece, detail: Detail): Drawing =>
  pairOf(piece, detail, (garment, at, behind) => {
    knitHand(garment, at, HAND, behind ? 20 : -8, [
      pen(at(points('-4.1 -9.4, -3.4 -7.4, -3.6 -5.6')), 0.2, garment.cloth.ink, 0.7, 0.5),
    ]);
    ribbedCuff(garment, at, 4.1, 6.4);
  });

export const leatherGloves = (piece: DrawnPiece, detail: Detail): Drawing =>
  pairOf(piece, detail, (garment, at, behind) => {
    const { cloth, small } = garment;
    garment.panel(
      at(points(HAND.replace('-4.2 0.4!', '-4.9 4.6!, -4.2 0').replace('4.2 0.4!', '4.2 0, 4.9 4.4!, 0 5.2'))),
      {
        edge: 0.6,
        wobble: 0.04,
        turn: behind ? 20 : -8,
        cast: 0.3,
        inner: [
          garment.plane(at(points('-2.2 -2, -2.6 -8, -3 -14')), 1.1, cloth.bright, 0.6 * cloth.sheen),
          garment.plane(at(points('3.6 2, 3.8 -5, 4.6 -11')), 1, cloth.ink, 0.6),
          // three points: the raised lines on the back of the hand
          ...[
            ['-1.9 -11.4, -1.5 -8, -1.2 -4.6'],
            ['0.6 -11.2, 0.5 -8, 0.4 -4.6'],
            ['2.9 -10.4, 2.4 -7.6, 1.9 -4.6'],
          ].map(([n]) => pen(at(points(n ?? '')), 0.26, cloth.ink, 0.9, 0.5)),
          ...(small
            ? []
            : [
                ['-1.6 -11.2, -1.2 -8, -0.9 -4.8'],
                ['0.9 -11, 0.8 -8, 0.7 -4.8'],
                ['3.2 -10.2, 2.7 -7.6, 2.2 -4.8'],
              ].map(([n]) => line(at(points(n ?? '')), 0.1, cloth.bright, 0.7))),
          garment.fold(at(points('-4.4 -5, -2.8 -6.4, -2.4 -8.6')), 0.9, 0.9),
          ...(small
            ? []
            : ['-3.9 -13.2, -2.1 -13.4', '-1.3 -14, 0.9 -14', '1.4 -13.4, 3.4 -13.2'].map((n) =>
                garment.fold(at(points(n)), 0.4, 0.7),
              )),
          line(at(points('-4.3 -0.6, 0 -1.2, 4.3 -0.7')), 0.16, cloth.ink, 0.7, [0.5, 0.3]),
          line(at(points('-4.8 3.7, 0 4.3, 4.8 3.5')), 0.12, cloth.bright, 0.7, [0.4, 0.3]),
        ],
      },
    );
    if (small) return;
    const button = at(points('0.2 1.6'))[0];
    const slit = at(points('0 4.8, 0.1 2.2'));
    garment.add(pen(slit, 0.34, cloth.ink, 0.95, 0.3));
    if (button) garment.button(button[0], button[1], 0.42, tone(cloth.ground, 0.08));
  });

export const mittens = (piece: DrawnPiece, detail: Detail): Drawing =>
  pairOf(piece, detail, (garment, at, behind) => {
    const { cloth, small } = garment;
    const accent = cloth.accents[0];
    const star = (y: number): Painted[] => {
      if (!accent || small) return [];
      const row = Array.from({ length: 5 }, (_, i) => {
        const x = -3.2 + i * 1.7;
        return curvePath(at(points(`${x} ${y - 0.7}!, ${x + 0.6} ${y}!, ${x} ${y + 0.7}!, ${x - 0.6} ${y}!`)));
      }).join('');
      return [
        { path: row, fill: accent },
        line(at(points(`-5 ${y - 1.3}, 0 ${y - 1.4}, 5.4 ${y - 1.3}`)), 0.3, accent),
        line(at(points(`-5 ${y + 1.3}, 0 ${y + 1.2}, 5.4 ${y + 1.3}`)), 0.3, accent),
      ];
    };
    knitHand(garment, at, MITTEN, behind ? 20 : -8, [
      ...star(-6.4),
      pen(at(points('-4.2 -9, -3.6 -7, -3.8 -5.4')), 0.22, cloth.ink, 0.8, 0.5),
      pen(at(points('-0.6 -19, -0.2 -17.6, -0.2 -16')), 0.16, cloth.ink, 0.5, 0.4),
    ]);
    ribbedCuff(garment, at, 4.5, 6);
  });
