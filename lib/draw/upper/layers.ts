import type { DrawKind } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { type Garment, type Node, tone } from '../kit/index.ts';
import { placket } from './closures.ts';
import { shirtCollar } from './collars.ts';
import { buttoned } from './designs.ts';
import { ribBand } from './finish.ts';
import { drawKimono } from './kimono.ts';
import { GOLD, JACKET, OVERSHIRT } from './layer-shapes.ts';
import { patchPocket } from './pockets.ts';
import { drawShawl } from './shawl.ts';

const _STEEL = '#b9b6ae';

const _STEEL_SHADE = '#5f5d58';

/** Bands of a knitted jacket: the piece's second colour, or a darker tone. */
const trimCloth = (garment: Garment): Garment['cloth'] =>
  plainCloth(
    garment.cloth.accents[0] ??
      tone(garment.cloth.ground, garment.cloth.depth < 0.6 ? -0.42 : garment.cloth.depth === 0.75 ? 0.3 : -0.2),
    'smooth',
    garment.detail,
  );

export const LAYERS = {
  overshirt: buttoned({
    usual: OVERSHIRT,
    sleeve: { cuff: 'shirt', cuffHeight: 6.2 },
    mayBend: true,
    hem: 'stitched',
    front: (garment, shape) => {
      placket(garment, shape, { width: 4.2, buttons: 6, radius: 0.82 });
      const button = tone(garment.cloth.ground, -0.2, 0.6);
      for (const side of [-1, 1])
        patchPocket(garment, side * 13.4, 22, {
          width: 12.6,
          height: 14.6,
          pointed: true,
          flap: 6.4,
          pointedFlap: true,
          button,
        });
    },
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 10.6, spread: 1.2 }),
  }),
  'knitted jacket': buttoned({
    usual: {
      ...OVERSHIRT,
      chest: 54,
      waist: 54,
      hem: 54,
      length: 60,
      shoulder: 44,
      neck: 17,
      neckDepth: 8,
      sleeve: { length: 56, elbow: 17.5, cuff: 13.5, upper: 22, fore: 9 },
    },
    sleeve: { cuff: 'none', inner: () => [] },
    mayBend: true,
    hem: 'edge',
    backRise: 1,
    folds: 0.6,
    front: (garment, shape) => {
      const trim = trimCloth(garment);
      for (const side of [-1, 1]) {
        for (const y of [23, shape.length - 17]) {
          patchPocket(garment, side * shape.chest * 0.26, y, { width: y < 30 ? 10.5 : 13, height: y < 30 ? 9 : 11.5 });
          ribBand(
            garment,
            [
              [side * shape.chest * 0.26 - (y < 30 ? 5.4 : 6.6), y],
              [side * shape.chest * 0.26 + (y < 30 ? 5.4 : 6.6), y],
            ],
            1,
            -0.8,
            0.6,
            trim,
          );
        }
        ribBand(
          garment,
          [
            [side * 0.2, shape.neckDepth],
            [side * 0.2, shape.length],
          ],
          side === 1 ? -1.6 : 0,
          side === 1 ? 0 : 1.6,
          0.6,
          trim,
        );
      }
      ribBand(
        garment,
        [
          [-shape.hem / 2, shape.length - 0.6],
          [0, shape.length - 0.2],
          [shape.hem / 2, shape.length - 0.6],
        ],
        1.4,
        -0.3,
        0.6,
        trim,
      );
      for (let i = 0; i < 5; i++)
        garment.button(1.6, shape.neckDepth + 3 + i * ((shape.length - shape.neckDepth - 9) / 4), 0.9, GOLD);
    },
    collar: (garment, shape) => {
      const half = shape.neck / 2;
      const round: Node[] = [
        [-half - 0.2, -0.4],
        [-half * 0.82, shape.neckDepth * 0.5],
        [-0.4, shape.neckDepth + 0.2],
        [0.4, shape.neckDepth + 0.2],
        [half * 0.82, shape.neckDepth * 0.5],
        [half + 0.2, -0.4],
      ];
      ribBand(garment, round, 0.8, -1.2, 0.6, trimCloth(garment));
    },
  }),
  'kimono jacket': (piece, detail) =>
    drawKimono(piece, detail, {
      ...JACKET,
      chest: 56,
      waist: 57,
      hem: 62,
      length: 82,
      shoulder: 58,
      slope: 4,
      armhole: 30,
      neck: 15,
      sleeve: undefined,
    }),
  shawl: drawShawl,
} satisfies Record<string, DrawKind>;
