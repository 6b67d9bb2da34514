export {
  type DifferenceDirection,
  type DifferenceWord,
  differenceDirection,
  differenceOf,
  differenceWord,
  NEARLY_THE_SAME,
  SAME_TO_THE_EYE,
} from './difference.ts';
export { harmonyOf, ouLuoHarmony } from './harmony.ts';
export { angleBetween, HUE_FAMILIES, type HueFamily, hueFamily, wheelAngle } from './hue.ts';
export { nameOf, nearestCloth } from './name-of.ts';
export { COLOUR_NAMES } from './names/index.ts';
export { isMetal, isNeutral, type NeutralName, neutralRegion } from './neutral.ts';
export { colourNamed, parseColour, parseCssColour } from './parse.ts';
export { type ColouredPiece, isNeutralPiece, relatePieces, seenColours } from './piece-relation.ts';
export { type ColourRelation, RELATIONS, type Relation, relate } from './relation.ts';
export { nearestColourNames } from './suggest-names.ts';
