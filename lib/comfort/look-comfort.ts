import type { Brief, LayerStep, Look, LookComfort, Piece } from '../model/index.ts';
import type { ActivityId, Feels } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { cloOfLook, inARoom, pieceOf, roundClo, warmLayers } from './clo.ts';
import { type ComfortQuestion, cloAt, feelsOf } from './required.ts';

/** Ordinary air for the degrees shown with a look. Own choice: a light breeze, shade, middling humidity. */
export const ORDINARY_AIR = { windMs: 2, humidityPercent: 60 } as const;

/** Degrees are looked for between these; what lies beyond is not promised. */
const COLDEST_C = -25;
const WARMEST_C = 40;

const questionFor = (activity: ActivityId, where: LookComfort['where'], feels: Feels | undefined): ComfortQuestion => ({
  activity,
  setting: where === 'indoors' ? { where, airC: 20 } : { where, sun: 'shade' },
  air: { lowC: 20, highC: 20, ...ORDINARY_AIR },
  feels,
});

/** The air temperature at which the methods ask for exactly this clo; they ask for less the warmer it is. */
const temperatureFor = (question: ComfortQuestion, clo: number, end: 'min' | 'max'): number => {
  let low = COLDEST_C;
  let high = WARMEST_C;
  for (let step = 0; step < 10; step += 1) {
    const airC = (low + high) / 2;
    if (cloAt(question, airC, end) > clo) low = airC;
    else high = airC;
  }
  return Math.round((low + high) / 2);
};

/** Ways of wearing the removable layers: none, each body layer, all body layers, then scarf, hat and gloves as well. */
const layerSteps = (look: Look, pieces: ReadonlyMap<string, Piece>): readonly (readonly string[])[] => {
  const layers = warmLayers(look, pieces);
  const body = layers.filter(({ slot }) => slot === 'mid layer' || slot === 'outer layer' || slot === 'cover-up');
  const all = layers.map(({ piece }) => piece);
  const ids = body.map(({ piece }) => piece);
  const ways = [[], ...ids.map((id) => [id]), ids, all];
  return [...new Map(ways.map((way) => [way.join('+'), way])).values()];
};

/**
 * For which air temperatures a look is comfortable at one activity, in ordinary air, and layer by layer; in a room with
 * its coat left at the door. Degrees are whole; the methods are those of `requiredClo`.
 */
export const lookComfort = (
  whole: Look,
  pieces: ReadonlyMap<string, Piece>,
  activity: ActivityId,
  where: LookComfort['where'],
  feels?: Feels,
): LookComfort => {
  const look = where === 'indoors' ? inARoom(whole, pieces) : whole;
  const clo = cloOfLook(look, pieces);
  const question = questionFor(activity, where, feels);
  const steps = layerSteps(look, pieces)
    .map((layers) => ({
      layers,
      clo: roundClo(clo.off + layers.reduce((sum, id) => sum + pieceOf(pieces, id).clo.value, 0)),
    }))
    .sort((a, b) => a.clo - b.clo || a.layers.length - b.layers.length)
    .map((step): LayerStep => {
      const lowC = temperatureFor(question, step.clo, 'min');
      return { layers: step.layers, lowC, highC: Math.max(lowC, temperatureFor(question, step.clo, 'max')) };
    });
  const first = steps[0];
  const last = steps.at(-1);
  if (first === undefined || last === undefined) throw new Error('a look has at least one way of being worn');
  return {
    activity,
    where,
    ...(feels === undefined ? {} : { feels }),
    clo,
    lowC: last.lowC,
    highC: first.highC,
    steps,
  };
};

/** That a traveller is dressed warmer or cooler than most people; empty when not. */
export const feelsInWords = (
  brief: Pick<Brief, 'travellers'>,
  traveller: string,
  length: 'full' | 'short' = 'full',
): readonly Phrase[] => {
  const feels = feelsOf(brief, traveller);
  return feels === undefined ? [] : [phrase('comfort', `feels ${feels}${length === 'short' ? ' short' : ''}`, {})];
};

/** "Comfortable from 9 to 15 °C while walking." */
export const comfortInWords = (comfort: LookComfort): Phrase =>
  phrase('comfort', comfort.where === 'indoors' ? 'comfortable indoors' : 'comfortable outdoors', {
    low: comfort.lowC,
    high: comfort.highC,
    activity: comfort.activity,
  });
