import { type Color, parse } from 'culori';
import type { NamedColour } from '../model/index.ts';
import { clothColour, plainName } from './cloth.ts';
import { displayHex, namedColour, oklchOf } from './convert.ts';
import { shaded } from './modifiers.ts';
import { nameOf } from './name-of.ts';

/** Longest text that is looked at; no colour is written longer. */
const MOST_CHARACTERS = 120;

/**
 * A colour as CSS Color 4 writes it: a name, hex, `rgb()`, `hsl()`, `hwb()`, `lab()`, `lch()`, `oklab()`, `oklch()`,
 * `color()`. Undefined for anything else, for colours that depend on a page (`currentcolor`, system colours) and for
 * a fully transparent one, which has no colour. A value without a name takes that of the nearest cloth.
 */
export const parseCssColour = (text: string): NamedColour | undefined => {
  const written = text.trim();
  if (written.length > MOST_CHARACTERS) return undefined;
  // culori also reads hex without its sign, which would make colours of words such as `decade`
  if (/^[0-9a-f]+$/i.test(written)) return undefined;
  const colour = parsed(written.toLowerCase());
  if (colour === undefined || colour.alpha === 0 || !allFinite(colour)) return undefined;
  const isName = /^[a-z]+$/i.test(written);
  return namedColour(isName ? written.toLowerCase() : nameOf(displayHex(colour)), colour);
};

/** culori 4.0.2 throws on a few texts that are no colour, such as `/0a`, instead of answering undefined. */
const parsed = (text: string): Color | undefined => {
  try {
    return parse(text);
  } catch {
    return undefined;
  }
};

const allFinite = (colour: Color): boolean =>
  Object.values(colour).every((value) => typeof value !== 'number' || Number.isFinite(value));

/**
 * A colour as a stylist writes it: a name of the dictionary (`bottle green`), one with a shade before it
 * (`dusty lilac`, `dark rust`), or any CSS Color 4 value. The dictionary comes first, since `navy` on a coat is cloth
 * and not `#000080`. Undefined when it is none of these; see `nearestColourNames`.
 */
export const parseColour = (text: string): NamedColour | undefined => {
  if (text.length > MOST_CHARACTERS) return undefined;
  return clothColour(text) ?? parseCssColour(text) ?? shadedColour(text);
};

const cssName = (text: string): NamedColour | undefined => (/^[a-z]+$/.test(text) ? parseCssColour(text) : undefined);

const shadedColour = (text: string): NamedColour | undefined => {
  const [shade = '', ...rest] = plainName(text).split(' ');
  const base = rest.length === 0 ? undefined : (clothColour(rest.join(' ')) ?? cssName(rest.join(' ')));
  if (base === undefined) return undefined;
  const value = shaded(shade, base.oklch);
  return value === undefined ? undefined : namedColour(`${shade} ${base.name}`, { mode: 'oklch', ...value });
};

/**
 * The record of a colour that carries its own display name beside a value, `{name: wet slate, value: "#4a5560"}`.
 * `neutral` is the stylist's override. Undefined when the value is not a colour.
 */
export const colourNamed = (name: string, value: string, neutral?: boolean): NamedColour | undefined => {
  const colour = parseColour(value);
  if (colour === undefined) return undefined;
  const shown = name.trim() === '' ? colour.name : name.trim();
  return { name: shown, hex: colour.hex, oklch: oklchOf(colour.hex), ...(neutral === undefined ? {} : { neutral }) };
};
