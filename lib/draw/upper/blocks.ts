import { plainCloth } from '../fabric/index.ts';
import { shape as flat, type Garment, lerp, type Painted, pen, polygonPath } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';
import type { SleeveOptions } from './sleeve.ts';

/** The lower part of a colour-blocked body, in the piece's second colour. */
export const blockBody = (garment: Garment, shape: UpperShape): Painted[] => {
  const colour = garment.blocked ? garment.cloth.accents[0] : undefined;
  if (colour === undefined) return [];
  const y = lerp(shape.armhole, shape.length, 0.42);
  const wide = shape.hem + 20;
  return [
    flat(
      polygonPath([
        [-wide, y],
        [wide, y],
        [wide, shape.length + 20],
        [-wide, shape.length + 20],
      ]),
      colour,
    ),
    pen(
      [
        [-shape.chest, y],
        [0, y + 0.2],
        [shape.chest, y],
      ],
      0.34,
      garment.cloth.ink,
      0.8,
      0.5,
    ),
  ];
};

/** Sleeves of a colour-blocked piece: its third colour, when it has one. */
export const blockSleeve = (garment: Garment): SleeveOptions => {
  const colour = garment.blocked ? garment.cloth.accents[1] : undefined;
  return colour === undefined ? {} : { cloth: plainCloth(colour, garment.cloth.surface, garment.detail) };
};
