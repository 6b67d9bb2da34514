import type { Drawing } from '../../../lib/draw/drawing.ts';
import type { LayItem } from '../../../lib/draw/flat-lay/index.ts';
import { drawPiece } from '../../../lib/draw/garment.ts';
import { random } from '../../../lib/draw/kit/index.ts';
import { KIND_IDS, KINDS, type Slot } from '../../../lib/vocabulary/index.ts';
import { samplePiece } from '../../specimen/sample.ts';
import { randomLook } from './paper-dolls.ts';

/** Every kind that may take a slot, drawn once. */
const bySlot = new Map<Slot, Drawing[]>();
for (const kind of KIND_IDS) {
  const drawing = drawPiece(samplePiece(kind), 'small');
  for (const place of KINDS[kind].places) {
    const slot: Slot = place === 'jewellery' ? `jewellery ${KINDS[kind].site ?? 'lapel'}` : place;
    bySlot.set(slot, [...(bySlot.get(slot) ?? []), drawing]);
  }
}

/** A look of 2 to 12 pieces, each of a kind that may take its slot. */
export const drawnLook = (number: number): readonly LayItem[] =>
  randomLook(random(9000 + number), `drawn ${number}`, (slot, hand) => {
    const kinds = bySlot.get(slot) ?? [];
    const drawing = kinds[Math.floor(hand() * kinds.length)];
    if (drawing === undefined) throw new Error(`no kind for ${slot}`);
    return drawing;
  });
