import type { DressInterval, Look, LookComfort, Occasion, PlannedOccasion } from '../model/index.ts';
import { piecesOfWay } from '../plan/index.ts';
import { DRESS_CODES } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { wayInWords } from './day-words.ts';
import type { LookComforts, PlannedFor } from './look-comforts.ts';
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

/** When to wear a look, in sentences, what is said of going out in it last: what it is for, how dressy it is, and in which air. */
export const wearIt = (
  look: Look,
  title: string | undefined,
  occasions: readonly string[],
  dress: DressInterval,
  comforts: LookComforts,
  out: readonly Phrase[] = [],
): readonly Phrase[] => [
  ...wornFor(occasions, title),
  ...(isForWater(look) ? [phrase('guide', 'wear it by water', {})] : wornAt(dress, comforts)),
  ...out,
];

const SAYS_WHAT_LACKS: readonly string[] = ['too cool for it', 'too warm for it', 'cool inside', 'cool without'];
/** Sentences of when to wear a look for which a card has room. */
const ON_A_CARD = 2;

/** Said of going out, for which a card has words of its own. */
const SAYS_OF_OUT: ReadonlySet<string> = new Set([
  'wear on the way',
  'after the swim',
  'tights for the way',
  'shoes for the way',
  'cold swim',
]);

/** The little of it that a card says: where the air expected is beyond the look's degrees, these two come first. */
export const wearItInShort = ({ wearIt: told }: Pick<GuideLook, 'wearIt'>): readonly Phrase[] => {
  const all = told.filter(({ key }) => !SAYS_OF_OUT.has(key));
  const lack = all.findIndex(({ key }) => SAYS_WHAT_LACKS.includes(key));
  return lack > 0 ? all.slice(lack - 1, lack + 1) : all.slice(0, ON_A_CARD);
};

const lowOf = ({ values: { low } }: Phrase): number => (typeof low === 'number' ? low : 0);

/** What is worn on the way to the occasions of a look, each sentence for the coldest of them, and the caution of a cold swim. */
export const goingOut = (
  uses: readonly Pick<PlannedFor, 'planned'>[],
  nameOf: (piece: string) => string,
): readonly Phrase[] => {
  const said = uses
    .flatMap(({ planned }) => [
      ...wayInWords({ ...planned, layersCarried: [] }, nameOf),
      ...planned.cautions.filter(({ key }) => key === 'cold swim'),
    ])
    .toSorted((a, b) => lowOf(a) - lowOf(b));
  return said.filter(({ key }, index) => said.findIndex((other) => other.key === key) === index);
};

/** The same for a card, which shows the look: the pieces for the way that are not in it, and the caution in short. */
export const goingOutInShort = (
  { worn }: Look,
  uses: readonly Pick<PlannedFor, 'planned'>[],
  nameOf: (piece: string) => string,
): readonly Phrase[] => {
  const swims = worn.some(({ slot }) => slot === 'swim');
  const beside = [...new Set(uses.flatMap(({ planned }) => piecesOfWay(planned.way)))].filter((id) =>
    worn.every(({ piece }) => piece !== id),
  );
  const isCold = uses.some(({ planned }) => planned.cautions.some(({ key }) => key === 'cold swim'));
  return [
    ...(beside.length === 0
      ? []
      : [phrase('guide', swims ? 'dry afterwards' : 'also on the way', { pieces: beside.map(nameOf) })]),
    ...(isCold ? [phrase('comfort', 'cold swim in short', {})] : []),
  ];
};
