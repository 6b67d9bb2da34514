import type { Drawing, Point } from '../../../lib/draw/drawing.ts';
import type { LayItem } from '../../../lib/draw/flat-lay/index.ts';
import type { Random } from '../../../lib/draw/kit/index.ts';
import { SLOTS, type Slot } from '../../../lib/vocabulary/index.ts';

type Ring = readonly Point[];

const boxed = (outline: readonly Ring[], anchors: Drawing['anchors'] = {}, colour = '#8a5a44'): Drawing => {
  const xs = outline.flat().map(([x]) => x);
  const ys = outline.flat().map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return {
    box: { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y },
    outline,
    tiles: [],
    marks: outline.map((ring) => ({ path: `M${ring.map((point) => point.join(' ')).join('L')}Z`, fill: colour })),
    anchors,
    cloth: colour,
  };
};

/** Body with two sleeves hanging at 22 degrees; the bodies of shirts, knits and coats. */
const sleeved = (chest: number, length: number, sleeve: number, hem: number): Drawing => {
  const half = chest / 2;
  const reach = half - 3 + sleeve * 0.38;
  const drop = 5 + sleeve * 0.92;
  return boxed(
    [
      [
        [-8, 0],
        [8, 0],
        [half - 4, 5],
        [hem / 2, length],
        [-hem / 2, length],
        [-half + 4, 5],
      ],
      [
        [half - 5, 4],
        [reach + 5, drop],
        [reach - 7, drop + 3],
        [half - 3, 26],
      ],
      [
        [-half + 3, 26],
        [-reach + 7, drop + 3],
        [-reach - 5, drop],
        [-half + 5, 4],
      ],
    ],
    { hem: [0, length] },
    '#b06a4a',
  );
};

const trousers = (waist: number, length: number, hem: number): Drawing =>
  boxed(
    [
      [
        [-waist / 2, 0],
        [waist / 2, 0],
        [waist * 0.68, 28],
        [waist * 0.3 + hem, length],
        [waist * 0.3, length],
        [0, 32],
        [-waist * 0.3, length],
        [-waist * 0.3 - hem, length],
        [-waist * 0.68, 28],
      ],
    ],
    { waist: [0, 0] },
    '#4a4f57',
  );

const trapeze = (top: number, length: number, bottom: number, colour: string): Drawing =>
  boxed(
    [
      [
        [-top / 2, 0],
        [top / 2, 0],
        [bottom / 2, length],
        [-bottom / 2, length],
      ],
    ],
    { waist: [0, 0], hem: [0, length] },
    colour,
  );

const oval = (width: number, height: number, colour: string): Drawing =>
  boxed(
    [
      Array.from(
        { length: 24 },
        (_, i): Point => [(width / 2) * Math.cos((i / 12) * Math.PI), (height / 2) * Math.sin((i / 12) * Math.PI)],
      ),
    ],
    {},
    colour,
  );

const handled = (width: number, height: number, drop: number): Drawing =>
  boxed(
    [
      [
        [-width / 2, 0],
        [width / 2, 0],
        [width * 0.44, height],
        [-width * 0.44, height],
      ],
      [
        [-width * 0.3, 0],
        [-width * 0.26, -drop],
        [width * 0.26, -drop],
        [width * 0.3, 0],
        [width * 0.25, 0],
        [width * 0.21, -drop + 2],
        [-width * 0.21, -drop + 2],
        [-width * 0.25, 0],
      ],
    ],
    {},
    '#a06a3c',
  );

const between = (random: Random, low: number, high: number): number => low + (high - low) * random();

/** A plain outline of plausible size for a slot; sizes from the smallest to the largest of the trade. */
export const paperDoll = (slot: Slot, random: Random): Drawing => {
  const size = (low: number, high: number): number => between(random, low, high);
  switch (slot) {
    case 'top':
      return sleeved(size(40, 60), size(42, 82), size(12, 62), size(40, 62));
    case 'bottom':
      return random() < 0.5
        ? trousers(size(34, 44), size(38, 112), size(14, 34))
        : trapeze(36, size(40, 95), size(40, 80), '#2c5745');
    case 'one-piece':
      return random() < 0.5
        ? trapeze(38, size(85, 150), size(45, 85), '#58788e')
        : sleeved(46, size(90, 140), size(15, 60), size(45, 75));
    case 'swim':
      return trapeze(size(30, 40), size(35, 75), size(30, 42), '#2e3a55');
    case 'cover-up':
      return sleeved(size(55, 75), size(70, 120), size(30, 55), size(60, 80));
    case 'base layer':
    case 'mid layer':
      return sleeved(size(48, 60), size(50, 80), size(55, 62), size(48, 60));
    case 'outer layer':
      return sleeved(size(50, 64), size(58, 125), size(58, 66), size(52, 75));
    case 'shoes':
      return oval(size(26, 40), size(14, 48), '#3a2a26');
    case 'bag':
      return handled(size(18, 44), size(13, 36), size(0, 45));
    case 'leg layer':
    case 'legwear':
      return trapeze(size(14, 30), size(22, 80), size(14, 24), '#777');
    case 'headwear':
      return oval(size(24, 44), size(16, 38), '#2e3a55');
    case 'scarf':
      return oval(size(24, 38), size(24, 60), '#c9582f');
    case 'tie':
      return trapeze(5, size(40, 75), 9, '#7d2430');
    case 'gloves':
      return oval(size(18, 26), size(22, 30), '#333');
    case 'belt':
      return oval(size(12, 40), size(8, 16), '#573222');
    case 'eyewear':
      return oval(size(13, 15), size(5, 7), '#6a4220');
    case 'jewellery neck':
      return oval(size(12, 22), size(16, 30), '#c39a4e');
    default:
      return oval(size(1, 9), size(1, 7), '#c39a4e');
  }
};

const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;

const LAYERS: readonly Slot[] = ['mid layer', 'outer layer'];
const EXTRAS = SLOTS.filter(
  (slot) => !['one-piece', 'top', 'bottom', 'swim', 'cover-up', 'mid layer', 'outer layer', 'shoes'].includes(slot),
);

/** Slots of a look of `count` pieces (2 to 12), as the grammar of looks allows: a core, layers, shoes, extras. */
export const randomSlots = (random: Random, count: number): readonly Slot[] => {
  const core = pick(random, [
    ['top', 'bottom'],
    ['top', 'bottom'],
    ['one-piece', 'shoes'],
    ['swim', 'cover-up'],
  ] as const);
  const rest = [
    ...(core[0] === 'swim' ? [] : LAYERS.filter(() => random() < 0.5)),
    ...(random() < 0.9 || core[0] === 'one-piece' ? ['shoes' as const] : []),
  ];
  const slots: Slot[] = [...new Set<Slot>([...core, ...rest])].slice(0, count);
  const extras = [...EXTRAS];
  while (slots.length < count && extras.length > 0) {
    slots.push(...extras.splice(Math.floor(random() * extras.length), 1));
  }
  return slots;
};

export const randomLook = (random: Random, name: string, draw = paperDoll): readonly LayItem[] => {
  const count = 2 + Math.floor(random() * 11);
  return randomSlots(random, count).map((slot) => ({ id: `${name} ${slot}`, slot, picture: draw(slot, random) }));
};
