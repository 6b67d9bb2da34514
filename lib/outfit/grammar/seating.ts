import { SLOTS, type Slot } from '../../vocabulary/places.ts';
import type { Worn } from '../worn.ts';
import { CORE_FORMS, type CoreForm, FORMS, slotsOf } from './forms.ts';
import { type SeatedPiece, slotsOfPiece } from './seats.ts';

export interface Seating<P = SeatedPiece> {
  readonly form: CoreForm;
  /** In slot order. */
  readonly worn: readonly Worn<P>[];
  /** Slots the form still asks for. */
  readonly missing: readonly Slot[];
}

/** Ways of seating tried at most; a set of pieces a person picks has a handful. */
const MOST_SEATINGS = 5000;

const seatInForm = <P extends SeatedPiece>(pieces: readonly P[], form: CoreForm): readonly Seating<P>[] => {
  const slots = new Set(slotsOf(FORMS[form], 'complete'));
  const found: Seating<P>[] = [];
  const taken = new Map<Slot, P>();
  const place = (index: number): void => {
    if (found.length >= MOST_SEATINGS) return;
    const piece = pieces[index];
    if (piece === undefined) {
      const worn = SLOTS.flatMap((slot) => {
        const seated = taken.get(slot);
        return seated === undefined ? [] : [{ piece: seated, slot }];
      });
      found.push({ form, worn, missing: FORMS[form].required.filter((slot) => !taken.has(slot)) });
      return;
    }
    for (const slot of slotsOfPiece(piece)) {
      if (!slots.has(slot) || taken.has(slot)) continue;
      taken.set(slot, piece);
      place(index + 1);
      taken.delete(slot);
    }
  };
  place(0);
  return found;
};

/** Every way in which pieces can be worn together, one slot a piece, over all forms of look. */
export const seatingsOf = <P extends SeatedPiece>(pieces: readonly P[]): readonly Seating<P>[] =>
  CORE_FORMS.flatMap((form) => seatInForm(pieces, form));
