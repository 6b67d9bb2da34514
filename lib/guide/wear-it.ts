import type { DressInterval, Look, Occasion, PlannedOccasion } from '../model/index.ts';
import { DRESS_CODES } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { GuideLook } from './record.ts';

/** What a look is for, without the occasion it is named after. */
const wornFor = (occasions: readonly string[], title: string | undefined): readonly Phrase[] => {
  const others = occasions.filter((name) => name !== title);
  if (others.length === 0) return [];
  const key = others.length < occasions.length ? 'wear it also for' : 'wear it for';
  return [phrase('guide', key, { occasions: others })];
};

/** True for a look of swimwear: degrees say nothing of it. */
export const isForWater = ({ worn }: Look): boolean => worn.some(({ slot }) => slot === 'swim');

/** The day an occasion falls on and the air it is dressed for; swimwear is dressed for none. */
export const dayOf = ({ on, setting, needs }: Occasion, planned: PlannedOccasion | undefined): Phrase =>
  planned?.airC === undefined || needs.includes('swim')
    ? phrase('guide', 'day without weather', { date: on })
    : phrase('guide', setting.where === 'indoors' ? 'day indoors' : 'day outdoors', { date: on, ...planned.airC });

const wornAt = (
  dress: DressInterval,
  outdoors: GuideLook['outdoors'],
  indoors: GuideLook['indoors'],
): readonly Phrase[] => [
  phrase('guide', 'wear it anywhere', { low: DRESS_CODES[dress.low] ?? '', high: DRESS_CODES[dress.high] ?? '' }),
  phrase('guide', 'wear it outdoors', { low: outdoors.lowC, high: outdoors.highC }),
  phrase('guide', 'wear it indoors', { low: indoors.lowC, high: indoors.highC }),
];

/** When to wear a look, in sentences: what it is for, how dressy it is, and in which air. */
export const wearIt = (
  look: Look,
  title: string | undefined,
  occasions: readonly string[],
  dress: DressInterval,
  outdoors: GuideLook['outdoors'],
  indoors: GuideLook['indoors'],
): readonly Phrase[] => [
  ...wornFor(occasions, title),
  ...(isForWater(look) ? [phrase('guide', 'wear it by water', {})] : wornAt(dress, outdoors, indoors)),
];
