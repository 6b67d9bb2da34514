import { alongEdge } from '../kit/edges.ts';
import { corner, group, linesBetween, type Node, type Painted, stitch } from '../kit/index.ts';
import type { Leg } from './leg.ts';
import { seamPen } from './seam-pen.ts';
import type { Trousers } from './trousers.ts';

/** Corners of the last `height` centimetres of a leg, from the inside leg out, and back along the hem. */
const legEnd = ({ measures: { length } }: Trousers, leg: Leg, height: number, grow: number, drop = 0): Node[] => {
  const top = length - height;
  const x = (edge: 'inner' | 'outer', y: number, by: number) => leg[edge](y) + leg.side * by;
  const middle = (y: number) => (leg.inner(y) + leg.outer(y)) / 2;
  return [
    corner(x('inner', top, -grow), top + 0.3),
    [middle(top), top + 0.9],
    corner(x('outer', top, grow), top - 0.3),
    corner(x('outer', length, grow), length - 0.3 + drop),
    [middle(length), length + 1 + drop],
    corner(x('inner', length, -grow), length + 0.4 + drop),
  ];
};

/** A turned-up hem, a little wider than the leg. */
export const turnUp = (trousers: Trousers, leg: Leg, height: number): void => {
  const { garment } = trousers;
  const nodes = legEnd(trousers, leg, height, 0.25);
  const inner = nodes[0] ?? [0, 0];
  const outer = nodes[2] ?? [0, 0];
  garment.panel(nodes, {
    edge: 0.45,
    cast: 0.7,
    wobble: 0.06,
    turn: leg.side * -2,
    shift: [leg.side * 2.1, 1.1],
    round: leg.side === 1 ? { from: [inner[0], 0], to: [outer[0], 0] } : { from: [outer[0], 0], to: [inner[0], 0] },
  });
  if (garment.small) garment.add(seamPen(garment, nodes.slice(0, 3), 0.4));
};

/** A knitted cuff that gathers the leg; the leg puffs out above it. */
export const ribCuff = (trousers: Trousers, leg: Leg, height: number): void => {
  const { garment, measures } = trousers;
  const { ink, bright } = garment.cloth;
  const { length } = measures;
  const top = length - height;
  const nodes = legEnd(trousers, leg, height, -1.6);
  const inner = nodes[0] ?? [0, 0];
  const outer = nodes[2] ?? [0, 0];
  const ribs = garment.small ? 5 : 13;
  const column = (edge: 'inner' | 'outer', aside: number): Node[] =>
    alongEdge(leg[edge], top - 0.5, length + 1, aside, 2);
  const [a, b] = [column('inner', leg.side * 1.6), column('outer', -leg.side * 1.6)];
  const light = (nodes: Node[]): Node[] => nodes.map(([x, y]) => [x + 0.3, y]);
  garment.panel(nodes, {
    edge: 0.5,
    cast: 0.5,
    wobble: 0.06,
    weave: false,
    round: leg.side === 1 ? { from: [inner[0], 0], to: [outer[0], 0] } : { from: [outer[0], 0], to: [inner[0], 0] },
    inner: [
      linesBetween(a, b, ribs, 0.22, ink, 0.34),
      ...(garment.small ? [] : [linesBetween(light(a), light(b), ribs, 0.18, bright, 0.5)]),
    ],
  });
};

/** The fold lines a gathered cuff sends up the leg. */
export const gathers = (trousers: Trousers, leg: Leg, height: number): Painted => {
  const { garment, measures } = trousers;
  const end = measures.length - height;
  return group(
    [0.2, 0.45, 0.7, 0.88].map((share, i) => {
      const x = (y: number) => leg.at(share + garment.jitter(0.03))(y);
      return garment.fold(
        [
          [x(end), end + 0.5],
          [x(end - 5), end - 5],
          [x(end - 9), end - 8 - (i % 2) * 5],
        ],
        1.1 * (i % 2 ? 1 : -1),
        0.75,
      );
    }),
  );
};

/** A short slit at the side of the hem. */
export const hemSlit = ({ garment, measures: { length } }: Trousers, leg: Leg, height: number): Painted => {
  const edge = alongEdge(leg.outer, length - height, length + 1, -leg.side * 1.4, 2);
  return group([
    seamPen(garment, edge, 0.5, 0.85, 0.75),
    ...(garment.small
      ? []
      : [stitch(alongEdge(leg.outer, length - height - 0.6, length, -leg.side * 2.1, 2), garment.cloth.ink, 0.5)]),
  ]);
};
