import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';

/** German sentences of the draw room. */
export const draw = {
  'length held': (v, f) =>
    `${v.name}: ${f.number(v.asked)} cm kann bei dieser Art Teil nicht stimmen; gezeichnet sind ${f.number(v.drawn)} cm.`,
  'heel held': (v, f) =>
    `${v.name}: ein Absatz von ${f.number(v.asked)} cm ist mit ${f.number(v.drawn)} cm gezeichnet.`,
  'measure again': () => 'Bitte nachmessen und in der Datei berichtigen.',
  'drawn larger': (v, f) => `${f.list(v.pieces)} größer gezeichnet.`,
} satisfies Translation<typeof english.draw>;
