import { type Color, clampRgb, converter, formatHex, toGamut } from 'culori';
import type { NamedColour } from '../model/index.ts';

const toOklch = converter('oklch');
const toRgb = converter('rgb');
const toDisplay = toGamut('rgb', 'oklch');

/** Spaces in which CSS clamps each channel; every other space is mapped in OKLCH so that the hue is kept. */
const CLAMPED_SPACES: ReadonlySet<string> = new Set(['rgb', 'hsl', 'hwb']);

/** Below this chroma a hue cannot be told; it is then written as 0. culori keeps numerical dust up to about 1e-5 */
const HUELESS_CHROMA = 0.0005;

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

/**
 * The nearest sRGB colour as `#rrggbb`. Out-of-gamut colours are mapped by the method of CSS Color 4, section 13.2
 * (chroma reduced in OKLCH until the difference is not seen), legacy sRGB spaces are clamped. Alpha is laid on white.
 */
export const displayHex = (colour: Color): string => {
  const inside = CLAMPED_SPACES.has(colour.mode) ? clampRgb(toRgb(colour)) : toDisplay(colour);
  const alpha = Math.min(1, Math.max(0, colour.alpha ?? 1));
  const onWhite = (channel: number): number => channel * alpha + (1 - alpha);
  const { r = 0, g = 0, b = 0 } = toRgb(inside);
  return formatHex({ mode: 'rgb', r: onWhite(r), g: onWhite(g), b: onWhite(b) });
};

/** OKLCH of a hex colour, rounded so that equal colours have equal records: l and c to 4 digits, h to 2. */
export const oklchOf = (hex: string): NamedColour['oklch'] => {
  const { l, c, h = 0 } = toOklch(hex) ?? { l: 0, c: 0, h: 0 };
  return c < HUELESS_CHROMA ? { l: round(l, 4), c: 0, h: 0 } : { l: round(l, 4), c: round(c, 4), h: round(h, 2) % 360 };
};

/** The record of a colour: what the screen shows is the one truth, its OKLCH is computed from the hex. */
export const namedColour = (name: string, colour: Color): NamedColour => {
  const hex = displayHex(colour);
  return { name, hex, oklch: oklchOf(hex) };
};
