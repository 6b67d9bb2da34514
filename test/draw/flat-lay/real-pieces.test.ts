import { describe, expect, it } from 'vitest';
import { itemMarkup, layFlat, VISIBLE_AT_LEAST } from '../../../lib/draw/flat-lay/index.ts';
import { drawPiece } from '../../../lib/draw/garment.ts';
import { KIND_IDS, type KindId, type Slot, tucksOf } from '../../../lib/vocabulary/index.ts';
import { samplePiece } from '../../specimen/sample.ts';

describe('flat lay of drawn pieces', () => {
  it('defines no id twice in the markup of any kind with its shade', () => {
    for (const kind of KIND_IDS) {
      const markup = itemMarkup({ id: kind, slot: 'top', picture: drawPiece(samplePiece(kind)) }, 'x-', 'shade', 6);
      const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size, kind).toBe(ids.length);
    }
  });

  const frame = { x: 72, y: 180, width: 936, height: 880 };
  const layOf = (...worn: readonly (readonly [KindId, Slot])[]) => {
    const lay = layFlat(
      worn.map(([kind, slot]) => ({ id: kind, slot, picture: drawPiece(samplePiece(kind), 'small') })),
      frame,
    );
    const boxOf = (kind: KindId) => {
      const found = lay.placed.find(({ item }) => item.id === kind);
      if (found === undefined) throw new Error(`${kind} is not laid`);
      const { x, y, width, height } = found.extent;
      return { left: x, right: x + width, top: y, bottom: y + height, middle: x + width / 2 };
    };
    return { ...lay, boxOf };
  };

  it('leaves no corner empty below a dress that ends where the coat beside it does', () => {
    const { scale, boxOf } = layOf(
      ['knitted dress', 'one-piece'],
      ['cardigan', 'mid layer'],
      ['parka', 'outer layer'],
      ['ankle boots', 'shoes'],
      ['scarf', 'scarf'],
    );
    const [dress, boots, scarf] = [boxOf('knitted dress'), boxOf('ankle boots'), boxOf('scarf')];
    expect(Math.min(boots.bottom, scarf.bottom)).toBeGreaterThan(dress.bottom + 5 * scale);
    expect(Math.min(boots.left, scarf.left)).toBeLessThan(dress.right + 5 * scale);
  });

  it('brings a single jacket down beside a long outfit with little below it, so that the lower right is not empty', () => {
    const few = layOf(['shirt', 'top'], ['wide trousers', 'bottom'], ['cardigan', 'mid layer'], ['loafers', 'shoes']);
    expect(few.boxOf('cardigan').top).toBeGreaterThan(few.boxOf('shirt').top + 15 * few.scale);
    const { scale, boxOf } = layOf(
      ['shirt', 'top'],
      ['wide trousers', 'bottom'],
      ['cardigan', 'mid layer'],
      ['loafers', 'shoes'],
      ['tote', 'bag'],
      ['scarf', 'scarf'],
      ['beret', 'headwear'],
    );
    expect(boxOf('cardigan').top).toBeLessThan(boxOf('shirt').top + 8 * scale);
  });

  it('lays a bottom over the top that is tucked into it, which shows no tails', () => {
    const pairs: readonly (readonly [KindId, KindId])[] = [
      ['dress shirt', 'suit trousers'],
      ['bodysuit', 'wide trousers'],
      ['bow blouse', 'pencil skirt'],
      ['camisole', 'pleated skirt'],
      ['fine roll-neck', 'midi skirt'],
    ];
    for (const [top, bottom] of pairs) {
      const tucks = tucksOf([
        { kind: top, slot: 'top' },
        { kind: bottom, slot: 'bottom' },
      ]);
      expect(tucks, top).toEqual(['in', 'around']);
      const items = ([top, bottom] as const).map((kind, index) => ({
        id: kind,
        slot: index === 0 ? ('top' as const) : ('bottom' as const),
        picture: drawPiece(samplePiece(kind, { tuck: tucks[index] }), 'small'),
        tuck: tucks[index],
      }));
      const { placed, scale } = layFlat(items, frame);
      expect(placed.map(({ item }) => item.id)).toEqual([top, bottom]);
      const [over, under] = [items[1]?.picture.anchors ?? {}, items[0]?.picture.anchors ?? {}];
      const widthOf = (anchors: typeof over, end: string) =>
        (anchors[`right ${end}`]?.[0] ?? 0) - (anchors[`left ${end}`]?.[0] ?? 0);
      expect(widthOf(under, 'hem'), `${top} is narrower than the band of the ${bottom}`).toBeLessThan(
        widthOf(over, 'waist'),
      );
      const [hidden, band] = [placed[0], placed[1]];
      if (hidden === undefined || band === undefined) throw new Error('two pieces');
      expect(hidden.extent.y + hidden.extent.height).toBeGreaterThan(band.extent.y + 5 * scale);
      expect(hidden.visible).toBeGreaterThan(VISIBLE_AT_LEAST);
    }
  });

  it('keeps a hat within the clothes, a belt by the shoes and a bangle by the cuff', () => {
    const { scale, boxOf } = layOf(
      ['shirt', 'top'],
      ['chinos', 'bottom'],
      ['blazer', 'outer layer'],
      ['derby shoes', 'shoes'],
      ['belt', 'belt'],
      ['sun hat', 'headwear'],
      ['bracelet', 'jewellery wrist'],
    );
    expect(boxOf('sun hat').right).toBeLessThan(boxOf('blazer').right + 12 * scale);
    expect(boxOf('derby shoes').top - boxOf('belt').bottom).toBeLessThan(20 * scale);
    expect(boxOf('shirt').left - boxOf('bracelet').right).toBeLessThan(10 * scale);
    expect(boxOf('bracelet').top).toBeLessThan(boxOf('shirt').bottom);
  });

  it('draws a swimsuit alone as large as the paper bears', () => {
    for (const kind of ['swimsuit', 'bikini', 'swim shorts'] as const) {
      const { boxOf } = layOf([kind, 'swim']);
      const { top, bottom, left, right } = boxOf(kind);
      expect(Math.max((bottom - top) / frame.height, (right - left) / frame.width), kind).toBeGreaterThan(0.75);
    }
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
