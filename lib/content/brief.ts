import * as v from 'valibot';
import { BAG_GUIDELINES } from '../bag/index.ts';
import { type Normals, normalWeather } from '../comfort/index.ts';
import type {
  Aversions,
  Bag,
  BagMeasure,
  Brief,
  DayPart,
  Occasion,
  Problem,
  TripPlace,
  Weather,
} from '../model/index.ts';
import {
  checkBagOwners,
  checkCloths,
  checkEnds,
  checkHours,
  checkNeeds,
  checkNeedsIndoors,
  checkPeople,
  checkPlaces,
  type Say,
} from './brief-checks.ts';
import { checkDates } from './brief-dates.ts';
import type { FrontMatter } from './front-matter.ts';
import { toProblems } from './problems.ts';
import type { Read } from './result.ts';
import { briefSchema, type WrittenAvoid, type WrittenBrief, type WrittenWeather } from './schema/brief.ts';
import { fieldsOf } from './schema/fields.ts';

const PART_ORDER: Readonly<Record<DayPart, string>> = {
  morning: '08:00',
  day: '13:00',
  evening: '19:00',
  night: '23:00',
};

/** Words of a title as they stand in an address: lower case, accents off, hyphens between. */
export const slug = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '') || 'untitled';

const weatherOf = (written: WrittenWeather): Weather => ({
  lowC: written.low,
  highC: written.high,
  windMs: written.wind,
  humidityPercent: written.humidity,
  rainPercent: written.rain,
  source: written.source ?? '',
});

const placeOf = (written: WrittenBrief['places'][number]): TripPlace => ({
  name: written.name,
  from: written.from,
  to: written.to,
  ...(written.at === undefined ? {} : { at: written.at }),
  ...(written['time zone'] === undefined ? {} : { timeZone: written['time zone'] }),
  ...(written.weather === undefined ? {} : { weather: weatherOf(written.weather) }),
  days: Object.fromEntries(Object.entries(written.days).map(([date, weather]) => [date, weatherOf(weather)])),
});

const sortKey = (occasion: Occasion): string => `${occasion.on} ${occasion.at ?? PART_ORDER[occasion.part]}`;

const occasionsOf = (written: WrittenBrief, lineOf: FrontMatter['lineOf']): readonly Occasion[] => {
  const taken = new Map<string, number>();
  return written.occasions
    .map((entry, index): Occasion => {
      const base = `${entry.on}-${slug(entry.what)}`;
      const before = taken.get(base) ?? 0;
      taken.set(base, before + 1);
      return {
        id: before === 0 ? base : `${base}-${before + 1}`,
        what: entry.what,
        on: entry.on,
        part: entry.at.part,
        ...(entry.at.at === undefined ? {} : { at: entry.at.at }),
        ...(entry.until === undefined ? {} : { until: entry.until }),
        dress: entry.dress,
        setting: entry.where,
        activity: entry.activity,
        needs: entry.needs,
        transit: entry.transit,
        ...(entry['degrees off'] === undefined ? {} : { degreesOff: entry['degrees off'] }),
        travellers: entry.travellers,
        line: lineOf(['occasions', index]),
      };
    })
    .toSorted((a, b) => (sortKey(a) < sortKey(b) ? -1 : sortKey(a) > sortKey(b) ? 1 : 0));
};

const LITRES_A_CUBIC_CM = 0.001;
/** A soft cabin case weighs about this. common practice, no source */
const USUAL_OWN_GRAMS = { cabin: 2200, personal: 500, hold: 3800 } as const;
/** Share of the outer box that can be filled: wheels, handle and walls take the rest. common practice, no source */
const FILLABLE = 0.8;

/** What a guideline has to fill in: the size unless it or the room is written, and the limit. */
const assumedOf = (written: NonNullable<WrittenBrief['bag']>): readonly BagMeasure[] => [
  ...(written.cm === undefined ? (['size'] as const) : []),
  ...(written.kg === undefined && written.guideline === 'hold' ? (['limit'] as const) : []),
];

