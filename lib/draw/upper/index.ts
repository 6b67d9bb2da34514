import { SWEATS } from './cardigans-and-sweats.ts';
import { COATS } from './coats.ts';
import { JACKETS } from './jackets.ts';
import { KNITS } from './knits.ts';
import { LAYERS } from './layers.ts';
import { LIGHT_TOPS } from './light-tops.ts';
import { SHIRTS } from './shirts.ts';
import { TAILORING } from './tailoring.ts';
import { TOPS } from './tops.ts';
import { WEATHER_COATS } from './weather-coats.ts';

export { upperDrawnLength, upperLength } from './shape.ts';

/** Tops, knits, layers and coats. */
export const UPPER = {
  ...TOPS,
  ...LIGHT_TOPS,
  ...SHIRTS,
  ...KNITS,
  ...SWEATS,
  ...LAYERS,
  ...JACKETS,
  ...TAILORING,
  ...COATS,
  ...WEATHER_COATS,
};
