import { tone } from '../kit/index.ts';

/** Colour of a button dyed to go with a cloth: duller and darker than the cloth. */
export const buttonColour = (cloth: string): string => tone(cloth, -0.14, 0.6);
