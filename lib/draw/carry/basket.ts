import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import { corner, curvePath, Garment, line, type Node, shape, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { dropOf } from './length.ts';
import { strap, trim } from './parts.ts';
import { hoop } from './totes.ts';

/** One woven stake after another, over and under, between two levels of the basket's wall. */
const weaveRow = (left: Point, right: Point, sag: number, height: number, count: number, odd: boolean): string => {
  let path = '';
  for (let i = odd ? 0 : 1; i < count; i += 2) {
    const at = (share: number, down: number): Point => {
      const bow = 4 * share * (1 - share) * sag;
      return [left[0] + (right[0] - left[0]) * share, left[1] + (right[1] - left[1]) * share + bow + down];
    };
    const [a, b] = [at((i + 0.08) / count, 0.1), at((i + 0.92) / count, 0.1)];
    const [c, d] = [at((i + 0.92) / count, height - 0.1), at((i + 0.08) / count, height - 0.1)];
    const mid = at((i + 0.5) / count, -0.16);
    const low = at((i + 0.5) / count, height + 0.16);
    const text = (p: Point): string => `${Math.round(p[0] * 100) / 100} ${Math.round(p[1] * 100) / 100}`;
    path += `M${text(a)}Q${text(mid)} ${text(b)}L${text(c)}Q${text(low)} ${text(d)}Z`;
  }
  return path;
};

export const basket = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const leather = trim(garment, '#7a4e2c');
  const drop = dropOf(piece);
  const [top, base, height] = [19.4, 13.6, 24];
  strap(garment, hoop(7.6, 1, drop, 1.8), 1.5, { cloth: leather, behind: true });
  garment.inside([corner(-top, 0.4), [-9, -2.4], [9, -2.5], corner(top, 0), [9, 3.6], [-9, 3.6]], {
    fill: tone(cloth.ground, -0.2),
  });
  const rows = small ? 8 : 14;
  const step = (height - 2.6) / rows;
  const half = (share: number): number => top - (top - base) * share ** 1.35;
  const strands = (odd: boolean): string =>
    Array.from({ length: rows }, (_, i) => {
      const share = i / rows;
      const y = 1.8 + i * step;
      const sag = 2.2 - share * 0.6;
      return weaveRow(
        [-half(share), y - 1.4],
        [half(share), y - 1.6],
        sag,
        step,
        small ? 11 : 19,
        (i % 2 === 0) === odd,
      );
    }).join('');
  garment.panel(
    [
      corner(-top, 0.4),
      [-9, 2.2],
      [9, 2.1],
      corner(top, 0),
      [17.6, 10],
      [15, 18.6],
      [base - 1, height],
      [0, height + 1.2],
      [-base + 1, height],
      [-15, 18.6],
      [-17.7, 10],
    ],
    {
      weave: false,
      edge: 1,
      inner: [
        shape(strands(true), cloth.bright, 0.42),
        shape(strands(false), cloth.deep, 0.34),
        line(strands(true), 0.09, cloth.ink, 0.3),
        garment.plane(points('-10 5, -8.6 14, -8.6 22'), 3, cloth.bright, 0.4),
        garment.plane(points('15.6 3, 13.6 13, 9 22'), 3, cloth.ink, 0.5),
        garment.plane(points('-10 22.6, 0 24, 10 22.6'), 2, cloth.ink, 0.45),
      ],
    },
  );
  // The braided rim.
  const rim: Node[] = [
    [-top, 0.2],
    [-9.6, 2.2],
    [0, 2.7],
    [9.6, 2.1],
    [top, -0.1],
  ];
  garment.add(line(rim, 1.9, cloth.ink, 0.9), line(rim, 1.6, cloth.ground));
  const ticks = Array.from({ length: small ? 14 : 30 }, (_, i) => {
    const share = (i + 0.5) / (small ? 14 : 30);
    const [x, y] = [-top + 2 * top * share, 0.1 + 4 * share * (1 - share) * 2.6];
    return curvePath(
      [
        [x - 0.5, y - 0.6],
        [x + 0.5, y + 0.6],
      ],
      false,
    );
  }).join('');
  garment.add(line(ticks, 0.2, cloth.ink, 0.6));
  strap(garment, hoop(7.8, 3.4, drop + 2.4, -1), 1.5, { cloth: leather, stitched: true });
  for (const x of [-7.8, 7.8])
    garment.panel([corner(x - 1.1, 1), corner(x + 1.1, 1), [x + 1.1, 6.6], [x, 7.8], [x - 1.1, 6.6]], {
      cloth: leather,
      covers: false,
      edge: 0.3,
      cast: 0.4,
    });
  return garment
    .anchor('handle', [0, -drop])
    .anchor('base', [0, height + 1])
    .finish();
};
