import { group, lerp, type Painted, tone } from '../kit/index.ts';
import type { Leg } from './leg.ts';
import type { Trousers } from './trousers.ts';

/** Colour of a drawcord on a cloth: paler than the cloth. */
export const cordColour = (hex: string): string => (tone(hex, 0.2) === hex ? '#efe6d4' : tone(hex, 0.22, 0.5));

/** Tucks that a gathered waist sends down the hip. */
export const waistGathers = ({ garment, measures: { band, waist } }: Trousers, leg: Leg): Painted =>
  group(
    [0.14, 0.3, 0.46, 0.62, 0.8].map((share, i) => {
      const x = (leg.side * waist * share) / 2;
      const drop = band + 6 + garment.random() * 8;
      return garment.fold(
        [
          [x, band - 0.3],
          [x * 1.03, lerp(band, drop, 0.5)],
          [x * 1.08 + garment.jitter(0.5), drop],
        ],
        (i % 2 ? 1 : -1) * 1.1,
        0.8,
        0.2,
      );
    }),
  );
