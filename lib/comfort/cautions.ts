import type { Look, Occasion, Piece, Weather } from '../model/index.ts';
import type { Coverage } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { BeyondClothes } from './limit.ts';
import type { Air } from './required.ts';
import { shadesEyes, shadesFace, sunCover, uvBand } from './sun.ts';
import { ofOccasion } from './trip-cautions.ts';

/** Below this outdoors the guide speaks of cold. Own choice, on the careful side. */
const COLD_CAUTION_C = 0;
/**
 * In colder air than this the guide speaks of the cold of open water, which nobody writes into a brief. Below 15 °C water
 * takes the breath; common advice of lifeguards, from memory.
 */
const COLD_SWIM_C = 15;
/** From here outdoors the guide speaks of heat. Own choice, on the careful side. */
const HEAT_CAUTION_C = 30;

export interface CautionQuestion {
  readonly occasion: Pick<Occasion, 'setting' | 'needs' | 'activity'>;
  readonly air?: Air;
  readonly weather?: Weather;
  readonly uvIndex?: number;
  readonly look?: Look;
  /** Set where no clothes of the bag are warm enough. */
  readonly beyondClothes?: BeyondClothes | undefined;
  /** True where the sun does not rise all day. */
  readonly isPolarNight?: boolean;
  readonly pieces: ReadonlyMap<string, Piece>;
}

/** True for a swim in the open where air and water are cold. */
export const isColdSwim = (
  { setting, needs, activity }: Pick<Occasion, 'setting' | 'needs' | 'activity'>,
  air: Air | undefined,
): boolean =>
  setting.where === 'outdoors' &&
  (needs.includes('swim') || activity === 'swimming') &&
  air !== undefined &&
  air.lowC < COLD_SWIM_C;

/** Chances of rain from which showers are possible and rain is likely, percent. Own choice. */
const SHOWERS_PERCENT = 30;
const RAIN_LIKELY_PERCENT = 60;

/** What the sky is likely to do, by the chance of rain in percent. */
export const skyOf = (rainPercent: number): 'dry' | 'showers' | 'rain' => {
  if (rainPercent >= RAIN_LIKELY_PERCENT) return 'rain';
  return rainPercent >= SHOWERS_PERCENT ? 'showers' : 'dry';
};

const sunCautions = (question: CautionQuestion): readonly Phrase[] => {
  const { occasion, weather, look, pieces, uvIndex = 0 } = question;
  const band = uvBand(uvIndex);
  if (band === 'low') return [];
  const sky = occasion.needs.includes('rain') ? 'rain' : skyOf(weather?.rainPercent ?? 0);
  const told = { index: Math.round(uvIndex), band };
  const cautions = [phrase('comfort', sky === 'dry' ? 'uv index' : 'uv index if it clears', told)];
  // under a sky that will hardly clear, a middling index is worth a line and no more
  if (look === undefined || (sky === 'rain' && band === 'moderate')) return cautions;
  const cover = sunCover(look, pieces);
  const bag = [...pieces.values()];
  const hat = cover.hat ? undefined : bag.find(shadesFace);
  const glasses = cover.eyewear ? undefined : bag.find(shadesEyes);
  const packed = [hat, glasses].flatMap((piece) => piece?.name ?? []);
  if (packed.length > 0) cautions.push(phrase('comfort', 'take for the sun', { pieces: packed }));
  if (!cover.hat && hat === undefined) cautions.push(phrase('comfort', 'take a hat', {}));
  if (!cover.eyewear && glasses === undefined) cautions.push(phrase('comfort', 'take sunglasses', {}));
  const ofSkin = (parts: readonly Coverage[]) => parts.filter((part) => part !== 'head' && part !== 'face shaded');
  const [skin, sheer] = [ofSkin(cover.bare), ofSkin(cover.sheer)];
  if (skin.length > 0) cautions.push(phrase('comfort', 'bare to the sun', { parts: skin }));
  if (sheer.length > 0) cautions.push(phrase('comfort', 'sheer to the sun', { parts: sheer }));
  return cautions;
};

