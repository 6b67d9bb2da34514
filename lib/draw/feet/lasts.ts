import { HEEL_CM, within } from '../../vocabulary/index.ts';
import type { Along, LastShape, ToeShape } from './last.ts';

type Shape = Omit<LastShape, 'inner'>;

export const heelOf = (heelCm: number): number => within(HEEL_CM, Number.isFinite(heelCm) ? heelCm : 0);

/** How high the toe springs off the ground. */
const SPRING = 0.7;

/** Town shoes, boots: a stacked heel under a level seat. */
export const townLast = (heelCm: number, toe: ToeShape = 'almond', sole = 0.55): Shape => {
  const h = Math.max(0.6, heelOf(heelCm) - 0.3);
  return {
    length: 28,
    toe,
    breadth: 1,
    under: [
      [0, h],
      [0.24, h],
      [0.36, h * 0.6],
      [0.6, 0.06],
      [0.8, 0],
      [1, SPRING],
    ],
    sole: [
      [0, sole],
      [1, sole],
    ],
    crest: [
      [0, 7],
      [0.2, 8.6],
      [0.36, 8.6],
      [0.46, 7.7],
      [0.56, 6.6],
      [0.66, 5.4],
      [0.78, 4.4],
      [0.9, 3.8],
      [1, 3],
    ],
  };
};

const POINT: Along = [
  [0.82, 2.9],
  [0.92, 1.9],
  [1, 1.1],
];
const TIP: Along = [
  [0.82, 3.3],
  [0.92, 2.6],
  [1, 1.8],
];

/** Court shoes: the heel lifts the foot, which shortens its length on the level. */
export const courtLast = (heelCm: number, toe: ToeShape): Shape => {
  const h = Math.max(0.5, heelOf(heelCm) - 0.35);
  const length = (toe === 'pointed' ? 26.2 : 25) - (h * h) / 42;
  return {
    length,
    toe,
    breadth: 0.92,
    under: [
      [0, h],
      [0.16, h * 0.98],
      [0.3, h * 0.78],
      [0.5, h * 0.27],
      [0.64, h * 0.02],
      [0.8, 0],
      [1, 0.45],
    ],
    sole: [
      [0, 0.35],
      [1, 0.35],
    ],
    crest: [[0, 6.5], [0.2, 7.5], [0.38, 7], [0.5, 6], [0.6, 5], [0.7, 4.1], ...(toe === 'pointed' ? POINT : TIP)],
  };
};

/** One thick sole from heel to toe: sports shoes, espadrilles, wedges. */
export const flatLast = (
  back: number,
  ball: number,
  options: {
    readonly toe?: ToeShape;
    readonly breadth?: number;
    readonly length?: number;
    readonly crest?: Along;
    readonly spring?: number;
  } = {},
): Shape => ({
  length: options.length ?? 28,
  toe: options.toe ?? 'round',
  breadth: options.breadth ?? 1,
  under: [
    [0, 0.25],
    [0.06, 0],
    [0.78, 0],
    [1, options.spring ?? 0.9],
  ],
  sole: [
    [0, back],
    [0.25, back],
    [0.62, ball],
    [0.85, ball * 0.92],
    [1, ball * 0.8],
  ],
  crest: options.crest ?? [
    [0, 7],
    [0.2, 8.6],
    [0.36, 8.4],
    [0.46, 7.6],
    [0.56, 6.7],
    [0.66, 5.8],
    [0.78, 5],
    [0.9, 4.5],
    [1, 3.9],
  ],
});
