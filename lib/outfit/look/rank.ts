import type { Look } from '../../model/look.ts';
import type { Phrase } from '../../words/phrase.ts';
import { CORE_FORMS, type CoreForm } from '../grammar/forms.ts';
import { lookOf } from '../grammar/look-id.ts';
import type { Seat } from '../grammar/seats.ts';
import type { Ground } from '../ground.ts';
import { reasonsAsked } from '../judge/asked.ts';
import type { Restriction } from '../restriction.ts';
import { relationOf } from '../rules/relation.ts';
import { compileSpace } from '../space/compile.ts';
import { rankSpace } from '../space/rank.ts';

export interface RankedLook {
  readonly look: Look;
  /** Whole points; compare only within one wardrobe. */
  readonly score: number;
  /** What makes it good, then what lowers it. */
  readonly reasons: readonly Phrase[];
}

/** A look by its seats, before it is put into words. */
export interface RankedSeats {
  readonly form: CoreForm;
  readonly seats: readonly Seat[];
  readonly score: number;
}

/** The best k over all forms; `bonus` adds points to seats. Sorting is stable, so equal scores keep the order of looks. */
export const rankSeats = (
  ground: Ground,
  k: number,
  restriction: Restriction,
  bonus?: Int32Array,
): readonly RankedSeats[] => {
  if (!Number.isInteger(k) || k < 0) throw new RangeError(`the number of looks must be a whole number, not ${k}`);
  return CORE_FORMS.flatMap((form) => {
    const space = compileSpace(ground, form, 'complete', restriction);
    if (space === undefined) return [];
    return rankSpace(ground, space, k, bonus).map(({ seats, points }) => ({
      form,
      seats: seats.flatMap((seat) => ground.seats[seat] ?? []),
      score: points,
    }));
  })
    .toSorted((a, b) => b.score - a.score)
    .slice(0, k);
};

/** The relations that carry a look: within the core, and of core and shoes. */
const CARRYING = ['one-piece', 'top', 'bottom', 'swim', 'shoes', 'outer layer', 'mid layer'];
const REASONS_SAID = 2;
/** That neutrals and metals go with anything, and a colour with itself, is true of nearly every look, and so no reason for one. */
const SAYS_NOTHING: ReadonlySet<string> = new Set(['two neutrals', 'metal goes', 'same']);
/** That a neutral lets a colour speak is said once a look. */
const SAID_ONCE = 'neutral goes';

const praise = (seats: readonly Seat[]): readonly Phrase[] => {
  const carrying = seats.filter(({ slot }) => CARRYING.includes(slot));
  return carrying
    .flatMap((a, index) => carrying.slice(index + 1).map((b) => relationOf(a.piece, b.piece)))
    .filter(({ score }) => score >= 0.5)
    .toSorted((a, b) => b.score - a.score)
    .filter(({ reason }) => !SAYS_NOTHING.has(reason.key))
    .filter(({ reason }, index, all) => all.findIndex((other) => sameWords(other.reason, reason)) === index)
    .filter(
      ({ reason: { key } }, index, all) =>
        key !== SAID_ONCE || all.findIndex(({ reason }) => reason.key === key) === index,
    )
    .slice(0, REASONS_SAID)
    .map(({ reason }) => reason);
};

const sameWords = (a: Phrase, b: Phrase): boolean =>
  a.key === b.key && JSON.stringify(a.values) === JSON.stringify(b.values);

export const inWords = (
  ground: Ground,
  { form, seats, score }: RankedSeats,
  restriction: Restriction = {},
): RankedLook => {
  const nameOf = (id: string): string => ground.pieceById.get(id)?.name ?? id;
  let reasons: readonly Phrase[] | undefined;
  const worded = (): readonly Phrase[] => {
    const lowered = reasonsAsked({ worn: seats, form, whole: true }, ground.rulebook, restriction, nameOf);
    return [...praise(seats), ...lowered.map(({ message }) => message)];
  };
  return {
    look: lookOf(seats),
    score,
    // worded when read: hundreds of looks are ranked and few of them told
    get reasons() {
      reasons ??= worded();
      return reasons;
    },
  };
};

/** See `WardrobeEngine.rank`. Throws RangeError on a k that is no whole number of looks. */
export const rankLooks = (ground: Ground, k: number, restriction: Restriction): readonly RankedLook[] =>
  rankSeats(ground, k, restriction).map((ranked) => inWords(ground, ranked, restriction));
