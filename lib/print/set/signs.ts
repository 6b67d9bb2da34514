import { nums } from '../pdf/numbers.ts';
import { pathOperators, readPath } from '../pdf/path.ts';
import type { Surface } from '../pdf/surface.ts';

/** Small line signs on a square of 24. */
const SIGNS = {
  sun: 'M12 8C14.2 8 16 9.8 16 12C16 14.2 14.2 16 12 16C9.8 16 8 14.2 8 12C8 9.8 9.8 8 12 8Z M12 3L12 5 M12 19L12 21 M3 12L5 12 M19 12L21 12 M5.6 5.6L7 7 M17 17L18.4 18.4 M5.6 18.4L7 17 M17 7L18.4 5.6',
  moon: 'M15.5 4C10 5 6.5 9 7 13.5C7.5 18 12 21.2 17.5 19.8C13.5 18.3 11.2 15.5 11.2 11.8C11.2 8.6 12.8 5.6 15.5 4Z',
  cloud: 'M7 18C3 18 3 12.5 7 12.5C7 8 14 7 15.5 11.5C20.5 11 20.5 18 16.5 18Z',
  rain: 'M7 15C3 15 3 9.5 7 9.5C7 5 14 4 15.5 8.5C20.5 8 20.5 15 16.5 15Z M8 17.5L7 20.5 M12 17.5L11 20.5 M16 17.5L15 20.5',
  wind: 'M3 9L14 9C17.5 9 17.5 4.5 14.5 4.5 M3 13L19 13C22 13 22 17.5 18.5 17.5 M3 17L11 17C13.5 17 13.5 20.5 11 20.5',
  cold: 'M12 3L12 21 M4.2 7.5L19.8 16.5 M19.8 7.5L4.2 16.5 M9.5 4.5L12 7L14.5 4.5 M9.5 19.5L12 17L14.5 19.5',
  wash: 'M3 8L5 20L19 20L21 8 M3 8C5 6.5 7 9.5 9 8C11 6.5 13 9.5 15 8C17 6.5 19 9.5 21 8',
  fold: 'M4 6L20 6L20 12L4 12Z M4 12L20 12L20 18L4 18Z',
  roll: 'M12 4.5C16.5 4.5 19.5 7.5 19.5 12C19.5 16.5 16.5 19.5 12 19.5C7.5 19.5 4.5 16.5 4.5 12.5C4.5 9.5 7 7.5 9.8 7.5C13 7.5 15.5 9.5 15.5 12C15.5 14.2 14 15.5 12 15.5C10.3 15.5 9.2 14.3 9.2 13',
  flat: 'M8 8L22 8L16 16L2 16Z',
  'shoe bag': 'M9 8C3.5 12 4 21 8 21L16 21C20 21 20.5 12 15 8Z M9 8L7 3.5L17 3.5L15 8',
  pouch: 'M3 7L21 7L21 18L3 18Z M3 7L12 13.5L21 7',
  fill: 'M3 11L5.5 20L18.5 20L21 11 M12 3L12 15 M8 11L12 15L16 11',
  things: 'M7 8L17 8L18 21L6 21Z M9.5 8C9.5 4 14.5 4 14.5 8',
} as const;
export type Sign = keyof typeof SIGNS;

/** Draws a sign with its top left corner at (x, y), in a square of `size` millimetres. */
export const sign = (
  surface: Surface,
  name: Sign,
  { x, y, size, colour, width = 0.6 }: { x: number; y: number; size: number; colour: string; width?: number },
): void => {
  const scale = size / 24;
  const operators = pathOperators(
    readPath(SIGNS[name]).map((segment) => {
      const move = ([px, py]: readonly [number, number]) => [x + px * scale, y + py * scale] as const;
      if (segment.command === 'Z') return segment;
      if (segment.command === 'C') {
        return { command: 'C', first: move(segment.first), second: move(segment.second), to: move(segment.to) };
      }
      return { command: segment.command, to: move(segment.to) };
    }),
  );
  surface.shape(operators.replaceAll('\n', ' '), { stroke: { colour, width, round: true } });
};

/** A triangle hanging from a line, as on a sewing pattern. */
export const notch = (surface: Surface, x: number, y: number, size: number, colour: string, filled: boolean): void => {
  const path = `${nums(x - size, y - size * 1.5)} m ${nums(x + size, y - size * 1.5)} l ${nums(x, y)} l h`;
  surface.shape(path, { stroke: { colour, width: 0.4 }, ...(filled ? { fill: colour } : {}) });
};
