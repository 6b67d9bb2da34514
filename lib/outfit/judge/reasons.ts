import type { RuleSeverity } from '../../model/house-rules.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { type CoreForm, FORMS } from '../grammar/forms.ts';
import type { SeatedPiece } from '../grammar/seats.ts';
import type { RuleId } from '../rules/index.ts';
import type { Rulings } from '../rules/rulings.ts';
import type { Worn } from '../worn.ts';

/** One thing that is wrong with pieces worn together. */
export interface Reason {
  readonly rule: RuleId;
  readonly severity: Exclude<RuleSeverity, 'off'>;
  readonly message: Phrase;
  /** Ids of the pieces concerned. */
  readonly pieces: readonly string[];
}

const ids = (...pieces: readonly SeatedPiece[]): readonly string[] => [...new Set(pieces.map(({ id }) => id))];

/** Every breach of a pair rule between two worn pieces; `a` in the earlier slot. */
export const pairReasons = <P extends SeatedPiece>(a: Worn<P>, b: Worn<P>, { pairs }: Rulings<P>): readonly Reason[] =>
  pairs.flatMap(({ id, rule, severity, threshold }) => {
    const message = rule.between(a, b, threshold);
    return message === undefined ? [] : [{ rule: id, severity, message, pieces: ids(a.piece, b.piece) }];
  });

const capReasons = <P extends SeatedPiece>(worn: readonly Worn<P>[], { caps }: Rulings<P>): readonly Reason[] =>
  caps.flatMap(({ id, severity, most, counts, tooMany }) => {
    const counted = worn.filter(counts).map(({ piece }) => piece);
    return counted.length > most
      ? [{ rule: id, severity, message: tooMany(counted, most), pieces: ids(...counted) }]
      : [];
  });

const markReasons = <P extends SeatedPiece>(worn: readonly Worn<P>[], { marks }: Rulings<P>): readonly Reason[] =>
  marks.flatMap(({ id, rule, severity, threshold }) => {
    const found = new Set(worn.flatMap((seat) => rule.marks(seat)));
    const bearers = worn.filter((seat) => rule.marks(seat).length > 0).map(({ piece }) => piece);
    return found.size > threshold
      ? [{ rule: id, severity, message: rule.tooMany([...found], threshold), pieces: ids(...bearers) }]
      : [];
  });

const emptyReasons = <P extends SeatedPiece>(
  worn: readonly Worn<P>[],
  form: CoreForm,
  { empties }: Rulings<P>,
): readonly Reason[] =>
  empties
    .filter(({ rule }) => FORMS[form].optional.includes(rule.slot) && !worn.some(({ slot }) => slot === rule.slot))
    .flatMap(({ id, rule, severity, threshold }) =>
      worn.flatMap((seat) => {
        const message = rule.without(seat, threshold);
        return message === undefined ? [] : [{ rule: id, severity, message, pieces: ids(seat.piece) }];
      }),
    );

const companionReasons = <P extends SeatedPiece>(
  worn: readonly Worn<P>[],
  { companions }: Rulings<P>,
  nameOf: (id: string) => string,
) =>
  companions.flatMap(({ id, severity, piece, partner }): readonly Reason[] => {
    const wears = (wanted: string): boolean => worn.some((seat) => seat.piece.id === wanted);
    if (!wears(piece) || wears(partner)) return [];
    const message = phrase('outfit', 'always together', { piece: nameOf(piece), missing: nameOf(partner) });
    return [{ rule: id, severity, message, pieces: [piece, partner] }];
  });

/** What is judged of pieces that are not yet a whole look is only what more pieces cannot mend. */
export interface Judged<P = SeatedPiece> {
  readonly worn: readonly Worn<P>[];
  readonly form: CoreForm;
  readonly whole: boolean;
}

/** Every reason against seated pieces, in slot order, by the same rules that build the compatibility graph; what is asked for comes handed in. */
export const reasonsOf = <P extends SeatedPiece>(
  { worn, form, whole }: Judged<P>,
  rulings: Rulings<P>,
  asked: readonly Reason[],
  nameOf: (id: string) => string,
): readonly Reason[] => {
  const reasons: readonly Reason[] = [
    ...asked,
    ...worn.flatMap((a, index) => worn.slice(index + 1).flatMap((b) => pairReasons(a, b, rulings))),
    ...capReasons(worn, rulings),
    ...markReasons(worn, rulings),
    ...(whole ? emptyReasons(worn, form, rulings) : []),
    ...(whole ? companionReasons(worn, rulings, nameOf) : []),
  ];
  const order = new Map<RuleId, number>(rulings.order.map((id, index) => [id, index]));
  const rank = ({ rule, severity }: Reason): number => (severity === 'rules out' ? 0 : 1000) + (order.get(rule) ?? -1);
  return reasons.toSorted((a, b) => rank(a) - rank(b));
};
