import type { DrawKind } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { type Garment, type Node, pen, stitch, tone } from '../kit/index.ts';
import { belt, drawcord, epaulette } from './belts.ts';
import { halfWidthAt } from './body.ts';
import { type ButtonedDesign, drawButtoned } from './buttoned.ts';
import { drawCape } from './cape.ts';
import { frontZip, placket, toggle } from './closures.ts';
import { flatCollar, hoodBack, hoodFront, standCollar } from './collars.ts';
import { flapPocket, patchPocket, seamLine, weltPocket, zipPocket } from './pockets.ts';
import type { UpperShape } from './shape.ts';
import { drawTailored, type TailoredDesign } from './tailored.ts';

const buttoned =
  (design: ButtonedDesign): DrawKind =>
  (piece, detail) =>
    drawButtoned(piece, detail, design);
const tailored =
  (design: TailoredDesign): DrawKind =>
  (piece, detail) =>
    drawTailored(piece, detail, design);

const COAT: UpperShape = {
  chest: 55,
  waist: 55,
  hem: 67,
  length: 110,
  shoulder: 44,
  slope: 4.6,
  armhole: 25,
  neck: 17,
  neckDepth: 30,
  hemDip: 1.8,
  blouse: 0,
  sleeve: { length: 62, elbow: 18, cuff: 14.5, upper: 18, fore: 5 },
};

const JACKET: UpperShape = {
  ...COAT,
  chest: 56,
  waist: 55.5,
  hem: 56.5,
  length: 71,
  shoulder: 46,
  slope: 5,
  armhole: 25.5,
  neck: 16.5,
  neckDepth: 7,
  hemDip: 0.6,
  sleeve: { length: 60, elbow: 18, cuff: 12, upper: 22, fore: 8 },
};

const HORN = '#a97b4a';

/** A flap over the zip, closed by snaps. */
const stormFlap = (
  garment: Garment,
  shape: UpperShape,
  width: number,
  snaps: number,
  until = shape.length - 1,
): void => {
  placket(garment, shape, {
    width,
    buttons: snaps,
    radius: 0.6,
    colour: garment.cloth.deep,
    until,
    from: shape.neckDepth - 3,
  });
};

const yoke = (garment: Garment, shape: UpperShape, y: number, dip = 1.4): void => {
  const half = Math.min(shape.shoulder, shape.chest) / 2 - 0.6;
  const run: Node[] = [
    [-half, y],
    [0, y + dip],
    [half, y],
  ];
  garment.add(
    seamLine(garment, run, 0.7),
    ...(garment.small
      ? []
      : [
          stitch(
            run.map(([x, at]): Node => [x, at + 0.7]),
            garment.cloth.ink,
            0.5,
          ),
        ]),
  );
};

const doubleRows = (garment: Garment, ys: readonly number[], x: number, spread: number, colour: string): void => {
  ys.forEach((y, i) => {
    const away = x + (i === 0 ? spread : 0);
    for (const side of [-1, 1]) garment.button(side * away + garment.jitter(0.08), y, 1.3, colour);
  });
};

