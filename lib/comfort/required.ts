import type { Brief, Setting } from '../model/index.ts';
import { ACTIVITIES, type ActivityId, type DressCode, type Feels } from '../vocabulary/index.ts';
import { type ColdExposure, requiredGarments } from './ireq.ts';
import { garmentsForPmv, heatOfVote, MET_IN_WM2, relativeAirMs, type Surroundings } from './pmv.ts';

/** How a figure was found: `joined` between the two standards and `lightest` are Wayfold's own choice. */
export type CloMethod = 'ISO 7730' | 'ISO 11079' | 'joined' | 'lightest' | 'none';

/** The clothes an occasion asks for: a look serves when all layers on reach `min` and all off do not exceed `max`. */
export interface RequiredClo {
  /** For the coldest of the time, clo by the garment tables. */
  readonly min: number;
  /** For the warmest of the time. May lie below `min` when the day changes: then layers are needed. */
  readonly max: number;
  readonly method: CloMethod;
  readonly maxMethod: CloMethod;
}

/** The air of an occasion, lowest and highest. */
export interface Air {
  readonly lowC: number;
  readonly highC: number;
  /** At head height, metres a second. */
  readonly windMs: number;
  readonly humidityPercent: number;
}

export interface ComfortQuestion {
  readonly setting: Setting;
  readonly activity: ActivityId;
  readonly air: Air;
  /** Sun's height in degrees at its highest during the time; undefined counts as 45 in the sun. */
  readonly sunElevation?: number;
  /** The lightest clothes that count as dressed; casual when absent. */
  readonly dress?: DressCode;
  /** In and by the water swimwear is enough. */
  readonly swims?: boolean;
  /** Whom it is for, when not for most people. */
  readonly feels?: Feels | undefined;
}

/**
 * Votes by which the clothes of somebody who feels cold or warm differ from those of most people: half a unit of ISO
 * 7730's scale from −3 cold to +3 hot, the half-width of its band for comfort, so that where most people begin to be
 * too warm is where this one is neutral. Own choice; an estimate.
 */
const FELT_VOTES: Readonly<Record<Feels, number>> = { cold: 0.5, warm: -0.5 };
const votesFor = ({ feels }: Pick<ComfortQuestion, 'feels'>): number => (feels === undefined ? 0 : FELT_VOTES[feels]);

/** How a traveller of the brief feels; undefined as most people do. */
export const feelsOf = ({ travellers }: Pick<Brief, 'travellers'>, traveller: string): Feels | undefined =>
  travellers.find(({ name }) => name === traveller)?.feels;

/** Where each published method is used. Own choice, as no one method covers cold and warm outdoors. */
export const COLD_METHOD_BELOW_C = 10;
export const WARM_METHOD_ABOVE_C = 20;

/** Air speed in a room, metres a second. Source: ISO 7730:2005 Table D.1 uses 0.1. */
const ROOM_AIR_MS = 0.1;
const ROOM_BAND = 0.5;
/** Outdoors people accept "slightly cool" (−1), and in heat "slightly warm" (+1 from 28 °C). Own choice. */
const OUTDOOR_COOL = -1;
const outdoorWarm = (airC: number): number =>
  ROOM_BAND + 0.5 * smooth((airC - WARM_METHOD_ABOVE_C) / (28 - WARM_METHOD_ABOVE_C));
/** Close-woven coats and city cloth, l/(m² s). Source: ISO 11079:2007, 8 low to 50 medium. */
const CLOTH_PERMEABILITY = 50;
/** The body may lose 40 Wh/m² in a limited exposure. Source: ISO 11079:2007. */
const HEAT_DEBT_WHM2 = 40;
/** What full sun adds to the mean radiant temperature at its zenith, K. Own choice, on the careful side. */
const SUN_RADIANT_K = 12;

/** Hours outdoors at a stretch before one warms up again: an hour at rest, two on the move. Own choice. */
export const hoursAtAStretch = (activity: ActivityId): number => (ACTIVITIES[activity].walkMs > 0 ? 2 : 1);

/** Seats are chosen out of the wind: half of it is felt. Own choice. */
const feltWindMs = (windMs: number, activity: ActivityId): number =>
  ACTIVITIES[activity].met <= 1.1 ? windMs / 2 : windMs;

/** Lightest usual clothes, clo. Source: ASHRAE Handbook ch. 9 table 7: shorts 0.36, trousers with short sleeves 0.57, long 0.61. */
const LIGHTEST: Readonly<Record<DressCode, number>> = {
  casual: 0.36,
  'smart casual': 0.57,
  business: 0.61,
  cocktail: 0.61,
  formal: 0.61,
};

function smooth(share: number): number {
  const x = Math.min(1, Math.max(0, share));
  return x * x * (3 - 2 * x);
}

/** What a chair insulates, clo. Source: ASHRAE 55, standard office chair 0.10 (from memory). */
const CHAIR_CLO = 0.1;
const seatClo = (activity: ActivityId): number => (ACTIVITIES[activity].met <= 1.1 ? CHAIR_CLO : 0);