/** How strongly a caution speaks, among those of its kind; the colder, hotter or sunnier the stronger. */
const strength = ({ values }: Phrase): number => {
  if (typeof values.low === 'number') return -values.low;
  const told = values.high ?? values.index;
  return typeof told === 'number' ? told : 0;
};

/** What a caution is about; one that names parts of the body or pieces is told apart from others of its key. */
const kindOf = (caution: Phrase): string =>
  caution.values.parts === undefined && caution.values.pieces === undefined ? caution.key : JSON.stringify(caution);

/** Cautions, each kind told once, by its strongest; those that name parts of the body or pieces stay apart. */
export const strongestCautions = (cautions: readonly Phrase[]): readonly Phrase[] => {
  const kinds = new Map<string, Phrase>();
  for (const caution of cautions) {
    const kind = kindOf(caution);
    const known = kinds.get(kind);
    if (known === undefined || strength(caution) > strength(known)) kinds.set(kind, caution);
  }
  return [...kinds.values()];
};

/** The cautions of a day's occasions that are not told of the whole trip: the dark of the day and those of more than one stand for the whole day, the others by their occasion. */
export const cautionsOfDay = (
  told: readonly (readonly Phrase[])[],
): { readonly day: readonly Phrase[]; readonly occasions: readonly (readonly Phrase[])[] } => {
  const occasions = told.map(ofOccasion);
  const isShared = (caution: Phrase): boolean =>
    caution.key === 'dark mark' ||
    occasions.filter((cautions) => cautions.some((other) => kindOf(other) === kindOf(caution))).length > 1;
  return {
    day: strongestCautions(occasions.flat().filter(isShared)),
    occasions: occasions.map((cautions) => cautions.filter((caution) => !isShared(caution))),
  };
};

const heelOf = ({ look, pieces }: CautionQuestion): number =>
  Math.max(
    0,
    ...(look?.worn ?? []).filter(({ slot }) => slot === 'shoes').map(({ piece }) => pieces.get(piece)?.heelCm ?? 0),
  );

/** Heels above this are not for uneven or wet ground. common practice, no source */
const FIRM_HEEL_CM = 4;

const coldCautions = ({ occasion, air, beyondClothes }: CautionQuestion): readonly Phrase[] => {
  if (air === undefined) return [];
  const low = air.lowC;
  if (isColdSwim(occasion, air)) return [phrase('comfort', 'cold swim', { low })];
  if (beyondClothes === 'altogether') return [phrase('comfort', 'beyond travel clothes', { low })];
  if (beyondClothes === 'keeping still') {
    return [phrase('comfort', 'too cold to keep still', { low, activity: occasion.activity })];
  }
  return low <= COLD_CAUTION_C ? [phrase('comfort', 'cold caution', { low })] : [];
};

/** Cautions for cold, heat, sun, darkness and wet ground, each deferring to local warnings and medical advice. */
export const cautionsFor = (question: CautionQuestion): readonly Phrase[] => {
  const { occasion, air, weather } = question;
  if (occasion.setting.where === 'indoors') return [];
  const cautions: Phrase[] = [...coldCautions(question)];
  if (question.isPolarNight === true) cautions.push(phrase('comfort', 'dark all day', {}));
  if (air !== undefined && air.highC >= HEAT_CAUTION_C) {
    cautions.push(phrase('comfort', 'heat caution', { high: air.highC }));
  }
  const wet = occasion.needs.includes('rain') || occasion.needs.includes('snow') || (weather?.rainPercent ?? 0) >= 50;
  const rough = occasion.needs.includes('uneven ground');
  cautions.push(...sunCautions(question));
  if (wet && rough) cautions.push(phrase('comfort', 'wet and uneven', {}));
  else if (wet) cautions.push(phrase('comfort', 'wet ground', {}));
  if ((wet || rough) && heelOf(question) > FIRM_HEEL_CM) cautions.push(phrase('comfort', 'heels on bad ground', {}));
  return cautions;
};
