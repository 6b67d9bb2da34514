import { lookComfort } from '../../comfort/index.ts';
import { type Guide, isForWater } from '../../guide/index.ts';
import type { Piece, PlannedOccasion } from '../../model/index.ts';
import { levelHas, slotsOfPiece } from '../../outfit/index.ts';
import { phrase } from '../../words/index.ts';
import { type WarmthDay, type WarmthPlot, type WorthPlot, warmthPlot, worthPlot } from '../svg/plots.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import { pieceHref } from './pieces.ts';

export interface NumbersView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly warmth: WarmthPlot;
  readonly warmthRows: readonly {
    readonly date: string;
    readonly weather: string;
    readonly looks: readonly string[];
  }[];
  readonly worth: WorthPlot;
  /** Most looks first. */
  readonly pieces: readonly {
    readonly name: string;
    readonly href: string;
    /** Length of the bar, 0 to 100. */
    readonly bar: number;
    readonly layered: string;
    readonly complete: string;
    readonly weight: string;
  }[];
  readonly words: Readonly<
    Record<
      | 'warmth'
      | 'warmthMeans'
      | 'warmthSaid'
      | 'asTable'
      | 'day'
      | 'weather'
      | 'looks'
      | 'worth'
      | 'worthMeans'
      | 'worthSaid'
      | 'brings'
      | 'bringsMeans'
      | 'piece'
      | 'layered'
      | 'complete'
      | 'weight',
      string
    >
  >;
}

/** Layered looks may hold it; shoes, bags and what finishes a look are in complete looks alone. */
const isLayered = (piece: Piece): boolean => slotsOfPiece(piece).some((slot) => levelHas('layered', slot));

interface ToldDay extends WarmthDay {
  readonly date: string;
  readonly homeward: boolean;
  /** Its looks, swimwear apart, of which degrees say nothing. */
  readonly looks: readonly { readonly number: number; readonly lowC: number; readonly highC: number }[];
}

/** Where the looks of a day are comfortable outdoors at what is planned; a look for a room strolling, as on the way. */
export const looksOfDay = (
  { brief, looks, pieces }: Pick<Guide, 'brief' | 'looks' | 'pieces'>,
  occasions: readonly PlannedOccasion[],
): ToldDay['looks'] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const told = looks.filter(({ look }) => !isForWater(look) && occasions.some((one) => one.look?.id === look.id));
  return told.map(({ look, number, outdoors }) => {
    const outside = occasions
      .filter((planned) => planned.look?.id === look.id)
      .flatMap((planned) => brief.occasions.find(({ id }) => id === planned.occasion) ?? [])
      .find(({ setting }) => setting.where === 'outdoors');
    const { lowC, highC } = lookComfort(look, byId, outside?.activity ?? 'strolling', 'outdoors', outdoors.feels);
    return { number, lowC, highC };
  });
};

const daysOf = (guide: Guide): readonly ToldDay[] =>
  guide.plan.days.map(({ date, weather, homeward, occasions }) => ({
    date,
    homeward: homeward === true,
    label: String(Number(date.slice(8))),
    ...(weather === undefined ? {} : { weather }),
    looks: looksOfDay(guide, occasions),
  }));

/** Plots of the guide, each with its numbers in a table. */
export const numbersView = (guide: Guide, voice: SiteVoice): NumbersView => {
  const { word, formats } = voice;
  const days = daysOf(guide);
  const earned = guide.earnings
    .flatMap((earning) => {
      const piece = guide.pieces.find(({ id }) => id === earning.piece);
      return piece === undefined ? [] : [{ piece, earning, looks: Number(earning.layeredLooks) }];
    })
    .toSorted((a, b) => b.looks - a.looks || Number(b.earning.completeLooks - a.earning.completeLooks));
  const most = Math.max(1, ...earned.map(({ looks }) => looks));
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'cover',
      path: 'numbers/',
      title: word('numbers heading'),
      description: word('numbers lede'),
    }),
    kick: guide.capsule.title,
    heading: word('numbers heading'),
    lede: word('numbers lede'),
    warmth: warmthPlot(days, (celsius) => formats.celsius(celsius)),
    warmthRows: days.map(({ date, weather, homeward, looks }) => ({
      date: formats.date(date),
      weather: homeward
        ? voice.say(phrase('plan', 'homeward', {}))
        : weather === undefined
          ? word('no weather')
          : formats.celsiusRange(weather.lowC, weather.highC),
      looks: looks.map(({ number, lowC, highC }) => word('look at degrees', { number, low: lowC, high: highC })),
    })),
    worth: worthPlot(
      earned
        .filter(({ piece }) => isLayered(piece))
        .map(({ piece, looks }) => ({
          grams: piece.grams.value,
          looks,
          fill: piece.colours[0]?.hex ?? '#888888',
          name: piece.name,
        })),
      { grams: formats.grams, count: formats.count },
    ),
    pieces: earned.map(({ piece, earning, looks }) => ({
      name: piece.name,
      href: pieceHref(piece.id),
      bar: Math.round((looks / most) * 1000) / 10,
      layered: formats.count(earning.layeredLooks),
      complete: formats.count(earning.completeLooks),
      weight: formats.grams(piece.grams.value),
    })),
    words: {
      warmth: word('warmth heading'),
      warmthMeans: word('warmth means'),
      warmthSaid: word('warmth said'),
      asTable: word('as a table'),
      day: word('column day'),
      weather: word('column weather'),
      looks: word('looks heading'),
      worth: word('worth heading'),
      worthMeans: word('worth means'),
      worthSaid: word('worth said'),
      brings: word('brings heading'),
      bringsMeans: word('brings means'),
      piece: word('column piece'),
      layered: word('layered looks'),
      complete: word('complete looks'),
      weight: word('fact weight'),
    },
  };
};
