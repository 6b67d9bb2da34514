/** What a trip can be like, so that something beside clothes is packed for it. */
export const SUNDRY_TRAITS = ['swim', 'cold', 'sun', 'rain', 'formal', 'wash day', 'flight', 'closed shoes'] as const;
export type SundryTrait = (typeof SUNDRY_TRAITS)[number];

/** How the number of a sundry follows the trip. */
export const SUNDRY_PACES = ['trip', 'day', 'day between washes'] as const;
export type SundryPace = (typeof SUNDRY_PACES)[number];

export const SUNDRY_GROUPS = [
  'underthings',
  'wash bag',
  'liquids',
  'papers',
  'electrics',
  'medicines',
  'other',
] as const;
