export { type Card, cardSvg, drawCard } from './card.ts';
export { CARD_SIZES, type CardFormat, type CardInput, type CardPiece } from './input.ts';
export type { LaidWord } from './letters.ts';
export { INK, PAPER } from './palette.ts';
export { swatchMarkup } from './swatch.ts';
