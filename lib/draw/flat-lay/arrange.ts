import type { Point } from '../drawing.ts';
import { type Board, createBoard, measureClearance, put, sumUnder, tryAt } from './board.ts';
import { type Body, CELL } from './body.ts';
import type { Lain, Stack } from './stack.ts';
import { type Ground, type Side, targetOf } from './targets.ts';

/** No piece may be covered more than this leaves to be seen, with some reserve on the share that is promised. */
export const LEAST_SEEN = 0.62;
/** Paper kept free along the edge of the frame, centimetres. */
const EDGE = 0.6;
/** Air a piece wants around it, in cells. */
const AIR = 2;
/** Small things keep a whole cell of paper around them, or they are lost. */
const SMALL_AIR = 2;
/** What standing too near costs, against a third of a metre from where it should lie. */
const CROWDING = 0.35;

/** All pieces put down, and how much a stylist would mind: lower is better. */
export interface Arrangement {
  readonly lain: readonly Lain[];
  readonly cost: number;
}

interface Spot {
  readonly column: number;
  readonly row: number;
  readonly cost: number;
}

const sides = (lain: readonly Lain[]) => ({
  left: Math.min(...lain.map(({ x }) => x)),
  top: Math.min(...lain.map(({ y }) => y)),
  right: Math.max(...lain.map(({ x, body }) => x + body.width)),
  bottom: Math.max(...lain.map(({ y, body }) => y + body.height)),
});

/** How far left and right pieces reach between two heights; 0 and 0 where there is none. */
const reach = (lain: readonly Lain[], from: number, to: number): readonly [left: number, right: number] => {
  let [left, right] = [Number.POSITIVE_INFINITY, 0];
  for (const { body, x, y } of lain) {
    const { runs } = body.mask;
    for (let run = 0; run < runs.length; run += 3) {
      const at = y + (runs[run] ?? 0) * CELL;
      if (at + CELL <= from || at >= to) continue;
      left = Math.min(left, x + (runs[run + 1] ?? 0) * CELL);
      right = Math.max(right, x + (runs[run + 2] ?? 0) * CELL);
    }
  }
  return [Math.min(left, right), right];
};

/** What a place costs: a quick least cost first, the whole cost only where that could still win; undefined when forbidden. */
interface Judge {
  least(x: number, y: number): number;
  cost(column: number, row: number, least: number): number | undefined;
}

/** Every how many cells a first look is taken, which rules out most of the others. */
const GLANCE = 4;

/** The cheapest place on the grid at which a body stays inside the frame. */
const cheapest = (board: Board, body: Body, { width, height }: Ground, judge: Judge): Spot | undefined => {
  const lastColumn = Math.min(board.columns, Math.floor((width - EDGE - body.width) / CELL));
  const lastRow = Math.min(board.rows, Math.floor((height - EDGE - body.height) / CELL));
  const first = Math.ceil(EDGE / CELL);
  let found: Spot | undefined;
  for (const step of [GLANCE, 1]) {
    for (let row = first; row <= lastRow; row += step) {
      for (let column = first; column <= lastColumn; column += step) {
        const least = judge.least(column * CELL, row * CELL);
        if (found !== undefined && least >= found.cost) continue;
        const cost = judge.cost(column, row, least);
        if (cost !== undefined && (found === undefined || cost < found.cost)) found = { column, row, cost };
      }
    }
  }
  return found;
};

/**
 * How far a single layer comes down beside an outfit longer than itself, a share of the difference, by how many pieces
 * are to lie below it: the fewer, the emptier the corner it would leave.
 */
const COMES_DOWN = [0.36, 0.34, 0.24, 0.12] as const;

const layerTop = ({ height }: Body, { worn, extras, single }: Ground): number =>
  worn.top - 2 + (single ? (COMES_DOWN[extras] ?? 0) * Math.max(0, worn.bottom - worn.top - height) : 0);

