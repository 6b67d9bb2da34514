import { COLOUR, HUE_FAMILIES_AT_MOST } from './colour.ts';
import { DRESS_MEETS, ON_THE_WAY } from './dress.ts';
import { FABRIC } from './fabric.ts';
import { BARE_LEGS, LEGWEAR_SUITS, SHOES_SUIT, SHORTS_SHOES } from './feet.ts';
import {
  BELT_SUITS,
  LAPEL_SUITS,
  METALS_AGREE,
  ONE_AT_THE_NECK,
  ONE_STATEMENT,
  ORNAMENTS_AT_MOST,
  POCKET_SQUARE,
  TIE_JACKET,
  TIE_SUITS,
} from './finish.ts';
import { LAYER_OVER, UNDERLAYER_ALONE, UNDERLAYER_HIDDEN } from './layers.ts';
import { DRY_FEET, HEELS_ON_GROUND } from './occasion.ts';
import { PATTERN_COLOUR, PATTERN_COUNT, PATTERN_SCALE } from './pattern.ts';
import type { HouseRule } from './rule.ts';
import { ALWAYS_TOGETHER, NEVER_TOGETHER } from './sets.ts';
import { LENGTHS_MEET, ONE_OF_A_KIND, PROPORTION } from './shape.ts';
import { OFF_THE_SKIN, SLEEVES_BENEATH } from './skin.ts';
import { ONE_SEASON } from './warmth.ts';
import { BAG_BY_THE_WATER } from './water.ts';

/** Every house rule, in the order in which reasons are given: what a stylist would say first comes first. */
export const HOUSE_RULES: readonly HouseRule[] = [
  NEVER_TOGETHER,
  ALWAYS_TOGETHER,
  DRESS_MEETS,
  ON_THE_WAY,
  COLOUR,
  HUE_FAMILIES_AT_MOST,
  PATTERN_COUNT,
  PATTERN_SCALE,
  PATTERN_COLOUR,
  PROPORTION,
  LENGTHS_MEET,
  LAYER_OVER,
  UNDERLAYER_ALONE,
  UNDERLAYER_HIDDEN,
  ONE_OF_A_KIND,
  FABRIC,
  ONE_SEASON,
  SHOES_SUIT,
  SHORTS_SHOES,
  BAG_BY_THE_WATER,
  LEGWEAR_SUITS,
  BARE_LEGS,
  HEELS_ON_GROUND,
  DRY_FEET,
  ONE_STATEMENT,
  ORNAMENTS_AT_MOST,
  METALS_AGREE,
  ONE_AT_THE_NECK,
  TIE_SUITS,
  TIE_JACKET,
  BELT_SUITS,
  LAPEL_SUITS,
  POCKET_SQUARE,
  OFF_THE_SKIN,
  SLEEVES_BENEATH,
];

/** Ids by hand, so that a call that misspells one does not compile. */
export type HouseRuleId =
  | 'never-together'
  | 'always-together'
  | 'dress-meets'
  | 'on-the-way'
  | 'colour'
  | 'hue-families'
  | 'pattern-count'
  | 'pattern-scale'
  | 'pattern-colour'
  | 'proportion'
  | 'lengths'
  | 'layer-over'
  | 'underlayer-alone'
  | 'underlayer-hidden'
  | 'one-of-a-kind'
  | 'fabric'
  | 'one-season'
  | 'shoes-suit'
  | 'shorts-shoes'
  | 'bag-by-the-water'
  | 'legwear-suits'
  | 'bare-legs'
  | 'heels-on-ground'
  | 'dry-feet'
  | 'one-statement'
  | 'ornaments'
  | 'metals'
  | 'one-at-the-neck'
  | 'tie-suits'
  | 'tie-jacket'
  | 'belt-suits'
  | 'lapel-suits'
  | 'pocket-square'
  | 'off-the-skin'
  | 'sleeves-beneath';

/** A house rule, the grammar of looks, or what an occasion or a question asks for. */
export type RuleId = HouseRuleId | 'grammar' | 'occasion';
