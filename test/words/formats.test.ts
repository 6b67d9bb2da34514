import { describe, expect, it } from 'vitest';
import { createFormats } from '../../lib/words/index.ts';

const formats = (language: string, imperial = false) =>
  createFormats(
    imperial
      ? { language, temperature: 'F', length: 'in', weight: 'lb' }
      : { language, temperature: 'C', length: 'cm', weight: 'kg' },
  );
const figure = (text: string): number => Number(text.replace(/[^\d.-]/g, ''));
const spaced = (text: string): string => text.replace(/[\u00a0\u202f\u2009]/g, ' ');

describe('units', () => {
  // International yard and pound agreement, 1959, as in NIST SP 811 appendix B: 1 lb = 0.45359237 kg, 1 in = 2.54 cm.
  it('turns kilograms into pounds and centimetres into inches by the agreed factors', () => {
    const f = formats('en-US', true);
    expect(figure(f.kilograms(0.45359237 * 10, 3))).toBe(10);
    expect(spaced(f.sides([55.88, 35.56, 22.86]))).toBe('22 × 14 × 9 in');
    expect(figure(f.grams(453.59237 / 2))).toBe(8);
    expect(figure(f.centimetres(2.54 * 12))).toBe(12);
    expect(f.kilograms(1)).toMatch(/2\.2\slb/);
  });

  // NIST SP 811 appendix B: t/°F = 1.8 t/°C + 32; water freezes at 32 °F and boils at 212 °F.
  it('turns degrees', () => {
    const f = formats('en-US', true);
    expect([0, 100, -40].map((c) => figure(f.celsius(c)))).toEqual([32, 212, -40]);
  });

  it('writes no minus zero, no thousand grams, and a range of one degree as one degree', () => {
    const f = formats('de');
    expect(spaced(f.celsius(-0.3))).toBe('0 °C');
    expect(spaced(f.celsiusRange(21.8, 22.3))).toBe('22 °C');
    expect(formats('en-GB').celsiusRange(21.8, 22.3)).not.toMatch(/[~≈]/);
    expect(spaced(f.grams(999.7))).toBe('1 kg');
  });
});

describe('German', () => {
  const f = formats('de');
  // Unicode CLDR, German, by way of Intl.
  it('writes dates, lists, numbers and money as German does', () => {
    expect(f.date('2027-10-03')).toBe('Sonntag, 3. Oktober');
    expect(f.dateShort('2027-10-03')).toBe('3. Okt.');
    expect(f.weekdayShort('2027-10-05')).toBe('Di');
    expect(spaced(f.dateRange('2027-10-02', '2027-10-10'))).toBe('2.–10. Oktober 2027');
    expect(f.list(['Hemd', 'Hose', 'Schuhe'])).toBe('Hemd, Hose und Schuhe');
    expect(f.either(['Hemd', 'Bluse'])).toBe('Hemd oder Bluse');
    expect(f.count(12345n)).toBe('12.345');
    expect(f.time('19:30')).toBe('19:30');
    expect(spaced(f.money(85, 'EUR'))).toBe('85 €');
    expect(spaced(f.kilograms(5.82))).toBe('5,8 kg');
    expect(spaced(f.sides([55, 40, 23]))).toBe('55 × 40 × 23 cm');
  });
  it('keeps the clock of a brief in English of no country, and follows the country where one is named', () => {
    expect(formats('en').time('10:15')).toBe('10:15');
    expect(formats('en').time('00:30')).toBe('00:30');
    expect(formats('en-GB').time('19:30')).toBe('19:30');
    expect(spaced(formats('en-US').time('19:30'))).toBe('7:30 PM');
  });
  it('chooses the plural', () => {
    const forms = { one: '# Teil', other: '# Teile' };
    expect([0, 1, 2].map((n) => f.plural(n, forms))).toEqual(['0 Teile', '1 Teil', '2 Teile']);
  });
});
