import type { SHOES as SHOE_KINDS } from '../../vocabulary/kinds/feet.ts';
import type { DrawKind } from '../drawing.ts';
import { ankleBoots, chelsea, kneeBoots } from './boots.ts';
import { balletFlats, mules } from './flats.ts';
import { blockHeels, heeledSandals, pumps, slingbacks } from './heels.ts';
import { brogues, derby, oxford } from './lace-ups.ts';
import { hikingBoots, laceUpBoots } from './laced-boots.ts';
import { boatShoes, loafers } from './moccasins.ts';
import { espadrilles, flipFlops, sandals, wedgeSandals } from './sandals.ts';
import { canvasShoes, trainers, walkingShoes } from './sport.ts';
import { rainBoots, snowBoots } from './weather-boots.ts';

/** How each kind of shoe is drawn: a pair in three-quarter view, from its last in centimetres. */
export const SHOES: Readonly<Record<keyof typeof SHOE_KINDS, DrawKind>> = {
  trainers,
  'canvas shoes': canvasShoes,
  'walking shoes': walkingShoes,
  'hiking boots': hikingBoots,
  'ankle boots': ankleBoots,
  'chelsea boots': chelsea,
  'knee boots': kneeBoots,
  'lace-up boots': laceUpBoots,
  'rain boots': rainBoots,
  'snow boots': snowBoots,
  loafers,
  brogues,
  'oxford shoes': oxford,
  'derby shoes': derby,
  'boat shoes': boatShoes,
  'ballet flats': balletFlats,
  mules,
  pumps,
  'block heels': blockHeels,
  slingbacks,
  'heeled sandals': heeledSandals,
  'wedge sandals': wedgeSandals,
  sandals,
  espadrilles,
  'flip-flops': flipFlops,
};
