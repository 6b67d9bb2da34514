import type { IsoDate, Problem, Weather } from '../model/index.ts';

/**
 * Monthly normals, for trips too far ahead for a forecast. Wayfold's own CSV: one header line, then a line a place and
 * month, comma-separated, a field with a comma or a quotation mark in quotation marks (RFC 4180):
 *
 *     place,month,low C,high C,wind m/s,humidity %,rain %,source
 *     Vienna,10,7,14,3,75,40,national weather service 1991–2020
 *
 * `month` is 1 to 12, temperatures are means of the daily lowest and highest in °C, `rain %` is the chance of rain on a
 * day, and `source` says where the figures come from.
 */
export const NORMALS_HEADER = [
  'place',
  'month',
  'low C',
  'high C',
  'wind m/s',
  'humidity %',
  'rain %',
  'source',
] as const;

export type Normals = ReadonlyMap<string, Weather>;

const keyOf = (place: string, month: number): string => `${place.trim().toLowerCase()}|${month}`;

const LIMITS: readonly (readonly [column: number, low: number, high: number])[] = [
  [1, 1, 12],
  [2, -90, 60],
  [3, -90, 60],
  [4, 0, 75],
  [5, 0, 100],
  [6, 0, 100],
];

/** Fields of one line of CSV; undefined when a quotation mark is left open. */
const fieldsOf = (line: string): readonly string[] | undefined => {
  const fields: string[] = [];
  let field = '';
  let quoted = false;
  for (let index = 0; index < line.length; index += 1) {
    const character = line[index];
    if (quoted && character === '"' && line[index + 1] === '"') {
      field += '"';
      index += 1;
    } else if (character === '"') quoted = !quoted;
    else if (character === ',' && !quoted) {
      fields.push(field.trim());
      field = '';
    } else field += character;
  }
  return quoted ? undefined : [...fields, field.trim()];
};

const wrongWith = (fields: readonly string[]): { readonly wrong: string; readonly mend: string } | undefined => {
  if (fields.length !== NORMALS_HEADER.length) {
    return {
      wrong: `this line has ${fields.length} fields, not ${NORMALS_HEADER.length}`,
      mend: `write ${NORMALS_HEADER.join(', ')}`,
    };
  }
  if (fields[0] === '') return { wrong: 'the place is empty', mend: 'write the place as in the brief' };
  for (const [column, low, high] of LIMITS) {
    const text = fields[column] ?? '';
    const value = Number(text);
    if (text === '' || !Number.isFinite(value) || value < low || value > high) {
      return { wrong: `${NORMALS_HEADER[column]} is "${text}"`, mend: `write a number from ${low} to ${high}` };
    }
  }
  if (!Number.isInteger(Number(fields[1]))) return { wrong: `month is "${fields[1]}"`, mend: 'write a whole number' };
  if (Number(fields[2]) > Number(fields[3])) {
    return { wrong: 'the low is above the high', mend: 'write the lower temperature first' };
  }
  return undefined;
};

/** Reads a table of monthly normals. Lines that are wrong are left out and reported; `file` names the file in the reports. */
export const parseNormals = (
  text: string,
  file: string,
): { readonly normals: Normals; readonly problems: readonly Problem[] } => {
  const normals = new Map<string, Weather>();
  const problems: Problem[] = [];
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  const header = fieldsOf(lines[0] ?? '') ?? [];
  if (header.join(',') !== NORMALS_HEADER.join(',')) {
    problems.push({
      file,
      line: 1,
      wrong: 'the first line is not the header',
      mend: `write "${NORMALS_HEADER.join(',')}"`,
    });
    return { normals, problems };
  }
  lines.slice(1).forEach((text, index) => {
    if (text.trim() === '') return;
    const line = index + 2;
    const fields = fieldsOf(text);
    const wrong =
      fields === undefined
        ? { wrong: 'a quotation mark is left open', mend: 'close it on the same line' }
        : wrongWith(fields);
    if (fields === undefined || wrong !== undefined) {
      if (wrong !== undefined) problems.push({ file, line, ...wrong });
      return;
    }
    const [place = '', month, low, high, wind, humidity, rain, source = ''] = fields;
    const key = keyOf(place, Number(month));
    if (normals.has(key)) {
      problems.push({ file, line, wrong: `${place} has month ${month} twice`, mend: 'keep one of the two lines' });
      return;
    }
    normals.set(key, {
      lowC: Number(low),
      highC: Number(high),
      windMs: Number(wind),
      humidityPercent: Number(humidity),
      rainPercent: Number(rain),
      source: source === '' ? 'monthly normal' : `monthly normal, ${source}`,
    });
  });
  return { normals, problems };
};

/** The normal weather of a place in a day's month; undefined when the table does not have it. */
export const normalWeather = (normals: Normals, place: string, date: IsoDate): Weather | undefined =>
  normals.get(keyOf(place, Number(date.slice(5, 7))));
