import type { NamedColour } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { clothColour } from './cloth.ts';
import { differenceOf } from './difference.ts';
import { angleBetween, wheelAngle } from './hue.ts';
import { COLOUR_NAMES } from './names/index.ts';
import { isMetal, isNeutral } from './neutral.ts';
import type { PaletteRole } from './palette-colours.ts';
import { relate } from './relation.ts';

/** Ways to build a palette round a colour, from the quietest. */
export const PALETTE_SCHEMES = ['tone on tone', 'neighbouring', 'split', 'opposite', 'triad'] as const;
export type PaletteScheme = (typeof PALETTE_SCHEMES)[number];

/** A palette to dress in: bases to buy trousers in, supports for tops, accents for a scarf. */
export interface PaletteSuggestion {
  readonly scheme: PaletteScheme;
  readonly colours: readonly {
    readonly colour: NamedColour;
    readonly role: PaletteRole;
    /** Share to aim for, 60–30–10 split within each role. common practice, no source */
    readonly share: number;
  }[];
  /** 0 to 1: mean score of every two of its colours. */
  readonly score: number;
  readonly reason: Phrase;
}

const ROLE_SHARES: Readonly<Record<PaletteRole, number>> = { base: 0.6, support: 0.3, accent: 0.1 };

/** Turns on the artist's wheel that the companions of the seed take, in degrees: supports, then accents. */
const TURNS: Readonly<Record<PaletteScheme, readonly number[]>> = {
  'tone on tone': [0, 0],
  neighbouring: [35, -35],
  split: [150, -150],
  opposite: [180, 20],
  triad: [120, -120],
};

const cloths = (): readonly NamedColour[] =>
  COLOUR_NAMES.flatMap((name) => clothColour(name) ?? []).filter((colour) => !isMetal(colour));

/** Wheel angles of warm colours, red through orange to yellow-green. common practice, no source */
const WARM = { from: 330, to: 150 };
const isWarm = (colour: NamedColour): boolean => {
  const angle = wheelAngle(colour.oklch.h);
  return angle >= WARM.from || angle < WARM.to;
};

/** Bases for a warm and for a cool palette: one dark, one middle, one light. common practice, no source */
const WARM_BASES: readonly string[] = ['chocolate', 'camel', 'cream'];
const COOL_BASES: readonly string[] = ['navy', 'dove grey', 'off-white'];

const FAR_ENOUGH = 12;

/** May stand in a palette with all that are there: it goes with each and is at least a shade away. */
const joins = (colour: NamedColour, palette: readonly NamedColour[]): boolean =>
  palette.every((other) => relate(colour, other).goes && differenceOf(colour.hex, other.hex) >= FAR_ENOUGH);

/** The coloured cloth nearest to a wheel angle that joins the palette and sits well with the seed. */
const companionAt = (angle: number, seed: NamedColour, palette: readonly NamedColour[]): NamedColour | undefined => {
  const fitting = cloths()
    .filter(
      (cloth) => !isNeutral(cloth) && angleBetween(wheelAngle(cloth.oklch.h), angle) <= 14 && joins(cloth, palette),
    )
    .map((cloth) => {
      // a companion about as bright as the seed keeps the mood of it
      const moodGap = Math.abs(cloth.oklch.c - seed.oklch.c);
      return { cloth, worth: relate(cloth, seed).score - moodGap };
    });
  return fitting.reduce<(typeof fitting)[number] | undefined>(
    (best, next) => (best === undefined || next.worth > best.worth ? next : best),
    undefined,
  )?.cloth;
};

const suggestion = (
  scheme: PaletteScheme,
  seed: NamedColour,
  given: readonly NamedColour[],
): PaletteSuggestion | undefined => {
  const ownBases = given.filter((colour) => isNeutral(colour) && !isMetal(colour));
  const usual = (isWarm(seed) ? WARM_BASES : COOL_BASES).flatMap((name) => clothColour(name) ?? []);
  const palette: NamedColour[] = [];
  const join = (colour: NamedColour): void => {
    if (joins(colour, palette)) palette.push(colour);
  };
  join(seed);
  for (const base of [...ownBases, ...usual].slice(0, ownBases.length + 3)) {
    if (palette.filter(isNeutral).length < 3) join(base);
  }
  const bases = palette.filter((colour) => isNeutral(colour) && colour !== seed);
  const companions: NamedColour[] = [];
  for (const turn of TURNS[scheme]) {
    const found = companionAt((wheelAngle(seed.oklch.h) + turn + 360) % 360, seed, palette);
    if (found !== undefined) {
      palette.push(found);
      companions.push(found);
    }
  }
  const [second, third] = companions;
  if (second === undefined || bases.length === 0) return undefined;
  const roles: readonly (readonly [PaletteRole, readonly NamedColour[]])[] = [
    ['base', isNeutral(seed) ? [seed, ...bases] : bases],
    ['support', isNeutral(seed) ? [second] : [seed, second]],
    ['accent', third === undefined ? [] : [third]],
  ];
  return {
    scheme,
    colours: roles.flatMap(([role, colours]) =>
      colours.map((colour) => ({ colour, role, share: Number((ROLE_SHARES[role] / colours.length).toFixed(4)) })),
    ),
    score: meanScore(palette),
    reason: phrase('colour', 'suggested palette', {
      scheme,
      seed: seed.name,
      colours: companions.map(({ name }) => name),
      bases: bases.map(({ name }) => name),
    }),
  };
};

const meanScore = (palette: readonly NamedColour[]): number => {
  const scores = palette.flatMap((one, index) => palette.slice(index + 1).map((two) => relate(one, two).score));
  return Number((scores.reduce((sum, score) => sum + score, 0) / Math.max(1, scores.length)).toFixed(4));
};

/**
 * Palettes built round a seed colour, one a scheme in the order of `PALETTE_SCHEMES`; schemes the seed cannot carry are
 * left out. Every two colours of a palette go together and are at least a shade apart. `alongside` are colours to keep
 * where they join, such as the neutrals of a photo.
 */
export const suggestPalettes = (
  seed: NamedColour,
  alongside: readonly NamedColour[] = [],
): readonly PaletteSuggestion[] => PALETTE_SCHEMES.flatMap((scheme) => suggestion(scheme, seed, alongside) ?? []);

/**
 * Palettes from the colours of a photo, strongest colour as the seed and its neutrals as bases. Empty when there are no
 * colours.
 */
export const suggestPalettesFrom = (
  colours: readonly (NamedColour & { readonly share: number })[],
): readonly PaletteSuggestion[] => {
  const seed = [...colours].sort((a, b) => b.oklch.c * Math.sqrt(b.share) - a.oklch.c * Math.sqrt(a.share))[0];
  return seed === undefined
    ? []
    : suggestPalettes(
        seed,
        colours.filter((colour) => colour !== seed),
      );
};
