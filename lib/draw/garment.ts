import { KINDS, type KindId, LENGTH_CM, within } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { ACCESSORIES, adornmentLength, JEWELLERY } from './adorn/index.ts';
import { BAGS, bagLength } from './carry/index.ts';
import type { Detail, Drawing, DrawKind, DrawnPiece } from './drawing.ts';
import { DRESS, onePieceLength } from './dress/index.ts';
import { SHOES, shoeLength } from './feet/index.ts';
import type { DrawnLength } from './kit/index.ts';
import { LEGWEAR, legwearLength } from './legwear/index.ts';
import { LOWER, lowerLength } from './lower/index.ts';
import { SWIM, swimLength } from './swim/index.ts';
import { UPPER, upperDrawnLength } from './upper/index.ts';

const ARTISTS = {
  ...UPPER,
  ...LOWER,
  ...DRESS,
  ...SWIM,
  ...LEGWEAR,
  ...SHOES,
  ...BAGS,
  ...JEWELLERY,
  ...ACCESSORIES,
} satisfies Readonly<Record<KindId, DrawKind>>;

/** Draws a piece at true size in its own cloth. Pure and seeded: the same piece always gives the same drawing. */
export const drawPiece = (piece: DrawnPiece, detail: Detail = 'full'): Drawing => ARTISTS[piece.kind](piece, detail);

const lengthOf = (piece: DrawnPiece): DrawnLength | undefined => {
  switch (KINDS[piece.kind].group) {
    case 'bottoms':
      return lowerLength(piece);
    case 'one-pieces':
      return onePieceLength(piece);
    case 'swimwear':
      return swimLength(piece);
    case 'legwear':
      return legwearLength(piece);
    case 'tops':
    case 'knits':
    case 'layers':
    case 'coats':
      return upperDrawnLength(piece);
    case 'shoes':
      return shoeLength(piece);
    case 'bags':
      return bagLength(piece);
    default:
      return adornmentLength(piece);
  }
};

/** A note when the measured length of a piece is one that no such garment has, so that it is drawn at another. */
export const lengthNote = (piece: DrawnPiece): Phrase | undefined => {
  const asked = piece.lengthCm;
  const drawn = asked === undefined ? undefined : lengthOf(piece);
  if (asked === undefined) return undefined;
  if (drawn === undefined)
    return within(LENGTH_CM, asked) === asked
      ? undefined
      : phrase('draw', 'length unused', { name: piece.name, asked });
  if (!drawn.clamped) return undefined;
  return phrase('draw', 'length held', { name: piece.name, asked, drawn: drawn.cm });
};
