import type { Cloth } from '../fabric/index.ts';
import { type Garment, lerp, type Node, pen, tone } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';
import type { TailoredDesign } from './tailored.ts';

/** How far each front stands from the middle at the break, centimetres. */
const AT_BREAK = { 1: 3.6, [-1]: -2.4 } as const;
/** How far each front swings outwards for every centimetre below it. */
const SWING = { 1: 0.165, [-1]: -0.04 } as const;

/** Where the edge of a front lies at a height when one side is laid open. */
export const openEdge =
  (breakY: number, side: 1 | -1) =>
  (y: number): number =>
    AT_BREAK[side] + SWING[side] * Math.max(0, y - breakY);

/** The lining down to its hem, the cloth turned up below it, and the pleat in the middle of the back. */
export const openInside = (garment: Garment, shape: UpperShape, breakY: number, lining: Cloth): void => {
  const half = shape.neck / 2;
  const { length } = shape;
  const [left, right] = [openEdge(breakY, -1), openEdge(breakY, 1)];
  const back = (low: number): Node[] => [
    [-half - 0.4, -0.4, 'corner'],
    [0, -3.4],
    [half + 0.4, -0.4, 'corner'],
    [right(breakY) + 3, breakY],
    [right(low) + 3, low, 'corner'],
    [lerp(left(low), right(low), 0.4), low + 0.7],
    [left(low) - 3, low, 'corner'],
    [left(breakY) - 3, breakY],
  ];
  const hem = Math.min(4.2, length * 0.05);
  garment.inside(back(length - 0.4), { fill: garment.cloth.shade });
  garment.inside(back(length - hem), { fill: lining.ground, label: [0, 1.4] });
  const down = (share: number, from: number): Node[] =>
    [from, lerp(from, length, 0.5), length - hem].map((y): Node => [lerp(left(y), right(y), share), y]);
  garment.add(
    garment.fold(down(0.3, 5), 1.9, 0.8, 0.4, lining),
    garment.fold(down(0.62, 8), -2.1, 0.75, 0.5, lining),
    garment.fold(down(0.86, breakY), 1.4, 0.6, 0.5, lining),
    pen([...down(0.46, 3)], 0.24, lining.ink, 0.6, 0.5),
    garment.plane(down(0.2, breakY), 1.6, lining.bright, 0.4),
    // shade of the cloth that lies over the lining
    garment.plane(
      down(0, breakY).map(([x, y]): Node => [x + 0.8, y]),
      1.5,
      lining.ink,
      0.4,
    ),
  );
};

/** Buttons along the edge of the open front, their holes along the other. */
export const openButtons = (
  garment: Garment,
  shape: UpperShape,
  breakY: number,
  buttons: NonNullable<TailoredDesign['buttons']>,
): void => {
  const { cloth } = garment;
  const colour = buttons.colour ?? tone(cloth.ground, cloth.depth === 0.75 ? 0.12 : -0.22, 0.7);
  const [left, right] = [openEdge(breakY, -1), openEdge(breakY, 1)];
  for (let i = 0; i < buttons.count; i++) {
    const y = buttons.from + i * buttons.gap;
    if (y > shape.length - 5) break;
    garment.button(right(y) + 2.6 + garment.jitter(0.08), y, buttons.radius, colour);
    if (garment.small) continue;
    const hole: Node[] = [
      [left(y) - 1.4, y],
      [left(y) - 1.4 - buttons.radius * 1.8, y + 0.1],
    ];
    garment.add(pen(hole, 0.26, cloth.ink, 0.75));
  }
};
