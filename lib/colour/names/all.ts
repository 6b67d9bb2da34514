import { blues } from './blues.ts';
import { brownsTans } from './browns-tans.ts';
import { greens } from './greens.ts';
import { greysBlacks } from './greys-blacks.ts';
import { metals } from './metals.ts';
import { orangesRusts } from './oranges-rusts.ts';
import { pinks } from './pinks.ts';
import { purples } from './purples.ts';
import { reds } from './reds.ts';
import type { NameTable } from './table.ts';
import { teals } from './teals.ts';
import { whitesCreams } from './whites-creams.ts';
import { yellows } from './yellows.ts';

/** Every cloth and metal colour by name. Where CSS has the same word (navy, olive, maroon…) the dyed cloth is meant. */
export const CLOTH_COLOURS: NameTable = {
  ...whitesCreams,
  ...greysBlacks,
  ...brownsTans,
  ...reds,
  ...orangesRusts,
  ...yellows,
  ...greens,
  ...teals,
  ...blues,
  ...purples,
  ...pinks,
  ...metals,
};

/** Names of the dictionary, in the order of its tables. */
export const COLOUR_NAMES: readonly string[] = Object.keys(CLOTH_COLOURS);

export { METAL_NAMES } from './metals.ts';
