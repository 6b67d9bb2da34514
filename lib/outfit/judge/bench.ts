import type { Piece } from '../../model/piece.ts';
import type { Ground } from '../ground.ts';
import type { Restriction } from '../restriction.ts';
import { askedReasons } from './asked.ts';
import type { Bench } from './verdict.ts';

/** A bench that asks the rules themselves, for a question. */
export const benchOf = (
  { rulebook, pieceById }: Pick<Ground, 'rulebook' | 'pieceById'>,
  restriction: Restriction = {},
): Bench<Piece> => ({
  rulings: rulebook,
  pieceById,
  asked: (judged) => askedReasons(judged, rulebook, restriction),
});
