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
  /** Whether there is one of them. */
  readonly single: boolean;
  /** How many pieces besides clothes and small things look for a place. */
  readonly extras: number;
  /** Whether shoes are among these. */
  readonly shod: boolean;
  /** From where to where across the outfit as worn reaches between two heights; 0 and 0 where there is none. */
  wornAcross(from: number, to: number): readonly [left: number, right: number];
}

/** Fewer extras than this gather below the layers: a column of their own would pull the clothes to the left. */
const ENOUGH_FOR_A_COLUMN = 3;
/** Free breadth on the right from which the extras make a column of their own. */
const THIRD_COLUMN = 26;
/** Share of the height below short layers that takes the extras in. */
const ROOM_BELOW = 0.36;
/** How far from the clothes the pieces of that column begin at most: a few keep close. */
const COLUMN_AWAY = { few: 6, many: 9 };
/** Air between the legs of the outfit and what lies beside them. */
const BESIDE_THE_LEGS = 7;
/** How far these follow the narrower legs in, away from the column of the other extras. */
const TO_THE_LEGS: Partial<Readonly<Record<Slot, { readonly few: number; readonly many: number }>>> = {
  shoes: { few: 1, many: 0.5 },
  belt: { few: 0.7, many: 0.5 },
  headwear: { few: 0.7, many: 0.6 },
  legwear: { few: 0.7, many: 0.4 },
};
/** Share of the height that shoes beside a short outfit, a swimsuit, still come down to. */
const SHOES_LOW = 0.86;
/** Air between a short outfit and what lies below it. */
const BELOW_THE_OUTFIT = 4;
/** How far down the layers reach against the outfit for the paper below it to be left empty. */
const ENDS_WITH_THE_LAYERS = [0.66, 1.4] as const;
/** What is worn about the neck and is longer than this is a shawl. */
const SHAWL = 56;
/** How far the handle of a bag reaches up over a hem. */
const HANDLE_OVER_HEM = 13;

/** How far below the top of the outfit small pieces are looked for on its left, centimetres: where each is worn. */
const AT_ITS_PLACE: Partial<Readonly<Record<Slot, number>>> = {
  eyewear: 4,
  'jewellery ears': 14,
  'jewellery neck': 24,
  'jewellery lapel': 30,
  'jewellery wrist': 60,
  'jewellery finger': 66,
  tie: 84,
};
/** Air between these and the cloth. */
const BESIDE_THE_CLOTH = 5;
/** How far over the soles a belt lies: with the shoes, as one leather. */
const BELT_OVER_SOLES = 34;

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

/** Whether a piece goes where the feet would be: below an outfit that ends about where the layers beside it do. */
const belongsBelow = (body: Body, { height, worn, layers, shod }: Ground): boolean => {
  if (worn.bottom === 0 || height - worn.bottom <= body.height + BELOW_THE_OUTFIT) return false;
  if (layers === undefined) return body.item.slot === 'headwear' && !shod;
  const [low, high] = ENDS_WITH_THE_LAYERS;
  const ends = layers.bottom / worn.bottom;
  return body.item.slot === (shod ? 'shoes' : 'headwear') && ends > low && ends < high;
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
  const place = AT_ITS_PLACE[slot];
  if (place !== undefined) {
    const y = Math.min(worn.top + place, height - h - 1);
    return inside(ground.wornAcross(y - h - 2, y + h + 2)[0] - BESIDE_THE_CLOTH - w, y);
  }
  if (belongsBelow(body, ground)) return inside((worn.left + worn.right) / 2, worn.bottom + h + BELOW_THE_OUTFIT);
  const edge = layers?.right ?? worn.right;
  const column = COLUMN[slot] ?? [0, 0.5];
  const below = layers === undefined ? 0 : height - layers.bottom;
  const roomBeside = width - edge > THIRD_COLUMN && below < height * ROOM_BELOW && extras >= ENOUGH_FOR_A_COLUMN;
  if (layers === undefined || roomBeside) {
    const amount = extras < ENOUGH_FOR_A_COLUMN ? 'few' : 'many';
    const x = Math.min((edge + width) / 2, edge + w + COLUMN_AWAY[amount]) + column[0];
    const lowest = Math.max(worn.bottom, layers?.bottom ?? 0, SHOES_LOW * height);
    const low = slot === 'shoes' ? lowest - h : column[1] * height;
    const y = slot === 'belt' && worn.bottom > 0 ? Math.max(low, worn.bottom - BELT_OVER_SOLES) : low;
    const legs = ground.wornAcross(y - h, y + h)[1];
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
      return inside((Math.max(worn.right, layers.left) + layers.right) / 2 + w * 0.5, layers.bottom + below * 0.55);
    case 'scarf':
      // a shawl takes a place like a layer's where there is room for one
      if (h > SHAWL / 2 && width - layers.right > 2 * w) return inside(layers.right + w + 3, layers.top + h + 16);
      return inside(worn.right + w + 8, layers.bottom + h + 4);
    case 'belt':
      return inside(worn.right + w + 8, Math.max(layers.bottom + below * 0.26, worn.bottom - BELT_OVER_SOLES));
    case 'leg layer':
    case 'legwear':
      return inside(layers.right - w - 2, layers.bottom + below * 0.42);
    default:
      return inside((worn.right + layers.right) / 2 + 4, height - below * 0.5);
  }
};
