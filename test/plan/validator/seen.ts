import type { Look, Occasion, Piece } from '../../../lib/model/index.ts';
import type { Pieces } from './occasion.ts';

/** A look as it is worn to an occasion. */
export interface WornTo {
  readonly occasion: Occasion;
  readonly look: Look;
  readonly on: readonly string[];
  /** Chosen by the stylist. */
  readonly fixed: boolean;
}

const CORE = ['one-piece', 'top', 'bottom'];
const goesOver = ({ places }: Piece): boolean => places.some((place) => /^(mid|outer) layer$/.test(place));

/** The clothes people see: the core, and what is on over it; nothing of a swim. */
export const seenOf = ({ look, on }: Pick<WornTo, 'look' | 'on'>, pieces: Pieces): string =>
  look.worn.some(({ slot }) => slot === 'swim')
    ? ''
    : look.worn
        .filter(({ piece, slot }) => {
          const found = pieces.get(piece);
          return CORE.includes(slot) || (on.includes(piece) && found !== undefined && goesOver(found));
        })
        .map(({ piece }) => piece)
        .sort()
        .join(' with ');

/**
 * From smart casual up no look is seen on two days, unless the stylist chose it: then the others that show it keep to
 * the days it was chosen for.
 */
export const seenTwice = (worn: readonly WornTo[], pieces: Pieces): readonly string[] => {
  const dressed = worn.filter(({ occasion }) => occasion.dress !== 'casual');
  return dressed.flatMap((one, index) => {
    const clothes = seenOf(one, pieces);
    const same = dressed.filter((other) => clothes !== '' && seenOf(other, pieces) === clothes);
    const chosen = same.filter(({ fixed }) => fixed).map(({ occasion }) => occasion.on);
    if (one.fixed || chosen.includes(one.occasion.on)) return [];
    const others = same.filter(({ occasion }) => occasion.on !== one.occasion.on);
    const before = chosen.length > 0 || others.some((other) => dressed.indexOf(other) < index);
    return before ? [`${clothes} is seen again at ${one.occasion.id}`] : [];
  });
};

const coreOf = ({ look }: WornTo): string =>
  look.worn
    .filter(({ slot }) => CORE.includes(slot))
    .map(({ piece }) => piece)
    .sort()
    .join('+');

/** One-pieces, or tops with bottoms, that a stylist must be told of: shown on two days in a row, at two dressed occasions, or in the same look. */
export const shownAgain = (worn: readonly WornTo[], pieces: Pieces): readonly string[] => {
  const daysApart = (a: WornTo, b: WornTo): number =>
    Math.abs(Date.parse(a.occasion.on) - Date.parse(b.occasion.on)) / 86_400_000;
  const dressed = (a: WornTo): boolean => a.occasion.dress !== 'casual';
  const tell = (a: WornTo, b: WornTo): boolean =>
    coreOf(a) !== '' &&
    coreOf(a) === coreOf(b) &&
    !(a.fixed && b.fixed) &&
    (daysApart(a, b) === 1 ||
      (daysApart(a, b) > 1 && ((dressed(a) && dressed(b)) || seenOf(a, pieces) === seenOf(b, pieces))));
  return [...new Set(worn.filter((a) => worn.some((b) => tell(a, b))).map(coreOf))].sort();
};
