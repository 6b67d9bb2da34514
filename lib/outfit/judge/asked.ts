import { isRemovable, roundClo, UNDERTHINGS_CLO, wornClo } from '../../comfort/clo.ts';
import type { Piece } from '../../model/piece.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { demandsOf, formRefused, pieceRefused } from '../grammar/asked.ts';
import type { CoreForm } from '../grammar/forms.ts';
import type { Restriction } from '../restriction.ts';
import type { Rulebook } from '../rules/rulebook.ts';
import type { Worn } from '../worn.ts';
import { type Judged, type Reason, reasonsOf } from './reasons.ts';

/** What of an occasion's wishes single pieces do not meet. */
const occasionReasons = (worn: readonly Worn[], rulebook: Rulebook, asked: Restriction): readonly Reason[] =>
  worn.flatMap((seat) => {
    const refused = pieceRefused(seat, asked);
    const pieces = [seat.piece.id];
    return [
      ...(refused === undefined
        ? []
        : [{ rule: 'occasion', severity: 'rules out', message: refused, pieces } satisfies Reason]),
      ...rulebook.occasions.flatMap(({ id, rule, severity, threshold }) => {
        const message = rule.at(seat, asked, threshold);
        return message === undefined ? [] : [{ rule: id, severity, message, pieces }];
      }),
    ];
  });

const wholeOccasionReasons = (worn: readonly Worn[], form: CoreForm, asked: Restriction): readonly Reason[] => {
  const out = (message: Phrase): Reason => ({ rule: 'occasion', severity: 'rules out', message, pieces: [] });
  const unmet = demandsOf(asked).filter(({ answers }) => !worn.some(answers));
  const absent = (asked.pieces ?? []).filter((id) => !worn.some(({ piece }) => piece.id === id));
  const base = form === 'swim' ? 0 : UNDERTHINGS_CLO;
  const sum = (seats: readonly Worn[]): number =>
    roundClo(seats.reduce((total, { piece, slot }) => total + wornClo(piece, slot), base));
  const on = sum(worn);
  const off = sum(worn.filter(({ slot }) => !isRemovable(slot)));
  const { clo } = asked;
  return [
    ...unmet.map((demand) => out(demand.unmet)),
    ...absent.map((piece) => out(phrase('outfit', 'must be worn', { piece }))),
    ...(clo !== undefined && on < roundClo(clo.min) ? [out(phrase('outfit', 'too cold', { on, min: clo.min }))] : []),
    ...(clo !== undefined && off > roundClo(clo.max) ? [out(phrase('outfit', 'too warm', { off, max: clo.max }))] : []),
  ];
};

/** What of a question seated pieces do not answer: their form, each piece, and when they make a whole look, all together. */
export const askedReasons = (
  { worn, form, whole }: Judged<Piece>,
  rulebook: Rulebook,
  asked: Restriction,
): readonly Reason[] => {
  const refused = formRefused(form, asked);
  return [
    ...(refused === undefined
      ? []
      : [{ rule: 'occasion', severity: 'rules out', message: refused, pieces: [] } satisfies Reason]),
    ...occasionReasons(worn, rulebook, asked),
    ...(whole ? wholeOccasionReasons(worn, form, asked) : []),
  ];
};

/** Every reason against seated pieces at what is asked. */
export const reasonsAsked = (
  judged: Judged<Piece>,
  rulebook: Rulebook,
  asked: Restriction,
  nameOf: (id: string) => string,
): readonly Reason[] => reasonsOf(judged, rulebook, askedReasons(judged, rulebook, asked), nameOf);
