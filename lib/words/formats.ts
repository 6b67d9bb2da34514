import type { Studio } from '../model/studio.ts';

/** Everything that turns numbers, dates and lists into text for one studio; all of it through `Intl`. */
export interface Formats {
  readonly language: string;
  number(value: number, digits?: number): string;
  /** A whole number of any size, with the language's grouping. */
  count(value: number | bigint): string;
  percent(share: number): string;
  /** "red, green and blue". */
  list(items: readonly string[]): string;
  /** "red, green or blue". */
  either(items: readonly string[]): string;
  /** Chooses by the language's plural category; `#` in the text becomes the number. */
  plural(value: number | bigint, forms: { readonly one: string; readonly other: string }): string;
  /** Grams, as g below a kilogram and kg above, or oz and lb. */
  grams(value: number): string;
  kilograms(value: number, digits?: number): string;
  litres(value: number): string;
  centimetres(value: number): string;
  /** The sides of a box, the unit written once: "55 × 40 × 23 cm". */
  sides(cm: readonly number[]): string;
  /** "12 °C" or "54 °F". */
  celsius(value: number): string;
  /** "9 to 15 °C", in the studio's unit. */
  celsiusRange(low: number, high: number): string;
  /** "Sunday 3 October". */
  date(iso: string): string;
  /** "3 Oct". */
  dateShort(iso: string): string;
  weekday(iso: string): string;
  /** "Sun", German "So". */
  weekdayShort(iso: string): string;
  /** "S", for the narrowest columns. */
  weekdayNarrow(iso: string): string;
  /** "November 2026", from a date or a month. */
  month(iso: string): string;
  /** "2–10 October 2027". */
  dateRange(from: string, to: string): string;
  /** "3 Oct", "5–7 Oct": stretches of days by their first and last days, side by side. */
  dateStretches(from: readonly string[], to: readonly string[]): readonly string[];
  /** "19:30" or "7:30 pm". */
  time(clock: string): string;
  /** "3 Oct, 19:30". */
  dayAndTime(iso: string, clock: string): string;
  /** Whole units of the currency, or with that many digits behind the point. */
  money(amount: number, currency: string, digits?: number): string;
}

/** Published factors: 1 lb = 453.59237 g exactly, 1 in = 2.54 cm exactly (international yard and pound, 1959). */
export const GRAMS_A_POUND = 453.59237;
export const OUNCES_A_POUND = 16;
export const CENTIMETRES_AN_INCH = 2.54;

const noon = (iso: string): Date => new Date(`${iso}T12:00:00Z`);

/** Formats for a studio's language and units. Pure: no clock, no locale of the machine. */
export const createFormats = (studio: Pick<Studio, 'language' | 'temperature' | 'length' | 'weight'>): Formats => {
  const { language } = studio;
  const numberFormats = new Map<string, Intl.NumberFormat>();
  const numbers = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const key = JSON.stringify(options);
    const made = numberFormats.get(key) ?? new Intl.NumberFormat(language, options);
    numberFormats.set(key, made);
    return made;
  };
  const unit = (value: number, name: string, digits: number): string =>
    numbers({ style: 'unit', unit: name, maximumFractionDigits: digits }).format(value);
  const dates = (options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat =>
    new Intl.DateTimeFormat(language, { timeZone: 'UTC', ...options });
  // English of no country: the clock stays as a brief writes it
  const asWritten: Intl.DateTimeFormatOptions = language === 'en' ? { hourCycle: 'h23' } : {};
  const plurals = new Intl.PluralRules(language);
  /** Whole degrees in the studio's unit; the sum with 0 turns a rounded "-0" into "0". */
  const degrees = (c: number): number => Math.round(studio.temperature === 'F' ? (c * 9) / 5 + 32 : c) + 0;
  const degreeUnit = studio.temperature === 'F' ? 'fahrenheit' : 'celsius';

  const formats: Formats = {
    language,
    number: (value, digits = 1) => numbers({ maximumFractionDigits: digits }).format(value),
    count: (value) => numbers({ maximumFractionDigits: 0 }).format(value),
    percent: (share) => numbers({ style: 'percent', maximumFractionDigits: 0 }).format(share),
    list: (items) => new Intl.ListFormat(language, { type: 'conjunction' }).format(items),
    either: (items) => new Intl.ListFormat(language, { type: 'disjunction' }).format(items),
    plural: (value, forms) => {
      const form = plurals.select(Number(value)) === 'one' ? forms.one : forms.other;
      return form.replace('#', formats.count(value));
    },
    grams: (value) => {
      if (studio.weight === 'lb') {
        return value < GRAMS_A_POUND
          ? unit((value / GRAMS_A_POUND) * OUNCES_A_POUND, 'ounce', 1)
          : unit(value / GRAMS_A_POUND, 'pound', 1);
      }
      return Math.round(value) < 1000 ? unit(value, 'gram', 0) : unit(value / 1000, 'kilogram', 1);
    },
    kilograms: (value, digits = 1) =>
      studio.weight === 'lb' ? unit((value * 1000) / GRAMS_A_POUND, 'pound', digits) : unit(value, 'kilogram', digits),
    litres: (value) => unit(value, 'liter', value < 10 ? 1 : 0),
    centimetres: (value) =>
      studio.length === 'in' ? unit(value / CENTIMETRES_AN_INCH, 'inch', 1) : unit(value, 'centimeter', 0),
    sides: (cm) => {
      const bare = (side: number): string =>
        studio.length === 'in' ? formats.number(side / CENTIMETRES_AN_INCH) : formats.number(side, 0);
      return cm.map((side, index) => (index < cm.length - 1 ? bare(side) : formats.centimetres(side))).join(' × ');
    },
    celsius: (value) => unit(degrees(value), degreeUnit, 0),
    celsiusRange: (low, high) => {
      const [from, to] = [degrees(low), degrees(high)];
      // Intl writes a range of two equal numbers as an approximation: "~22 °C".
      if (from === to) return unit(from, degreeUnit, 0);
      return numbers({ style: 'unit', unit: degreeUnit, maximumFractionDigits: 0 }).formatRange(from, to);
    },
    date: (iso) => dates({ weekday: 'long', day: 'numeric', month: 'long' }).format(noon(iso)),
    dateShort: (iso) => dates({ day: 'numeric', month: 'short' }).format(noon(iso)),
    weekday: (iso) => dates({ weekday: 'long' }).format(noon(iso)),
    weekdayShort: (iso) => dates({ weekday: 'short' }).format(noon(iso)),
    weekdayNarrow: (iso) => dates({ weekday: 'narrow' }).format(noon(iso)),
    month: (iso) => dates({ month: 'long', year: 'numeric' }).format(noon(iso.length === 7 ? `${iso}-01` : iso)),
    dateRange: (from, to) =>
      dates({ day: 'numeric', month: 'long', year: 'numeric' }).formatRange(noon(from), noon(to)),
    dateStretches: (from, to) =>
      from.map((first, index) =>
        dates({ day: 'numeric', month: 'short' }).formatRange(noon(first), noon(to[index] ?? first)),
      ),
    time: (clock) =>
      dates({ hour: 'numeric', minute: '2-digit', ...asWritten }).format(new Date(`2000-01-01T${clock}:00Z`)),
    dayAndTime: (iso, clock) => `${formats.dateShort(iso)}, ${formats.time(clock)}`,
    money: (amount, currency, digits = 0) =>
      numbers({
        style: 'currency',
        currency,
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
      }).format(amount),
  };
  return formats;
};
