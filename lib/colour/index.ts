export { accentColour, accentOf, legibleOn, PAPER_DARK, PAPER_LIGHT } from './accent.ts';
export { avoidedIn, isAvoided } from './avoid.ts';
export { clothColour } from './cloth.ts';
export { contrastOf, TEXT_CONTRAST } from './contrast.ts';
export { displayHex } from './convert.ts';
export { cutGarment, type GarmentCut } from './cut-garment.ts';
export {
  type DifferenceDirection,
  type DifferenceWord,
  differenceDirection,
  differenceOf,
  differenceWord,
  NEARLY_THE_SAME,
  SAME_TO_THE_EYE,
} from './difference.ts';
export { type ColourWishes, colourFindings, type LookToName, lookVisionFindings } from './findings.ts';
export { foldedByPiece } from './fold.ts';
export { harmonyOf, ouLuoHarmony } from './harmony.ts';
export { type HouseNeutrals, underHouse } from './house-neutrals.ts';
export { angleBetween, HUE_FAMILIES, type HueFamily, hueAtAngle, hueFamily, wheelAngle } from './hue.ts';
export { moodColourOf, strayFromMood } from './mood.ts';
export { nameOf, nearestCloth } from './name-of.ts';
export { COLOUR_NAMES } from './names/index.ts';
export {
  isMetal,
  isNeutral,
  NEUTRAL_REGIONS,
  type NeutralName,
  type NeutralRegion,
  neutralRegion,
  onSurface,
} from './neutral.ts';
export { type PaletteAddition, paletteAdditions, whatColourDoes } from './palette-additions.ts';
export { type PaletteColour, type PaletteRole, paletteColours } from './palette-colours.ts';
export { type Companions, companions, type PalettePair, palettePairs } from './palette-pairs.ts';
export { type PaletteRelation, type PaletteReport, paletteReport, sayDifference } from './palette-report.ts';
export {
  PALETTE_SCHEMES,
  type PaletteScheme,
  type PaletteSuggestion,
  suggestPalettes,
  suggestPalettesFrom,
} from './palette-suggestion.ts';
export { colourNamed, parseColour, parseCssColour } from './parse.ts';
export { coloursOfPixels, type PhotoColours } from './photo-colours.ts';
export { type ColouredPiece, isNeutralPiece, relatePieces } from './piece-relation.ts';
export type { Pixels } from './pixels.ts';
export { type ColourRelation, RELATIONS, type Relation, relate } from './relation.ts';
export { nearestColourNames } from './suggest-names.ts';
export { fitHueTemplate, HUE_TEMPLATES, type HueTemplateFit, type HueTemplateType } from './templates.ts';
export { type TooAlike, tooAlike } from './too-alike.ts';
export { DICHROMACIES, type Dichromacy, type HardToTell, hardToTellApart, seenWith } from './vision.ts';
