import type { Piece } from '../../lib/model/index.ts';
import { seededRandom } from '../../lib/plan/random.ts';
import { KINDS, type KindId, type PatternType } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';

/** How often each thing is met among a hundred; the figures are invented to look like a real wardrobe, and have no source. */
type Odds<Item> = readonly (readonly [often: number, item: Item])[];

interface Group {
  readonly often: number;
  readonly kinds: Odds<KindId>;
  readonly colours: Odds<string>;
  readonly patterns: Odds<PatternType>;
}

const PLAIN: Odds<PatternType> = [[1, 'plain']];
const LEATHER: Odds<string> = [
  [35, 'black'],
  [25, 'tan'],
  [20, 'dark brown'],
  [10, 'navy'],
  [10, 'burgundy'],
];
/** Half neutrals, and three or four colours that she keeps coming back to. */
const WORN: Odds<string> = [
  [16, 'black'],
  [12, 'white'],
  [12, 'navy'],
  [8, 'charcoal'],
  [7, 'cream'],
  [6, 'camel'],
  [5, 'grey'],
  [9, 'bottle green'],
  [8, 'rust'],
  [6, 'burgundy'],
  [4, 'dusty pink'],
  [3, 'mustard'],
  [2, 'teal'],
  [2, 'royal blue'],
];
const GROUPS: readonly Group[] = [
  {
    often: 30,
    kinds: [
      [20, 't-shirt'],
      [16, 'shirt'],
      [14, 'blouse'],
      [12, 'knitted top'],
      [12, 'crew-neck jumper'],
      [10, 'fine roll-neck'],
      [8, 'boat-neck top'],
      [8, 'camisole'],
    ],
    colours: WORN,
    patterns: [
      [72, 'plain'],
      [14, 'stripe'],
      [6, 'floral'],
      [4, 'dot'],
      [4, 'check'],
    ],
  },
  {
    often: 19,
    kinds: [
      [26, 'jeans'],
      [16, 'tailored trousers'],
      [14, 'midi skirt'],
      [12, 'chinos'],
      [12, 'wide trousers'],
      [10, 'a-line skirt'],
      [10, 'pencil skirt'],
    ],
    colours: [
      [24, 'black'],
      [22, 'navy'],
      [18, 'dark denim'],
      [8, 'charcoal'],
      [8, 'camel'],
      [6, 'cream'],
      [6, 'olive'],
      [4, 'bottle green'],
      [4, 'rust'],
    ],
    patterns: [
      [88, 'plain'],
      [6, 'check'],
      [3, 'floral'],
      [3, 'pinstripe'],
    ],
  },
  {
    often: 7,
    kinds: [
      [40, 'shirt dress'],
      [35, 'tea dress'],
      [25, 'knitted dress'],
    ],
    colours: WORN,
    patterns: [
      [55, 'plain'],
      [30, 'floral'],
      [15, 'dot'],
    ],
  },
  {
    often: 11,
    kinds: [
      [38, 'cardigan'],
      [24, 'blazer'],
      [14, 'denim jacket'],
      [12, 'knitted jacket'],
      [12, 'overshirt'],
    ],
    colours: WORN,
    patterns: [
      [86, 'plain'],
      [8, 'check'],
      [6, 'stripe'],
    ],
  },
  {
    often: 8,
    kinds: [
      [30, 'wool coat'],
      [25, 'trench coat'],
      [20, 'short coat'],
      [15, 'rain jacket'],
      [10, 'down jacket'],
    ],
    colours: [
      [25, 'black'],
      [22, 'navy'],
      [20, 'camel'],
      [13, 'charcoal'],
      [10, 'olive'],
      [10, 'burgundy'],
    ],
    patterns: [
      [90, 'plain'],
      [10, 'herringbone'],
    ],
  },
  {
    often: 11,
    kinds: [
      [26, 'ankle boots'],
      [22, 'trainers'],
      [20, 'loafers'],
      [16, 'ballet flats'],
      [16, 'block heels'],
    ],
    colours: LEATHER,
    patterns: PLAIN,
  },
  {
    often: 7,
    kinds: [
      [40, 'tote'],
      [40, 'cross-body bag'],
      [20, 'clutch'],
    ],
    colours: LEATHER,
    patterns: PLAIN,
  },
  {
    often: 7,
    kinds: [
      [50, 'scarf'],
      [30, 'beret'],
      [20, 'belt'],
    ],
    colours: WORN,
    patterns: [
      [75, 'plain'],
      [25, 'stripe'],
    ],
  },
];

/** One group's share of a wardrobe, its kinds in their shares and each piece in a colour, pattern and weight of its own. */
const piecesOf = (group: Group, count: number, random: () => number): readonly Piece[] => {
  const drawn = <Item>(odds: Odds<Item>): Item => {
    const till = random() * odds.reduce((sum, [often]) => sum + often, 0);
    let from = 0;
    for (const [often, item] of odds) {
      from += often;
      if (from > till) return item;
    }
    return (odds[0] as Odds<Item>[number])[1];
  };
  return Array.from({ length: count }, (_, index) => {
    const kind = drawn(group.kinds);
    const plain = pieceOf(`${kind.replaceAll(' ', '-')}-${group.often}-${index}`, kind, drawn(group.colours));
    const weight = (0.8 + random() * 0.4) * plain.grams.value;
    return {
      ...plain,
      pattern: { type: drawn(group.patterns), scale: random() < 0.6 ? 'small' : 'large' },
      grams: { ...plain.grams, value: weight, low: weight, high: weight },
      statement: KINDS[kind].places[0] !== 'shoes' && random() < 0.05,
    };
  });
};

/** A wardrobe as people have them: many of what is easy, few of what is not, much black and navy. The same for a seed. */
export const likelyWardrobe = (size: number, seed = 1): readonly Piece[] => {
  const random = seededRandom(seed);
  const often = GROUPS.reduce((sum, group) => sum + group.often, 0);
  return GROUPS.flatMap((group) => piecesOf(group, Math.round((size * group.often) / often), random));
};
