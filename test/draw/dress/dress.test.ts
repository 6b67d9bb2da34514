import { describe, expect, test } from 'vitest';
import { DRESS, dressLength, suitLength } from '../../../lib/draw/dress/index.ts';
import { familyTests } from '../lower/family.ts';
import { drawn, paintedSize, pieceOf } from '../lower/picture.ts';

familyTests(DRESS, 'one-pieces', { kilobytes: 80, alike: 0.02, lengths: [90, 114] });

describe('proportions', () => {
  test('a dress of 130 cm beside one of 95 differs by 35 cm in the picture', () => {
    for (const kind of ['slip dress', 'tea dress', 'sheath dress', 'shirt dress'] as const) {
      const [long, short] = [130, 95].map((lengthCm) => paintedSize(drawn(DRESS, pieceOf(kind, { lengthCm }))).height);
      expect(Math.abs((long ?? 0) - (short ?? 0) - 35), kind).toBeLessThan(2);
    }
  });

  test('a dress beside a jumpsuit: both at one scale', () => {
    const dress = paintedSize(drawn(DRESS, pieceOf('tea dress', { lengthCm: 118 })));
    const suit = paintedSize(drawn(DRESS, pieceOf('jumpsuit', { lengthCm: 145 })));
    expect(Math.abs(suit.height - dress.height - 27)).toBeLessThan(5);
  });

  test('a flared dress is wider at the hem than a straight one', () => {
    const width = (cut: 'straight' | 'a-line' | 'flared') =>
      paintedSize(drawn(DRESS, pieceOf('sundress', { cut }))).width;
    expect(width('a-line')).toBeGreaterThan(width('straight') + 8);
    expect(width('flared')).toBeGreaterThan(width('a-line') + 4);
  });

  test('absurd lengths are brought within reason, and it is said', () => {
    for (const lengthCm of [999, 2, -1, Number.NaN]) {
      expect(dressLength({ length: 'midi', lengthCm }).clamped).toBe(true);
      expect(suitLength({ length: 'full', lengthCm }).clamped).toBe(true);
    }
    expect(dressLength({ length: 'midi', lengthCm: 121 })).toEqual({ cm: 121, clamped: false });
  });
});

test('cords for straps lie fallen: they reach less than a hand above the bodice, and out over its edge', () => {
  for (const kind of ['slip dress', 'evening gown'] as const) {
    const tops = drawn(DRESS, pieceOf(kind)).outline.flat();
    const highest = Math.min(...tops.map(([, y]) => y));
    // sewn on 16 to 18 cm below the shoulder; a cord that stood up would reach the shoulder, at 0
    expect(highest, kind).toBeGreaterThan(4);
    const beside = tops.filter(([, y]) => y < 12).map(([x]) => Math.abs(x));
    expect(Math.max(...beside), kind).toBeGreaterThan(13);
  }
});

describe('sleeves', () => {
  const LONG = ['torso', 'shoulders', 'upper arms', 'forearms', 'thighs'] as const;
  const SHORT = ['torso', 'shoulders', 'upper arms', 'thighs'] as const;
  const BARE = ['torso', 'shoulders', 'thighs'] as const;
  /** Breadth of the whole drawing, sleeves included, centimetres. */
  const broad = (kind: Parameters<typeof pieceOf>[0], covers?: readonly (typeof LONG)[number][]): number =>
    paintedSize(drawn(DRESS, pieceOf(kind, covers === undefined ? {} : { covers }))).width;

  test('reach as far as what the piece covers, whatever its kind has', () => {
    for (const kind of ['cocktail dress', 'sheath dress', 'slip dress', 'knitted dress', 'shirt dress'] as const) {
      expect(broad(kind, LONG), kind).toBeGreaterThan(broad(kind, BARE) + 15);
      expect(broad(kind, SHORT), kind).toBeGreaterThan(broad(kind, BARE) + 10);
    }
  });

  test('stay as the kind has them where the piece covers what its kind does, or says nothing', () => {
    expect(broad('cocktail dress', BARE)).toBe(broad('cocktail dress'));
    expect(broad('knitted dress', LONG)).toBe(broad('knitted dress'));
    expect(broad('dungarees', LONG)).toBe(broad('dungarees'));
  });
});
