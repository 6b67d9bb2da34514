import type { Measure } from '../model/measure.ts';
import { coatCovers, coveredMore, HIP_COVERS, type HowLong, madeHeavier } from './coat-length.ts';
import { FABRICS, type FabricId } from './fabrics.ts';
import type { Kind } from './kinds.ts';
import { sizeFactor } from './sizes.ts';

/** How far a kind's usual figure can be from the piece in hand, as a share. Own figures; a weighed piece has none. */
export const UNCERTAINTY = { grams: 0.25, litres: 0.3, clo: 0.2, wears: 0.34, dryHours: 0.4 } as const;

const ratio = (fabric: FabricId, kind: Kind, of: 'weight' | 'warmth' | 'dries'): number =>
  FABRICS[fabric][of] / FABRICS[kind.fabric][of];

const estimate = (value: number, spread: number, source: string, digits: number): Measure => {
  const scale = 10 ** digits;
  const round = (x: number): number => Math.round(x * scale) / scale;
  return {
    value: round(value),
    low: round(value * (1 - spread)),
    high: round(value * (1 + spread)),
    basis: 'estimated',
    source,
  };
};

/** A figure the stylist wrote. */
export const given = (value: number): Measure => ({
  value,
  low: value,
  high: value,
  basis: 'given',
  source: 'entered by the stylist',
});

/** How much more cloth there is in a piece than in its kind's usual one. */
const moreOfIt = (kind: Kind, fabric: FabricId, size: string | undefined, long: HowLong): number =>
  ratio(fabric, kind, 'weight') * sizeFactor(kind, size) * coveredMore(kind, long) * madeHeavier(kind, fabric, long);

/** Mass of a piece of this kind in this cloth and size, and of a coat of this length, grams. */
export const estimateGrams = (kind: Kind, fabric: FabricId, size?: string, long: HowLong = {}): Measure => {
  const [usual, source] = kind.grams;
  return estimate(usual * moreOfIt(kind, fabric, size, long), UNCERTAINTY.grams, source, 0);
};

/** Packed volume, litres. */
export const estimateLitres = (kind: Kind, fabric: FabricId, size?: string, long: HowLong = {}): Measure =>
  estimate(kind.litres * moreOfIt(kind, fabric, size, long), UNCERTAINTY.litres, 'own', 2);

/** What a garment is filled with, whatever it is covered with. */
const FILLINGS: ReadonlySet<FabricId> = new Set<FabricId>(['down', 'quilted']);

/** A down jacket to the hip, clo. Source: ISO 9920 garment list. No filling makes a coat of that length warmer. */
const DOWN_TO_THE_HIP_CLO = 0.55;

/**
 * Insulation I_clu, clo: the table's value for the kind, scaled by how much warmer the cloth is than the kind's usual
 * one, and a coat by its length: ISO 9920 lets insulation grow with the share of the body covered (from memory). A coat
 * with a filling is at most as warm as a down jacket of its length, or as its kind where that is warmer already.
 */
export const estimateClo = (kind: Kind, fabric: FabricId, long: HowLong = {}): Measure => {
  const isFilled = kind.group === 'coats' && FILLINGS.has(fabric);
  const usual = kind.clo[0] * coveredMore(kind, long);
  const scaled = usual * ratio(fabric, kind, 'warmth');
  const inDown = isFilled ? (DOWN_TO_THE_HIP_CLO * coatCovers(kind, long)) / HIP_COVERS : Number.POSITIVE_INFINITY;
  return estimate(Math.min(scaled, Math.max(usual, inDown)), UNCERTAINTY.clo, kind.clo[1], 3);
};

/** Wears between washes. */
export const estimateWears = (kind: Kind): Measure => estimate(kind.wears[0], UNCERTAINTY.wears, kind.wears[1], 0);

/** Hours to dry indoors after washing. */
export const estimateDryHours = (kind: Kind, fabric: FabricId): Measure =>
  estimate(kind.dryHours * ratio(fabric, kind, 'dries'), UNCERTAINTY.dryHours, 'own', 0);

const NAMES = (Object.keys(FABRICS) as FabricId[]).flatMap((id) =>
  [id, ...FABRICS[id].words].map((word) => ({ id, word })),
);

/** Every word by which a fabric can be named. */
export const FABRIC_WORDS: readonly string[] = [...new Set(NAMES.map(({ word }) => word))];

const paddedWords = (text: string): string => ` ${text.toLowerCase().replaceAll(/[^\p{L}-]+/gu, ' ')} `;

const namesIn = (padded: string): (typeof NAMES)[number][] => NAMES.filter(({ word }) => padded.includes(` ${word} `));

/** The cloth of a piece as it is described: that of its kind when nothing is said, and where a filled kind names its filling beside the shell. */
export const fabricOf = (kind: Kind, text = ''): FabricId => {
  const isFilled = FILLINGS.has(kind.fabric) && namesIn(paddedWords(text)).some(({ id }) => id === kind.fabric);
  return isFilled ? kind.fabric : (fabricNamed(text) ?? kind.fabric);
};

/** The fabric a description names: the longest known word in it wins (`brushed cotton flannel` is flannel). */
export const fabricNamed = (text: string): FabricId | undefined => {
  const padded = paddedWords(text);
  const found = namesIn(padded);
  // The noun stands last in English, so of two equally long words the later one wins.
  found.sort(
    (a, b) =>
      padded.lastIndexOf(` ${b.word} `) + b.word.length - (padded.lastIndexOf(` ${a.word} `) + a.word.length) ||
      b.word.length - a.word.length,
  );
  return found[0]?.id;
};