/** A layer goes behind what lies there already, just touching it. */
const firstLayerJudge = (board: Board, body: Body, ground: Ground): Judge => {
  const { worn } = ground;
  const top = layerTop(body, ground);
  return {
    least: (x, y) => {
      if (x < worn.left + 8 || y > top + 30) return Number.POSITIVE_INFINITY;
      const beyond = x - worn.right;
      return Math.abs(y - top) * 0.03 + Math.max(0, beyond) * 0.12 + beyond * 0.004;
    },
    cost: (column, row, least) => hiddenCost(board, body, column, row, least, 0.06),
  };
};

/** How far down a further layer begins, and where across the one before it, so that its collar and front are seen. */
const NEXT_LAYER = { down: 7, across: 0.4 };

/** What each centimetre costs that a further layer hangs below the outfit: it would make the whole lay small. */
const BELOW_THE_OUTFIT = 0.035;

/** A further layer goes behind the one before it and to its right. */
const nextLayerJudge = (board: Board, body: Body, { worn }: Ground, before: Side): Judge => {
  const wanted = before.left + (before.right - before.left) * NEXT_LAYER.across;
  return {
    least: (x, y) => {
      if (x < worn.left + 8) return Number.POSITIVE_INFINITY;
      const [aside, down] = [x - wanted, y - before.top - NEXT_LAYER.down];
      const below = Math.max(0, y + body.height - worn.bottom - NEXT_LAYER.down);
      return (
        Math.max(0, aside) * 0.08 +
        Math.max(0, -aside) * 0.03 +
        Math.max(0, down) * 0.014 +
        Math.max(0, -down) * 0.05 +
        below * BELOW_THE_OUTFIT
      );
    },
    cost: (column, row, least) => hiddenCost(board, body, column, row, least, 0.22),
  };
};

const hiddenCost = (
  board: Board,
  body: Body,
  column: number,
  row: number,
  least: number,
  wanted: number,
): number | undefined => {
  if (least === Number.POSITIVE_INFINITY) return undefined;
  const { mask } = body;
  const met = sumUnder(board, board.covered, mask, column, row, mask.area * (1 - LEAST_SEEN));
  return met === undefined ? undefined : least + Math.abs(met / mask.area - wanted) * 5;
};

/** An extra goes on top, near its target, clear of other extras. */
const extraJudge = (board: Board, body: Body, ground: Ground, extras: ReadonlySet<number>): Judge => {
  const { slot } = body.item;
  const { over, part } = body.laying;
  const [targetX, targetY] = targetOf(body, ground);
  return {
    least: (x, y) => {
      const [aside, down] = [x + body.width / 2 - targetX, y + body.height / 2 - targetY];
      return Math.sqrt(aside * aside + down * down) / 30;
    },
    cost: (column, row, least) => {
      const { mask } = body;
      const met = sumUnder(board, board.covered, mask, column, row, over * mask.area);
      if (met === undefined) return undefined;
      const crowded = sumUnder(board, board.crowd, mask, column, row) ?? 0;
      if (met > 0 || (part === 'small' && crowded > 0)) {
        const trial = tryAt(board, mask, column, row, AIR);
        if (trial.leastSeen < LEAST_SEEN || (part === 'small' && trial.nearest < SMALL_AIR)) return undefined;
        if (trial.over.some((_, piece) => extras.has(piece))) return undefined;
      }
      return least + (met / mask.area) * (slot === 'bag' ? 2.5 : 10) + (crowded / Math.sqrt(mask.area)) * CROWDING;
    },
  };
};

const laid = (body: Body, spot: Spot): Lain => ({ body, x: spot.column * CELL, y: spot.row * CELL });

/** Share of the free room beside the clothes that they may be moved by, so that their weight comes to the middle. */
const LEANING = 0.7;

/** How far to move what reaches from `low` to `high` along a side of the paper, its weight at `weight`. */
const moveToMiddle = (low: number, high: number, weight: number, side: number): number => {
  const centred = (side - low - high) / 2;
  const most = (Math.max(0, side - (high - low)) / 2) * LEANING;
  return centred + Math.max(-most, Math.min(most, side / 2 - weight - centred));
};

