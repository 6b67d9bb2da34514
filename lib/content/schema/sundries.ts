import * as v from 'valibot';
import { SUNDRY_GROUPS, SUNDRY_PACES, SUNDRY_TRAITS } from '../../vocabulary/index.ts';
import { nameText, numberBetween } from './parts.ts';

const sundrySchema = v.strictObject({
  name: nameText,
  group: v.picklist(SUNDRY_GROUPS),
  count: v.optional(numberBetween(0.1, 50), 1),
  per: v.optional(v.picklist(SUNDRY_PACES), 'trip'),
  spare: v.optional(v.pipe(numberBetween(0, 20), v.integer()), 0),
  most: v.optional(v.pipe(numberBetween(1, 100), v.integer())),
  when: v.optional(v.array(v.picklist(SUNDRY_TRAITS)), []),
  travellers: v.optional(v.array(nameText), []),
  grams: numberBetween(0, 10_000),
  weighed: v.optional(v.boolean(), false),
  litres: v.optional(numberBetween(0, 50)),
  ml: v.optional(numberBetween(0, 5000)),
  wh: v.optional(numberBetween(0, 1000)),
  'spare battery': v.optional(v.boolean(), false),
});

/** The front matter of the stock of sundries. */
export const sundriesSchema = v.strictObject({ sundries: v.array(sundrySchema) });
export type WrittenSundry = v.InferOutput<typeof sundrySchema>;
