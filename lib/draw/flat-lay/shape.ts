import type { Drawing, Point } from '../drawing.ts';
import type { LayItem } from './item.ts';
import { thinRing } from './thin-ring.ts';

/** What laying out needs to know of a piece, in whole millimetres: small enough for a page to carry. */
export interface Shape {
  readonly box: readonly [x: number, y: number, width: number, height: number];
  /** Closed rings, x and y by turns. */
  readonly rings: readonly (readonly number[])[];
  readonly anchors: Readonly<Record<string, readonly [x: number, y: number]>>;
}

/** How far a ring may stray from the outline, centimetres: a quarter of the cell in which places are looked for. */
const STRAY = 0.5;
/** Points that laying out asks for. */
const ANCHORS = ['waist', 'hem'];
const MM_A_CM = 10;

const mm = (cm: number): number => Math.round(cm * MM_A_CM);

export const shapeOf = ({ box, outline, anchors }: LayItem['picture']): Shape => ({
  box: [mm(box.x), mm(box.y), mm(box.width), mm(box.height)],
  rings: outline
    .map((ring) => thinRing(ring, STRAY).flatMap(([x, y]) => [mm(x), mm(y)]))
    .filter(({ length }) => length > 4),
  anchors: Object.fromEntries(
    ANCHORS.flatMap((name) => {
      const point = anchors[name];
      return point === undefined ? [] : [[name, [mm(point[0]), mm(point[1])] as const]];
    }),
  ),
});

const cm = (value: number): number => value / MM_A_CM;

/** A drawing without a mark, to be laid out where the picture itself lies elsewhere. */
export const pictureOfShape = ({ box, rings, anchors }: Shape): Drawing => ({
  box: { x: cm(box[0]), y: cm(box[1]), width: cm(box[2]), height: cm(box[3]) },
  outline: rings.map((ring) =>
    ring.flatMap((x, at): Point[] => (at % 2 === 0 ? [[cm(x), cm(ring[at + 1] ?? 0)]] : [])),
  ),
  anchors: Object.fromEntries(Object.entries(anchors).map(([name, [x, y]]) => [name, [cm(x), cm(y)] as const])),
  tiles: [],
  marks: [],
  cloth: '',
});
