import { tapeTicks } from '../../draw/index.ts';

/** A tape beside pieces laid flat, true to their scale: two paths and the numbers, in the units of the picture. */
export interface ClothTape {
  readonly fine: string;
  readonly long: string;
  readonly labels: readonly { readonly y: number; readonly text: string }[];
}

/** Room the tape takes beside a picture. */
export const CLOTH_TAPE_WIDTH = 64;
/** Where a number begins, and how far below its tick its foot stands. */
const LABEL = { x: 34, below: 9 } as const;
/** Ticks of a tape on a card are drawn for 1080 pixels across and shown smaller on a page. */
const LONGER = 1.6;
/** From this length on a tick is a long one. */
const LONG = 19;

const round = (value: number): number => Math.round(value * 10) / 10;

/** `scale` is units of the picture a centimetre. */
export const clothTape = (unit: 'cm' | 'in', scale: number, top: number, bottom: number): ClothTape => {
  const ticks = tapeTicks(unit, scale, top, bottom);
  const pathOf = (wanted: boolean): string =>
    ticks
      .filter(({ length }) => length >= LONG === wanted)
      .map(({ y, length }) => `M0 ${round(y)}h${round(length * LONGER)}`)
      .join('');
  return {
    fine: pathOf(false),
    long: pathOf(true),
    labels: ticks.flatMap(({ y, mark }) =>
      mark === undefined ? [] : [{ y: round(y + LABEL.below), text: String(mark) }],
    ),
  };
};

export const CLOTH_TAPE_LABEL_X = LABEL.x;
