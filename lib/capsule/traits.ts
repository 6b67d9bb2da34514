import { longestStretch, tripDays } from '../bag/index.ts';
import type { Brief, ListLine, PackingListPlan, TripPlace, Weather } from '../model/index.ts';
import {
  dressIndex,
  fabricRefused,
  KIND_IDS,
  KINDS,
  type KindGroup,
  type KindId,
  type Need,
  type Place,
} from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { swimsOf } from './swims.ts';

/** A list made from a trip, each line with its reason. */
export interface ReasonedList {
  readonly list: PackingListPlan;
  /** One a line. */
  readonly reasons: readonly Phrase[];
}

/** From here on a day is hot, °C: too hot for wool and coats. From here down a morning is cold: too cold for bare shoes. Own choices. */
const HOT_C = 24;
const COLD_C = 10;
/** From here down a morning is near frost: legs, head, hands and neck are covered, and nothing is bare. Own choice, °C. */
export const FROST_C = 3;
/** A night below this asks for something to wear over the evening. Own choice, °C. */
const MILD_NIGHT_C = 18;
/** From this chance of rain an outer layer goes along whatever the heat. Own choice, percent. */
const WET_PERCENT = 40;
/** Warmest garment and warmest coat for a trip that is hot, and lightest garment for one that is cold, in clo. Own choices, from the kinds. */
const HOT_CLO = 0.34;
export const HOT_COAT_CLO = 0.44;
const COLD_CLO = 0.12;

/** What of a trip decides its list. */
export interface TripTraits {
  readonly days: number;
  /** Most days in a row on what is clean; a day more where what was washed has still to dry. */
  readonly stretch: number;
  readonly lowC: number | undefined;
  readonly highC: number | undefined;
  readonly rainPercent: number;
  readonly swims: number;
  /** Pieces of swimwear it asks for. */
  readonly swimwear: number;
  /** Occasions of cocktail dress and above. */
  readonly formal: number;
  readonly washes: number;
  readonly roughGround: boolean;
  readonly snow: boolean;
  readonly sun: boolean;
}

const weathersOf = ({ weather, days }: TripPlace): readonly Weather[] => [
  ...(weather === undefined ? [] : [weather]),
  ...Object.values(days),
];

export const traitsOf = (brief: Brief): TripTraits => {
  const weathers = brief.places.flatMap(weathersOf);
  const { swims, wanted: swimwear } = swimsOf(brief);
  const asks = (need: Need): number => brief.occasions.filter(({ needs }) => needs.includes(need)).length;
  return {
    days: tripDays(brief),
    stretch: longestStretch(brief) + (brief.washDays.length > 0 ? 1 : 0),
    lowC: weathers.length === 0 ? undefined : Math.min(...weathers.map(({ lowC }) => lowC)),
    highC: weathers.length === 0 ? undefined : Math.max(...weathers.map(({ highC }) => highC)),
    rainPercent: Math.max(0, ...weathers.map(({ rainPercent }) => rainPercent)),
    swims,
    swimwear,
    formal: brief.occasions.filter(({ dress }) => dressIndex(dress) >= dressIndex('cocktail')).length,
    washes: brief.washDays.length,
    roughGround: asks('uneven ground') > 0,
    snow: asks('snow') > 0,
    sun: asks('sun') > 0,
  };
};

const GARMENTS: ReadonlySet<KindGroup> = new Set(['tops', 'knits', 'bottoms', 'one-pieces', 'layers', 'coats']);
const BARE_SHOES: readonly KindId[] = [
  'sandals',
  'heeled sandals',
  'wedge sandals',
  'espadrilles',
  'flip-flops',
  'mules',
];
const isOf = (id: KindId, fibre: string): boolean =>
  fabricRefused({ fabric: KINDS[id].fabric, fabricText: KINDS[id].fabric }, [fibre]) !== undefined;
const isThick = (id: KindId): boolean => ['quilted', 'fleece', 'corduroy'].includes(KINDS[id].fabric);

const inHeat = (id: KindId): boolean => {
  const { group, clo, dress, suits, places } = KINDS[id];
  if (places[0] === 'gloves') return false;
  if (group === 'shoes') return !suits.includes('rain');
  if (group === 'coats') return clo[0] <= HOT_COAT_CLO && !isThick(id);
  // a suit is worn to a wedding in any heat
  const business = dressIndex(dress[0]) >= dressIndex('smart casual');
  const woollen = isOf(id, 'wool') && !business;
  return !woollen && !isThick(id) && (!GARMENTS.has(group) || clo[0] <= HOT_CLO || business);
};

const inCold = (id: KindId): boolean => {
  const { group, clo, places } = KINDS[id];
  if (isOf(id, 'linen') || isOf(id, 'straw')) return false;
  if (group === 'shoes') return BARE_SHOES.every((bare) => bare !== id);
  return places[0] === 'outer layer' || !GARMENTS.has(group) || clo[0] >= COLD_CLO;
};

/** Covered enough otherwise, and yet nobody wears it in frost: own choice. */
const NOT_IN_FROST: readonly KindId[] = [
  'cropped trousers',
  'culottes',
  'slip dress',
  'sundress',
  'maxi dress',
  't-shirt dress',
  'playsuit',
  'kimono jacket',
  'bomber jacket',
  'windbreaker',
  'canvas shoes',
  'boat shoes',
  'ballet flats',
  'slingbacks',
  'cap',
  'bucket hat',
];

const inFrost = (id: KindId): boolean => {
  const { places, covers } = KINDS[id];
  const bareArms = places[0] === 'top' && !covers.includes('forearms');
  return inCold(id) && !bareArms && !NOT_IN_FROST.includes(id);
};

