import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';

/** German sentences of the draw room. */
export const draw = {
  'length held': (v, f) =>
    `${v.name}: ${f.number(v.asked)} cm kann bei dieser Art Teil nicht stimmen; gezeichnet sind ${f.number(v.drawn)} cm. Bitte nachmessen.`,
} satisfies Translation<typeof english.draw>;
