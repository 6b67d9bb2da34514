import type { DressInterval, Look, LookComfort, Occasion, PlannedOccasion } from '../model/index.ts';
import { DRESS_CODES } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { LookComforts } from './look-comforts.ts';
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

const inAir = ({ where, lowC: low, highC: high, activity }: LookComfort): Phrase =>
  phrase('guide', `wear it ${where}`, { low, high, activity });

/** How dressy it is and in which air, where it is worn first told first. */
const wornAt = (dress: DressInterval, { outdoors, indoors, also, first, lacks }: LookComforts): readonly Phrase[] => {
  const outside = [inAir(outdoors), ...lacks.outdoors];
  const inside = [inAir(indoors), ...lacks.indoors];
  return [
    phrase('guide', 'wear it anywhere', { low: DRESS_CODES[dress.low] ?? '', high: DRESS_CODES[dress.high] ?? '' }),
    ...(first === 'outdoors' ? [...outside, ...inside] : [...inside, ...outside]),
    ...also.map(inAir),
  ];
};

/** When to wear a look, in sentences: what it is for, how dressy it is, and in which air. */
export const wearIt = (
  look: Look,
  title: string | undefined,
  occasions: readonly string[],
  dress: DressInterval,
  comforts: LookComforts,
): readonly Phrase[] => [
  ...wornFor(occasions, title),
  ...(isForWater(look) ? [phrase('guide', 'wear it by water', {})] : wornAt(dress, comforts)),
];

const SAYS_WHAT_LACKS: readonly string[] = ['too cool for it', 'too warm for it', 'cool inside', 'cool without'];
/** Sentences of when to wear a look for which a card has room. */
const ON_A_CARD = 2;

/** The little of it that a card says: where the air expected is beyond the look's degrees, these two come first. */
export const wearItInShort = ({ wearIt: all }: Pick<GuideLook, 'wearIt'>): readonly Phrase[] => {
  const lack = all.findIndex(({ key }) => SAYS_WHAT_LACKS.includes(key));
  return lack > 0 ? all.slice(lack - 1, lack + 1) : all.slice(0, ON_A_CARD);
};
