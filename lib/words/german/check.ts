import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';

/** German sentences of the check room. */
export const check = {
  'fabric refused': (v) => `${v.piece} (${v.fabric}) fällt unter „${v.refused}“ und wird nicht getragen.`,
  'fabric refused why': () =>
    'Ein Stoff ist hier nur dem Namen nach bekannt: bei einer Allergie das Etikett lesen und in Arztpraxis oder Apotheke nachfragen.',
  'fabric refused mend': () => 'Aus der Capsule nehmen; der Plan verwendet es nicht.',
  'against skin': (v) =>
    `${v.piece} (${v.fabric}) läge überall auf der Haut, und das Briefing schließt das für diesen Stoff aus: kein Look verwendet es.`,
  'against skin mend': () => 'Weglassen oder gegen ein Teil aus anderem Stoff tauschen.',
  'heel refused': (v, f) =>
    `${v.piece}: Absatz ${f.centimetres(v.heelCm)}, getragen werden höchstens ${f.centimetres(v.mostCm)}.`,
  'heel refused mend': () => 'Ein flacheres Paar einpacken; der Plan verwendet dieses nicht.',
} satisfies Translation<typeof english.check>;
