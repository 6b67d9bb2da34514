import type { NamedColour } from '../model/index.ts';
import { clothColour } from './cloth.ts';
import { differenceOf } from './difference.ts';
import { COLOUR_NAMES } from './names/all.ts';
import { METAL_NAMES } from './names/index.ts';

/** The dictionary without metals: a plain value is never taken for metal, which would make it go with everything. */
const CLOTHS: readonly NamedColour[] = COLOUR_NAMES.filter((name) => !METAL_NAMES.has(name)).flatMap(
  (name) => clothColour(name) ?? [],
);

/** The cloth colour of the dictionary that looks most like a hex colour, by CIEDE2000. */
export const nearestCloth = (hex: string): NamedColour =>
  CLOTHS.reduce((best, cloth) => (differenceOf(cloth.hex, hex) < differenceOf(best.hex, hex) ? cloth : best));

/** A word for a colour that has none: the name of the nearest cloth. */
export const nameOf = (hex: string): string => nearestCloth(hex).name;
