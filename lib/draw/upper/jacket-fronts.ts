import type { Garment } from '../kit/index.ts';
import { belt, epaulette } from './belts.ts';
import { halfWidthAt } from './body.ts';
import { placket, zip } from './closures.ts';
import { zipPocket } from './cut-pockets.ts';
import { patchPocket } from './pockets.ts';
import { seamLine, topStitch } from './seams.ts';
import type { UpperShape } from './shape.ts';

export const STEEL = '#b9b6ae';
export const STEEL_SHADE = '#5f5d58';

export const denimFront = (garment: Garment, shape: UpperShape): void => {
  const { length, chest } = shape;
  placket(garment, shape, { width: 4.2, buttons: 6, radius: 0.85, colour: '#a8794a', until: length - 3.4 });
  garment.add(
    ...topStitch(garment, [
      [-chest / 2, 17.5],
      [0, 19],
      [chest / 2, 17.5],
    ]),
    seamLine(
      garment,
      [
        [-chest / 2, 17],
        [0, 18.4],
        [chest / 2, 17],
      ],
      0.7,
    ),
  );
  for (const side of [-1, 1] as const) {
    const x = side * chest * 0.25;
    garment.add(
      ...[-4.6, 4.6].flatMap((away) => [
        seamLine(
          garment,
          [
            [x + away, 24],
            [x + away * 0.8 - side * 1.4, length * 0.7],
            [x + away * 0.5 - side * 3, length - 4],
          ],
          0.55,
        ),
        ...topStitch(garment, [
          [x + away + 0.6, 24],
          [x + away * 0.8 + 0.6 - side * 1.4, length * 0.7],
          [x + away * 0.5 + 0.6 - side * 3, length - 4],
        ]),
      ]),
    );
    patchPocket(garment, x, 19, {
      width: 11.5,
      height: 9.6,
      pointed: true,
      flap: 5,
      pointedFlap: true,
      button: '#a8794a',
    });
  }
};

/** A band sewn to the waist: denim and leather jackets. */
export const waistBand = (garment: Garment, shape: UpperShape, height: number): void => {
  const y = shape.length - height;
  const half = halfWidthAt(shape, y);
  garment.panel(
    [
      [-half, y - 0.4, 'corner'],
      [0, y + 0.3],
      [half, y - 0.4, 'corner'],
      [shape.hem / 2 + 0.1, shape.length, 'corner'],
      [0, shape.length + 0.4],
      [-shape.hem / 2 - 0.1, shape.length, 'corner'],
    ],
    {
      turn: 90,
      edge: 0.4,
      wobble: 0.06,
      cast: 0.3,
      inner: garment.small
        ? []
        : [
            ...topStitch(garment, [
              [-half, y + 0.5],
              [0, y + 1.2],
              [half, y + 0.5],
            ]),
            ...topStitch(garment, [
              [-half, shape.length - 0.9],
              [0, shape.length - 0.4],
              [half, shape.length - 0.9],
            ]),
          ],
    },
  );
};

export const biker = (garment: Garment, shape: UpperShape): void => {
  const end = shape.length - 1.2;
  zip(
    garment,
    [
      [-8.6, 19],
      [-8, 30],
      [-6.6, end],
    ],
    { metal: STEEL, width: 1.1 },
  );
  zipPocket(garment, shape.hem * 0.27, shape.length - 18, 15, 26, STEEL);
  zipPocket(garment, -shape.hem * 0.3, shape.length - 16, 12, -24, STEEL);
  zipPocket(garment, shape.chest * 0.26, 27, 10, 62, STEEL);
  for (const side of [-1, 1] as const) epaulette(garment, shape, side);
  if (shape.length > 48) belt(garment, shape, shape.length - 3, 3.4, 'buckle');
};
