import type { DrawKind } from '../drawing.ts';
import { type Garment, pen, stitch, tone } from '../kit/index.ts';
import { belt, epaulette } from './belts.ts';
import { halfWidthAt } from './body.ts';
import { drawCape } from './cape.ts';
import { toggle } from './closures.ts';
import { COAT, yoke } from './coat-shapes.ts';
import { buttoned, tailored } from './designs.ts';
import { hoodBack, hoodFront } from './hood.ts';
import { patchPocket } from './pockets.ts';
import type { UpperShape } from './shape.ts';

const HORN = '#a97b4a';

const doubleRows = (garment: Garment, ys: readonly number[], x: number, spread: number, colour: string): void => {
  ys.forEach((y, i) => {
    const away = x + (i === 0 ? spread : 0);
    for (const side of [-1, 1]) garment.button(side * away + garment.jitter(0.08), y, 1.3, colour);
  });
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
    mayOpen: true,
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
    mayOpen: true,
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
  cape: drawCape,
} satisfies Record<string, DrawKind>;
