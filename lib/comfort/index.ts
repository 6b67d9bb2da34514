export {
  type CautionQuestion,
  cautionsFor,
  cautionsOfDay,
  isColdSwim,
  skyOf,
  strongestCautions,
} from './cautions.ts';
export {
  cloOfLook,
  inARoom,
  isLeftAtTheDoor,
  isRemovable,
  lookClo,
  SOCKS_CLO,
  UNDERTHINGS_CLO,
  warmLayers,
  wornClo,
} from './clo.ts';
export {
  airOf,
  endHour,
  HOURS_OF_AN_OCCASION,
  hoursOf,
  placeOf,
  shareATraveller,
  startHour,
  staysOn,
  temperaturesDuring,
  weatherOn,
} from './day-weather.ts';
export { type ColdExposure, requiredGarments, requiredInsulation } from './ireq.ts';
export { type BeyondClothes, beyondTravelClothes, WARMEST_TRAVEL_CLO } from './limit.ts';
export { comfortInWords, feelsInWords, lookComfort, ORDINARY_AIR } from './look-comfort.ts';
export { NORMALS_HEADER, type Normals, normalWeather, parseNormals } from './normals.ts';
export { cloBandFromPmv, cloForPmv, pmv, ppd, relativeAirMs, type Surroundings } from './pmv.ts';
export {
  type Air,
  type CloMethod,
  type ComfortQuestion,
  cloAt,
  DEGREES_OFF_AT_MOST,
  feelsOf,
  hoursAtAStretch,
  type RequiredClo,
  requiredClo,
} from './required.ts';
export {
  shadesEyes,
  shadesFace,
  sunCover,
  sunDuring,
  sunElevation,
  sunNeverRises,
  type UvBand,
  uvBand,
  uvIndex,
} from './sun.ts';
export { cautionsOfTrip, isMark, isOfTheSun, isOfTheTrip, ofOccasion } from './trip-cautions.ts';
