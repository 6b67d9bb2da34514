import type { HouseRuleSettings, RuleSeverity } from '../../model/house-rules.ts';
import type { Piece } from '../../model/piece.ts';
import { type Phrase, phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import { HOUSE_RULES, type HouseRuleId } from './index.ts';
import type { CapRule, EmptyRule, HouseRule, MarksRule, OccasionRule, PairRule } from './rule.ts';
import type { InForce, Rulings } from './rulings.ts';

/** At most `most` pieces of a class. House caps and the stylist's sets of pieces to keep apart are of this one shape. */
export interface Cap {
  readonly id: HouseRuleId;
  readonly severity: Exclude<RuleSeverity, 'off'>;
  readonly points: number;
  readonly most: number;
  readonly counts: (worn: Worn) => boolean;
  readonly tooMany: (pieces: readonly Piece[], most: number) => Phrase;
}

/** Whoever wears `piece` wears `partner`. */
export interface Companion {
  readonly id: HouseRuleId;
  readonly severity: Exclude<RuleSeverity, 'off'>;
  readonly points: number;
  readonly piece: string;
  readonly partner: string;
}

/** All rules in force, by shape. The only thing that enumerator, counter, ranking and explanation know of rules. */
export interface Rulebook extends Rulings<Piece> {
  readonly pairs: readonly InForce<PairRule>[];
  readonly caps: readonly Cap[];
  readonly marks: readonly InForce<MarksRule>[];
  readonly empties: readonly InForce<EmptyRule>[];
  readonly occasions: readonly InForce<OccasionRule>[];
  readonly companions: readonly Companion[];
}

/** A wardrobe or capsule with the rules it is under. */
export interface WardrobeRules extends Sets {
  readonly pieces: readonly Piece[];
  readonly rules: HouseRuleSettings;
}

interface Sets {
  readonly never: readonly (readonly string[])[];
  readonly always: readonly (readonly string[])[];
}

const inForce = (settings: HouseRuleSettings): readonly InForce<HouseRule>[] =>
  HOUSE_RULES.flatMap((rule) => {
    const severity = settings[rule.id]?.severity ?? rule.severity;
    const threshold = settings[rule.id]?.threshold ?? rule.threshold?.default ?? 0;
    return severity === 'off' ? [] : [{ id: rule.id as HouseRuleId, rule, severity, threshold }];
  });

const capOf = ({ id, rule, severity, threshold }: InForce<CapRule>): Cap => ({
  id,
  severity,
  points: rule.points,
  most: Math.floor(threshold),
  counts: rule.counts,
  tooMany: rule.tooMany,
});

const namesOf = (pieces: readonly Piece[]): readonly string[] => pieces.map(({ name }) => name);

const vetoes = ({ id, rule, severity }: InForce<HouseRule>, { never }: Sets): readonly Cap[] =>
  never
    .map((set) => new Set(set))
    .filter((set) => set.size > 1)
    .map((set) => ({
      id,
      severity,
      points: rule.points,
      most: set.size - 1,
      counts: ({ piece }) => set.has(piece.id),
      tooMany: (pieces) => phrase('outfit', 'never together', { pieces: namesOf(pieces) }),
    }));

const companions = ({ id, rule, severity }: InForce<HouseRule>, { always }: Sets): readonly Companion[] =>
  always.flatMap(([piece, ...partners]) =>
    piece === undefined
      ? []
      : [...new Set(partners)]
          .filter((partner) => partner !== piece)
          .map((partner) => ({ id, severity, points: rule.points, piece, partner })),
  );

const ofShape = <S extends HouseRule['shape']>(rules: readonly InForce<HouseRule>[], shape: S) =>
  rules.filter((entry): entry is InForce<Extract<HouseRule, { shape: S }>> => entry.rule.shape === shape);

/** Settings over the rules' own defaults. Throws RangeError on a setting that names no rule: check settings first. */
export const createRulebook = (settings: HouseRuleSettings, sets: Sets): Rulebook => {
  const unknown = Object.keys(settings).find((id) => !HOUSE_RULES.some((rule) => rule.id === id));
  if (unknown !== undefined) throw new RangeError(`there is no house rule "${unknown}"`);
  const rules = inForce(settings);
  return {
    order: HOUSE_RULES.map(({ id }) => id as HouseRuleId),
    pairs: ofShape(rules, 'pair'),
    marks: ofShape(rules, 'marks'),
    empties: ofShape(rules, 'empty'),
    occasions: ofShape(rules, 'occasion'),
    caps: [
      ...rules.filter(({ rule }) => rule.shape === 'never').flatMap((entry) => vetoes(entry, sets)),
      ...ofShape(rules, 'cap').map(capOf),
    ],
    companions: rules.filter(({ rule }) => rule.shape === 'always').flatMap((entry) => companions(entry, sets)),
  };
};
