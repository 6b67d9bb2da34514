import type { Look } from '../../model/look.ts';
import type { Piece } from '../../model/piece.ts';
import { SLOTS, type Slot } from '../../vocabulary/places.ts';
import type { Worn } from '../worn.ts';
import { type SeatedPiece, slotsOfPiece } from './seats.ts';

/** See `Look.id`. */
export type LookId = string;

const escapeId = (id: string): string => id.replace(/[%+@]/g, encodeURIComponent);
const slotWord = (slot: Slot): string => slot.replaceAll(' ', '-');
const SLOT_BY_WORD = new Map(SLOTS.map((slot) => [slotWord(slot), slot]));

/**
 * The piece ids joined by `+` in slot order. A piece that is not worn in the place it is made for has that place behind
 * an `@`, so that different looks always have different ids.
 */
const idOf = (worn: readonly Worn<SeatedPiece>[]): LookId =>
  worn
    .map(({ piece, slot }) => escapeId(piece.id) + (slotsOfPiece(piece)[0] === slot ? '' : `@${slotWord(slot)}`))
    .join('+');

/** Makes a look of seats in slot order. */
export const lookOf = (worn: readonly Worn<SeatedPiece>[]): Look => ({
  id: idOf(worn),
  worn: worn.map(({ piece, slot }) => ({ piece: piece.id, slot })),
});

/** Reads a look's id back. Throws RangeError on a piece or place that is not there. */
export const readLookId = (id: LookId, pieces: ReadonlyMap<string, Piece>): readonly Worn[] =>
  id.split('+').map((part) => {
    const [escaped = '', word] = part.split('@');
    const piece = pieces.get(decodeURIComponent(escaped));
    const slot = word === undefined ? piece && slotsOfPiece(piece)[0] : SLOT_BY_WORD.get(word);
    if (piece === undefined || slot === undefined) throw new RangeError(`no look of these pieces has the id "${id}"`);
    return { piece, slot };
  });
