import type { Slot } from '../../vocabulary/places.ts';
import { demandsOf, formRefused, pieceRefused } from '../grammar/asked.ts';
import { type CoreForm, FORMS, type Level, levelHas, slotsOf } from '../grammar/forms.ts';
import type { Seat } from '../grammar/seats.ts';
import type { Ground } from '../ground.ts';
import { isForOccasion, type Restriction } from '../restriction.ts';

/** Seats that answer something, and seats that raise it (undefined: it always stands). */
export interface SeatDemand {
  readonly answers: ReadonlySet<Seat>;
  readonly asks: ReadonlySet<Seat> | undefined;
}

/** What may sit where, before the graph is built. */
export interface Candidates {
  readonly form: CoreForm;
  readonly slots: readonly Slot[];
  readonly seats: ReadonlyMap<Slot, readonly Seat[]>;
  readonly mayBeEmpty: ReadonlySet<Slot>;
  /** Demands that several slots can answer; those of one slot are already worked in. */
  readonly demands: readonly SeatDemand[];
  /** Pairs of seat and slot: the seat allows only these seats there. */
  readonly only: readonly { readonly seat: Seat; readonly slot: Slot; readonly partners: ReadonlySet<Seat> }[];
  readonly counted: number;
}

/**
 * Narrows every slot to what the question and the grammar allow. A question about an occasion is asked of finished
 * looks, so that all slots take part and only the first `counted` make a listed look. Undefined when no look is left.
 */
export const candidatesFor = (
  ground: Ground,
  form: CoreForm,
  level: Level,
  restriction: Restriction,
): Candidates | undefined => {
  if (formRefused(form, restriction) !== undefined) return undefined;
  const slots = slotsOf(FORMS[form], isForOccasion(restriction) ? 'complete' : level);
  const inForm = new Set(slotsOf(FORMS[form], 'complete'));
  const seats = new Map<Slot, readonly Seat[]>();
  for (const slot of slots) {
    const fit = (ground.seatsBySlot.get(slot) ?? []).filter(
      (seat) =>
        ground.allowed[seat.index] === 1 &&
        pieceRefused(seat, restriction) === undefined &&
        isAllowedAt(ground, seat, restriction),
    );
    seats.set(slot, fit);
  }
  const all = (): readonly Seat[] => slots.flatMap((slot) => seats.get(slot) ?? []);
  const drop = (gone: (seat: Seat) => boolean): void => {
    for (const slot of slots)
      seats.set(
        slot,
        (seats.get(slot) ?? []).filter((seat) => !gone(seat)),
      );
  };
  const mayBeEmpty = new Set<Slot>(slots.filter((slot) => FORMS[form].optional.includes(slot)));
  const slotsOfSeats = (some: Iterable<Seat>): readonly Slot[] => [...new Set([...some].map(({ slot }) => slot))];

  // whoever wears the first wears the partner; put off where the partner's place is not counted at this level
  const companions = ground.hardCompanions.filter(({ partner }) =>
    ground.seats.every((seat) => seat.piece.id !== partner || !inForm.has(seat.slot) || slots.includes(seat.slot)),
  );
  const settle = (): void => {
    for (let before = -1; before !== all().length; ) {
      before = all().length;
      for (const { piece, partner } of companions) {
        const places = slotsOfSeats(all().filter((seat) => seat.piece.id === partner));
        const taken = places.length === 1 ? places[0] : undefined;
        drop((seat) => seat.piece.id === piece && (places.length === 0 || seat.slot === taken));
      }
      for (const [slot, { forbids }] of ground.empty) {
        if (slots.includes(slot) && (seats.get(slot) ?? []).length === 0) drop((seat) => forbids[seat.index] === 1);
      }
    }
  };
  settle();

  const demands: SeatDemand[] = [];
  const standing = [
    ...demandsOf(restriction).map(
      ({ answers }) =>
        (seat: Seat) =>
          answers(seat),
    ),
    ...[...new Set(restriction.pieces ?? [])].map((id) => (seat: Seat) => seat.piece.id === id),
  ];
  for (const answersIt of standing) {
    const answers = new Set(all().filter(answersIt));
    const places = slotsOfSeats(answers);
    const [place] = places;
    if (place === undefined) return undefined;
    if (places.length > 1) {
      demands.push({ answers, asks: undefined });
      continue;
    }
    seats.set(
      place,
      (seats.get(place) ?? []).filter((seat) => answers.has(seat)),
    );
    mayBeEmpty.delete(place);
  }
  settle();
  const only: Candidates['only'][number][] = [];
  for (const { piece, partner } of companions) {
    const asks = all().filter((seat) => seat.piece.id === piece);
    const partners = new Set(all().filter((seat) => seat.piece.id === partner));
    const [place, another] = slotsOfSeats(partners);
    if (asks.length === 0 || place === undefined) continue;
    if (another !== undefined) demands.push({ answers: partners, asks: new Set(asks) });
    else for (const seat of asks) only.push({ seat, slot: place, partners });
  }
  for (const { home, seats: layers, unless } of ground.loneLayers) {
    if (!slots.includes(home)) continue;
    const here = new Set(all());
    const asks = new Set(layers.filter((seat) => here.has(seat)));
    if (asks.size === 0) continue;
    demands.push({ answers: new Set([...(seats.get(home) ?? []), ...unless.filter((seat) => here.has(seat))]), asks });
  }
  if (slots.some((slot) => !mayBeEmpty.has(slot) && (seats.get(slot) ?? []).length === 0)) return undefined;
  const kept = slots.filter((slot) => (seats.get(slot) ?? []).length > 0);
  return {
    form,
    slots: kept,
    seats,
    mayBeEmpty,
    demands,
    only,
    counted: kept.filter((slot) => levelHas(level, slot)).length,
  };
};

const isAllowedAt = ({ rulebook }: Ground, seat: Seat, restriction: Restriction): boolean =>
  rulebook.occasions.every(
    ({ rule, severity, threshold }) => severity !== 'rules out' || rule.at(seat, restriction, threshold) === undefined,
  );
