import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind, DrawnPiece } from '../drawing.ts';
import type { DrawnLength } from '../kit/index.ts';
import { sideLength, skirtLength } from '../lower/index.ts';
import { beachShirt } from './beach-shirt.ts';
import { bikini } from './bikini.ts';
import { swimBriefs } from './briefs.ts';
import { kaftan, kaftanLength } from './kaftan.ts';
import { rashSuit, rashSuitLength } from './rash-suit.ts';
import { sarong } from './sarong.ts';
import { swimShorts } from './swim-shorts.ts';
import { swimsuit, swimsuitLength } from './swimsuit.ts';

/** Swimwear and what is thrown over it: everything of the group `swimwear`. */
export const SWIM = {
  swimsuit,
  bikini,
  'swim briefs': swimBriefs,
  'swim shorts': swimShorts,
  'rash suit': rashSuit,
  kaftan,
  sarong,
  'beach shirt': beachShirt,
} satisfies Partial<Record<KindId, DrawKind>>;

type Length = (piece: Pick<DrawnPiece, 'length' | 'lengthCm'>) => DrawnLength;
const LENGTHS: Partial<Record<KindId, Length>> = {
  swimsuit: swimsuitLength,
  'swim shorts': sideLength,
  'rash suit': rashSuitLength,
  kaftan: kaftanLength,
  sarong: skirtLength,
};

/** The length a piece of the group is drawn at; undefined where length says nothing (bikini, briefs) or the upper family decides (beach shirt). */
export const swimLength = (piece: Pick<DrawnPiece, 'kind' | 'length' | 'lengthCm'>): DrawnLength | undefined =>
  LENGTHS[piece.kind]?.(piece);
