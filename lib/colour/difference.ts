import { differenceCiede2000 } from 'culori/fn';
import type { NamedColour } from '../model/index.ts';
import { toLch } from './lab.ts';

const ciede2000 = differenceCiede2000();

/**
 * CIEDE2000 difference of two hex colours (Sharma, Wu and Dalal 2005; kL = kC = kH = 1), by culori over Lab under D65.
 * 0 is equal, 100 is black against white.
 */
export const differenceOf = (a: string, b: string): number => ciede2000(a, b);

/** Difference classes, from the smallest. */
export type DifferenceWord =
  | 'same to the eye'
  | 'nearly the same'
  | 'a shade apart'
  | 'clearly different'
  | 'far apart';

/**
 * Upper ends of the classes in CIEDE2000. 2: cloth laid side by side passes as one dye lot. 6: seen when side by side,
 * not across a room. 14: the same colour word, one lighter or darker. common practice, no source
 */
const CLASS_ENDS: readonly (readonly [end: number, word: DifferenceWord])[] = [
  [2, 'same to the eye'],
  [6, 'nearly the same'],
  [14, 'a shade apart'],
  [35, 'clearly different'],
];

/** The class of a CIEDE2000 difference. */
export const differenceWord = (difference: number): DifferenceWord =>
  CLASS_ENDS.find(([end]) => difference < end)?.[1] ?? 'far apart';

/** Ends of the two lowest classes, for rules that ask whether two colours could be taken for one another. */
export const SAME_TO_THE_EYE = 2;
export const NEARLY_THE_SAME = 6;

/** How the second colour differs most from the first. */
export type DifferenceDirection = 'lighter' | 'darker' | 'brighter' | 'quieter' | 'another hue';

/** Which of lightness, chroma and hue carries most of the difference from `a` to `b`, in Lab under D65. */
export const differenceDirection = (a: Pick<NamedColour, 'hex'>, b: Pick<NamedColour, 'hex'>): DifferenceDirection => {
  const from = toLch(a.hex);
  const to = toLch(b.hex);
  if (from === undefined || to === undefined) return 'another hue';
  const lightness = to.l - from.l;
  const chroma = to.c - from.c;
  const turn = (((to.h ?? 0) - (from.h ?? 0)) * Math.PI) / 180;
  const hue = 2 * Math.sqrt(from.c * to.c) * Math.abs(Math.sin(turn / 2));
  if (hue > Math.abs(lightness) && hue > Math.abs(chroma)) return 'another hue';
  if (Math.abs(lightness) >= Math.abs(chroma)) return lightness > 0 ? 'lighter' : 'darker';
  return chroma > 0 ? 'brighter' : 'quieter';
};
