import type { Detail, Mark } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import { group, type Painted, shape } from './pens.ts';

/** A dark silhouette set a little off beneath the fill: where it shows, the line is thick or thin. */
export const contourMarks = (path: string, cloth: Cloth, detail: Detail): Painted =>
  detail === 'small'
    ? group([shape(path, cloth.deep)], { move: [0.18, 0.24] })
    : group([shape(path, cloth.ink)], { move: [0.14, 0.18] });

/** Which light a part takes along its edge. */
export interface EdgeLight {
  /** Light along the upper left edge. */
  readonly rim: boolean;
  /** The part is shaded as a whole, and its edge needs no more. */
  readonly shaded: boolean;
}

/** Shade along the edge of a part, to be clipped to it; `edge` is its strength, 1 for a whole garment. */
export const edgeMarks = (
  path: string,
  edge: number,
  { rim, shaded }: EdgeLight,
  cloth: Cloth,
  detail: Detail,
): Painted[] => {
  const run = (width: number, stroke: string, opacity: number): Mark => ({ path, stroke, width, opacity });
  const ink = (width: number, opacity: number) => run(width * edge, cloth.ink, Math.max(0.03, opacity * cloth.depth));
  if (detail === 'small') return [ink(2, 0.09)];
  const marks: Painted[] = shaded ? [] : edge < 0.6 ? [ink(2, 0.13)] : [ink(3, 0.08)];
  if (rim && edge > 0.65)
    marks.push(
      // light above left, the turn of the cloth below right
      group([run(0.34, cloth.bright, 0.42)], { move: [0.26, 0.3] }),
      ...(shaded
        ? []
        : [group([run(0.4 + 0.6 * edge, cloth.ink, cloth.depth < 0.6 ? 0.18 : 0.26)], { move: [-0.12, -0.16] })]),
    );
  return marks;
};

/** How far each copy lies away, and how strong it is. */
type Layers = readonly (readonly [away: number, opacity: number])[];
const CAST: Readonly<Record<'small' | 'slight' | 'full', Layers>> = {
  small: [[1.1, 0.22]],
  slight: [
    [0.6, 0.22],
    [1.4, 0.15],
  ],
  full: [
    [0.35, 0.2],
    [0.85, 0.15],
    [1.6, 0.1],
  ],
};

/** Layered shade beneath a part: copies in the cloth's own ink, no blur. `amount` is 1 for a lapel. */
export const castMarks = (path: string, amount: number, cloth: Cloth, detail: Detail): Painted =>
  group(
    CAST[detail === 'small' ? 'small' : amount < 0.6 ? 'slight' : 'full'].map(([away, opacity]) =>
      group([shape(path, cloth.ink, opacity)], { move: [away * 0.55 * amount, away * 0.9 * amount] }),
    ),
  );
