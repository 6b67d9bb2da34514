const CENTIMETRES: Readonly<Record<'cm' | 'in', number>> = { cm: 1, in: 2.54 };
/** Ticks a longer one, and ticks a numbered one. */
const BEATS: Readonly<Record<'cm' | 'in', readonly [middle: number, long: number]>> = { cm: [5, 10], in: [3, 6] };
/** Ticks nearer than this many pixels would blur into grey. */
const NEAREST_TICKS = 4.4;

/** A tick's place and length, and its number when it has one. */
export interface Tick {
  readonly y: number;
  readonly length: number;
  readonly mark: number | undefined;
}

/** The ticks of a tape that runs down the edge, true to `scale` pixels a centimetre. */
export const tapeTicks = (unit: 'cm' | 'in', scale: number, top: number, bottom: number): readonly Tick[] => {
  const step = CENTIMETRES[unit] * scale;
  const [middle, long] = BEATS[unit];
  const every = step < NEAREST_TICKS ? middle : 1;
  const numbered = long * step < 40 ? long * 2 : long;
  return Array.from({ length: Math.floor((bottom - top) / step) + 1 }, (_, index): Tick | undefined => {
    if (index % every !== 0) return undefined;
    const length = index % long === 0 ? 19 : index % middle === 0 ? 12 : 7;
    return { y: top + index * step, length, mark: index > 0 && index % numbered === 0 ? index : undefined };
  }).filter((tick) => tick !== undefined);
};
