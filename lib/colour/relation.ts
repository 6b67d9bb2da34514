import type { NamedColour } from '../model/index.ts';
import { type Phrase, phrase } from '../words/phrase.ts';
import { differenceOf, NEARLY_THE_SAME, SAME_TO_THE_EYE } from './difference.ts';
import { harmonyOf } from './harmony.ts';
import { angleBetween, wheelAngle } from './hue.ts';
import { isAchromatic, isMetal, isNeutral } from './neutral.ts';

/** The closed list of relations. */
export const RELATIONS = [
  'metal',
  'neutral',
  'same',
  'near miss',
  'tone on tone',
  'neighbouring',
  'contrast',
  'triad',
  'split',
  'opposite',
  'shared colour',
  'clash',
] as const;
export type Relation = (typeof RELATIONS)[number];

/** How two colours, or two pieces by their colours, stand to each other. */
export interface ColourRelation {
  readonly relation: Relation;
  /** False for a clash, and for two strong colours that nearly match and look like a mistake. */
  readonly goes: boolean;
  /** 0 to 1; below 0.5 only where it does not go or where it is a soft finding (`near miss` of neutrals). */
  readonly score: number;
  /** A sentence for people that names both colours. */
  readonly reason: Phrase;
}

/** Ends of the intervals on the artist's wheel of twelve (steps of 30 degrees), in degrees. Itten 1961, from memory. */
const TONE_ENDS = 15;
const NEIGHBOURS_END = 65;
const AWKWARD_END = 105;
const TRIAD_ENDS = 135;
const SPLIT_ENDS = 165;

/** At or above this OKLCH chroma cloth is called bright; at `VIVID` it is as bright as dye gets. common practice, no source */
const BRIGHT = 0.1;
const VIVID = 0.16;

/** A gap in OKLCH lightness that lets one colour sit back behind the other. common practice, no source */
const CLEAR_LIGHTNESS_GAP = 0.2;
const SMALL_LIGHTNESS_GAP = 0.08;

/** Both below this lightness: seen as one dark in poor light, as two by day. common practice, no source */
const DARK = 0.33;
/** CIEDE2000 below which two darks of different dye read as a failed match. Black with navy is about 13. common practice, no source */
const NEARLY_ONE_DARK = 16;

/** Share of the published harmony score in ours; it rewards near-identical colours, so it only tilts. Own choice. */
const HARMONY_SHARE = 0.2;

const BASE_SCORES: Readonly<Record<Relation, number>> = {
  metal: 0.85,
  neutral: 0.85,
  same: 0.7,
  'near miss': 0.4,
  'tone on tone': 0.9,
  neighbouring: 0.8,
  contrast: 0.65,
  triad: 0.7,
  split: 0.75,
  opposite: 0.8,
  'shared colour': 0.95,
  clash: 0.2,
};

/** Ou and Luo's range of about −1.5 to 1.5 on 0 to 1. */
const harmonyPart = (a: NamedColour, b: NamedColour): number =>
  Math.min(1, Math.max(0, (harmonyOf(a.hex, b.hex) + 1.5) / 3));

const scoreOf = (relation: Relation, goes: boolean, a: NamedColour, b: NamedColour): number => {
  const mixed = BASE_SCORES[relation] * (1 - HARMONY_SHARE) + harmonyPart(a, b) * HARMONY_SHARE;
  const bounded = relation === 'near miss' || !goes ? Math.min(0.49, mixed) : Math.max(0.5, mixed);
  return Number(bounded.toFixed(4));
};

const record = (relation: Relation, goes: boolean, a: NamedColour, b: NamedColour, reason: Phrase): ColourRelation => ({
  relation,
  goes,
  score: scoreOf(relation, goes, a, b),
  reason,
});

const names = (a: NamedColour, b: NamedColour): { one: string; two: string } => ({ one: a.name, two: b.name });

/** Relations that ask no hue: equal, nearly equal, metal, neutral. Undefined when both are colours and clearly apart. */
const withoutHue = (a: NamedColour, b: NamedColour): ColourRelation | undefined => {
  const difference = differenceOf(a.hex, b.hex);
  if (isMetal(a) || isMetal(b)) {
    return record('metal', true, a, b, phrase('colour', 'metal goes', names(a, b)));
  }
  if (difference < SAME_TO_THE_EYE) return record('same', true, a, b, phrase('colour', 'same', names(a, b)));
  const neutralA = isNeutral(a) || isAchromatic(a);
  const neutralB = isNeutral(b) || isAchromatic(b);
  if (neutralA && neutralB) {
    const nearlyOneDark =
      a.oklch.l < DARK && b.oklch.l < DARK && difference < NEARLY_ONE_DARK && !(isAchromatic(a) && isAchromatic(b));
    if (nearlyOneDark) return record('near miss', true, a, b, phrase('colour', 'near darks', names(a, b)));
    if (difference < NEARLY_THE_SAME) {
      return record('near miss', true, a, b, phrase('colour', 'near neutrals', names(a, b)));
    }
    return record('neutral', true, a, b, phrase('colour', 'two neutrals', names(a, b)));
  }
  if (difference < NEARLY_THE_SAME) {
    return record('near miss', false, a, b, phrase('colour', 'near miss', names(a, b)));
  }
  if (neutralA)
    return record('neutral', true, a, b, phrase('colour', 'neutral goes', { neutral: a.name, colour: b.name }));
  if (neutralB)
    return record('neutral', true, a, b, phrase('colour', 'neutral goes', { neutral: b.name, colour: a.name }));
  return undefined;
};

/** Relations of two colours that both have a hue, by the artist's wheel, tempered by chroma and lightness. */
const byHue = (a: NamedColour, b: NamedColour): ColourRelation => {
  const angle = angleBetween(wheelAngle(a.oklch.h), wheelAngle(b.oklch.h));
  const lightnessGap = Math.abs(a.oklch.l - b.oklch.l);
  const quieter = Math.min(a.oklch.c, b.oklch.c);
  const said = names(a, b);
  if (angle <= TONE_ENDS) return record('tone on tone', true, a, b, phrase('colour', 'tone on tone', said));
  if (angle <= NEIGHBOURS_END) return record('neighbouring', true, a, b, phrase('colour', 'neighbouring', said));
  if (angle <= AWKWARD_END) {
    return quieter < BRIGHT || lightnessGap >= CLEAR_LIGHTNESS_GAP
      ? record('contrast', true, a, b, phrase('colour', 'contrast', said))
      : record('clash', false, a, b, phrase('colour', 'awkward clash', said));
  }
  if (quieter >= VIVID && lightnessGap < SMALL_LIGHTNESS_GAP) {
    return record('clash', false, a, b, phrase('colour', 'vivid clash', said));
  }
  if (angle <= TRIAD_ENDS) return record('triad', true, a, b, phrase('colour', 'triad', said));
  if (angle <= SPLIT_ENDS) return record('split', true, a, b, phrase('colour', 'split', said));
  return record('opposite', true, a, b, phrase('colour', 'opposite', said));
};

/** How two plain colours stand to each other. Symmetric in everything but the order in which the reason names them. */
export const relate = (a: NamedColour, b: NamedColour): ColourRelation => withoutHue(a, b) ?? byHue(a, b);
