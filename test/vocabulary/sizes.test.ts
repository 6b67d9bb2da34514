import { describe, expect, it } from 'vitest';
import { estimateGrams, estimateLitres, euShoeSize, KINDS, sizeFactor } from '../../lib/vocabulary/index.ts';

const { shirt, loafers, tote } = KINDS;

describe('weight and volume by size', () => {
  it('are the kind’s usual figures at the usual size, without a size, and where a size is not one of the body', () => {
    for (const size of [undefined, 'M', 'm', 'one size', '14', 'tall']) {
      expect(estimateGrams(shirt, shirt.fabric, size).value).toBe(shirt.grams[0]);
      expect(estimateLitres(shirt, shirt.fabric, size).value).toBe(shirt.litres);
    }
    expect(sizeFactor(tote, 'XL')).toBe(1);
  });

  it('grow letter by letter, and S/M lies between S and M', () => {
    const factors = ['XXS', 'XS', 'S', 'S/M', 'M', 'L', 'XL', 'XXL', '3XL'].map((size) => sizeFactor(shirt, size));
    expect(factors).toEqual(factors.toSorted((a, b) => a - b));
    expect(new Set(factors).size).toBe(factors.length);
  });

  // EN 13402-3, ranges of the women's bust girth: S 82 to 90 cm, M 90 to 98, L 98 to 107, XL 107 to 119. from memory
  it('are in the ratio of the girths of the standard', () => {
    const middle = { S: (82 + 90) / 2, M: (90 + 98) / 2, L: (98 + 107) / 2, XL: (107 + 119) / 2 };
    for (const [size, girth] of Object.entries(middle)) {
      expect(sizeFactor(shirt, size)).toBeCloseTo(girth / middle.M, 10);
    }
  });

  // A man's chest: S 86 to 94 cm, M 94 to 102, L 102 to 110, XL 110 to 118. EN 13402-3, from memory
  it('hold for men’s letters within a twentieth', () => {
    const men = { S: 90, L: 106, XL: 114 };
    for (const [size, girth] of Object.entries(men)) {
      expect(Math.abs(sizeFactor(shirt, size) - girth / 98)).toBeLessThan(0.05);
    }
  });

  // A pair of shoes gains about 5 % a size: common practice, no source
  it('grow by about a twentieth for each European shoe size', () => {
    for (let size = 36; size < 46; size += 1) {
      const step = sizeFactor(loafers, String(size + 1)) / sizeFactor(loafers, String(size));
      expect(step).toBeGreaterThan(1.04);
      expect(step).toBeLessThan(1.06);
    }
    expect(euShoeSize('EU 39.5')).toBe(39.5);
    expect(euShoeSize('7 UK')).toBe(41);
    expect(euShoeSize('99')).toBe(41);
  });
});
