import type { Look } from '../../model/look.ts';
import type { Slot } from '../../vocabulary/places.ts';
import type { EnumerateOptions } from '../engine.ts';
import { CORE_FORMS, type CoreForm, FORMS, slotsOf } from '../grammar/forms.ts';
import { lookOf, readLookId } from '../grammar/look-id.ts';
import type { Seat } from '../grammar/seats.ts';
import type { Ground } from '../ground.ts';
import { compileSpace } from '../space/compile.ts';
import { Cursor } from '../space/cursor.ts';
import { type LookSpace, NOTHING } from '../space/space.ts';
import type { Worn } from '../worn.ts';

const seatsAt = (ground: Ground, seats: Int32Array, length: number): readonly Seat[] => {
  const worn: Seat[] = [];
  for (let slot = 0; slot < length; slot += 1) {
    const seat = ground.seats[seats[slot] as number];
    if (seat !== undefined) worn.push(seat);
  }
  return worn;
};

const formOf = (worn: readonly Worn[]): CoreForm => {
  const has = (wanted: Slot): boolean => worn.some(({ slot }) => slot === wanted);
  return has('swim') ? 'swim' : has('one-piece') ? 'one-piece' : 'separates';
};

/** Beyond every seat: nothing in this slot or any later one lies behind the place that is looked for. */
const BEYOND = 0x7fffffff;

/** Places the cursor behind a look, which may hold slots that this space leaves out because nothing is allowed there. */
const goBehind = (ground: Ground, space: LookSpace, cursor: Cursor, after: readonly Worn[]): void => {
  const seatIn = (slot: Slot): number => {
    const worn = after.find((seat) => seat.slot === slot);
    if (worn === undefined) return NOTHING;
    return ground.seats.find((seat) => seat.slot === slot && seat.piece.id === worn.piece.id)?.index ?? NOTHING;
  };
  const wanted = new Int32Array(space.counted).fill(NOTHING);
  let passed = false;
  let at = 0;
  for (const slot of slotsOf(FORMS[space.form], 'complete')) {
    if (at === space.counted) break;
    if (space.slots[at] === slot) {
      wanted[at] = passed ? BEYOND : seatIn(slot);
      at += 1;
    } else if (seatIn(slot) !== NOTHING) passed = true;
  }
  cursor.goBehind(wanted);
};

/** See `WardrobeEngine.enumerate`. Throws RangeError on an `after` that names no piece of the wardrobe. */
export function* enumerateLooks(ground: Ground, options: EnumerateOptions): Generator<Look, void, undefined> {
  const { after, restriction = {}, level = 'complete' } = options;
  const behind = after === undefined ? undefined : readLookId(after, ground.pieceById);
  const first = behind === undefined ? 0 : CORE_FORMS.indexOf(formOf(behind));
  for (const form of CORE_FORMS.slice(first)) {
    const space = compileSpace(ground, form, level, restriction);
    if (space === undefined || space.counted === 0) continue;
    const cursor = new Cursor(space);
    if (behind !== undefined && form === CORE_FORMS[first]) goBehind(ground, space, cursor, behind);
    const seats = new Int32Array(space.counted);
    while (cursor.next()) {
      cursor.seats(seats);
      yield lookOf(seatsAt(ground, seats, space.counted));
    }
  }
}
