import type { Brief, ListLine, PackingListPlan, TripPlace, Weather } from '../model/index.ts';
import { dressIndex, KIND_IDS, KINDS, type KindGroup, type KindId, type Place } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** A list made from a trip, each line with its reason. */
export interface ReasonedList {
  readonly list: PackingListPlan;
  /** One a line. */
  readonly reasons: readonly Phrase[];
}

const DAY_MS = 86_400_000;
/** From here on it is warm enough for sandals and too warm for a coat, and below it cold enough for two. Own choice, °C. */
const WARM_C = 24;
const COLD_C = 10;

const kindsWhere = (wanted: (id: KindId) => boolean): readonly KindId[] => KIND_IDS.filter(wanted);
const inPlace = (place: Place, ...groups: readonly KindGroup[]): readonly KindId[] =>
  kindsWhere((id) => KINDS[id].places[0] === place && (groups.length === 0 || groups.includes(KINDS[id].group)));

const weathersOf = ({ weather, days }: TripPlace): readonly Weather[] => [
  ...(weather === undefined ? [] : [weather]),
  ...Object.values(days),
];

/** What of a trip decides its list. */
export interface TripTraits {
  readonly days: number;
  readonly lowC: number | undefined;
  readonly highC: number | undefined;
  readonly rainPercent: number;
  readonly swims: number;
  /** Occasions of cocktail dress and above. */
  readonly formal: number;
  readonly washes: number;
  readonly roughGround: boolean;
}

export const traitsOf = (brief: Brief): TripTraits => {
  const weathers = brief.places.flatMap(weathersOf);
  const asks = (need: string): number =>
    brief.occasions.filter(({ needs }) => needs.some((one) => one === need)).length;
  return {
    days: Math.round((Date.parse(brief.to) - Date.parse(brief.from)) / DAY_MS) + 1,
    lowC: weathers.length === 0 ? undefined : Math.min(...weathers.map(({ lowC }) => lowC)),
    highC: weathers.length === 0 ? undefined : Math.max(...weathers.map(({ highC }) => highC)),
    rainPercent: Math.max(0, ...weathers.map(({ rainPercent }) => rainPercent)),
    swims: asks('swim'),
    formal: brief.occasions.filter(({ dress }) => dressIndex(dress) >= dressIndex('cocktail')).length,
    washes: brief.washDays.length,
    roughGround: asks('uneven ground') > 0,
  };
};

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, Math.round(value)));

/**
 * A list from what the trip is like: its days between washes, the cold and the heat, swimming, formal evenings. The
 * proportions are the carry-on list of the trade (5 tops, 3 bottoms, 1 dress, 2 of swimwear, 2 outer layers, 2 pairs of
 * shoes, 3 accessories for a week). common practice, no source
 */
export const listFromTraits = (brief: Brief): ReasonedList => {
  const traits = traitsOf(brief);
  const { days, lowC, highC, rainPercent, swims, formal, washes, roughGround } = traits;
  const stretch = Math.ceil(days / (washes + 1));
  const lines: ListLine[] = [];
  const reasons: Phrase[] = [];
  const line = (what: string, count: number, kinds: readonly KindId[], reason: Phrase): void => {
    if (count <= 0 || kinds.length === 0) return;
    lines.push({ what, count, kinds });
    reasons.push(reason);
  };
  const tops = clamp(stretch * 0.9 + 1, 2, 6);
  const bottoms = clamp(stretch / 2.5, 2, 4);
  line('tops', tops, inPlace('top'), phrase('capsule', 'why tops', { days, washes, stretch }));
  line('bottoms', bottoms, inPlace('bottom'), phrase('capsule', 'why bottoms', { tops }));
  line('dresses', formal > 1 ? 2 : 1, inPlace('one-piece'), phrase('capsule', 'why dresses', { formal }));
  line('swimwear', swims > 0 ? 2 : 0, inPlace('swim'), phrase('capsule', 'why swimwear', { swims }));
  line(
    'layers',
    highC !== undefined && highC >= WARM_C ? 1 : 2,
    inPlace('mid layer'),
    phrase('capsule', 'why layers', {}),
  );
  const outers = lowC === undefined || lowC < COLD_C ? 2 : lowC < WARM_C - 6 || rainPercent >= 40 ? 1 : 0;
  line(
    'outer layers',
    outers,
    inPlace('outer layer'),
    phrase('capsule', 'why outers', { lowC: lowC ?? 0, known: lowC === undefined ? 0 : 1, rainPercent }),
  );
  line(
    'shoes',
    roughGround && formal > 0 ? 3 : 2,
    inPlace('shoes'),
    phrase('capsule', 'why shoes', { rough: roughGround ? 1 : 0, formal }),
  );
  line(
    'accessories',
    3,
    kindsWhere((id) => ['bags', 'jewellery', 'accessories'].includes(KINDS[id].group)),
    phrase('capsule', 'why accessories', {}),
  );
  return { list: { id: 'from-the-trip', title: brief.title, file: brief.file, lines, note: '' }, reasons };
};