/** Whether some morning of the trip is cold enough that warmth comes before choice. */
export const isCold = (brief: Brief): boolean => {
  const { lowC, snow } = traitsOf(brief);
  return snow || (lowC !== undefined && lowC < COLD_C);
};

const isFrosty = ({ lowC, highC, snow }: TripTraits): boolean =>
  snow || (lowC !== undefined && lowC <= FROST_C && (highC ?? lowC) < HOT_C);

/** Kinds that belong on a trip of this weather: nothing woollen in heat, nothing bare in the cold, snow boots for snow. */
const suitsWeather = (traits: TripTraits): ((id: KindId) => boolean) => {
  const { lowC, highC, snow } = traits;
  const hot = highC !== undefined && highC >= HOT_C && (lowC ?? highC) >= COLD_C;
  const cold = highC !== undefined && highC < HOT_C && (lowC ?? highC) < COLD_C;
  return (id) => (id === 'snow boots' ? snow : hot ? inHeat(id) : isFrosty(traits) ? inFrost(id) : !cold || inCold(id));
};

/** What keeps legs, head and neck warm. common practice, no source */
const WARM_LEGWEAR: readonly KindId[] = ['thermal leggings', 'wool tights', 'walking socks', 'knee socks'];
const WARM_HATS: readonly KindId[] = ['beanie', 'beret', 'felt hat', 'flat cap'];
const WARM_SCARVES: readonly KindId[] = ['scarf', 'chunky scarf'];

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, Math.round(value)));

/**
 * A list from what the trip is like: its days between washes, cold and heat, rain, swimming, formal evenings. A week of
 * warm weather gives the carry-on list of the trade: 5 tops, 3 bottoms, 1 dress, 2 of swimwear, 2 outer layers, 2 pairs
 * of shoes, 3 accessories. common practice, no source
 */
export const listFromTraits = (brief: Brief): ReasonedList => {
  const traits = traitsOf(brief);
  const { days, stretch, lowC, highC, rainPercent, swims, swimwear, formal, washes, roughGround, snow, sun } = traits;
  const belongs = suitsWeather(traits);
  const inPlace = (place: Place): readonly KindId[] =>
    KIND_IDS.filter((id) => KINDS[id].places[0] === place && belongs(id));
  const inGroups = (...groups: readonly KindGroup[]): readonly KindId[] =>
    KIND_IDS.filter((id) => groups.includes(KINDS[id].group) && belongs(id));
  const lines: ListLine[] = [];
  const reasons: Phrase[] = [];
  const line = (what: string, count: number, kinds: readonly KindId[], reason: Phrase): void => {
    if (count <= 0 || kinds.length === 0) return;
    lines.push({ what, count, kinds });
    reasons.push(reason);
  };
  const frosty = isFrosty(traits);
  // one is worn under another
  const under = frosty ? 1 : 0;
  const tops = clamp(stretch * 0.6 + 1, 2, 6) + under;
  line('tops', tops, inPlace('top'), phrase('capsule', 'why tops', { days, washes, stretch, under }));
  line('bottoms', clamp(stretch / 2.5, 2, 4), inPlace('bottom'), phrase('capsule', 'why bottoms', { tops }));
  line(
    'dress, or jacket of a suit',
    formal > 1 ? 2 : 1,
    [...inPlace('one-piece'), ...(['suit jacket', 'blazer', 'double-breasted blazer', 'dinner jacket'] as const)],
    phrase('capsule', 'why dresses', { formal }),
  );
  line('swimwear', swimwear, inPlace('swim'), phrase('capsule', 'why swimwear', { swims, swimwear }));
  const hot = highC !== undefined && highC >= HOT_C;
  const outers = lowC === undefined || lowC < COLD_C ? 2 : lowC < MILD_NIGHT_C || rainPercent >= WET_PERCENT ? 1 : 0;
  line('layers', hot && outers > 0 ? 1 : 2, inPlace('mid layer'), phrase('capsule', 'why layers', {}));
  line(
    'outer layers',
    outers,
    inPlace('outer layer'),
    phrase('capsule', 'why outers', { lowC: lowC ?? 0, known: lowC === undefined ? 0 : 1, rainPercent }),
  );
  line(
    'shoes',
    snow || (roughGround && formal > 0) ? 3 : 2,
    inPlace('shoes'),
    phrase('capsule', 'why shoes', { rough: roughGround ? 1 : 0, snow: snow ? 1 : 0, formal }),
  );
  const inFrostOnly = (count: number): number => (frosty ? count : 0);
  const whyWarm = phrase('capsule', 'why warm things', {
    lowC: lowC ?? 0,
    known: lowC === undefined ? 0 : 1,
    snow: snow ? 1 : 0,
  });
  line('warm legwear', inFrostOnly(3), WARM_LEGWEAR, phrase('capsule', 'why legwear', {}));
  line('hat', inFrostOnly(1), WARM_HATS, whyWarm);
  line('gloves', inFrostOnly(1), inPlace('gloves'), whyWarm);
  line('scarf', inFrostOnly(1), WARM_SCARVES, whyWarm);
  line('bag', 1, inGroups('bags'), phrase('capsule', 'why bag', {}));
  const warm: readonly KindId[] = frosty ? [...WARM_HATS, ...WARM_SCARVES, ...inPlace('gloves')] : [];
  const finishing = inGroups('jewellery', 'accessories').filter((id) => !warm.includes(id));
  const shade = finishing.filter((id) => KINDS[id].suits.includes('sun'));
  line(
    sun ? 'hat and sunglasses' : 'things that finish a look',
    2,
    sun ? shade : finishing,
    sun ? phrase('capsule', 'why shade', {}) : phrase('capsule', 'why finish', {}),
  );
  return { list: { id: 'from-the-trip', title: brief.title, file: brief.file, lines, note: '' }, reasons };
};
