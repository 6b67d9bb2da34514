import type { Surface } from '../../vocabulary/index.ts';
import { oklch, tone } from '../kit/tone.ts';
import type { Cloth, Drape } from './cloth.ts';

const SHEEN: Partial<Record<Surface, number>> = {
  satin: 1.7,
  sequin: 1.25,
  patent: 1.9,
  leather: 1.3,
  swim: 1.2,
  shell: 1.1,
  velvet: 1.15,
  quilted: 1.1,
  rubber: 1.3,
  jersey: 0.6,
  'fine knit': 0.65,
  'rib knit': 0.7,
  'cable knit': 0.7,
  'open knit': 0.6,
  twill: 0.7,
  denim: 0.7,
  tweed: 0.55,
  flannel: 0.55,
  felt: 0.5,
  fleece: 0.5,
  suede: 0.6,
  corduroy: 0.9,
  towelling: 0.5,
};

const drape = (folds: number, width: number, depth: number, crisp: number): Drape => ({ folds, width, depth, crisp });
const PLAIN = drape(1, 1, 1, 0.7);

const DRAPE: Partial<Record<Surface, Drape>> = {
  jersey: drape(1.35, 0.8, 0.85, 0.35),
  'fine knit': drape(1, 0.95, 0.75, 0.25),
  'rib knit': drape(0.7, 1.15, 0.8, 0.2),
  'cable knit': drape(0.4, 1.4, 0.75, 0.1),
  'open knit': drape(0.6, 1.2, 0.6, 0.15),
  linen: drape(1.4, 0.8, 0.9, 1),
  satin: drape(1.25, 1.05, 1, 0.3),
  chiffon: drape(1.5, 0.9, 0.75, 0.25),
  lace: drape(0.9, 1, 0.7, 0.3),
  denim: drape(0.9, 1, 0.95, 0.9),
  canvas: drape(0.7, 1.1, 0.8, 0.8),
  corduroy: drape(0.75, 1.15, 0.9, 0.5),
  leather: drape(0.8, 1.1, 1.1, 1),
  suede: drape(0.7, 1.2, 0.85, 0.4),
  tweed: drape(0.45, 1.5, 0.75, 0.2),
  flannel: drape(0.8, 1.1, 0.8, 0.4),
  felt: drape(0.35, 1.6, 0.7, 0.15),
  fleece: drape(0.6, 1.4, 0.75, 0.15),
  velvet: drape(0.9, 1.2, 1.1, 0.3),
  quilted: drape(0.25, 1.3, 0.6, 0.3),
  shell: drape(1.1, 0.9, 0.9, 1),
  towelling: drape(0.6, 1.3, 0.7, 0.15),
};

/** Lightness below which the inside of a dark cloth would be a black hole. */
const DARKEST_INSIDE = 0.34;

/** How much the inside of a garment differs from its outside: darker, but for cloth that is all but black. */
const insideStep = (l: number): number => (l > 0.8 ? -0.1 : Math.max(-0.13, Math.min(0.03, DARKEST_INSIDE - l)));

/** Tones of a cloth from its ground: shade drifts cool, light drifts warm; pale and dark cloth need other steps. */
export const clothTones = (ground: string, surface: Surface): Omit<Cloth, 'accents' | 'tiles' | 'swatch' | 'sheer'> => {
  const { l } = oklch(ground);
  const pale = l > 0.8;
  const shiny = surface === 'satin' || surface === 'patent' || surface === 'sequin';
  return {
    surface,
    ground,
    shade: tone(ground, -0.09),
    deep: tone(ground, -Math.min(0.2, 0.08 + l * 0.16)),
    ink: pale ? tone(ground, -0.43, 0.8) : tone(ground, -Math.min(0.27, 0.1 + l * 0.22), 1.05),
    light: tone(ground, 0.06),
    bright: shiny ? tone(ground, l < 0.5 ? 0.24 : 0.17, 0.8) : tone(ground, l < 0.45 ? 0.17 : 0.1, 0.9),
    lining: tone(ground, insideStep(l), 0.9),
    sheen: SHEEN[surface] ?? 1,
    depth: l < 0.42 ? 0.75 : l > 0.94 ? 0.58 : pale ? 0.5 : 1,
    drape: DRAPE[surface] ?? PLAIN,
  };
};
