import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, ellipsePath, Garment, line, type Node, pen, tone } from '../kit/index.ts';
import { disc } from './earrings.ts';
import { bead, coverRing, hollow, metalShape, SMALL_JEWELLERY_SCALE as S, stone } from './metal.ts';
/** A band seen from above, with a stone or a flat seal. */
export const ring = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const metal = piece.fabric === 'pearl' ? '#c2a25e' : garment.cloth.ground;
  const gem = piece.fabric === 'pearl' ? garment.cloth.ground : garment.cloth.accents[0];
  const r = 1.08 * S;
  const outer = ellipsePath([0, 0.5], r, r * 0.96);
  coverRing(garment, [0, 0.5], [r, r * 0.96], [r * 0.82, r * 0.76]);
  garment.add(
    {
      path: hollow([0, 0.5], [r, r * 0.96], [r * 0.8, r * 0.74], 0, [0, -0.12]),
      evenOdd: true,
      fill: metal,
      stroke: tone(metal, -0.32),
      width: 0.12,
    },
    line(ellipsePath([0, 0.43], r * 0.86, r * 0.82), 0.1, tone(metal, -0.2), 0.7),
    pen(
      [
        [-r * 0.93, 0.2],
        [-r * 0.7, -r * 0.24],
        [-r * 0.3, -r * 0.4],
      ],
      0.22,
      tone(metal, 0.22),
      0.95,
      0.5,
    ),
    pen(
      [
        [r * 0.9, 0.9],
        [r * 0.5, 0.5 + r * 0.76],
        [-r * 0.3, 0.5 + r * 0.86],
      ],
      0.26,
      tone(metal, 0.2),
      0.85,
      0.5,
    ),
    line(outer, 0.05, tone(metal, -0.32)),
  );
  if (gem !== undefined) {
    garment.add(metalShape(ellipsePath([0, -r * 0.52], 0.66 * S, 0.54 * S), metal, 0.12));
    garment.add(
      piece.fabric === 'pearl'
        ? bead([0, -r * 0.56], 0.52 * S, gem, garment.small)
        : stone([0, -r * 0.54], 0.52 * S, gem),
    );
  } else {
    garment.add(
      metalShape(ellipsePath([0, -r * 0.5], 0.66 * S, 0.5 * S), metal, 0.13),
      line(ellipsePath([0, -r * 0.5], 0.5 * S, 0.36 * S), 0.08, tone(metal, -0.2)),
      pen(
        [
          [-0.6, -r * 0.62],
          [-0.1, -r * 0.74],
          [0.5, -r * 0.66],
        ],
        0.2,
        tone(metal, 0.2),
        0.9,
        0.5,
      ),
    );
  }
  disc(garment, [0, -r * 0.52], 0.66 * S);
  return garment.finish();
};

/** A flower with a stone at its heart, two leaves, the pin behind. */
export const brooch = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const metal = garment.cloth.ground;
  const heart = garment.cloth.accents[0] ?? '#efe6d2';
  const k = S * 0.72;
  const turn = (degrees: number, x: number, y: number): Node => {
    const a = (degrees * Math.PI) / 180;
    return [k * (x * Math.cos(a) - y * Math.sin(a)), k * (x * Math.sin(a) + y * Math.cos(a))];
  };
  garment.add(
    line(
      [
        [-2.9 * k, 2.2 * k],
        [2.6 * k, -2.5 * k],
      ],
      0.26,
      tone(metal, -0.3),
    ),
    line(
      [
        [-2.9 * k, 2.2 * k],
        [2.6 * k, -2.5 * k],
      ],
      0.14,
      metal,
    ),
  );
  for (const degrees of [128, 196]) {
    const leaf = [
      turn(degrees, 0, -0.8),
      turn(degrees, 0.75, -1.9),
      turn(degrees, 0, -3.5),
      turn(degrees, -0.75, -1.9),
    ].map(([x, y], i): Node => [x, y, i % 2 === 0 ? 'corner' : undefined]);
    garment.cover(leaf);
    garment.add(
      { path: curvePath(leaf), fill: tone(metal, -0.07), stroke: tone(metal, -0.32), width: 0.12, round: true },
      line([turn(degrees, 0, -1), turn(degrees, 0.04, -3)], 0.12, tone(metal, -0.3)),
      pen(
        [turn(degrees, -0.36, -1.5), turn(degrees, -0.4, -2.2), turn(degrees, -0.1, -3)],
        0.2,
        tone(metal, 0.2),
        0.8,
        0.5,
      ),
    );
  }
  for (let i = 0; i < 6; i++) {
    const degrees = i * 60 + 10;
    const petal: Node[] = [
      turn(degrees, 0, -0.3),
      turn(degrees, 0.95, -1.2),
      turn(degrees, 0.8, -2.3),
      turn(degrees, 0, -2.55),
      turn(degrees, -0.8, -2.3),
      turn(degrees, -0.95, -1.2),
    ];
    garment.cover(petal);
    const path = curvePath(petal);
    garment.add(
      { path, fill: metal, stroke: tone(metal, -0.32), width: 0.12, round: true },
      ...(garment.small
        ? []
        : [
            line([turn(degrees, 0, -0.9), turn(degrees, 0.05, -2.1)], 0.1, tone(metal, -0.24), 0.8),
            pen(
              [turn(degrees, -0.5, -1.2), turn(degrees, -0.55, -1.8), turn(degrees, -0.2, -2.3)],
              0.26,
              tone(metal, 0.2),
              0.85,
              0.5,
            ),
          ]),
    );
  }
  garment.add(metalShape(ellipsePath([0, 0], 0.98 * k), metal, 0.12), bead([0, 0], 0.78 * k, heart, garment.small));
  return garment.finish();
};
