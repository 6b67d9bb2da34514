import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../lib/draw/drawing.ts';
import { itemMarkup, layFlat, VISIBLE_AT_LEAST } from '../../../lib/draw/flat-lay/index.ts';
import { drawPiece } from '../../../lib/draw/garment.ts';
import { random } from '../../../lib/draw/kit/index.ts';
import { KIND_IDS, KINDS, type KindId, type Slot } from '../../../lib/vocabulary/index.ts';
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

describe('flat lay of drawn pieces', () => {
  it('defines no id twice in the markup of any kind with its shade', () => {
    for (const kind of KIND_IDS) {
      const markup = itemMarkup({ id: kind, slot: 'top', picture: drawPiece(samplePiece(kind)) }, 'x-', 'shade', 6);
      const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size, kind).toBe(ids.length);
    }
  });

  it('shows 55 % of every piece and keeps each in the frame, on 150 looks of every kind there is', () => {
    const frame = { x: 72, y: 180, width: 936, height: 880 };
    const drawn = new Set<Drawing>();
    for (let number = 0; number < 150; number++) {
      const look = randomLook(random(9000 + number), `real ${number}`, (slot, hand) => {
        const kinds = bySlot.get(slot) ?? [];
        const drawing = kinds[Math.floor(hand() * kinds.length)];
        if (drawing === undefined) throw new Error(`no kind for ${slot}`);
        drawn.add(drawing);
        return drawing;
      });
      const lay = layFlat(look, frame);
      for (const { item, extent, visible } of lay.placed) {
        expect(visible, item.id).toBeGreaterThanOrEqual(VISIBLE_AT_LEAST);
        expect(extent.x, item.id).toBeGreaterThanOrEqual(frame.x);
        expect(extent.y, item.id).toBeGreaterThanOrEqual(frame.y);
        expect(extent.x + extent.width, item.id).toBeLessThanOrEqual(frame.x + frame.width);
        expect(extent.y + extent.height, item.id).toBeLessThanOrEqual(frame.y + frame.height);
      }
    }
    expect(drawn.size).toBeGreaterThan(120);
  });

  it('lays shoes low beside a swimsuit too, with or without a cover-up', () => {
    const frame = { x: 72, y: 180, width: 936, height: 880 };
    const wornOf = (kind: KindId, slot: Slot) => ({ id: kind, slot, picture: drawPiece(samplePiece(kind), 'small') });
    const swim = [wornOf('swimsuit', 'swim'), wornOf('sandals', 'shoes')];
    const extras = [wornOf('basket bag', 'bag'), wornOf('sun hat', 'headwear')];
    for (const look of [swim, [...swim, ...extras], [...swim, ...extras, wornOf('kaftan', 'cover-up')]]) {
      const { placed } = layFlat(look, frame);
      const bottoms = placed.map(({ extent }) => extent.y + extent.height);
      const shoes = placed.findIndex(({ item }) => item.slot === 'shoes');
      const top = Math.min(...placed.map(({ extent }) => extent.y));
      const lowest = Math.max(...bottoms);
      expect(((bottoms[shoes] ?? 0) - top) / (lowest - top)).toBeGreaterThan(0.85);
    }
  });
});
