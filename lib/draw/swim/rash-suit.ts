import type { DrawKind, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import {
  clampLength,
  corner,
  type DrawnLength,
  Garment,
  lerp,
  line,
  mirrored,
  type Node,
  reversed,
  tone,
} from '../kit/index.ts';
import { frontZip } from '../upper/closures.ts';
import type { UpperShape } from '../upper/shape.ts';
import { drawSleeve } from '../upper/sleeve.ts';
import { standCollar } from '../upper/stand-collars.ts';
import { elasticEdge, legOpening, stretchShade } from './stretch.ts';

/** Length of a rash suit from the shoulder to the fork. */
export const rashSuitLength = (piece: Pick<DrawnPiece, 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, 72, 60, 88);

const RASH: UpperShape = {
  chest: 41,
  waist: 35,
  hem: 40,
  length: 72,
  shoulder: 36,
  slope: 4.6,
  armhole: 20.5,
  neck: 13,
  neckDepth: 3,
  hemDip: 0,
  blouse: 0,
  sleeve: { length: 57, elbow: 12.5, cuff: 8, upper: 20, fore: 9 },
};

/** A rash suit: long sleeves, a zip at the front, panels in the second colour, cut like a swimsuit below. */
export const rashSuit: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const fork = rashSuitLength(piece).cm;
  const shape = { ...RASH, length: fork };
  const trim = plainCloth(
    garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.16 : -0.14),
    'swim',
    detail,
  );
  const [hip, gusset, cut] = [20, 4.4, fork - 12];
  garment.inside([corner(-7, 0.2), [0, -2], corner(7, 0.2), corner(0, 4)], { label: [0, -1] });
  for (const side of [-1, 1] as const) drawSleeve(garment, shape, side, { cuff: 'hem', cloth: trim, folds: 0.7 });
  const right: Node[] = [
    corner(6.5, 0),
    [12, 2.2],
    corner(18, 4.6),
    [16.6, 11],
    corner(20.5, 20.5),
    [18.4, 31],
    [17.4, lerp(20, fork, 0.42)],
    [19.4, lerp(20, fork, 0.68)],
    ...legOpening(hip, cut, fork, gusset),
  ];
  garment.panel([corner(-6.5, 0), [0, 2.8], ...right, [0, fork + 0.8], ...reversed(mirrored(right)).slice(0, -1)], {
    cast: 0.4,
    round: { from: [-20, 0], to: [20, 0], strength: 1 },
    inner: [
      ...stretchShade(garment, 18, 20, fork),
      ...([1, -1] as const).flatMap((side) => [
        ...raglan(garment, side, trim.ground),
        ...sidePanel(garment, side, trim.ground, fork),
        ...elasticEdge(
          garment,
          legOpening(hip, cut, fork, gusset).map(([x, y]): Node => [side * x, y]),
          [-0.6, -0.8],
        ),
      ]),
    ],
  });
  frontZip(garment, 2.4, 30);
  standCollar(garment, shape, 4);
  return garment
    .anchor('neck', [0, 0])
    .anchor('left shoulder', [-18, 4.6])
    .anchor('right shoulder', [18, 4.6])
    .anchor('waist', [0, lerp(20, fork, 0.42)])
    .anchor('fork', [0, fork])
    .anchor('hem', [0, fork])
    .finish();
};

/** The shoulder in the colour of the sleeve, cut off by a slanting seam with flat stitching. */
const raglan = (garment: Garment, side: 1 | -1, colour: string) => {
  const seam: Node[] = [
    [side * 6.6, -0.4],
    [side * 10.8, 8.4],
    [side * 15.4, 16],
    [side * 20.9, 20.8],
  ];
  return [
    { path: pathOf([...seam, [side * 26, 18], [side * 20, -1]]), fill: colour },
    line(seam, 0.5, garment.cloth.ink, 0.55),
    ...(garment.small
      ? []
      : [
          line(
            seam.map(([x, y]): Node => [x - side * 0.6, y + 0.3]),
            0.2,
            garment.cloth.bright,
            0.7,
            [0.3, 0.22],
          ),
        ]),
  ];
};

const pathOf = (nodes: readonly Node[]): string => `M${nodes.map(([x, y]) => `${x} ${y}`).join('L')}Z`;

const sidePanel = (garment: Garment, side: 1 | -1, colour: string, fork: number) => {
  const seam: Node[] = [
    [side * 19.6, 20],
    [side * 15.2, 34],
    [side * 14.8, lerp(20, fork, 0.5)],
    [side * 18.4, fork - 10],
  ];
  return [
    { path: pathOf([...seam, [side * 26, fork - 8], [side * 26, 20]]), fill: colour, opacity: 0.95 },
    line(seam, 0.4, garment.cloth.ink, 0.5),
    garment.plane(
      seam.map(([x, y]): Node => [x + side * 3.4, y]),
      1.6,
      garment.cloth.ink,
      0.35,
    ),
  ];
};
