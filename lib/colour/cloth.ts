import type { NamedColour } from '../model/index.ts';
import { namedColour } from './convert.ts';
import { CLOTH_COLOURS } from './names/index.ts';

/** Lower case, single spaces, hyphens as spaces except in `off-white`, British `grey`. */
export const plainName = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .replace(/\bgray\b/g, 'grey')
    .replace(/\bcolor\b/g, 'colour');

const BY_PLAIN_NAME: ReadonlyMap<string, string> = new Map(
  Object.keys(CLOTH_COLOURS).map((name) => [plainName(name), name]),
);

/** A colour of the dictionary by name, whatever its capitals, hyphens and spacing. */
export const clothColour = (text: string): NamedColour | undefined => {
  const name = BY_PLAIN_NAME.get(plainName(text));
  const value = name === undefined ? undefined : CLOTH_COLOURS[name];
  if (name === undefined || value === undefined) return undefined;
  const [l, c, h] = value;
  return namedColour(name, { mode: 'oklch', l, c, h });
};
