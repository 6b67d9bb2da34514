import type { NamedColour } from '../model/index.ts';
import type { Surface } from '../vocabulary/index.ts';
import { METAL_NAMES } from './names/metals.ts';

/** A part of OKLCH: lightness and chroma from (inclusive) to (exclusive), hue from the first upwards to the second in degrees. */
export interface NeutralRegion {
  readonly name: NeutralName;
  readonly l: readonly [number, number];
  readonly mostChroma: number;
  /** May run over 360; absent where any hue counts. */
  readonly hue?: readonly [from: number, to: number];
}

export type NeutralName =
  | 'grey, black or white'
  | 'cream or sand'
  | 'camel or tan'
  | 'brown'
  | 'olive or khaki'
  | 'dark green'
  | 'navy or denim'
  | 'slate'
  | 'burgundy or aubergine'
  | 'nearly black';

/** Below this chroma no hue is read in cloth: black, white and every grey. common practice, no source */
const ACHROMATIC_CHROMA = 0.02;

/**
 * The near-neutrals: colours a stylist pairs like a grey. Each region is drawn round the dyed cloths of that name in
 * the dictionary and stops before the colour that people call a colour: rust above the browns, mustard above the
 * camels, royal blue above the navies. common practice, no source
 */
export const NEUTRAL_REGIONS: readonly NeutralRegion[] = [
  { name: 'grey, black or white', l: [0, 1.01], mostChroma: ACHROMATIC_CHROMA },
  { name: 'nearly black', l: [0, 0.26], mostChroma: 0.05 },
  { name: 'cream or sand', l: [0.7, 1.01], mostChroma: 0.072, hue: [48, 112] },
  { name: 'cream or sand', l: [0.76, 0.88], mostChroma: 0.086, hue: [70, 92] },
  { name: 'camel or tan', l: [0.42, 0.75], mostChroma: 0.112, hue: [44, 88] },
  { name: 'brown', l: [0.24, 0.5], mostChroma: 0.085, hue: [30, 92] },
  { name: 'olive or khaki', l: [0.26, 0.7], mostChroma: 0.068, hue: [88, 128] },
  { name: 'dark green', l: [0.24, 0.39], mostChroma: 0.06, hue: [128, 180] },
  { name: 'dark green', l: [0.38, 0.55], mostChroma: 0.035, hue: [128, 180] },
  { name: 'navy or denim', l: [0.2, 0.42], mostChroma: 0.11, hue: [248, 290] },
  { name: 'navy or denim', l: [0.42, 0.73], mostChroma: 0.075, hue: [238, 266] },
  { name: 'navy or denim', l: [0.73, 0.84], mostChroma: 0.035, hue: [238, 266] },
  { name: 'slate', l: [0.4, 0.68], mostChroma: 0.04, hue: [200, 280] },
  { name: 'burgundy or aubergine', l: [0.2, 0.36], mostChroma: 0.11, hue: [-35, 32] },
];

const within = (hue: number, [from, to]: readonly [number, number]): boolean =>
  (((hue - from) % 360) + 360) % 360 <= to - from;

/** True for the colour of metal by its name, unless it is known to be cloth: metal goes with everything. */
export const isMetal = (colour: Pick<NamedColour, 'name' | 'metal'>): boolean =>
  colour.metal ?? METAL_NAMES.has(colour.name);

/** Surfaces that can shine like metal: gold sandals are metal to the eye, a gold jumper is yellow. common practice, no source */
const METALLIC_SURFACES: ReadonlySet<Surface> = new Set(['metal', 'leather', 'patent', 'sequin']);

/** A colour as it looks on a surface: on one that cannot shine, the word for a metal is a plain colour. */
export const onSurface = <C extends NamedColour>(colour: C, surface: Surface): C =>
  METAL_NAMES.has(colour.name) && !METALLIC_SURFACES.has(surface) ? { ...colour, metal: false } : colour;

/** Too grey to have a hue; a stylist's override does not give it one. */
export const isAchromatic = (colour: Pick<NamedColour, 'oklch'>): boolean => colour.oklch.c < ACHROMATIC_CHROMA;

/** The region of neutral or near-neutral a colour lies in by computation alone, without the stylist's override. */
export const neutralRegion = ({ oklch }: Pick<NamedColour, 'oklch'>): NeutralName | undefined =>
  NEUTRAL_REGIONS.find(
    ({ l, mostChroma, hue }) =>
      oklch.l >= l[0] && oklch.l < l[1] && oklch.c < mostChroma && (hue === undefined || within(oklch.h, hue)),
  )?.name;

/** Whether a stylist pairs it like a grey: the override where there is one, then metals, then the regions. */
export const isNeutral = (colour: NamedColour): boolean =>
  colour.neutral ?? (isMetal(colour) || neutralRegion(colour) !== undefined);
