import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import {
  curvePath,
  ellipsePath,
  Garment,
  group,
  line,
  type Node,
  offsetLine,
  type Painted,
  pen,
  shape,
  tone,
} from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { bead, metalShape, SMALL_JEWELLERY_SCALE as S, stone } from './metal.ts';

export const disc = (garment: Garment, at: Point, radius: number): void => {
  const [x, y] = at;
  garment.cover(
    Array.from(
      { length: 10 },
      (_, i): Node => [x + radius * Math.cos((i * Math.PI) / 5), y + radius * Math.sin((i * Math.PI) / 5)],
    ),
  );
};

/** One seen from the front, one turned so that post and butterfly show. */
export const studs = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const metal = garment.cloth.ground;
  const gem = garment.cloth.accents[0];
  const pearl = piece.fabric === 'pearl';
  const radius = 0.5 * S;
  const fitting = pearl ? '#c2a25e' : metal;
  const front = (at: Point): Painted => {
    if (pearl) return bead(at, radius, metal, garment.small);
    if (gem === undefined)
      return group([
        bead(at, radius, metal, garment.small),
        line(ellipsePath(at, radius * 0.98), 0.1, tone(metal, -0.3)),
      ]);
    const claws = [45, 135, 225, 315]
      .map((d) =>
        ellipsePath(
          [at[0] + Math.cos((d * Math.PI) / 180) * radius, at[1] + Math.sin((d * Math.PI) / 180) * radius],
          0.2,
        ),
      )
      .join('');
    return group([
      metalShape(ellipsePath(at, radius * 1.12), metal),
      stone(at, radius * 0.95, gem),
      metalShape(claws, metal, 0.08),
    ]);
  };
  const a: Point = [-1.5, 0.35];
  const b: Point = [1.35, -0.3];
  garment.add(
    line(
      [
        [b[0] + 0.2, b[1]],
        [b[0] + 2, b[1] - 0.5],
      ],
      0.3,
      tone(fitting, -0.26),
    ),
    line(
      [
        [b[0] + 0.2, b[1] - 0.02],
        [b[0] + 2, b[1] - 0.52],
      ],
      0.16,
      fitting,
    ),
    metalShape(
      ellipsePath([b[0] + 1.35, b[1] - 0.62], 0.34, 0.3, -15) + ellipsePath([b[0] + 1.55, b[1] - 0.05], 0.34, 0.3, -15),
      fitting,
      0.1,
    ),
    front(a),
    front(b),
  );
  disc(garment, a, radius * 1.1);
  disc(garment, b, radius * 1.1);
  disc(garment, [b[0] + 1.6, b[1] - 0.4], 0.5);
  return garment.finish();
};

/** A tube bent to a ring, thicker at the front, closed by a hinged post. */
const hoop = (garment: Garment, centre: Point, turn: number, squeeze: number): void => {
  const metal = garment.cloth.ground;
  const r = 1.75 * S;
  const run = Array.from({ length: 41 }, (_, i): Point => {
    const t = ((-74 + (330 * i) / 40) * Math.PI) / 180;
    const a = (turn * Math.PI) / 180;
    const [x, y] = [Math.cos(t) * r * squeeze, Math.sin(t) * r];
    return [centre[0] + x * Math.cos(a) - y * Math.sin(a), centre[1] + x * Math.sin(a) + y * Math.cos(a)];
  });
  const half = (t: number): number => 0.17 + 0.21 * Math.sin(Math.PI * t);
  const outer = offsetLine(run, (t) => -half(t));
  const inner = offsetLine(run, half);
  const body = [...outer.filter((_, i) => i % 2 === 0), ...inner.filter((_, i) => i % 2 === 0).reverse()].map(
    (p): Node => [p[0], p[1]],
  );
  garment.cover(body);
  const along = (share: number, from: number, to: number): Node[] =>
    offsetLine(run, (t) => half(t) * share)
      .slice(from, to)
      .filter((_, i) => i % 3 === 0)
      .map((p): Node => [p[0], p[1]]);
  const path = curvePath(body);
  const start = run[0] ?? centre;
  const end = run[40] ?? centre;
  garment.add(
    line(
      [
        [start[0], start[1]],
        [end[0], end[1]],
      ],
      0.24,
      tone(metal, -0.28),
    ),
    line(
      [
        [start[0], start[1]],
        [end[0], end[1]],
      ],
      0.12,
      tone(metal, 0.1),
    ),
    { path, fill: metal, stroke: tone(metal, -0.32), width: 0.13, round: true },
    pen(along(0.5, 3, 38), 0.3, tone(metal, -0.2), 0.75, 0.5),
    pen(along(-0.35, 4, 22), 0.3, tone(metal, 0.2), 0.95, 0.5),
    pen(along(0.6, 22, 38), 0.22, tone(metal, 0.22), 0.9, 0.5),
    shape(ellipsePath(end, 0.3), metal),
    line(ellipsePath(end, 0.3), 0.1, tone(metal, -0.3)),
  );
};

export const hoops = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  hoop(garment, [2.9, -0.8], 16, 0.8);
  hoop(garment, [-2.7, 0.6], -10, 0.92);
  return garment.finish();
};

/** A hook, a small stud and a long drop. */
export const drops = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const pearl = piece.fabric === 'pearl';
  const metal = pearl ? '#c2a25e' : garment.cloth.ground;
  const gem = pearl ? garment.cloth.ground : garment.cloth.accents[0];
  const one = (x: number, y: number, lean: number): void => {
    const at = (u: number, v: number): Point => [x + u * S + lean * v, y + v * S];
    const nodes = (text: string): Node[] => points(text).map(([u, v, c]): Node => [...at(u, v), c]);
    const hook = nodes('0.1 -0.1, 0.1 -0.9, 0.55 -1.45, 1 -1.1, 1.05 -0.3');
    garment.add(line(hook, 0.3, tone(metal, -0.28)), line(hook, 0.16, tone(metal, 0.06)));
    garment.add(bead(at(0.1, 0.15), 0.24 * S, metal, garment.small));
    garment.add(line(nodes('0.1 0.36, 0.1 0.66'), 0.2, tone(metal, -0.2)));
    const drop = nodes('0.1 0.55!, 0.34 1.15, 0.72 1.95, 0.6 2.65, 0.1 2.95, -0.4 2.65, -0.52 1.95, -0.14 1.15');
    const colour = gem ?? metal;
    const path = curvePath(drop);
    garment.cover(drop);
    garment.cover(nodes('-0.2 -0.2!, 0.1 -1.4, 1 -1.4!, 0.4 0!'));
    garment.add(
      { path, fill: colour, stroke: tone(colour, -0.32), width: 0.14, round: true },
      group(
        [
          pen(nodes('0.42 1.3, 0.62 2, 0.36 2.72'), 0.7, tone(colour, -0.16), 0.6, 0.6),
          pen(nodes('-0.02 1, -0.26 1.8, -0.2 2.4'), 0.42, tone(colour, 0.2), 0.9, 0.5),
          shape(ellipsePath(at(-0.18, 2.1), 0.16, 0.3), '#ffffff', 0.7),
        ],
        { clip: path },
      ),
    );
    if (gem !== undefined) garment.add(line(path, 0.26, tone(metal, -0.3)), line(path, 0.16, metal));
  };
  one(2.2, -0.5, -0.08);
  one(-2.2, 0.3, 0.1);
  return garment.finish();
};
