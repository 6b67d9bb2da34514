import { toLab } from './lab.ts';

/** CIELAB under D65. */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

const DEGREES = 180 / Math.PI;

/** HSY: what a single colour's hue, chroma and lightness bring to the pair. Constants as published. */
const hueEffect = ({ l, a, b }: Lab): number => {
  const chroma = Math.hypot(a, b);
  const hue = (Math.atan2(b, a) * DEGREES + 360) % 360;
  const chromaPart = 0.5 + 0.5 * Math.tanh(-2 + 0.5 * chroma);
  const huePart = -0.08 - 0.14 * Math.sin((hue + 50) / DEGREES) - 0.07 * Math.sin((2 * hue + 90) / DEGREES);
  const lightnessPart = ((0.22 * l - 12.8) / 10) * Math.exp((90 - hue) / 10 - Math.exp((90 - hue) / 10));
  return chromaPart * (huePart + lightnessPart);
};

/**
 * Two-colour harmony CH of Ou and Luo 2006 (Color Research and Application 31(3), 191–204): HC + HL + HH in CIELAB.
 * About −1.5 (disharmonious) to +1.5 (harmonious). It rewards near-identical colours, so it is one part of a score.
 */
export const ouLuoHarmony = (one: Lab, two: Lab): number => {
  const chromaOne = Math.hypot(one.a, one.b);
  const chromaTwo = Math.hypot(two.a, two.b);
  const chromaDifference = chromaOne - chromaTwo;
  const hueDifferenceSquared = Math.max(0, (one.a - two.a) ** 2 + (one.b - two.b) ** 2 - chromaDifference ** 2);
  const chromatic = Math.sqrt(hueDifferenceSquared + (chromaDifference / 1.46) ** 2);
  const chromaticEffect = 0.04 + 0.53 * Math.tanh(0.8 - 0.045 * chromatic);
  const sumEffect = 0.28 + 0.54 * Math.tanh(-3.88 + 0.029 * (one.l + two.l));
  const gapEffect = 0.14 + 0.15 * Math.tanh(-2 + 0.2 * Math.abs(one.l - two.l));
  return chromaticEffect + sumEffect + gapEffect + hueEffect(one) + hueEffect(two);
};

/** The same for two hex colours. */
export const harmonyOf = (one: string, two: string): number => {
  const a = toLab(one);
  const b = toLab(two);
  return a === undefined || b === undefined ? 0 : ouLuoHarmony(a, b);
};
