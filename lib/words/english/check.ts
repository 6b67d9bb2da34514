import type { Formats } from '../formats.ts';

/** English sentences of the check room. */
export const check = {
  'fabric refused': (v: { piece: string; fabric: string; refused: string }) =>
    `${v.piece} (${v.fabric}) meets “${v.refused}”, which the client does not wear.`,
  'fabric refused why': () =>
    'Wayfold knows a cloth only by its name: for an allergy read the label, and ask a doctor or pharmacist.',
  'fabric refused mend': () => 'Leave it out of the capsule; the plan does not use it.',
  'against skin': (v: { piece: string; fabric: string }) =>
    `${v.piece} (${v.fabric}) would touch the skin wherever it is worn, and the brief keeps that cloth off it: no look uses it.`,
  'against skin mend': () => 'Leave it out, or swap it for one of another cloth.',
  'heel refused': (v: { piece: string; heelCm: number; mostCm: number }, f: Formats) =>
    `${v.piece}: the heel of ${f.centimetres(v.heelCm)} is over the ${f.centimetres(v.mostCm)} the client wears.`,
  'heel refused mend': () => 'Pack a lower pair; the plan does not use these.',
} satisfies Record<string, (values: never, formats: Formats) => string>;
