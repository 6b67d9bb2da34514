import { blend } from '../kit/index.ts';
import type { CardInput } from './input.ts';

/** Tailor's paper, ink that is not black. */
export const PAPER = '#f2eadc';
export const INK = '#352e27';

export interface CardColours {
  readonly paper: string;
  readonly ink: string;
  /** For small print: over 4.5 : 1 on the house's paper. */
  readonly soft: string;
  readonly hairline: string;
  readonly accent: string;
}

export const coloursOf = (input: Pick<CardInput, 'paper' | 'ink' | 'accent'>): CardColours => {
  const paper = input.paper ?? PAPER;
  const ink = input.ink ?? INK;
  return { paper, ink, soft: blend(ink, paper, 0.28), hairline: blend(ink, paper, 0.52), accent: input.accent };
};
