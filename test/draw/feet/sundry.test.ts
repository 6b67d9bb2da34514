import { describe, expect, test } from 'vitest';
import { drawSundry, drawSundryIcon, SUNDRY_ICONS, sundryIconOf } from '../../../lib/draw/sundry.ts';
import type { Sundry } from '../../../lib/model/index.ts';
import { pixelsOf } from './look.ts';

const of = (name: string, group: Sundry['group'] = 'other'): string => sundryIconOf({ name, group });

describe('sundries', () => {
  test.each(SUNDRY_ICONS)('%s: one ink line of one weight inside its square', (icon) => {
    const drawing = drawSundryIcon(icon);
    expect(drawing.marks).toHaveLength(1);
    expect(drawing.marks[0]).toMatchObject({ stroke: '#3b332b', width: 0.1 });
    const numbers =
      JSON.stringify(drawing.marks[0])
        .match(/"path":"([^"]+)"/)?.[1]
        ?.match(/-?\d+(\.\d+)?/g) ?? [];
    for (const value of numbers.map(Number)) {
      expect(value).toBeGreaterThanOrEqual(0.1);
      expect(value).toBeLessThanOrEqual(2.3);
    }
    const { data } = pixelsOf(drawing, 48);
    const inked = data.filter((_, i) => i % 4 === 3 && (data[i] ?? 0) > 128).length / (data.length / 4);
    expect(inked).toBeGreaterThan(0.03);
    expect(inked).toBeLessThan(0.4);
  });

  test('the name chooses the icon', () => {
    expect(of('Knickers')).toBe('knickers');
    expect(of('Bras')).toBe('bra');
    expect(of('Socks, pairs')).toBe('socks');
    expect(of('Toothbrush and floss')).toBe('toothbrush');
    expect(of('Toothpaste')).toBe('tube');
    expect(of('Sun cream')).toBe('sunCream');
    expect(of('Face cream')).toBe('jar');
    expect(of('Rail tickets, printed')).toBe('ticket');
    expect(of('Charger and lead')).toBe('plug');
    expect(of('Ear plugs')).toBe('earplugs');
    expect(of('Power bank')).toBe('battery');
    expect(of('Medicine pouch')).toBe('medicine');
    expect(of('Water bottle')).toBe('flask');
  });

  test('a name of another language falls back on its group', () => {
    expect(of('Zahnseide', 'wash bag')).toBe('pouch');
    expect(of('Fahrkarten', 'papers')).toBe('ticket');
    expect(of('歯ブラシ', 'liquids')).toBe('bottle');
    expect(of('', 'medicines')).toBe('medicine');
  });

  test('the ink can be chosen', () => {
    expect(drawSundry({ name: 'Keys', group: 'other' }, '#123456').marks[0]).toMatchObject({ stroke: '#123456' });
  });
});
