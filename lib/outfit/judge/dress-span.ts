import type { DressInterval, Piece } from '../../model/piece.ts';
import { DRESS_CODES } from '../../vocabulary/dress-codes.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { isLeftAtDoor } from '../rules/traits.ts';

const DRESSIEST = DRESS_CODES.length - 1;

/** The dress codes that pieces have in common, as indices of the scale, and the pieces that set its ends. */
export interface DressSpan extends DressInterval {
  /** False where no code is common: then `low` lies above `high`. */
  readonly meets: boolean;
  /** Ids of the pieces that are worn no plainer than `low`; none where nothing keeps them from casual. */
  readonly lowSetBy: readonly string[];
  /** Ids of the pieces that are worn no dressier than `high`; none where nothing keeps them from formal. */
  readonly highSetBy: readonly string[];
}

/** What all pieces worn indoors have in common on the dress scale; the whole scale for none. */
export const dressSpanOf = (worn: readonly Pick<Piece, 'id' | 'dress' | 'kind' | 'places'>[]): DressSpan => {
  const pieces = worn.filter((piece) => !isLeftAtDoor(piece));
  const low = Math.max(0, ...pieces.map(({ dress }) => dress.low));
  const high = Math.min(DRESSIEST, ...pieces.map(({ dress }) => dress.high));
  const idsWhere = (sets: (dress: DressInterval) => boolean): readonly string[] =>
    pieces.filter(({ dress }) => sets(dress)).map(({ id }) => id);
  return {
    low,
    high,
    meets: low <= high,
    lowSetBy: low === 0 ? [] : idsWhere((dress) => dress.low === low),
    highSetBy: high === DRESSIEST ? [] : idsWhere((dress) => dress.high === high),
  };
};

const codeAt = (index: number): string => DRESS_CODES[index] ?? '';

/** The span in words: first what it is, then which pieces set its ends. Where no code is common, the two that stand apart. */
export const dressSpanPhrases = (span: DressSpan, nameOf: (id: string) => string): readonly Phrase[] => {
  const { low, high, meets, lowSetBy, highSetBy } = span;
  const said = { low: codeAt(low), high: codeAt(high) };
  const [dressy = ''] = lowSetBy;
  const [plain = ''] = highSetBy;
  if (!meets) {
    const apart = { plain: nameOf(plain), dressy: nameOf(dressy), ends: said.high, begins: said.low };
    return [phrase('outfit', 'dress apart', apart)];
  }
  return [
    phrase('outfit', 'dress span', said),
    ...(lowSetBy.length === 0
      ? []
      : [phrase('outfit', 'dress no plainer', { pieces: lowSetBy.map(nameOf), low: said.low })]),
    ...(highSetBy.length === 0
      ? []
      : [phrase('outfit', 'dress no dressier', { pieces: highSetBy.map(nameOf), high: said.high })]),
  ];
};