/** The furthest off comfortable that a brief may accept, °C: beyond that it is no longer the same clothes. Own choice, on the careful side. */
export const DEGREES_OFF_AT_MOST = 5;

type End = 'min' | 'max';
interface Found {
  readonly clo: number;
  readonly method: CloMethod;
}

const inRooms = (airC: number, question: ComfortQuestion, end: End): number => {
  const { activity, air } = question;
  const { met } = ACTIVITIES[activity];
  const room: Surroundings = {
    airC,
    radiantC: airC,
    airMs: relativeAirMs(ROOM_AIR_MS, met),
    humidityPercent: air.humidityPercent,
    met,
  };
  const target = votesFor(question) + (end === 'min' ? -ROOM_BAND : ROOM_BAND);
  return Math.max(0, garmentsForPmv(target, room) - seatClo(activity));
};

const sunGainK = (question: Pick<ComfortQuestion, 'setting' | 'sunElevation'>): number => {
  if (question.setting.where === 'indoors' || question.setting.sun === 'shade') return 0;
  const elevation = Math.max(0, question.sunElevation ?? 45);
  return SUN_RADIANT_K * Math.sin((elevation * Math.PI) / 180);
};

const inWarmth = (airC: number, question: ComfortQuestion, gainK: number, end: End): number => {
  const { activity, air } = question;
  const { met } = ACTIVITIES[activity];
  const outside: Surroundings = {
    airC,
    radiantC: airC + gainK,
    airMs: relativeAirMs(feltWindMs(air.windMs, activity), met),
    humidityPercent: air.humidityPercent,
    met,
  };
  return garmentsForPmv(votesFor(question) + (end === 'min' ? OUTDOOR_COOL : outdoorWarm(airC)), outside);
};

const inCold = (airC: number, question: ComfortQuestion, gainK: number, end: End): number => {
  const { activity, air } = question;
  const { met, walkMs } = ACTIVITIES[activity];
  const exposure: ColdExposure = {
    airC,
    radiantC: airC + gainK,
    metabolicWm2: Math.max(MET_IN_WM2, met * MET_IN_WM2),
    airMs: Math.max(feltWindMs(air.windMs, activity), walkMs),
    walkMs,
    humidityPercent: air.humidityPercent,
    airPermeability: CLOTH_PERMEABILITY,
  };
  // what a vote stands for in heat is the same in both methods: whoever feels cold may lose that much less
  const felt = heatOfVote(votesFor(question), met);
  return end === 'min'
    ? requiredGarments(exposure, 'minimal', HEAT_DEBT_WHM2 / hoursAtAStretch(activity) - felt)
    : requiredGarments(exposure, 'neutral', -felt);
};

/** One end of what the open air asks for: the sun is left out of the cold end, since a cloud may come. */
const outdoors = (airC: number, question: ComfortQuestion, end: End): Found => {
  const gainK = end === 'min' ? 0 : sunGainK(question);
  if (airC <= COLD_METHOD_BELOW_C) return { clo: inCold(airC, question, gainK, end), method: 'ISO 11079' };
  if (airC >= WARM_METHOD_ABOVE_C) return { clo: inWarmth(airC, question, gainK, end), method: 'ISO 7730' };
  const share = smooth((airC - COLD_METHOD_BELOW_C) / (WARM_METHOD_ABOVE_C - COLD_METHOD_BELOW_C));
  const warm = inWarmth(WARM_METHOD_ABOVE_C, question, gainK, end);
  const cold = Math.max(warm, inCold(COLD_METHOD_BELOW_C, question, gainK, end));
  return { clo: cold + (warm - cold) * share, method: 'joined' };
};

const oneEnd = (question: ComfortQuestion, airC: number, end: End): Found =>
  question.setting.where === 'indoors'
    ? { clo: inRooms(airC, question, end), method: 'ISO 7730' }
    : outdoors(airC, question, end);

/** What the methods alone say at one air temperature, clo; used to read a look's degrees backwards. */
export const cloAt = (question: ComfortQuestion, airC: number, end: End): number => oneEnd(question, airC, end).clo;

/**
 * The clothes an occasion asks for, clo by the garment tables. Indoors ISO 7730; outdoors ISO 11079 at 10 °C and
 * below, for `hoursAtAStretch` at the cold end; ISO 7730 at 20 °C and above; joined smoothly between, which is
 * Wayfold's own choice. In heat the lightest clothes of the dress code always count as right.
 */
export const requiredClo = (question: ComfortQuestion): RequiredClo => {
  if (question.swims === true || question.activity === 'swimming') {
    return { min: 0, max: Number.POSITIVE_INFINITY, method: 'none', maxMethod: 'none' };
  }
  const cold = oneEnd(question, question.air.lowC, 'min');
  const warm = oneEnd(question, question.air.highC, 'max');
  const lightest = LIGHTEST[question.dress ?? 'casual'];
  const tooHot = warm.clo < lightest;
  return {
    min: cold.clo,
    max: tooHot ? lightest : warm.clo,
    method: cold.method,
    maxMethod: tooHot ? 'lightest' : warm.method,
  };
};
