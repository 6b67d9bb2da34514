import type { Point } from '../drawing.ts';
import { random, seedOf } from '../kit/index.ts';
import { type Arrangement, arrange } from './arrange.ts';
import { createBoard, put } from './board.ts';
import { type Body, bodyOf } from './body.ts';
import type { FlatLay, Frame, LayItem, Placed } from './item.ts';
import { layingsOf } from './laying.ts';
import { maskOf } from './mask.ts';
import { type Lain, stackOf } from './stack.ts';

/** Share of its area that every piece shows at least. */
export const VISIBLE_AT_LEAST = 0.55;

/** The paper is never less than this high, so that a few small pieces are not blown up; centimetres. */
const LEAST_HEIGHT = 104;
/** Nor than this for swimming, where nothing is longer, nor than this much more than its longest piece. */
const LEAST_FOR_SWIMMING = { height: 46, over: 1.12 };
/** Scales come in these steps from `FIRST_RUNG` pixels a centimetre, so that a piece painted for one lay serves others. */
const RUNG = 0.91;
const FIRST_RUNG = 12;
/** Smaller tries after the first that fits: one may look much better. */
const FURTHER_TRIES = 2;
const MOST_TRIES = 45;
/** What a larger scale is worth against the cost of an arrangement. */
const WORTH_OF_SCALE = 4;
/** Side of a cell when the finished lay is measured, centimetres. */
const FINE_CELL = 0.8;

/** Share of each piece that is seen, measured on a fine grid; in the order of `lain`. */
const visibleShares = (lain: readonly Lain[], width: number, height: number): readonly number[] => {
  const board = createBoard(width, height, FINE_CELL, lain.length);
  lain.forEach(({ body, x, y }, index) => {
    const column = Math.floor(x / FINE_CELL);
    const row = Math.floor(y / FINE_CELL);
    const origin: Point = [column * FINE_CELL - x, row * FINE_CELL - y];
    put(board, index, maskOf(body.rings, FINE_CELL, origin), column, row, true);
  });
  return board.area.map((area, index) => (board.seen[index] ?? 0) / area);
};

/** Each layer was put under those before it. */
const byLevel = (a: Lain, b: Lain): number => {
  const [one, other] = [a.body.laying, b.body.laying];
  return one.level - other.level || other.rank - one.rank || b.body.index - a.body.index;
};

const finish = (arrangement: Arrangement, scale: number, frame: Frame): FlatLay | undefined => {
  const [width, height] = [frame.width / scale, frame.height / scale];
  const lain = [...arrangement.lain].sort(byLevel);
  const visible = visibleShares(lain, width, height);
  if (visible.some((share) => share < VISIBLE_AT_LEAST)) return undefined;
  const placed = lain.map(({ body, x, y }, index): Placed => {
    const corner: Point = [Math.round(frame.x + x * scale), Math.round(frame.y + y * scale)];
    return {
      item: body.item,
      transform: body.matrix([(corner[0] - frame.x) / scale, (corner[1] - frame.y) / scale], scale, frame),
      turn: body.turn,
      extent: { x: corner[0], y: corner[1], width: body.width * scale, height: body.height * scale },
      visible: visible[index] ?? 0,
    };
  });
  return { scale, frame, placed };
};

const leastHeight = (bodies: readonly Body[]): number => {
  const worn = bodies.filter(({ laying: { part } }) => part === 'worn' || part === 'layer');
  if (!worn.every(({ item }) => item.slot === 'swim')) return LEAST_HEIGHT;
  const longest = Math.max(0, ...worn.map(({ height }) => height));
  return longest === 0
    ? LEAST_HEIGHT
    : Math.min(LEAST_HEIGHT, Math.max(LEAST_FOR_SWIMMING.height, longest * LEAST_FOR_SWIMMING.over));
};

/**
 * Lays pieces out as a hand lays clothes on a bed, all at one true scale, the largest that suits them: the outfit as worn on
 * the left, layers turned behind it on the right, extras in the gaps, small things left of where they are worn. Every piece shows at least
 * 55 % of itself, nothing leaves the frame. The same pieces always lie the same way.
 */
export const layFlat = (items: readonly LayItem[], frame: Frame): FlatLay => {
  const turns = random(seedOf(items.map(({ id }) => id).join('+')));
  const layings = layingsOf(items);
  const bodies = layings
    .flatMap((laying, index): Body[] => {
      const item = items[index];
      return item === undefined ? [] : [bodyOf(item, laying, index)];
    })
    .sort((a, b) => a.laying.rank - b.laying.rank || a.index - b.index);
  const part = (...parts: readonly string[]) => bodies.filter(({ laying }) => parts.includes(laying.part));
  const stack = stackOf(part('worn'), turns);
  const layers = part('layer');
  const extras = part('beside', 'small');
  const largest = frame.height / leastHeight(bodies);
  const firstRung = Math.ceil(Math.log(largest / FIRST_RUNG) / Math.log(RUNG) - 1e-9);
  let chosen: { lay: FlatLay; worth: number } | undefined;
  let further = FURTHER_TRIES;
  for (let attempt = 0; attempt < MOST_TRIES && further > 0; attempt++) {
    if (chosen !== undefined) further--;
    const scale = FIRST_RUNG * RUNG ** (firstRung + attempt);
    const arrangement = arrange(stack, layers, extras, frame.width / scale, frame.height / scale);
    if (arrangement === undefined) continue;
    const worth = WORTH_OF_SCALE * Math.log(scale / largest) - arrangement.cost;
    if (chosen !== undefined && worth <= chosen.worth) continue;
    const lay = finish(arrangement, scale, frame);
    if (lay !== undefined) chosen = { lay, worth };
  }
  if (chosen === undefined) throw new Error(`no room for ${items.length} pieces in ${frame.width} × ${frame.height}`);
  return chosen.lay;
};
