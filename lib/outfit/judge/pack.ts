import type { Phrase } from '../../words/phrase.ts';
import { CORE_FORMS, FORMS, slotsOf } from '../grammar/forms.ts';
import { type Seat, seatsOf } from '../grammar/seats.ts';
import { createRulebook, type WardrobeRules } from '../rules/rulebook.ts';
import type { PackedRules } from './packed.ts';

/** Numbers texts as they come, each once. */
const numbering = (say: (said: Phrase) => string) => {
  const texts: string[] = [];
  const number = (said: Phrase): number => {
    const text = say(said);
    const known = texts.indexOf(text);
    return known < 0 ? texts.push(text) - 1 : known;
  };
  return { texts, number };
};

const SLOTS_BY_FORM = CORE_FORMS.map((form) => slotsOf(FORMS[form], 'complete'));
/** Two seats that one look could hold. */
const canMeet = (a: Seat, b: Seat): boolean =>
  a.piece.id !== b.piece.id &&
  a.slot !== b.slot &&
  SLOTS_BY_FORM.some((slots) => slots.includes(a.slot) && slots.includes(b.slot));

/** Asks the rules in force everything that judging these pieces could ask. Throws RangeError on an unknown rule. */
export const packRules = (wardrobe: WardrobeRules, say: (said: Phrase) => string): PackedRules => {
  const rulebook = createRulebook(wardrobe.rules, wardrobe);
  const seats = seatsOf(wardrobe.pieces);
  const meetings = seats.flatMap((a) =>
    seats.slice(a.index + 1).flatMap((b) => (canMeet(a, b) ? [[a, b] as const] : [])),
  );
  const { texts, number } = numbering(say);
  const inForce = [...rulebook.pairs, ...rulebook.caps, ...rulebook.marks, ...rulebook.empties, ...rulebook.companions];
  const rules = rulebook.order.flatMap((id) => {
    const found = inForce.find((rule) => rule.id === id);
    return found === undefined ? [] : [{ id, severity: found.severity }];
  });
  return {
    pieces: wardrobe.pieces.map(({ id, name, places, site }) => ({
      id,
      name,
      places,
      ...(site === undefined ? {} : { site }),
    })),
    rules,
    texts,
    pairs: rulebook.pairs.flatMap(({ id, rule, threshold }) => {
      const ruleIndex = rules.findIndex((known) => known.id === id);
      return meetings.flatMap(([a, b]) => {
        const said = rule.between(a, b, threshold);
        return said === undefined ? [] : [[a.index, b.index, ruleIndex, number(said)] as const];
      });
    }),
    caps: rulebook.caps.map(({ id, severity, most, counts, tooMany }) => ({
      id,
      severity,
      most,
      seats: seats.filter(counts).map(({ index }) => index),
      tooMany: tooMany([], most),
    })),
    marks: rulebook.marks.map(({ id, severity, threshold, rule }) => ({
      id,
      severity,
      most: threshold,
      seats: seats.map((seat) => [seat.index, rule.marks(seat)] as const).filter(([, marks]) => marks.length > 0),
      tooMany: rule.tooMany([], threshold),
    })),
    empties: rulebook.empties.map(({ id, severity, threshold, rule }) => ({
      id,
      severity,
      slot: rule.slot,
      seats: seats.flatMap((seat) => {
        const said = rule.without(seat, threshold);
        return said === undefined ? [] : [[seat.index, number(said)] as const];
      }),
    })),
    companions: rulebook.companions.map(({ id, severity, piece, partner }) => ({ id, severity, piece, partner })),
  };
};
