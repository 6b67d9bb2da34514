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
import { title } from './title.ts';

/** Every sentence of the interface, by room; German has the same keys, by type. */
export const english = {
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
  site,
  title,
};
export type English = typeof english;
