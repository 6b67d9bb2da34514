import { isRemovable, roundClo, UNDERTHINGS_CLO } from '../../comfort/clo.ts';
import type { RuleSeverity } from '../../model/house-rules.ts';
import type { Piece } from '../../model/piece.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { demandsOf, formRefused, pieceRefused } from '../grammar/asked.ts';
import { type CoreForm, FORMS } from '../grammar/forms.ts';
import type { Restriction } from '../restriction.ts';
import { HOUSE_RULES, type RuleId } from '../rules/index.ts';
import type { Rulebook } from '../rules/rulebook.ts';
import type { Worn } from '../worn.ts';

/** One thing that is wrong with pieces worn together. */
export interface Reason {
  readonly rule: RuleId;
  readonly severity: Exclude<RuleSeverity, 'off'>;
  readonly message: Phrase;
  /** Ids of the pieces concerned. */
  readonly pieces: readonly string[];
}

const ids = (...pieces: readonly Piece[]): readonly string[] => [...new Set(pieces.map(({ id }) => id))];

/** Every breach of a pair rule between two worn pieces; `a` in the earlier slot. */
export const pairReasons = (a: Worn, b: Worn, { pairs }: Rulebook): readonly Reason[] =>
  pairs.flatMap(({ id, rule, severity, threshold }) => {
    const message = rule.between(a, b, threshold);
    return message === undefined ? [] : [{ rule: id, severity, message, pieces: ids(a.piece, b.piece) }];
  });

const capReasons = (worn: readonly Worn[], { caps }: Rulebook): readonly Reason[] =>
  caps.flatMap(({ id, severity, most, counts, tooMany }) => {
    const counted = worn.filter(counts).map(({ piece }) => piece);
    return counted.length > most
      ? [{ rule: id, severity, message: tooMany(counted, most), pieces: ids(...counted) }]
      : [];
  });

const markReasons = (worn: readonly Worn[], { marks }: Rulebook): readonly Reason[] =>
  marks.flatMap(({ id, rule, severity, threshold }) => {
    const found = new Set(worn.flatMap((seat) => rule.marks(seat)));
    const bearers = worn.filter((seat) => rule.marks(seat).length > 0).map(({ piece }) => piece);
    return found.size > threshold
      ? [{ rule: id, severity, message: rule.tooMany([...found], threshold), pieces: ids(...bearers) }]
      : [];
  });

const emptyReasons = (worn: readonly Worn[], form: CoreForm, { empties }: Rulebook): readonly Reason[] =>
  empties
    .filter(({ rule }) => FORMS[form].optional.includes(rule.slot) && !worn.some(({ slot }) => slot === rule.slot))
    .flatMap(({ id, rule, severity, threshold }) =>
      worn.flatMap((seat) => {
        const message = rule.without(seat, threshold);
        return message === undefined ? [] : [{ rule: id, severity, message, pieces: ids(seat.piece) }];
      }),
    );

const companionReasons = (worn: readonly Worn[], { companions }: Rulebook, nameOf: (id: string) => string) =>
  companions.flatMap(({ id, severity, piece, partner }): readonly Reason[] => {
    const wears = (wanted: string): boolean => worn.some((seat) => seat.piece.id === wanted);
    if (!wears(piece) || wears(partner)) return [];
    const message = phrase('outfit', 'always together', { piece: nameOf(piece), missing: nameOf(partner) });
    return [{ rule: id, severity, message, pieces: [piece, partner] }];
  });

/** What of an occasion's wishes single pieces do not meet. */
export const occasionReasons = (worn: readonly Worn[], rulebook: Rulebook, asked: Restriction): readonly Reason[] =>
  worn.flatMap((seat) => {
    const refused = pieceRefused(seat, asked);
    const pieces = ids(seat.piece);
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
    roundClo(seats.reduce((total, { piece }) => total + piece.clo.value, base));
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

/** What is judged of pieces that are not yet a whole look is only what more pieces cannot mend. */
export interface Judged {
  readonly worn: readonly Worn[];
  readonly form: CoreForm;
  readonly whole: boolean;
}

/** Every reason against seated pieces, in slot order, by the same rules that build the compatibility graph. */
export const reasonsOf = (
  { worn, form, whole }: Judged,
  rulebook: Rulebook,
  asked: Restriction,
  nameOf: (id: string) => string,
): readonly Reason[] => {
  const refused = formRefused(form, asked);
  const reasons: readonly Reason[] = [
    ...(refused === undefined
      ? []
      : [{ rule: 'occasion', severity: 'rules out', message: refused, pieces: [] } satisfies Reason]),
    ...occasionReasons(worn, rulebook, asked),
    ...worn.flatMap((a, index) => worn.slice(index + 1).flatMap((b) => pairReasons(a, b, rulebook))),
    ...capReasons(worn, rulebook),
    ...markReasons(worn, rulebook),
    ...(whole ? emptyReasons(worn, form, rulebook) : []),
    ...(whole ? companionReasons(worn, rulebook, nameOf) : []),
    ...(whole ? wholeOccasionReasons(worn, form, asked) : []),
  ];
  return reasons.toSorted((a, b) => rank(a) - rank(b));
};

const ORDER: ReadonlyMap<RuleId, number> = new Map(HOUSE_RULES.map(({ id }, index) => [id as RuleId, index]));
const rank = ({ rule, severity }: Reason): number => (severity === 'rules out' ? 0 : 1000) + (ORDER.get(rule) ?? -1);
