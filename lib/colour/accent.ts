import type { NamedColour, Piece } from '../model/index.ts';
import { contrastOf, TEXT_CONTRAST } from './contrast.ts';
import { displayHex } from './convert.ts';
import { isMetal, isNeutral } from './neutral.ts';
import { paletteColours } from './palette-colours.ts';

/** The house's paper by day and by night. */
export const PAPER_LIGHT = '#f5efe4';
export const PAPER_DARK = '#24211f';

/** Lightness is searched in these steps; finer cannot be seen. */
const STEP = 0.004;

/** Room above the limit, so that rounding in a renderer never falls below it. */
const MARGIN = 0.05;

/** The colour of the same hue and chroma, and the nearest lightness, that can be read as text on a paper. */
export const legibleOn = (paper: string, colour: NamedColour): string => {
  const { l, c, h } = colour.oklch;
  const at = (lightness: number): string => displayHex({ mode: 'oklch', l: lightness, c, h });
  for (let away = 0; away <= 1; away += STEP) {
    const found = [l - away, l + away]
      .filter((lightness) => lightness >= 0 && lightness <= 1)
      .map(at)
      .find((hex) => contrastOf(hex, paper) >= TEXT_CONTRAST + MARGIN);
    if (found !== undefined) return found;
  }
  return contrastOf('#000000', paper) > contrastOf('#ffffff', paper) ? '#000000' : '#ffffff';
};

/** How much a colour speaks for its capsule: bright ones over quiet ones, seen ones over specks. Own choice. */
const voice = (colour: NamedColour, share: number): number => colour.oklch.c * Math.sqrt(share);

/** The colour that stands for a capsule: its most telling colour, or its most coloured neutral when it has none. */
export const accentColour = (pieces: readonly Piece[]): NamedColour | undefined => {
  const palette = paletteColours(pieces).filter(({ colour }) => !isMetal(colour));
  const coloured = palette.filter(({ colour }) => !isNeutral(colour));
  const choice = coloured.length > 0 ? coloured : palette;
  return choice.reduce<(typeof choice)[number] | undefined>(
    (best, next) =>
      best === undefined || voice(next.colour, next.share) > voice(best.colour, best.share) ? next : best,
    undefined,
  )?.colour;
};

/** What an accent is made of when a capsule has no pieces: the house's ink blue. */
const HOUSE_ACCENT: NamedColour = { name: 'ink blue', hex: '#222f4d', oklch: { l: 0.3088, c: 0.0565, h: 265 } };

/**
 * The one accent a guide takes from its own palette, as text colours on light and on dark paper: contrast at least
 * 4.5 : 1 by WCAG 2.2 on both.
 */
export const accentOf = (
  pieces: readonly Piece[],
  paper: { readonly light: string; readonly dark: string } = { light: PAPER_LIGHT, dark: PAPER_DARK },
): { readonly light: string; readonly dark: string } => {
  const colour = accentColour(pieces) ?? HOUSE_ACCENT;
  return { light: legibleOn(paper.light, colour), dark: legibleOn(paper.dark, colour) };
};