export const COATS = {
  'wool coat': tailored({
    usual: COAT,
    lapel: { style: 'notch', breakY: 40, width: 9.6 },
    breakY: 40,
    overlap: 5.6,
    cutaway: 0,
    buttons: { rows: [-1.8], from: 44, gap: 15, count: 3, radius: 1.35 },
    pockets: 'flap',
    pocketY: 63,
    cuffButtons: 3,
    stitched: true,
  }),
  'wrap coat': tailored({
    usual: {
      ...COAT,
      chest: 58,
      waist: 54,
      hem: 70,
      length: 112,
      shoulder: 47,
      slope: 5.2,
      armhole: 27,
      sleeve: { length: 60, elbow: 20, cuff: 17, upper: 19, fore: 6 },
    },
    lapel: { style: 'shawl', breakY: 46, width: 13 },
    breakY: 46,
    overlap: 11,
    cutaway: 0,
    pockets: 'welt',
    pocketY: 58,
    darts: false,
    sleeve: { cuff: 'turned', cuffHeight: 9 },
    front: (garment, shape) => belt(garment, shape, Math.min(48, shape.length - 12), 5, 'tied'),
  }),
  'short coat': tailored({
    usual: { ...COAT, chest: 56, waist: 55, hem: 59, length: 76, neckDepth: 22 },
    lapel: { style: 'notch', breakY: 27, width: 8 },
    breakY: 27,
    overlap: 4.6,
    cutaway: 0,
    buttons: { rows: [-1.2], from: 30, gap: 12.5, count: 4, radius: 1.25 },
    pockets: 'patch',
    pocketY: 49,
    darts: false,
    cuffButtons: 0,
    sleeve: { cuff: 'tab' },
    stitched: true,
  }),
  'pea coat': tailored({
    usual: { ...COAT, chest: 56, waist: 54, hem: 58, length: 77, shoulder: 45 },
    lapel: { style: 'peak', breakY: 27, width: 12.4 },
    breakY: 27,
    overlap: 10,
    cutaway: 0,
    pockets: 'welt',
    pocketY: 46,
    darts: false,
    stitched: true,
    front: (garment) =>
      doubleRows(
        garment,
        [33, 46, 59],
        7.4,
        0,
        tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.14 : -0.26, 0.7),
      ),
  }),
  'duffle coat': buttoned({
    usual: {
      ...COAT,
      chest: 58,
      waist: 59,
      hem: 67,
      length: 97,
      shoulder: 47,
      neck: 18,
      neckDepth: 9,
      sleeve: { length: 60, elbow: 20, cuff: 15.5, upper: 20, fore: 7 },
    },
    sleeve: { cuff: 'tab' },
    hem: 'stitched',
    beneath: (garment, shape) => hoodBack(garment, shape, 1.04),
    front: (garment, shape) => {
      yoke(garment, shape, 17);
      garment.add(
        pen(
          [
            [3.4, shape.neckDepth],
            [3.8, shape.length * 0.5],
            [3.6, shape.length],
          ],
          0.4,
          garment.cloth.ink,
          0.75,
          0.5,
        ),
      );
      for (const side of [-1, 1]) patchPocket(garment, side * shape.hem * 0.27, 57, { width: 17, height: 19, flap: 5 });
      for (let i = 0; i < 4; i++) toggle(garment, 21 + i * 12, HORN);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 1.04 }),
  }),
  'trench coat': tailored({
    usual: { ...COAT, chest: 56, waist: 53, hem: 69, length: 108, shoulder: 45 },
    lapel: { style: 'notch', breakY: 30, width: 12 },
    breakY: 30,
    overlap: 10,
    cutaway: 0,
    pockets: 'welt',
    pocketY: 60,
    darts: false,
    stitched: true,
    sleeve: { cuff: 'tab' },
    front: (garment, shape) => {
      gunFlap(garment, shape);
      for (const side of [-1, 1] as const) epaulette(garment, shape, side);
      const waist = Math.min(47, shape.length - 12);
      doubleRows(
        garment,
        [33.5, waist + 12, waist + 25].filter((y) => y < shape.length - 6),
        7.2,
        1.2,
        tone(garment.cloth.ground, -0.24, 0.9),
      );
      belt(garment, shape, waist, 4.4, 'buckle');
    },
  }),
  'rain jacket': buttoned({
    usual: { ...JACKET, length: 73 },
    sleeve: { cuff: 'elastic', cuffHeight: 3 },
    hem: 'stitched',
    beneath: (garment, shape) => hoodBack(garment, shape, 0.95),
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        seamLine(
          garment,
          [
            [side * shape.neck * 0.5, 2],
            [side * shape.chest * 0.36, shape.armhole * 0.6],
            [side * shape.chest * 0.5, shape.armhole],
          ],
          0.6,
        ),
      ),
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 3, shape.length - 0.6, { width: 1.1 });
      zipPocket(garment, shape.chest * 0.26, 25, 13, -8);
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.31, shape.length - 19, 17, side * 12);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 0.95, cords: true, meet: 4 }),
  }),
  raincoat: buttoned({
    usual: {
      ...COAT,
      chest: 57,
      waist: 60,
      hem: 74,
      length: 102,
      shoulder: 46,
      slope: 5,
      neck: 17,
      neckDepth: 7,
      sleeve: { length: 60, elbow: 19, cuff: 15, upper: 21, fore: 8 },
    },
    sleeve: { cuff: 'hem' },
    hem: 'stitched',
    beneath: (garment, shape) => hoodBack(garment, shape, 0.98),
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        seamLine(
          garment,
          [
            [side * shape.neck * 0.5, 2],
            [side * shape.chest * 0.36, shape.armhole * 0.6],
            [side * shape.chest * 0.5, shape.armhole],
          ],
          0.6,
        ),
      ),
    front: (garment, shape) => {
      stormFlap(garment, shape, 5.4, 6);
      for (const side of [-1, 1] as const) flapPocket(garment, side * shape.hem * 0.27, 56, 15, 6.4, side);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 0.98, meet: 4 }),
  }),
  windbreaker: buttoned({
    usual: {
      ...JACKET,
      chest: 57,
      waist: 57,
      hem: 51,
      length: 68,
      shoulder: 48,
      slope: 5.6,
      blouse: 2.2,
      sleeve: { length: 58, elbow: 19, cuff: 10, upper: 24, fore: 9 },
    },
    sleeve: { cuff: 'elastic', cuffHeight: 3 },
    hem: 'edge',
    folds: 1.1,
    inner: (garment, shape) => {
      const tint = garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.12 : -0.1);
      const lower: Node[] = [
        [-40, 26, 'corner'],
        [-shape.chest / 2, 27, 'corner'],
        [0, 33, 'corner'],
        [shape.chest / 2, 27, 'corner'],
        [40, 26, 'corner'],
        [40, 0, 'corner'],
        [-40, 0, 'corner'],
      ];
      return [
        {
          path: lower
            .map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`)
            .join('')
            .concat('Z'),
          fill: tint,
          opacity: 0.85,
        },
        pen(
          [
            [-shape.chest / 2, 27],
            [0, 33.2],
          ],
          0.3,
          garment.cloth.ink,
          0.7,
          0.5,
        ),
        pen(
          [
            [0, 33.2],
            [shape.chest / 2, 27],
          ],
          0.3,
          garment.cloth.ink,
          0.7,
          0.5,
        ),
      ];
    },
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 3, shape.length - 0.6, { width: 1 });
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.3, shape.length - 17, 14, side * 16);
      drawcord(garment, shape, shape.length - 4.6);
    },
    collar: (garment, shape) => standCollar(garment, shape, 9.6, { gap: 3.6 }),
  }),
  'quilted jacket': buttoned({
    usual: { ...JACKET, chest: 54.5, waist: 53.5, hem: 56, length: 71, shoulder: 44.5 },
    sleeve: { cuff: 'shirt', cuffHeight: 2.4 },
    hem: 'edge',
    folds: 0.4,
    mayBend: true,
    front: (garment, shape) => {
      placket(garment, shape, {
        width: 3.6,
        buttons: 6,
        radius: 0.72,
        colour: tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.2 : -0.24, 0.5),
        plain: true,
      });
      for (const side of [-1, 1])
        patchPocket(garment, side * shape.hem * 0.27, shape.length - 25, {
          width: 16,
          height: 18,
          flap: 5.4,
          button: tone(garment.cloth.ground, -0.2, 0.5),
        });
      binding(garment, shape);
    },
    collar: (garment, shape) =>
      flatCollar(garment, shape, {
        points: 9.6,
        wide: 2,
        cloth: plainCloth(
          garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.1 : -0.16),
          'corduroy',
          garment.detail,
        ),
        stitched: false,
      }),
  }),
  'down jacket': buttoned({
    usual: {
      ...JACKET,
      chest: 57,
      waist: 55,
      hem: 54,
      length: 67,
      shoulder: 47,
      slope: 5.2,
      neck: 17,
      neckDepth: 7,
      sleeve: { length: 60, elbow: 20, cuff: 13, upper: 23, fore: 9 },
    },
    sleeve: { cuff: 'elastic', cuffHeight: 2 },
    hem: 'edge',
    baffles: 7.6,
    folds: 0.3,
    beneath: (garment, shape) => hoodBack(garment, shape, 0.9, unquilted(garment)),
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 4, shape.length - 0.6, { width: 1.2 });
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.32, shape.length - 17, 15, side * 10);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 0.9, meet: 3, cloth: unquilted(garment) }),
  }),
  parka: buttoned({
    usual: {
      ...COAT,
      chest: 60,
      waist: 57,
      hem: 63,
      length: 86,
      shoulder: 48,
      slope: 5.2,
      armhole: 27,
      neck: 18,
      neckDepth: 8,
      hemDip: 3,
      sleeve: { length: 61, elbow: 20, cuff: 14, upper: 21, fore: 7 },
    },
    sleeve: { cuff: 'shirt', cuffHeight: 6 },
    hem: 'stitched',
    mayBend: true,
    beneath: (garment, shape) => hoodBack(garment, shape, 1.08),
    front: (garment, shape) => {
      drawcord(garment, shape, Math.min(46, shape.length - 16));
      stormFlap(garment, shape, 5.6, 6);
      for (const side of [-1, 1]) {
        patchPocket(garment, side * shape.hem * 0.28, 57, {
          width: 16.5,
          height: 19,
          flap: 6.4,
          pointedFlap: true,
          button: garment.cloth.deep,
        });
        weltPocket(garment, side * shape.chest * 0.27, 29, 14, 2.8, side * 8);
      }
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 1.08, fur: FUR, meet: 5 }),
  }),
  cape: drawCape,
} satisfies Record<string, DrawKind>;

/** The cloth without its quilting, for a hood or collar that is only lined. */
const unquilted = (garment: Garment): Garment['cloth'] => ({ ...garment.cloth, tiles: [] });

const FUR = '#b59a78';

/** The bound edge of a quilted jacket. */
const binding = (garment: Garment, shape: UpperShape): void => {
  const { cloth } = garment;
  const run: Node[] = [
    [-shape.hem / 2 + 0.4, shape.length - 1.2],
    [0, shape.length - 0.5],
    [shape.hem / 2 - 0.4, shape.length - 1.2],
  ];
  garment.add(pen(run, 1.3, cloth.deep, 0.9, 0.5));
};

/** The flap on one side of a trench coat's chest, buttoned down. */
const gunFlap = (garment: Garment, shape: UpperShape): void => {
  const half = halfWidthAt(shape, shape.armhole);
  garment.panel(
    [
      [7, 7, 'corner'],
      [shape.shoulder / 2 - 0.8, 6, 'corner'],
      [shape.shoulder / 2 - 1.6, 14],
      [half - 1.2, 23.6, 'corner'],
      [13, 27],
      [4.4, 25, 'corner'],
    ],
    {
      covers: false,
      loose: true,
      edge: 0.5,
      cast: 0.6,
      wobble: 0.08,
      inner: garment.small
        ? []
        : [
            stitch(
              [
                [half - 2, 22.8],
                [13, 26.1],
                [5, 24.2],
              ],
              garment.cloth.ink,
              0.6,
            ),
          ],
    },
  );
};
