import type { English } from '../english/index.ts';
import type { Language } from '../phrase.ts';
import type { Translation } from '../translation.ts';
import { bag } from './bag.ts';
import { capsule } from './capsule.ts';
import { check } from './check.ts';
import { colour } from './colour.ts';
import { comfort } from './comfort.ts';
import { compare } from './compare.ts';
import { draw } from './draw.ts';
import { guide } from './guide.ts';
import { improve } from './improve.ts';
import { outfit } from './outfit.ts';
import { palette } from './palette.ts';
import { plan } from './plan.ts';
import { print } from './print.ts';
import { site } from './site.ts';
import { siteMore } from './site-more.ts';
import { title } from './title.ts';

/**
 * Every sentence of the interface in German. Instructions are neutral infinitives ("einpacken", "mitnehmen"), as on a
 * care label; where a reader has to be addressed it is "Sie". Inserted names take no article and no ending, so a
 * name of any gender fits.
 */
export const german = {
  bag,
  capsule,
  check,
  colour,
  comfort,
  compare,
  draw,
  guide,
  improve,
  outfit,
  palette,
  plan,
  print,
  site: { ...site, ...siteMore },
  title,
} satisfies Language & { readonly [Room in keyof English]: Translation<English[Room]> };
