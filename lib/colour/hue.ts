import type { NamedColour } from '../model/index.ts';
import { isAchromatic, isNeutral } from './neutral.ts';

/** The closed list of hue families. */
export const HUE_FAMILIES = ['neutral', 'red', 'orange', 'yellow', 'green', 'teal', 'blue', 'purple', 'pink'] as const;
export type HueFamily = (typeof HUE_FAMILIES)[number];

/**
 * Where each family ends in OKLCH degrees, going up from 12. The ends lie half way between neighbouring colour words of
 * the dictionary (orange and mustard, green and teal…). common practice, no source
 */
const FAMILY_ENDS: readonly (readonly [end: number, family: HueFamily])[] = [
  [37, 'red'],
  [68, 'orange'],
  [114, 'yellow'],
  [178, 'green'],
  [232, 'teal'],
  [290, 'blue'],
  [330, 'purple'],
  [360, 'pink'],
];

/** Reds lighter than this are called pink, and dusty ones (rose, blush) are too. common practice, no source */
const PINK_LIGHTNESS = 0.68;
const PINKISH_HUES_END = 33;
const RED_FROM = 5;
const PINK_FROM = 350;
/** Below this lightness the wines at pink hues are called red and the plums at magenta hues purple. common practice, no source */
const DARK_BERRY = 0.45;

/** The family of a colour; every neutral is `neutral`. */
export const hueFamily = (colour: NamedColour): HueFamily => {
  if (isAchromatic(colour) || isNeutral(colour)) return 'neutral';
  const { l, h } = colour.oklch;
  if (h >= RED_FROM && h < PINKISH_HUES_END && l >= PINK_LIGHTNESS) return 'pink';
  if (h < RED_FROM || h >= PINK_FROM) return l < DARK_BERRY ? 'red' : 'pink';
  const family = FAMILY_ENDS.find(([end]) => h < end)?.[1] ?? 'pink';
  return family === 'pink' && l < DARK_BERRY ? 'purple' : family;
};

/**
 * Anchors of the artist's wheel (Itten 1961: red faces green, orange faces blue, yellow faces violet), OKLCH hue to
 * wheel angle. The OKLCH hues are those of the dictionary's plain red, orange, yellow, green, blue and purple; the
 * wheel is linear between them. Wheel from memory.
 */
const ANCHORS: readonly (readonly [oklchHue: number, wheel: number])[] = [
  [25, 0],
  [57, 60],
  [98, 120],
  [152, 180],
  [258, 240],
  [310, 300],
  [385, 360],
];

/** Angle on the artist's wheel, 0 to 360, of an OKLCH hue in degrees. Red is 0, yellow 120, blue 240. */
export const wheelAngle = (oklchHue: number): number => {
  const first = ANCHORS[0]?.[0] ?? 0;
  const hue = first + ((((oklchHue - first) % 360) + 360) % 360);
  for (let index = 1; index < ANCHORS.length; index += 1) {
    const [fromHue, from] = ANCHORS[index - 1] ?? [0, 0];
    const [toHue, to] = ANCHORS[index] ?? [360, 360];
    if (hue <= toHue) return (from + ((hue - fromHue) / (toHue - fromHue)) * (to - from)) % 360;
  }
  return 0;
};

/** The OKLCH hue, in degrees, at an angle of the artist's wheel: the way back from `wheelAngle`. */
export const hueAtAngle = (angle: number): number => {
  const turned = ((angle % 360) + 360) % 360;
  for (let index = 1; index < ANCHORS.length; index += 1) {
    const [fromHue, from] = ANCHORS[index - 1] ?? [0, 0];
    const [toHue, to] = ANCHORS[index] ?? [360, 360];
    if (turned <= to) return (fromHue + ((turned - from) / (to - from)) * (toHue - fromHue)) % 360;
  }
  return 0;
};

/** Smaller angle between two directions, 0 to 180 degrees. */
export const angleBetween = (a: number, b: number): number => {
  const apart = Math.abs(a - b) % 360;
  return Math.min(apart, 360 - apart);
};
