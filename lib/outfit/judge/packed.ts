import type { RuleSeverity } from '../../model/house-rules.ts';
import type { Slot } from '../../vocabulary/places.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import { type SeatedPiece, seatsOf } from '../grammar/seats.ts';
import type { HouseRuleId } from '../rules/index.ts';
import type { Rulings } from '../rules/rulings.ts';
import type { Worn } from '../worn.ts';

interface PackedRule {
  readonly id: HouseRuleId;
  readonly severity: Exclude<RuleSeverity, 'off'>;
}

/**
 * What the rules in force answer for a few pieces, as plain data that a page can carry. Seats are numbered as `seatsOf`
 * numbers them, texts by their place in `texts`. `tooMany` is the phrase with its list left empty.
 */
export interface PackedRules {
  readonly pieces: readonly SeatedPiece[];
  /** In the order in which reasons are told. */
  readonly rules: readonly PackedRule[];
  readonly texts: readonly string[];
  /** Two seats that a rule speaks against, the earlier first. */
  readonly pairs: readonly (readonly [a: number, b: number, rule: number, text: number])[];
  readonly caps: readonly (PackedRule & {
    readonly most: number;
    readonly seats: readonly number[];
    readonly tooMany: Phrase;
  })[];
  readonly marks: readonly (PackedRule & {
    readonly most: number;
    readonly seats: readonly (readonly [seat: number, marks: readonly string[]])[];
    readonly tooMany: Phrase;
  })[];
  readonly empties: readonly (PackedRule & {
    readonly slot: Slot;
    readonly seats: readonly (readonly [seat: number, text: number])[];
  })[];
  readonly companions: Rulings['companions'];
}

/** A phrase whose one list is filled in. */
const filled = (template: Phrase, list: readonly string[]): Phrase => ({
  ...template,
  values: Object.fromEntries(
    Object.entries(template.values).map(([name, value]) => [name, Array.isArray(value) ? list : value]),
  ),
});

/** The rulings that were packed: the same answers as the rules gave, each text as it was written. */
export const unpackRules = (packed: PackedRules): Rulings<SeatedPiece> => {
  const { rules, texts } = packed;
  const seats = seatsOf(packed.pieces);
  const indexes = new Map<string, Partial<Record<Slot, number>>>();
  for (const { piece, slot, index } of seats) indexes.set(piece.id, { ...indexes.get(piece.id), [slot]: index });
  const indexOf = ({ piece, slot }: Worn<SeatedPiece>): number => indexes.get(piece.id)?.[slot] ?? -1;
  const written = (text: number | undefined): Phrase | undefined =>
    text === undefined ? undefined : phrase('guide', 'as written', { text: texts[text] ?? '' });
  return {
    order: rules.map(({ id }) => id),
    pairs: rules.flatMap((rule, ruleIndex) => {
      const said = new Map(
        packed.pairs.filter((pair) => pair[2] === ruleIndex).map(([a, b, , text]) => [a * seats.length + b, text]),
      );
      const between = (a: Worn<SeatedPiece>, b: Worn<SeatedPiece>) =>
        written(said.get(indexOf(a) * seats.length + indexOf(b)));
      return said.size === 0 ? [] : [{ ...rule, threshold: 0, rule: { between } }];
    }),
    caps: packed.caps.map(({ seats, tooMany, ...cap }) => ({
      ...cap,
      counts: (worn) => seats.includes(indexOf(worn)),
      tooMany: (pieces) =>
        filled(
          tooMany,
          pieces.map(({ name }) => name),
        ),
    })),
    marks: packed.marks.map(({ id, severity, most, seats, tooMany }) => {
      const found = new Map(seats);
      const marks = (worn: Worn<SeatedPiece>) => found.get(indexOf(worn)) ?? [];
      return { id, severity, threshold: most, rule: { marks, tooMany: (list) => filled(tooMany, list) } };
    }),
    empties: packed.empties.map(({ id, severity, slot, seats }) => {
      const said = new Map(seats);
      const without = (worn: Worn<SeatedPiece>) => written(said.get(indexOf(worn)));
      return { id, severity, threshold: 0, rule: { slot, without } };
    }),
    companions: packed.companions,
  };
};
