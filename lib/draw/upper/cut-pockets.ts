import { corner, type Garment, type Node, pen, stitch } from '../kit/index.ts';
import { zip } from './closures.ts';
import type { Side } from './sleeve-frame.ts';
/** A flap over a cut pocket, as on jackets and coats. */
export const flapPocket = (garment: Garment, x: number, y: number, width: number, height: number, side: Side): void => {
  const { cloth } = garment;
  const w = width / 2;
  const lean = side * 0.4;
  if (!garment.small)
    garment.add(
      garment.plane(
        [
          [x - w, y + height],
          [x, y + height + 0.8],
          [x + w, y + height - 0.2],
        ],
        1,
        cloth.ink,
        0.42,
      ),
    );
  garment.panel(
    [
      corner(x - w, y + lean),
      corner(x + w, y - lean),
      corner(x + w - 0.2, y + height - lean),
      [x, y + height + 0.1],
      corner(x - w + 0.2, y + height + lean),
    ],
    {
      covers: false,
      loose: true,
      edge: 0.45,
      shift: [side * 1.3, 0],
      cast: 0.55,
      wobble: 0.08,
    },
  );
  garment.add(
    pen(
      [
        [x - w - 0.4, y + lean - 0.1],
        [x, y - 0.1],
        [x + w + 0.4, y - lean - 0.1],
      ],
      0.36,
      cloth.ink,
      0.85,
      0.5,
    ),
  );
};

/** A slanting welt: coats, rain jackets. */
export const weltPocket = (
  garment: Garment,
  x: number,
  y: number,
  length: number,
  width: number,
  lean: number,
): void => {
  const angle = (lean * Math.PI) / 180;
  const [ux, uy] = [Math.sin(angle), Math.cos(angle)];
  const at = (along: number, across: number): readonly [number, number] => [
    x + ux * along + uy * across,
    y + uy * along - ux * across,
  ];
  const half = length / 2;
  const w = width / 2;
  const node = (along: number, across: number): Node => corner(...at(along, across));
  garment.panel([node(-half, -w), node(-half, w), node(half, w), node(half, -w)], {
    covers: false,
    loose: true,
    edge: 0.4,
    wobble: 0.06,
    cast: 0.4,
    turn: -lean,
    inner: garment.small ? [] : [stitch([at(-half + 0.3, -w + 0.5), at(half - 0.3, -w + 0.5)], garment.cloth.ink, 0.6)],
  });
};

/** A breast welt, level but for a slight rise outwards. */
export const breastWelt = (garment: Garment, x: number, y: number, width = 10): void => {
  const w = width / 2;
  garment.panel([corner(x - w, y + 0.5), corner(x + w, y - 0.5), corner(x + w, y + 1.7), corner(x - w, y + 2.6)], {
    covers: false,
    loose: true,
    edge: 0.4,
    wobble: 0.05,
    cast: 0.3,
  });
};

/** A zipped pocket along a leaning line. */
export const zipPocket = (
  garment: Garment,
  x: number,
  y: number,
  length: number,
  lean: number,
  metal?: string,
): void => {
  const angle = (lean * Math.PI) / 180;
  const [dx, dy] = [(Math.sin(angle) * length) / 2, (Math.cos(angle) * length) / 2];
  zip(
    garment,
    [
      [x - dx, y - dy],
      [x, y],
      [x + dx, y + dy],
    ],
    { width: 0.7, pull: 0.4, ...(metal !== undefined && { metal }) },
  );
};
