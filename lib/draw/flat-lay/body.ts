import type { Matrix, Point } from '../drawing.ts';
import { extentOf } from '../kit/extent.ts';
import { random, seedOf, turned } from '../kit/index.ts';
import type { Frame, LayItem } from './item.ts';
import type { Laying } from './laying.ts';
import { type Mask, maskOf } from './mask.ts';
import { thinRing } from './thin-ring.ts';

/** Side of a cell while places are looked for, centimetres. */
export const CELL = 2;

/** How far the rings may stray from the outline, centimetres: well below a cell. */
const STRAY = 0.2;

/** A piece turned and ready to be put down: its rings start at the origin, centimetres. */
export interface Body {
  readonly index: number;
  readonly item: LayItem;
  readonly laying: Laying;
  readonly turn: number;
  readonly width: number;
  readonly height: number;
  /** The outline, thinned. */
  readonly rings: readonly (readonly Point[])[];
  readonly mask: Mask;
  /** A named point of the drawing after the turn. */
  anchor(name: string): Point | undefined;
  /** From the picture's centimetres to pixels, when the body's upper left corner lies at `at`. */
  matrix(at: Point, scale: number, frame: Frame): Matrix;
}

/** Small things take their whole extent: the arms of spectacles are thinner than a cell. */
const rectangle = (width: number, height: number): readonly Point[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** What a body is but for its place in a lay. */
type Turned = Omit<Body, 'index' | 'item' | 'laying'>;

const turnedBody = ({ id, slot, picture }: LayItem, { turn: [from, to], part }: Laying): Turned => {
  const { box, outline, anchors } = picture;
  const turn = from + (to - from) * random(seedOf(`${id} ${slot}`))();
  const centre: Point = [box.x + box.width / 2, box.y + box.height / 2];
  const swung = outline.map((ring) => ring.map((point) => turned(point, turn, centre)));
  const extent = extentOf(swung);
  const shift = ([x, y]: Point): Point => [x - extent.x, y - extent.y];
  const rings = swung.map((ring) => thinRing(ring.map(shift), STRAY));
  return {
    turn,
    width: extent.width,
    height: extent.height,
    rings,
    mask: maskOf(part === 'small' ? [rectangle(extent.width, extent.height)] : rings, CELL, [0, 0]),
    anchor: (name) => {
      const point = anchors[name];
      return point === undefined ? undefined : shift(turned(point, turn, centre));
    },
    matrix: (at, scale, frame) => {
      const cos = Math.cos((turn * Math.PI) / 180);
      const sin = Math.sin((turn * Math.PI) / 180);
      const x = centre[0] - cos * centre[0] + sin * centre[1] - extent.x + at[0];
      const y = centre[1] - sin * centre[0] - cos * centre[1] - extent.y + at[1];
      return [scale * cos, scale * sin, -scale * sin, scale * cos, frame.x + scale * x, frame.y + scale * y];
    },
  };
};

/** Bodies of a picture by what else they depend on: a piece is in many looks, and turned alike in all of them. */
const known = new WeakMap<LayItem['picture'], Map<string, Turned>>();

/** The piece `index` of a lay, turned by a hand that its own name and slot guide. */
export const bodyOf = (item: LayItem, laying: Laying, index: number): Body => {
  const bodies = known.get(item.picture) ?? new Map<string, Turned>();
  known.set(item.picture, bodies);
  const key = `${item.id} ${item.slot} ${laying.part} ${laying.turn.join(' ')}`;
  const body = bodies.get(key) ?? turnedBody(item, laying);
  bodies.set(key, body);
  return { ...body, index, item, laying };
};
