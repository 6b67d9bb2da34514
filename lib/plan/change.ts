import type { Look } from '../model/index.ts';
import { LAYER_SLOTS, type Slot } from '../vocabulary/index.ts';

export type Change = 'first' | 'goes on' | 'layers only' | 'changes clothes';

/** The pieces of a look in some slots, as one text. */
export const clothesOf = (look: Look, belongs: (slot: Slot) => boolean): string =>
  look.worn
    .filter(({ slot }) => belongs(slot))
    .map(({ piece }) => piece)
    .join('+');

/** What one undresses to change. */
export const BASE_SLOTS: ReadonlySet<Slot> = new Set([
  'one-piece',
  'top',
  'bottom',
  'swim',
  'base layer',
  'leg layer',
  'legwear',
  'shoes',
]);

/** What changes from one look to the next on the same day. Bags, jewellery and the like do not count as changing. */
export const changeBetween = (before: Look | undefined, after: Look): Change => {
  if (before === undefined) return 'first';
  const base = (slot: Slot): boolean => BASE_SLOTS.has(slot);
  if (clothesOf(before, base) !== clothesOf(after, base)) return 'changes clothes';
  const layers = (slot: Slot): boolean => LAYER_SLOTS.has(slot);
  return clothesOf(before, layers) === clothesOf(after, layers) ? 'goes on' : 'layers only';
};
