import * as v from 'valibot';
import { COLOUR_NAMES, nearestColourNames, parseColour } from '../../colour/index.ts';
import type { IsoDate, NamedColour } from '../../model/index.ts';
import { DRESS_CODES, dressIndex, fabricNamed, KIND_IDS, type KindId } from '../../vocabulary/index.ts';
import { fabricInstead, kindInstead, nearestWords, writeInstead } from '../nearest.ts';
import { wrongAndMend } from '../problems.ts';

const NAME_LENGTH = 300;
const NOTE_LENGTH = 4000;

/** A name people read. */
export const nameText = v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(NAME_LENGTH));
/** A few sentences. */
export const noteText = v.pipe(v.string(), v.trim(), v.maxLength(NOTE_LENGTH));

/** A number in a range, finite; outside it the problem says the bound. */
export const numberBetween = (low: number, high: number) =>
  v.pipe(v.number(), v.finite(), v.minValue(low), v.maxValue(high));

/** A field with a transform of its own: the function returns the value, or what is wrong and how to mend it. */
export const read = <T>(from: (input: unknown) => { value: T } | { wrong: string; mend: string }) =>
  v.pipe(
    v.unknown(),
    v.check(
      (input) => input !== undefined && input !== null,
      wrongAndMend('nothing is written there', 'write a value'),
    ),
    v.rawTransform<unknown, T>(({ dataset, addIssue, NEVER }) => {
      const result = from(dataset.value);
      if ('value' in result) return result.value;
      addIssue({ message: wrongAndMend(result.wrong, result.mend) });
      return NEVER;
    }),
  );

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** True for a date that exists in the calendar. */
export const isDate = (text: string): boolean => {
  if (!DATE.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text);
};

export const isoDate = read<IsoDate>((input) => {
  if (typeof input === 'string' && isDate(input)) return { value: input };
  const text = String(input);
  return DATE.test(text)
    ? { wrong: `there is no ${text} in the calendar`, mend: 'write a date that exists, year-month-day' }
    : { wrong: `"${text}" is not a date`, mend: 'write year-month-day, like 2027-10-02' };
});

const asColour = (text: string): { value: NamedColour } | { wrong: string; mend: string } => {
  const colour = parseColour(text);
  if (colour !== undefined) return { value: colour };
  const near = [...nearestColourNames(text), ...nearestWords(text, COLOUR_NAMES)].slice(0, 3);
  return {
    wrong: `no colour is called "${text}"`,
    mend:
      near.length > 0
        ? writeInstead(text, [...new Set(near)])
        : 'write a colour name, or give one of your own a value: {name: wet slate, value: "#4a5560"}',
  };
};

export interface WrittenColour extends NamedColour {
  readonly share?: number;
}

const shareSum = (colours: readonly WrittenColour[]): number =>
  colours.reduce((sum, { share }) => sum + (share ?? 0), 0);

const COLOUR_FIELDS = ['name', 'value', 'share', 'neutral'];

const colourGroup = (input: Record<string, unknown>): { value: WrittenColour } | { wrong: string; mend: string } => {
  const stranger = Object.keys(input).find((key) => !COLOUR_FIELDS.includes(key));
  if (stranger !== undefined)
    return { wrong: `a colour has no field "${stranger}"`, mend: writeInstead(stranger, COLOUR_FIELDS) };
  const { name, value, share, neutral } = input;
  if (typeof name !== 'string' || name.trim() === '') return { wrong: 'the colour has no name', mend: 'add name: …' };
  if (value !== undefined && typeof value !== 'string') {
    return { wrong: 'the value of the colour is not text', mend: 'write it in quotes, "#4a5560"' };
  }
  if (share !== undefined && !(typeof share === 'number' && share > 0 && share <= 1)) {
    return { wrong: `a share of ${String(share)} is not possible`, mend: 'write a share between 0 and 1, like 0.7' };
  }
  if (neutral !== undefined && typeof neutral !== 'boolean') {
    return { wrong: 'neutral is yes or no', mend: 'write neutral: true or neutral: false' };
  }
  const found = asColour(value ?? name);
  if (!('value' in found)) return found;
  return {
    value: {
      ...found.value,
      name: name.trim(),
      ...(share === undefined ? {} : { share }),
      ...(neutral === undefined ? {} : { neutral }),
    },
  };
};

/** A colour as a name, a CSS value, or `{name, value, share, neutral}`. */
export const colour = read<WrittenColour>((input) => {
  if (typeof input === 'string') return asColour(input);
  if (typeof input === 'object' && input !== null && !Array.isArray(input))
    return colourGroup(input as Record<string, unknown>);
  return {
    wrong: `${JSON.stringify(input)} is not a colour`,
    mend: 'write a name such as rust, or "#a0522d" in quotes',
  };
});

/** `casual`, `[casual, business]` or `casual to business`, as an interval of the scale. */
export const dressInterval = read<{ low: number; high: number }>((input) => {
  const words = Array.isArray(input) ? input.map(String) : String(input).split(/\s+to\s+/);
  const wrongWord = words.find((word) => !(DRESS_CODES as readonly string[]).includes(word));
  if (wrongWord !== undefined || words.length === 0) {
    return { wrong: `there is no dress code "${wrongWord ?? ''}"`, mend: writeInstead(wrongWord ?? '', DRESS_CODES) };
  }
  const places = words.map((word) => dressIndex(word as (typeof DRESS_CODES)[number]));
  return { value: { low: Math.min(...places), high: Math.max(...places) } };
});

const CURRENCIES = new Set(Intl.supportedValuesOf('currency'));

/** `85 EUR`. */
export const price = read<{ amount: number; currency: string }>((input) => {
  const match = /^(\d+(?:\.\d+)?)\s*([A-Z]{3})$/.exec(String(input).trim());
  if (match?.[1] === undefined || match[2] === undefined) {
    return { wrong: `"${String(input)}" is not a price`, mend: 'write amount and currency, like 85 EUR' };
  }
  if (!CURRENCIES.has(match[2])) {
    return {
      wrong: `there is no currency ${match[2]}`,
      mend: writeInstead(match[2], [...CURRENCIES], 'write its three letters, like EUR'),
    };
  }
  return { value: { amount: Number(match[1]), currency: match[2] } };
});

/** A description of a cloth in which a known fibre or cloth is named. */
export const cloth = read<string>((input) => {
  const text = String(input).trim();
  return fabricNamed(text) !== undefined && text.length <= NAME_LENGTH
    ? { value: text }
    : {
        wrong: `it names no cloth that Wayfold knows: "${text.slice(0, 60)}"`,
        mend: fabricInstead(text.split(' ').at(-1) ?? ''),
      };
});

const PERCENT = 100;

/** The colours of a piece, none where they are left open; written shares add up to 1 at most. */
export const colours = v.pipe(
  v.array(colour),
  v.maxLength(8),
  v.check(
    (written) => shareSum(written) <= 1.001,
    ({ input }) =>
      wrongAndMend(
        `the shares add up to ${Math.round(shareSum(input) * PERCENT)} %`,
        'write shares that add up to 1 or less',
      ),
  ),
);

/** A kind of the vocabulary. */
export const kind = read<KindId>((input) =>
  (KIND_IDS as readonly unknown[]).includes(input)
    ? { value: input as KindId }
    : { wrong: `there is no kind "${String(input)}"`, mend: kindInstead(String(input)) },
);

/** A piece's id, as a capsule names it. */
export const pieceId = v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(NAME_LENGTH));
export const pieceIds = v.array(pieceId);
