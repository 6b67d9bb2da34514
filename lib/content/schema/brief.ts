import * as v from 'valibot';
import { DEGREES_OFF_AT_MOST } from '../../comfort/index.ts';
import type { DayPart, Setting } from '../../model/index.ts';
import { ACTIVITIES, type ActivityId, DRESS_CODES, FEELS, NEEDS } from '../../vocabulary/index.ts';
import { colour, isoDate, nameText, noteText, numberBetween, read } from './parts.ts';

const DAY_PARTS = ['morning', 'day', 'evening', 'night'] as const;

const partOf = (hour: number): DayPart => {
  if (hour < 5 || hour >= 22) return 'night';
  if (hour < 11) return 'morning';
  return hour < 17 ? 'day' : 'evening';
};

const CLOCK = /^([01]?\d|2[0-3]):([0-5]\d)$/;

const clockTime = read<string>((input) => {
  const text = String(input).trim();
  return CLOCK.test(text)
    ? { value: text.padStart(5, '0') }
    : { wrong: `"${text}" is not a time`, mend: 'write a time in quotes, like "17:00"' };
});

/** A part of the day, or a clock time that falls in one. */
const dayTime = read<{ part: DayPart; at?: string }>((input) => {
  const text = String(input).trim();
  if ((DAY_PARTS as readonly string[]).includes(text)) return { value: { part: text as DayPart } };
  const match = CLOCK.exec(text);
  if (match?.[1] !== undefined) return { value: { part: partOf(Number(match[1])), at: text.padStart(5, '0') } };
  return { wrong: `"${text}" is not a time`, mend: 'write morning, day, evening, night, or a time like "19:30"' };
});

const setting = read<Setting>((input) => {
  const text = String(input).trim();
  const indoors = /^indoors(?:\s+(-?\d+(?:\.\d+)?))?$/.exec(text);
  if (indoors) {
    const airC = indoors[1] === undefined ? 21 : Number(indoors[1]);
    return airC >= 5 && airC <= 45
      ? { value: { where: 'indoors', airC } }
      : { wrong: `${airC} °C indoors is not likely`, mend: "write the room's temperature in °C, like indoors 21" };
  }
  const outdoors = /^outdoors(?:,?\s+(?:in the\s+)?(sun|shade))?$/.exec(text);
  if (outdoors) return { value: { where: 'outdoors', sun: outdoors[1] === 'sun' ? 'sun' : 'shade' } };
  return {
    wrong: `"${text}" is not a setting`,
    mend: 'write indoors, indoors 21, outdoors, outdoors sun or outdoors shade',
  };
});

const coordinates = read<{ latitude: number; longitude: number }>((input) => {
  const [latitude, longitude] = Array.isArray(input) ? (input as unknown[]) : [];
  const right =
    typeof latitude === 'number' &&
    typeof longitude === 'number' &&
    Math.abs(latitude) <= 90 &&
    Math.abs(longitude) <= 180;
  return right
    ? { value: { latitude, longitude } }
    : {
        wrong: `${JSON.stringify(input)} is not a position`,
        mend: 'write [latitude, longitude] in degrees, like [48.21, 16.37]',
      };
});

const timeZones = new Set(Intl.supportedValuesOf('timeZone'));
const timeZone = read<string>((input) =>
  timeZones.has(String(input))
    ? { value: String(input) }
    : { wrong: `there is no time zone "${String(input)}"`, mend: 'write region and city, like Europe/Vienna' },
);

/** Weather of a stay or a day: °C, wind in m/s, humidity and rain in percent. */
export const weatherSchema = v.strictObject({
  low: numberBetween(-70, 55),
  high: numberBetween(-70, 60),
  wind: v.optional(numberBetween(0, 60), 2),
  humidity: v.optional(numberBetween(0, 100), 60),
  rain: v.optional(numberBetween(0, 100), 0),
  source: v.optional(nameText),
});

const boxCm = read<readonly [number, number, number]>((input) => {
  const sides = Array.isArray(input) ? (input as unknown[]).map(Number) : [];
  const [a, b, c] = sides.toSorted((x, y) => y - x);
  const right = sides.length === 3 && a !== undefined && b !== undefined && c !== undefined && c > 0 && a <= 300;
  return right
    ? { value: [a, b, c] as const }
    : { wrong: `${JSON.stringify(input)} is not a size`, mend: 'write three sides in cm, like [55, 40, 23]' };
});

const bagSchema = v.strictObject({
  name: v.optional(nameText),
  role: v.optional(v.picklist(['cabin', 'personal', 'hold'])),
  cm: v.optional(boxCm),
  litres: v.optional(numberBetween(0.1, 400)),
  kg: v.optional(numberBetween(0.1, 100)),
  'own kg': v.optional(numberBetween(0, 15)),
  'inner cm': v.optional(boxCm),
  guideline: v.optional(v.picklist(['cabin', 'hold'])),
  'shared by': v.optional(v.array(nameText)),
  traveller: v.optional(nameText),
});

const dateKey = v.pipe(
  v.string(),
  v.regex(/^\d{4}-\d{2}-\d{2}$/, 'is not a date\nwrite year-month-day, like 2027-10-02'),
);

const placeSchema = v.strictObject({
  name: nameText,
  from: isoDate,
  to: isoDate,
  at: v.optional(coordinates),
  'time zone': v.optional(timeZone),
  weather: v.optional(weatherSchema),
  days: v.optional(v.record(dateKey, weatherSchema), {}),
});

const occasionSchema = v.strictObject({
  what: nameText,
  on: isoDate,
  at: dayTime,
  until: v.optional(clockTime),
  dress: v.picklist(DRESS_CODES),
  where: setting,
  activity: v.picklist(Object.keys(ACTIVITIES) as ActivityId[]),
  needs: v.optional(v.array(v.picklist(NEEDS)), []),
  transit: v.optional(v.boolean(), false),
  'degrees off': v.optional(numberBetween(0, DEGREES_OFF_AT_MOST)),
  travellers: v.optional(v.array(nameText), []),
});

const avoidSchema = v.strictObject({
  colours: v.optional(v.array(colour), []),
  fabrics: v.optional(v.array(nameText), []),
  'heel cm over': v.optional(numberBetween(0, 20)),
  'against skin': v.optional(v.array(nameText), []),
});

/** The front matter of a brief. */
export const briefSchema = v.strictObject({
  title: nameText,
  from: isoDate,
  to: isoDate,
  travellers: v.pipe(
    v.array(
      v.strictObject({
        name: nameText,
        wardrobe: nameText,
        avoid: v.optional(avoidSchema),
        feels: v.optional(v.picklist(FEELS)),
      }),
    ),
    v.minLength(1),
  ),
  places: v.pipe(v.array(placeSchema), v.minLength(1)),
  occasions: v.optional(v.array(occasionSchema), []),
  bag: v.optional(bagSchema),
  bags: v.optional(v.pipe(v.array(bagSchema), v.minLength(1))),
  'wash days': v.optional(v.array(isoDate), []),
  'pieces at most': v.optional(v.pipe(numberBetween(1, 500), v.integer())),
  avoid: v.optional(avoidSchema, {}),
  cautions: v.optional(v.array(noteText), []),
});
export type WrittenBrief = v.InferOutput<typeof briefSchema>;
export type WrittenAvoid = v.InferOutput<typeof avoidSchema>;
export type WrittenWeather = v.InferOutput<typeof weatherSchema>;
