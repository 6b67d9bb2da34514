import { type Garment, group, lerp, type Node, oklch, type Painted, pen, tone } from '../kit/index.ts';
import type { Leg } from './leg.ts';
import type { LegMeasures } from './leg-measures.ts';

/** Copper of rivets and shank buttons. */
export const COPPER = '#b07a4a';

/** Thread of the topstitching: tobacco on blue denim, its own tone on any other. */
export const denimThread = (garment: Garment): string => {
  const { l, c, h } = oklch(garment.cloth.ground);
  const blue = c > 0.02 && h > 215 && h < 290 && l < 0.78;
  if (blue) return '#c98f4e';
  return l > 0.78 ? tone(garment.cloth.ground, -0.2) : tone(garment.cloth.ground, 0.2, 0.8);
};

/** Wear of the cloth: a paler thigh and knee, whiskers at the fork, ridges along the seams. */
export const denimFade = (garment: Garment, leg: Leg, { rise, length, band }: LegMeasures): Painted => {
  const { bright } = garment.cloth;
  const pale = tone(garment.cloth.ground, 0.14, 0.75);
  const inseam = length - rise;
  const knee = rise + inseam * 0.47;
  const marks: Painted[] = [
    garment.plane(leg.down(0.5, rise - 2, lerp(rise, knee, 0.95)), 6, pale, 0.5),
    garment.plane(leg.down(0.5, rise + 2, lerp(rise, knee, 0.7)), 3.2, pale, 0.35),
  ];
  if (inseam > 40) marks.push(garment.plane(leg.down(0.46, knee - 6, knee + 13), 4.6, pale, 0.4));
  if (!garment.small) {
    const whiskers = leg.side === 1 ? 3 : 2;
    for (let i = 0; i < whiskers; i++) {
      const y = rise - 5 + i * 4 + garment.jitter(1.2);
      const reach = garment.jitter(1.4);
      const whisker = (down: number): Node[] => [
        [leg.at(0.1)(y), y + 1.5 + down],
        [leg.at(0.38)(y), y + 0.2 + down],
        [leg.at(0.62)(y), y - 2 + reach + down],
      ];
      marks.push(pen(whisker(0), 1.3, pale, 0.22, 0.4), pen(whisker(0.7), 0.5, garment.cloth.ink, 0.11, 0.4));
    }
    for (const [share, from] of [
      [0.97, band + 10],
      [0.045, rise + 3],
    ] as const)
      marks.push(ridges(garment, leg, share, from, length, bright));
  }
  return group(marks);
};

/** Short pale dashes along a seam, where the cloth puckers and wears. */
const ridges = (garment: Garment, leg: Leg, share: number, from: number, to: number, colour: string): Painted => {
  const marks: Painted[] = [];
  for (let y = from; y < to - 2; y += 4.4 + garment.random() * 3) {
    const x = leg.at(share)(y);
    const length = 1.6 + garment.random() * 1.4;
    marks.push(
      pen(
        [
          [x, y],
          [x + garment.jitter(0.3), y + length],
        ],
        0.7,
        colour,
        0.4,
        0.5,
      ),
    );
  }
  return group(marks);
};