interface Weighed {
  /** Brings the weight of the clothes as near to the middle of the paper as its free room allows. */
  readonly move: Point;
  /** How far from the middle it stays, and how tightly the clothes fill the paper. */
  readonly cost: number;
}

const weigh = (lain: readonly Lain[], board: Board, width: number, height: number): Weighed => {
  let [x, y, seen] = [0, 0, 0];
  board.top.forEach((owner, at) => {
    if (owner < 0) return;
    seen++;
    x += (at % board.columns) + 0.5;
    y += Math.floor(at / board.columns) + 0.5;
  });
  if (seen === 0) return { move: [0, 0], cost: 0 };
  const { left, right, top, bottom } = sides(lain);
  const [weightX, weightY] = [(x / seen) * CELL, (y / seen) * CELL];
  const move = [moveToMiddle(left, right, weightX, width), moveToMiddle(top, bottom, weightY, height)] as const;
  const full = (seen * CELL * CELL) / (width * height);
  const cost =
    Math.abs((weightX + move[0]) / width - 0.5) * 5 +
    Math.abs((weightY + move[1]) / height - 0.5) * 4 +
    Math.max(0, full - 0.6) * 10;
  return { move, cost };
};

/** Puts everything down on paper of this size, or says that it does not fit. Centimetres. */
export const arrange = (
  stack: Stack,
  layers: readonly Body[],
  extras: readonly Body[],
  width: number,
  height: number,
): Arrangement | undefined => {
  const small = extras.filter(({ laying }) => laying.part === 'small');
  const free = width - 2 * EDGE - stack.width;
  if (free < 0 || stack.height > height - 2 * EDGE) return undefined;
  const margin = Math.min(free, small.length > 0 ? Math.max(5, Math.min(13, free * 0.12)) : 2);
  const board = createBoard(width, height, CELL, stack.lain.length + layers.length + extras.length);
  const lain: Lain[] = [];
  const worn = stack.lain.map(({ body, x, y }) => ({ body, x: x + EDGE + margin, y: y + EDGE }));
  const upwards = [...worn].sort((a, b) => a.body.laying.level - b.body.laying.level);
  for (const { body, x, y } of upwards) {
    put(board, body.index, body.mask, Math.round(x / CELL), Math.round(y / CELL), true);
  }
  lain.push(...worn);
  const wornSides = worn.length > 0 ? sides(worn) : { left: 0, right: 0, top: 2, bottom: 2 };
  const ground: Ground = {
    width,
    height,
    worn: wornSides,
    layers: undefined,
    single: layers.length === 1,
    extras: extras.length - small.length,
    shod: extras.some(({ item }) => item.slot === 'shoes'),
    wornAcross: (from, to) => reach(worn, from, to),
  };
  let cost = 0;
  let before: Side | undefined;
  for (const body of layers) {
    measureClearance(board, AIR);
    const judge =
      before === undefined ? firstLayerJudge(board, body, ground) : nextLayerJudge(board, body, ground, before);
    const spot = cheapest(board, body, ground, judge);
    if (spot === undefined) return undefined;
    put(board, body.index, body.mask, spot.column, spot.row, false);
    lain.push(laid(body, spot));
    before = sides(lain.slice(-1));
    cost += spot.cost;
  }
  const laidLayers = lain.filter(({ body: { laying } }) => laying.part === 'layer');
  const around: Ground = laidLayers.length === 0 ? ground : { ...ground, layers: sides(laidLayers) };
  const placed = new Set<number>();
  for (const body of extras) {
    measureClearance(board, AIR);
    const spot = cheapest(board, body, around, extraJudge(board, body, around, placed));
    if (spot === undefined) return undefined;
    put(board, body.index, body.mask, spot.column, spot.row, true);
    lain.push(laid(body, spot));
    placed.add(body.index);
    cost += spot.cost * 0.5;
  }
  const { move, cost: unbalanced } = weigh(lain, board, width, height);
  return {
    lain: lain.map(({ body, x, y }) => ({ body, x: x + move[0], y: y + move[1] })),
    cost: cost + unbalanced,
  };
};
