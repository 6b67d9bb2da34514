import type { Slot } from '../../vocabulary/index.ts';
import type { Point } from '../drawing.ts';
import type { Body } from './body.ts';

export interface Side {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where the clothes lie on the paper, centimetres. */
export interface Ground {
  readonly width: number;
  readonly height: number;
  /** The outfit as worn. */
  readonly worn: Side;
  /** The layers beside it; undefined when there are none. */
  readonly layers: Side | undefined;
  /** How many pieces besides clothes and small things look for a place. */
  readonly extras: number;
  /** How far right the outfit as worn reaches between two heights. */
  wornRight(from: number, to: number): number;
}

/** Fewer extras than this gather below the layers: a column of their own would pull the clothes to the left. */
const ENOUGH_FOR_A_COLUMN = 3;
/** Free breadth on the right from which the extras make a column of their own. */
const THIRD_COLUMN = 26;
/** Share of the height below short layers that takes the extras in. */
const ROOM_BELOW = 0.36;
/** How far from the clothes the pieces of that column begin at most: a few keep close. */
const COLUMN_AWAY = { few: 6, many: 12 };
/** Air between the legs of the outfit and what lies beside them. */
const BESIDE_THE_LEGS = 7;
/** How far these follow the narrower legs in, away from the column of the other extras. */
const TO_THE_LEGS: Partial<Readonly<Record<Slot, { readonly few: number; readonly many: number }>>> = {
  shoes: { few: 1, many: 0.5 },
  belt: { few: 0.7, many: 0.5 },
  legwear: { few: 0.7, many: 0.4 },
};
/** Share of the height that shoes beside a short outfit, a swimsuit, still come down to. */
const SHOES_LOW = 0.86;
/** What is worn about the neck and is longer than this is a shawl. */
const SHAWL = 56;
/** How far the handle of a bag reaches up over a hem. */
const HANDLE_OVER_HEM = 13;

/** Shares of the height at which small pieces are looked for at the far left. */
const FAR_LEFT: Partial<Readonly<Record<Slot, number>>> = {
  eyewear: 0.07,
  'jewellery neck': 0.5,
  'jewellery ears': 0.62,
  'jewellery wrist': 0.76,
  'jewellery lapel': 0.4,
  'jewellery finger': 0.86,
  tie: 0.6,
};

/** Shares of the height for the extras in a column of their own, hat to shoes. */
const COLUMN: Partial<Readonly<Record<Slot, readonly [lean: number, height: number]>>> = {
  headwear: [3, 0.15],
  scarf: [-4, 0.36],
  belt: [-4, 0.45],
  gloves: [6, 0.5],
  bag: [4, 0.56],
  legwear: [-6, 0.74],
  shoes: [-5, 0.9],
};

/** Where a stylist would first try to put a piece: its centre, centimetres. */
export const targetOf = (body: Body, ground: Ground): Point => {
  const { width, height, worn, layers, extras } = ground;
  const { slot } = body.item;
  const [w, h] = [body.width / 2, body.height / 2];
  const inside = (x: number, y: number): Point => [
    Math.min(width - w - 1.5, Math.max(w + 1.5, x)),
    Math.min(height - h - 1, Math.max(h + 1, y)),
  ];
  const left = FAR_LEFT[slot];
  if (left !== undefined) return inside(0, Math.max(left * height, slot === 'eyewear' ? worn.top + 4 : 0));
  const edge = layers?.right ?? worn.right;
  const column = COLUMN[slot] ?? [0, 0.5];
  const below = layers === undefined ? 0 : height - layers.bottom;
  const roomBeside = width - edge > THIRD_COLUMN && below < height * ROOM_BELOW && extras >= ENOUGH_FOR_A_COLUMN;
  if (layers === undefined || roomBeside) {
    const amount = extras < ENOUGH_FOR_A_COLUMN ? 'few' : 'many';
    const x = Math.min((edge + width) / 2, edge + w + COLUMN_AWAY[amount]) + column[0];
    const lowest = Math.max(worn.bottom, layers?.bottom ?? 0, SHOES_LOW * height);
    const y = slot === 'shoes' ? lowest - h : column[1] * height;
    const legs = ground.wornRight(y - h, y + h);
    const byTheLegs = legs + BESIDE_THE_LEGS + w;
    const follow = legs > 0 ? (TO_THE_LEGS[slot]?.[amount] ?? 0) : 0;
    return inside(x + (byTheLegs - x) * follow, y);
  }
  if (slot === 'shoes' && extras < ENOUGH_FOR_A_COLUMN) {
    const middle = (Math.max(worn.right, layers.left) + layers.right) / 2;
    return inside(extras === 1 ? middle : middle - w * 0.7, Math.max(worn.bottom - h, layers.bottom + h * 1.15));
  }
  switch (slot) {
    case 'bag':
      return inside(layers.right - w * 0.7, layers.bottom + h - HANDLE_OVER_HEM);
    case 'shoes':
      return inside(worn.right + w * 0.85, Math.max(worn.bottom - h, layers.bottom + h * 1.4));
    case 'headwear':
      return inside(width, layers.bottom + below * 0.55);
    case 'scarf':
      // a shawl takes a place like a layer's where there is room for one
      if (h > SHAWL / 2 && width - layers.right > 2 * w) return inside(layers.right + w + 3, layers.top + h + 8);
      return inside(worn.right + w + 8, layers.bottom + h + 4);
    case 'belt':
      return inside(worn.right + w + 8, layers.bottom + below * 0.26);
    case 'legwear':
      return inside(layers.right - w - 2, layers.bottom + below * 0.42);
    default:
      return inside((worn.right + layers.right) / 2 + 4, height - below * 0.5);
  }
};
