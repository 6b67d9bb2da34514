import type {
  ACCESSORIES as ACCESSORY_KINDS,
  JEWELLERY as JEWELLERY_KINDS,
} from '../../vocabulary/kinds/accessories.ts';
import type { DrawKind } from '../drawing.ts';
import { belt } from './belts.ts';
import { beanie, beret, cap, flatCap } from './caps.ts';
import { drops, hoops, studs } from './earrings.ts';
import { hairBand, spectacles, sunglasses } from './eyewear.ts';
import { gloves, leatherGloves, mittens } from './gloves.ts';
import { bucketHat, feltHat, sunHat } from './hats.ts';
import { bangle, beads, bracelet, necklace, pendant } from './neckwear.ts';
import { sash } from './sash.ts';
import { chunkyScarf, scarf } from './scarves.ts';
import { neckerchief, pocketSquare, silkScarf } from './squares.ts';
import { bowTie, braces, tie } from './ties.ts';
import { brooch, ring } from './trinkets.ts';
import { watch } from './watch.ts';

/** How each kind of jewellery is drawn; ear, finger and lapel pieces are enlarged, see `SMALL_JEWELLERY_SCALE`. */
export const JEWELLERY: Readonly<Record<keyof typeof JEWELLERY_KINDS, DrawKind>> = {
  'stud earrings': studs,
  'hoop earrings': hoops,
  'drop earrings': drops,
  pendant,
  necklace,
  'bead necklace': beads,
  bracelet,
  bangle,
  watch,
  ring,
  brooch,
  'pocket square': pocketSquare,
};

/** How each accessory is drawn. */
export const ACCESSORIES: Readonly<Record<keyof typeof ACCESSORY_KINDS, DrawKind>> = {
  sunglasses,
  spectacles,
  beret,
  beanie,
  cap,
  'flat cap': flatCap,
  'bucket hat': bucketHat,
  'sun hat': sunHat,
  'felt hat': feltHat,
  'hair band': hairBand,
  scarf,
  'chunky scarf': chunkyScarf,
  'silk scarf': silkScarf,
  neckerchief,
  tie,
  'bow tie': bowTie,
  gloves,
  'leather gloves': leatherGloves,
  mittens,
  belt,
  'waist sash': sash,
  braces,
};
