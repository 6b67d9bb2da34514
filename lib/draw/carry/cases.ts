import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { corner, curvePath, Garment, line, mirrored, type Node, pen, stitch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { buckle, frame, metalOf, plate, strap } from './parts.ts';

export const satchel = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  strap(garment, points('-6 0.6, -6 -3.4, -3.6 -6, 0 -6.6, 3.6 -6, 6 -3.4, 6 0.6'), 1.9, { rolled: true });
  for (const side of [-1, 1])
    garment.panel(
      [corner(side * 15.4, 3), [side * 18, 4.6], [side * 18.4, 14], corner(side * 17.4, 25), corner(side * 15.4, 26.4)],
      { edge: 0.5, fill: cloth.shade },
    );
  garment.panel(points('-17 1.4!, 0 0.4, 17 1.4!, 17.2 14, 16.2 25.6, 14 27, -14 27, -16.2 25.6, -17.2 14'), {
    round: { from: [-17, 4], to: [17, 10], strength: 0.5 },
    inner: [
      stitch(points('-15.8 19, -15 24.8, -13.4 25.8, 13.4 25.8, 15 24.8, 15.8 19'), cloth.ink, 0.7),
      garment.plane(points('-13 24, 0 24.8, 12 24'), 1, cloth.bright, 0.4),
    ],
  });
  garment.panel(points('-17.4 0.8!, 0 -0.6, 17.4 0.8!, 17.6 9, 16 16, 11 17.6, 0 18.2, -11 17.6, -16 16, -17.6 9'), {
    covers: false,
    cast: 0.6,
    round: { from: [-17.4, 3], to: [17.4, 8], strength: 0.5 },
    inner: [
      garment.plane(points('-13 4, -4 3, 6 3.8'), 1.7, cloth.bright, 0.42 * cloth.sheen),
      stitch(
        points('-16.6 2, -16.8 9, -15.2 15.4, -10.6 16.8, 0 17.3, 10.6 16.8, 15.2 15.4, 16.8 9, 16.6 2'),
        cloth.ink,
        0.7,
      ),
      garment.fold(points('15.6 2.6, 12 5.4, 10.6 10'), -1.6, 0.45),
    ],
  });
  for (const x of [-9.6, 9.6]) {
    garment.panel([corner(x - 1.3, 2.6), corner(x + 1.3, 2.6), [x + 1.3, 21.4], [x, 23], [x - 1.3, 21.4]], {
      covers: false,
      edge: 0.3,
      cast: 0.35,
      wobble: 0.05,
    });
    garment.add(buckle([x, 17.8], 3.4, 2.6, metal));
    if (!garment.small)
      garment.add(
        stitch(
          [
            [x - 0.9, 3],
            [x - 0.9, 15.8],
          ],
          cloth.ink,
          0.7,
        ),
        stitch(
          [
            [x + 0.9, 3],
            [x + 0.9, 15.8],
          ],
          cloth.ink,
          0.7,
        ),
      );
  }
  for (const x of [-6, 6]) garment.add(frame([x, 0.8], 2.6, 1.3, metal));
  return garment.anchor('handle', [0, -6.6]).anchor('base', [0, 27]).finish();
};

export const briefcase = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  strap(garment, points('-5.8 0.4, -5.6 -3, -3 -4.6, 0 -4.9, 3 -4.6, 5.6 -3, 5.8 0.4'), 2, { rolled: true });
  garment.panel(points('-20 0.8!, 0 0, 20 0.8!, 20.2 14, 19.8 27.6, 18.4 29, -18.4 29, -19.8 27.6, -20.2 14'), {
    round: { from: [-20, 4], to: [20, 10], strength: 0.5 },
    inner: [
      garment.plane(points('-14 22, -6 24, 4 23.4'), 2, cloth.bright, 0.4 * cloth.sheen),
      garment.fold(points('18.4 27, 13 25, 7 25.4'), 1.7, 0.4),
      stitch(points('-19.2 16, -18.8 26.8, -17.8 28, 17.8 28, 18.8 26.8, 19.2 16'), cloth.ink, 0.7),
      line(points('-20.2 15.6, 20.2 15.6'), 0.2, cloth.ink, 0.8),
    ],
  });
  garment.panel(
    points(
      '-20.2 0.6!, 0 -0.4, 20.2 0.6!, 20.4 12.4!, 19 13.6, 6 13.8, 4.4 15.4, 3.4 17.2, -3.4 17.2, -4.4 15.4, -6 13.8, -19 13.6, -20.4 12.4!',
    ),
    {
      covers: false,
      cast: 0.55,
      round: { from: [-20, 3], to: [20, 8], strength: 0.5 },
      inner: [
        garment.plane(points('-15 4, -4 3, 8 4'), 1.9, cloth.bright, 0.42 * cloth.sheen),
        stitch(
          points(
            '-19.6 2, -19.6 12, -18.6 12.8, -6.4 12.9, -3.6 14.6, -2.8 16.4, 2.8 16.4, 3.6 14.6, 6.4 12.9, 18.6 12.8, 19.6 12, 19.6 2',
          ),
          cloth.ink,
          0.7,
        ),
      ],
    },
  );
  garment.add(plate([0, 15], 3.6, 3, metal), line(points('0 14.4, 0 15.8'), 0.4, tone(metal, -0.34)));
  for (const x of [-5.8, 5.8]) garment.add(plate([x, 0.9], 2.8, 1.5, metal));
  if (!garment.small)
    for (const side of [-1, 1]) {
      const nodes: Node[] = points('19.8 23.6, 17 24.4, 16.4 28.6');
      garment.add(
        pen(side < 0 ? mirrored(nodes) : nodes, 0.22, cloth.ink, 0.7, 0.5),
        stitch(curvePath(side < 0 ? mirrored(nodes) : nodes, false), cloth.bright, 0.4),
      );
    }
  return garment.anchor('handle', [0, -4.9]).anchor('base', [0, 29]).finish();
};
