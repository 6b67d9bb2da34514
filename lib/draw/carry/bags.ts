import type { BAGS as BAG_KINDS } from '../../vocabulary/kinds/accessories.ts';
import type { DrawKind } from '../drawing.ts';
import { basket } from './basket.ts';
import { briefcase, satchel } from './cases.ts';
import { clutch, crossBody, flapBag } from './small-bags.ts';
import { beltBag, dayPack, shopper } from './soft.ts';
import { shoulderBag, tote } from './totes.ts';

/** How each kind of bag is drawn, seen from the front with its handles up. */
export const BAGS: Readonly<Record<keyof typeof BAG_KINDS, DrawKind>> = {
  tote,
  'shoulder bag': shoulderBag,
  'flap bag': flapBag,
  'cross-body bag': crossBody,
  satchel,
  clutch,
  'basket bag': basket,
  'canvas shopper': shopper,
  'day pack': dayPack,
  'belt bag': beltBag,
  briefcase,
};
