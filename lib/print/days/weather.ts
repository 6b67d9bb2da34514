import { skyOf } from '../../comfort/index.ts';
import type { Occasion, PlannedOccasion, Weather } from '../../model/index.ts';
import type { Job } from '../job.ts';
import { type Block, drawn, space, stack, tagged, unread } from '../set/block.ts';
import { type Sign, sign } from '../set/signs.ts';
import { text } from '../set/text.ts';

/** Metres a second; Beaufort 5, a fresh breeze, begins at 8. */
const WINDY_FROM = 8;
const FREEZING = 0;
/** World Health Organization, Global Solar UV Index (2002): protection is advised from 3. */
const PROTECT_FROM_UV = 3;

/** The sign of a day's weather; a clear sky shows the sun only while it is up. */
export const weatherSign = ({ rainPercent, windMs, highC }: Weather, isDark: boolean): Sign => {
  const sky = skyOf(rainPercent);
  // what falls in frost is snow; a dry frost has the sign of its sky
  if (highC <= FREEZING && sky !== 'dry') return 'cold';
  if (sky === 'rain') return 'rain';
  if (windMs >= WINDY_FROM) return 'wind';
  if (sky === 'showers') return 'cloud';
  return isDark ? 'moon' : 'sun';
};

const SIGN = 7.2;

/** The weather an occasion was dressed for: a sign, the temperatures, and the sun where it matters. */
export const weatherCell = (
  job: Job,
  occasion: Occasion,
  planned: PlannedOccasion,
  weather: Weather | undefined,
): Block => {
  const { setter } = job.press;
  const { types, inks, formats } = job;
  const { setting } = occasion;
  const line = (words: string): Block => tagged('P', text(setter, words, types.key));
  if (setting.where === 'indoors') return line(job.say('indoors at', { airC: setting.airC }));
  const low = planned.airC?.low ?? weather?.lowC;
  const high = planned.airC?.high ?? weather?.highC;
  const degrees = low === undefined || high === undefined ? [] : [line(formats.celsiusRange(low, high))];
  const rain =
    weather !== undefined && skyOf(weather.rainPercent) !== 'dry'
      ? [line(job.say('rain chance', { percent: weather.rainPercent }))]
      : [];
  // under a sky that hardly clears it is left to the caution of the trip, which names the day
  const clouded = weather !== undefined && skyOf(weather.rainPercent) === 'rain';
  const uv =
    !clouded && planned.uvIndex !== undefined && planned.uvIndex >= PROTECT_FROM_UV
      ? [line(job.say('uv index', { uv: planned.uvIndex }))]
      : [];
  const picture =
    weather === undefined
      ? space(0)
      : unread(
          drawn(SIGN, (surface, { x, y }) =>
            sign(surface, weatherSign(weather, planned.uvIndex === 0), {
              x: x - 0.8,
              y: y - 0.8,
              size: SIGN,
              colour: inks.ink,
            }),
          ),
        );
  return stack([picture, stack([...degrees, ...rain, ...uv], 0.5)]);
};
