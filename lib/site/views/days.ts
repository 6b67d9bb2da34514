import { cautionsOfDay, cautionsOfTrip, feelsInWords, skyOf } from '../../comfort/index.ts';
import { dampInWords, freeDay, type Guide, inPlaceOfLook, placeOfDay, wayInWords } from '../../guide/index.ts';
import type { PlannedOccasion } from '../../model/index.ts';
import type { PictureIndex } from '../pictures.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { namedNote } from './pictures.ts';
import { type LookTile, tileOf } from './tile.ts';

export interface OccasionView {
  readonly time: string;
  readonly what: string;
  readonly tile: LookTile | undefined;
  /** "Look 4". */
  readonly look: string;
  /** The air it is dressed for at that hour out of doors; empty indoors and without weather. */
  readonly air: string;
  readonly change: string;
  /** What is worn on the way and what is taken along, in sentences. */
  readonly way: readonly string[];
  readonly layersOn: string;
  readonly reasons: readonly string[];
  /** Said in the place of a look: that there is none, and how near the packed pieces come; empty where there is one. */
  readonly missing: readonly string[];
  /** Cautions of this occasion alone. */
  readonly cautions: readonly string[];
}

export interface DayView {
  readonly date: string;
  /** Weekday and date in words. */
  readonly heading: string;
  readonly id: string;
  readonly number: string;
  readonly weekday: string;
  readonly place: string;
  readonly weather: string;
  /** Where the weather's figures come from; empty when the brief does not say. */
  readonly source: string;
  readonly occasions: readonly OccasionView[];
  /** Said when nothing is planned; empty when something is. */
  readonly free: string;
  readonly wash: string;
  /** Washing that travels damp that day; empty when all is dry. */
  readonly damp: readonly string[];
  /** Cautions that more than one occasion of the day shares, each kind once, the strongest. */
  readonly cautions: readonly string[];
}

export interface DaysView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  /** For whom it is dressed warmer or cooler than most; empty when for most people. */
  readonly felt: string;
  /** Cautions told once of the whole trip. */
  readonly cautions: readonly string[];
  readonly washWord: string;
  readonly words: Readonly<Record<'why' | 'today' | 'cautionNote' | 'wear' | 'named', string>>;
  readonly days: readonly DayView[];
}

const CHANGE = {
  first: undefined,
  'goes on': 'goes on',
  'layers only': 'layers only',
  'changes clothes': undefined,
} as const;

const occasionView = (
  guide: Guide,
  planned: PlannedOccasion,
  pictures: PictureIndex,
  voice: SiteVoice,
  atMost: number,
): Omit<OccasionView, 'cautions'> => {
  const { word, say, formats } = voice;
  const occasion = guide.brief.occasions.find(({ id }) => id === planned.occasion);
  const look = guide.looks.find((candidate) => candidate.look.id === planned.look?.id);
  const nameOf = (id: string): string => guide.pieces.find((piece) => piece.id === id)?.name ?? id;
  const change = CHANGE[planned.change];
  const tile = look === undefined ? undefined : tileOf(guide, look, pictures, voice, atMost);
  return {
    time:
      occasion === undefined
        ? ''
        : occasion.at === undefined
          ? word(`part ${occasion.part}`)
          : formats.time(occasion.at),
    what: occasion?.what ?? '',
    tile,
    look: tile === undefined ? '' : word('look number', { number: tile.number }),
    change: change === undefined ? '' : word(change),
    way: wayInWords(planned, nameOf).map(say),
    air:
      planned.airC === undefined || occasion?.setting.where !== 'outdoors' || occasion.needs.includes('swim')
        ? ''
        : word('air at the hour', planned.airC),
    layersOn: planned.layersOn.length === 0 ? '' : word('layers on', { layers: planned.layersOn.map(nameOf) }),
    reasons: planned.reasons.map(say),
    missing: planned.look === undefined ? inPlaceOfLook(guide.plan, planned.occasion, nameOf).map(say) : [],
  };
};

/** The days of the plan, for the day page and the cover. */
export const dayViews = (guide: Guide, pictures: PictureIndex, voice: SiteVoice, atMost = 240): readonly DayView[] =>
  guide.plan.days.map((day): DayView => {
    const nameOf = (id: string): string => guide.pieces.find((piece) => piece.id === id)?.name ?? id;
    const cautions = cautionsOfDay(day.occasions.map((planned) => planned.cautions));
    const last = day.wash.toSorted((a, b) => (`${a.dryBy} ${a.dryAt}` < `${b.dryBy} ${b.dryAt}` ? -1 : 1)).at(-1);
    return {
      id: `d${day.date}`,
      date: day.date,
      heading: voice.formats.date(day.date),
      number: String(Number(day.date.slice(8))),
      weekday: voice.formats.weekday(day.date),
      place: placeOfDay(day, voice.say),
      weather: day.homeward
        ? ''
        : day.weather === undefined
          ? voice.word('no weather')
          : voice.word('weather of a day', {
              low: day.weather.lowC,
              high: day.weather.highC,
              sky: skyOf(day.weather.rainPercent),
            }),
      source: day.weather?.source ?? '',
      occasions: day.occasions.map((planned, index) => ({
        ...occasionView(guide, planned, pictures, voice, atMost),
        cautions: (cautions.occasions[index] ?? []).map(voice.say),
      })),
      cautions: cautions.day.map(voice.say),
      damp: dampInWords(guide.plan, guide.brief, nameOf)
        .filter(({ on }) => on === day.date)
        .map(({ said }) => voice.say(said)),
      free: day.occasions.length > 0 ? '' : voice.say(freeDay(day)),
      wash:
        last === undefined
          ? ''
          : voice.word('wash these', {
              pieces: day.wash.map(({ piece }) => nameOf(piece)),
              date: last.dryBy,
              at: last.dryAt,
            }),
    };
  });

export const daysView = (guide: Guide, pictures: PictureIndex, voice: SiteVoice): DaysView => {
  const days = dayViews(guide, pictures, voice);
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'days',
      path: 'days/',
      title: voice.word('days heading'),
      description: guide.brief.title,
    }),
    kick: voice.word('trip dates', { from: guide.brief.from, to: guide.brief.to }),
    heading: voice.word('days heading'),
    felt: feelsInWords(guide.brief, guide.capsule.traveller).map(voice.say).join(''),
    cautions: cautionsOfTrip(guide.plan.days).map(voice.say),
    washWord: voice.word('wash'),
    words: {
      why: voice.word('why'),
      today: voice.word('today'),
      cautionNote: voice.word('caution note'),
      wear: voice.word('wear heading'),
      named: namedNote(
        days.flatMap(({ occasions }) => occasions.map(({ tile }) => tile?.named ?? '')),
        voice,
      ),
    },
    days,
  };
};
