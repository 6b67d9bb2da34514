import type { Piece } from '../model/index.ts';
import type { Place } from '../vocabulary/index.ts';
import { type DifferenceWord, differenceOf, differenceWord, NEARLY_THE_SAME } from './difference.ts';
import { isMetal } from './neutral.ts';

/** Two pieces of one place whose colours add no variety. */
export interface TooAlike {
  readonly place: Place;
  readonly one: string;
  readonly two: string;
  /** CIEDE2000 of the grounds. */
  readonly difference: number;
  readonly word: DifferenceWord;
}

/** Places where the eye wants variety; two pairs of black socks are no fault. common practice, no source */
const VARIED_PLACES: readonly Place[] = ['one-piece', 'top', 'bottom', 'swim', 'mid layer', 'outer layer', 'scarf'];

/**
 * Pieces of one place that differ by less than a shade: two pieces of one colour differ at least by a lighter or darker
 * shade (common practice, no source). A print and a plain differ enough, so do two prints of different kinds.
 */
export const tooAlike = (pieces: readonly Piece[]): readonly TooAlike[] => {
  return VARIED_PLACES.flatMap((place) => {
    const there = pieces.filter((piece) => piece.places[0] === place);
    return there.flatMap((one, index) =>
      there.slice(index + 1).flatMap((two): TooAlike[] => {
        const [a] = one.colours;
        const [b] = two.colours;
        if (a === undefined || b === undefined || isMetal(a) || isMetal(b)) return [];
        if (one.pattern.type !== two.pattern.type) return [];
        const difference = differenceOf(a.hex, b.hex);
        if (difference >= NEARLY_THE_SAME) return [];
        return [
          {
            place,
            one: one.id,
            two: two.id,
            difference: Number(difference.toFixed(2)),
            word: differenceWord(difference),
          },
        ];
      }),
    );
  });
};
