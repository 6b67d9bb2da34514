import type { NamedColour } from '../model/index.ts';
import { differenceOf, SAME_TO_THE_EYE } from './difference.ts';

/** The stylist's own word on neutrals, for every piece of every wardrobe. */
export interface HouseNeutrals {
  readonly neutral: readonly NamedColour[];
  readonly notNeutral: readonly NamedColour[];
}

const isMeant = (colour: NamedColour, listed: readonly NamedColour[]): boolean =>
  listed.some(({ name, hex }) => name === colour.name || differenceOf(hex, colour.hex) < SAME_TO_THE_EYE);

/**
 * A colour under the house's word on neutrals: one of the same name, or the same to the eye, takes it. What a piece says
 * of its own colour stands above it, the computation below.
 */
export const underHouse = <C extends NamedColour>(colour: C, { neutral, notNeutral }: HouseNeutrals): C => {
  if (colour.neutral !== undefined) return colour;
  if (isMeant(colour, notNeutral)) return { ...colour, neutral: false };
  return isMeant(colour, neutral) ? { ...colour, neutral: true } : colour;
};
