import type { DrawKind } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { tone } from '../kit/index.ts';
import { tailored } from './designs.ts';
import { GOLD, JACKET } from './layer-shapes.ts';
import { drawWaistcoat } from './waistcoat.ts';

export const TAILORING = {
  blazer: tailored({
    usual: JACKET,
    lapel: { style: 'notch', breakY: 38, width: 9 },
    breakY: 38,
    overlap: 1.6,
    cutaway: 6,
    buttons: { rows: [0], from: 40, gap: 12, count: 2, radius: 1.05 },
    pockets: 'flap',
    pocketY: 51,
    breast: 'welt',
    cuffButtons: 3,
    mayOpen: true,
  }),
  'double-breasted blazer': tailored({
    usual: { ...JACKET, chest: 53, waist: 49 },
    lapel: { style: 'peak', breakY: 36, width: 10 },
    breakY: 36,
    overlap: 8.4,
    cutaway: 0,
    buttons: { rows: [-6, 6.4], from: 39, gap: 12, count: 2, radius: 1.15, colour: GOLD },
    pockets: 'flap',
    pocketY: 52,
    breast: 'welt',
    cuffButtons: 3,
    front: (garment) => {
      for (const x of [-8, 8.6]) garment.button(x, 28.6, 1.15, GOLD);
    },
  }),
  'suit jacket': tailored({
    usual: { ...JACKET, chest: 53, waist: 49, hem: 55, length: 74, shoulder: 44 },
    lapel: { style: 'notch', breakY: 42, width: 8.4 },
    breakY: 42,
    overlap: 1.5,
    cutaway: 8,
    buttons: { rows: [0], from: 43.6, gap: 10.5, count: 2, radius: 1 },
    pockets: 'jetted',
    pocketY: 54,
    breast: 'welt',
    cuffButtons: 4,
    mayBend: false,
    folds: 0.42,
  }),
  'dinner jacket': tailored({
    usual: { ...JACKET, chest: 53, waist: 48.5, hem: 54.5, length: 73, shoulder: 44 },
    lapel: { style: 'shawl', breakY: 44, width: 9.4 },
    facing: (garment) =>
      plainCloth(tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? -0.05 : -0.1), 'satin', garment.detail),
    breakY: 44,
    overlap: 1.5,
    cutaway: 8,
    buttons: { rows: [0], from: 46, gap: 10, count: 1, radius: 1.1 },
    pockets: 'jetted',
    pocketY: 54,
    breast: 'welt',
    cuffButtons: 4,
    folds: 0.42,
  }),
  waistcoat: (piece, detail) =>
    drawWaistcoat(piece, detail, {
      ...JACKET,
      chest: 47,
      waist: 42,
      hem: 44.5,
      length: 54,
      shoulder: 35,
      slope: 4.4,
      armhole: 26,
      neck: 15,
      neckDepth: 25,
      sleeve: undefined,
    }),
  'linen jacket': tailored({
    usual: { ...JACKET, chest: 53, waist: 50, hem: 55, length: 71 },
    lapel: { style: 'notch', breakY: 34, width: 8.6 },
    breakY: 34,
    overlap: 1.6,
    cutaway: 5,
    buttons: { rows: [0], from: 36, gap: 10, count: 3, radius: 1.05 },
    pockets: 'patch',
    pocketY: 48,
    breast: 'patch',
    cuffButtons: 2,
    mayOpen: true,
    folds: 0.85,
    darts: false,
    stitched: true,
  }),
} satisfies Record<string, DrawKind>;
