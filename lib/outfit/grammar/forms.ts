import { CORE_SLOTS, LAYER_SLOTS, SLOTS, type Slot } from '../../vocabulary/places.ts';

/** The three forms a core can take, in the order looks are listed. */
export const CORE_FORMS = ['separates', 'one-piece', 'swim'] as const;
export type CoreForm = (typeof CORE_FORMS)[number];

/** How much of a look is counted or listed. */
export const LEVELS = ['core', 'layered', 'complete'] as const;
export type Level = (typeof LEVELS)[number];

export interface Form {
  readonly id: CoreForm;
  /** Slots a finished look of this form must fill. */
  readonly required: readonly Slot[];
  /** Slots that may stay empty. */
  readonly optional: readonly Slot[];
}

const JEWELLERY: readonly Slot[] = SLOTS.filter((slot) => slot.startsWith('jewellery'));
const DRESSED: readonly Slot[] = [
  'mid layer',
  'outer layer',
  'base layer',
  'leg layer',
  'legwear',
  'bag',
  ...JEWELLERY,
  'eyewear',
  'headwear',
  'scarf',
  'gloves',
  'belt',
];

/**
 * The grammar of a look: one core, at most one piece a slot, and under the top or dress a base layer. Shoes are asked for except with swimwear; a tie stands
 * only beside a separate top; over swimwear go a cover-up, shoes, a bag, something for the eyes and the head.
 */
export const FORMS: Readonly<Record<CoreForm, Form>> = {
  separates: { id: 'separates', required: ['top', 'bottom', 'shoes'], optional: [...DRESSED, 'tie'] },
  'one-piece': { id: 'one-piece', required: ['one-piece', 'shoes'], optional: DRESSED },
  swim: { id: 'swim', required: ['swim'], optional: ['cover-up', 'shoes', 'bag', 'eyewear', 'headwear'] },
};

const levelOf = (slot: Slot): number => (CORE_SLOTS.has(slot) ? 0 : LAYER_SLOTS.has(slot) ? 1 : 2);

/** True when looks of a level have that slot: a complete look has all, a core its own alone. */
export const levelHas = (level: Level, slot: Slot): boolean => levelOf(slot) <= LEVELS.indexOf(level);

/** The slots of a form down to a level, in the fixed order of looks, which puts the core first, then the layers. */
export const slotsOf = (form: Form, level: Level): readonly Slot[] => {
  const known = new Set([...form.required, ...form.optional]);
  return SLOTS.filter((slot) => known.has(slot) && levelHas(level, slot));
};
