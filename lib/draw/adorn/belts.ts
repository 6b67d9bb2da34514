import { BRASS, STEEL, wire } from '../carry/parts.ts';
import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import { curvePath, Garment, line, type Node, stitch, tone } from '../kit/index.ts';

/** Height of the strap, centimetres. */
const BREADTH = 3.2;

/** Coiled and stood on its edge, seen a little from above. */
export const belt = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const metal = cloth.accents[0] ?? (cloth.surface === 'leather' ? BRASS : STEEL);
  // One and three quarter turns, from the buckle outside to the tip inside; 0 degrees is to the right, 90 to the viewer.
  const at = (degrees: number, level: number): Point => {
    const turn = (degrees * Math.PI) / 180;
    const r = 7.4 - (degrees - 60) * 0.0042;
    return [r * Math.cos(turn), r * 0.42 * Math.sin(turn) - BREADTH * level];
  };
  const edge = (from: number, to: number, level: number): Node[] =>
    Array.from({ length: 13 }, (_, i) => [...at(from + ((to - from) * i) / 12, level)]);
  const wall = (from: number, to: number, inside: boolean): void => {
    const top = edge(from, to, 1);
    const low = edge(from, to, 0);
    const ends = (nodes: Node[]): Node[] =>
      nodes.map(([x, y], i): Node => [x, y, i === 0 || i === 12 ? 'corner' : undefined]);
    garment.panel([...ends(top), ...ends(low).reverse()], {
      edge: 0.3,
      wobble: 0.02,
      turn: inside ? 20 : -4,
      rim: false,
      ...(inside && { fill: tone(cloth.ground, -0.1, 0.9) }),
      inner: inside
        ? [garment.plane(edge(from + 14, to - 14, 0.5), 1.2, cloth.ink, 0.5)]
        : [
            garment.plane(edge(from + 8, from + (to - from) * 0.55, 0.62), 0.8, cloth.bright, 0.7 * cloth.sheen),
            garment.plane(edge(from + (to - from) * 0.7, to, 0.5), 1.3, cloth.ink, 0.5),
            ...(small
              ? []
              : [stitch(edge(from, to, 0.86), cloth.bright, 0.6), stitch(edge(from, to, 0.14), cloth.bright, 0.6)]),
          ],
    });
    garment.add(
      line(curvePath(top, false), 0.34, cloth.ink),
      line(curvePath(top, false), 0.2, inside ? cloth.light : cloth.bright),
    );
  };
  wall(180, 360, true);
  wall(545, 700, true);
  wall(360, 550, false);
  wall(66, 184, false);
  const buckleAt = at(62, 0.5);
  const [x, y] = buckleAt;
  const frame: Node[] = [
    [x - 0.6, y - 2.2, 'corner'],
    [x + 3, y - 2.5, 'corner'],
    [x + 3.1, y + 1.7, 'corner'],
    [x - 0.5, y + 2.2, 'corner'],
  ];
  garment.cover(frame);
  garment.add(
    wire(curvePath(frame), metal, 0.56),
    line(
      [
        [x - 0.4, y],
        [x + 3.2, y - 0.5],
      ],
      0.62,
      tone(metal, -0.3),
    ),
    line(
      [
        [x - 0.4, y],
        [x + 3.2, y - 0.5],
      ],
      0.38,
      metal,
    ),
  );
  const keeper = at(86, 0.5);
  garment.panel(
    [
      [keeper[0] - 0.55, keeper[1] - 1.9, 'corner'],
      [keeper[0] + 0.55, keeper[1] - 1.95, 'corner'],
      [keeper[0] + 0.55, keeper[1] + 1.8, 'corner'],
      [keeper[0] - 0.55, keeper[1] + 1.9, 'corner'],
    ],
    { covers: false, edge: 0.2, wobble: 0.02, cast: 0.2, rim: false },
  );
  return garment.finish();
};