const bagOf = (written: NonNullable<WrittenBrief['bag']>, index: number): Bag => {
  const guideline = written.guideline;
  const preset = guideline === undefined ? undefined : BAG_GUIDELINES[guideline];
  const role = written.role ?? guideline ?? (index === 0 ? 'cabin' : 'personal');
  const box = written.cm ?? preset?.cm;
  const limitKg = written.kg ?? preset?.kg;
  const inner = written['inner cm'];
  const [sides, share] = inner === undefined ? [box, FILLABLE] : [inner, 1];
  const fromBox = sides === undefined ? 40 : sides[0] * sides[1] * sides[2] * LITRES_A_CUBIC_CM * share;
  const own = written['own kg'];
  return {
    name: written.name ?? (role === 'cabin' ? 'Cabin case' : role === 'personal' ? 'Day bag' : 'Suitcase'),
    role,
    ...(box === undefined ? {} : { cm: box }),
    litres: written.litres ?? Math.round(fromBox * 10) / 10,
    ownGrams: own === undefined ? USUAL_OWN_GRAMS[role] : own * 1000,
    ...(limitKg === undefined ? {} : { limitKg }),
    ...(inner === undefined ? {} : { innerCm: inner }),
    ...(guideline === undefined ? {} : { guideline, assumed: assumedOf(written) }),
    ...(written['shared by'] === undefined ? {} : { sharedBy: written['shared by'] }),
    ...(written.traveller === undefined ? {} : { traveller: written.traveller }),
  };
};

const aversionsOf = (written: Partial<WrittenAvoid>): Aversions => ({
  colours: written.colours ?? [],
  fabrics: written.fabrics ?? [],
  againstSkin: written['against skin'] ?? [],
  ...(written['heel cm over'] === undefined ? {} : { heelCmOver: written['heel cm over'] }),
});

/** Reads a brief. Every date, place and person in it is checked against the trip. */
export const readBrief = (id: string, matter: FrontMatter): Read<Brief> => {
  const parsed = v.safeParse(briefSchema, matter.data);
  if (!parsed.success) return { problems: toProblems(matter, parsed.issues, fieldsOf(briefSchema)) };
  const written = parsed.output;
  const problems: Problem[] = [];
  const say: Say = (path, wrong, mend) => problems.push({ file: matter.file, line: matter.lineOf(path), wrong, mend });
  checkDates(written, say, (path) => matter.lineOf(path));
  checkPlaces(written, say);
  checkPeople(written, say);
  checkHours(written, say);
  checkEnds(written, say);
  checkNeeds(written, say);
  checkNeedsIndoors(written, say);
  checkCloths(written, say);
  checkBagOwners(written, say);
  if (written.bag !== undefined && written.bags !== undefined) {
    say(['bag'], 'both "bag" and "bags" are written', 'keep "bags" and move the one bag into it');
  }
  const bags = written.bags ?? [written.bag ?? {}];
  return {
    value: {
      id,
      file: matter.file,
      title: written.title,
      from: written.from,
      to: written.to,
      travellers: written.travellers.map(({ name, wardrobe, avoid, feels }) => ({
        name,
        wardrobe,
        ...(feels === undefined ? {} : { feels }),
        ...(avoid === undefined ? {} : { avoid: aversionsOf(avoid) }),
      })),
      places: written.places.map(placeOf),
      occasions: occasionsOf(written, matter.lineOf),
      bags: bags.map(bagOf),
      washDays: written['wash days'].toSorted(),
      ...(written['wash days'].length === 0 ? {} : { washDaysLine: matter.lineOf(['wash days']) }),
      ...(written['pieces at most'] === undefined ? {} : { piecesAtMost: written['pieces at most'] }),
      avoid: aversionsOf(written.avoid),
      cautions: written.cautions,
      introduction: matter.body,
    },
    problems,
  };
};

const datesOf = (from: string, to: string): readonly string[] => {
  const dates: string[] = [];
  for (let time = Date.parse(`${from}T00:00:00Z`); time <= Date.parse(`${to}T00:00:00Z`); time += 86_400_000) {
    dates.push(new Date(time).toISOString().slice(0, 10));
  }
  return dates;
};

/** Gives a stay without weather the monthly normals of its place, day by day, where the table has them. */
export const withNormals = (brief: Brief, normals: Normals): Brief => ({
  ...brief,
  places: brief.places.map((place): TripPlace => {
    if (place.weather !== undefined) return place;
    const found = datesOf(place.from, place.to).flatMap((date) => {
      const normal = place.days[date] ?? normalWeather(normals, place.name, date);
      return normal === undefined ? [] : [[date, normal] as const];
    });
    return { ...place, days: Object.fromEntries(found) };
  }),
});
