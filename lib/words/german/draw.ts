import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { colourWord } from './colours.ts';

/** German sentences of the draw room. */
export const draw = {
  'length held': (v, f) =>
    `${v.name}: ${f.number(v.asked)} cm kann bei dieser Art Teil nicht stimmen; gezeichnet sind ${f.number(v.drawn)} cm.`,
  'length unused': (v, f) =>
    `${v.name}: ${f.number(v.asked)} cm kann bei dieser Art Teil nicht stimmen; gezeichnet ist es in üblicher Größe.`,
  'no colour': (v) =>
    `${v.name}: Es ist keine Farbe angegeben; gezeichnet und beurteilt wird es als ${colourWord(v.colour)}.`,
  'no colour mend': () => 'Die Farben angeben, die Grundfarbe zuerst, etwa colours: [navy].',
  'heel held': (v, f) =>
    `${v.name}: einen Absatz von ${f.number(v.asked)} cm trägt niemand; gezeichnet ist er mit ${f.number(v.drawn)} cm.`,
  'measure again': () => 'Bitte nachmessen und in der Datei berichtigen.',
  'drawn larger': (v, f) => `${f.list(v.pieces)} größer gezeichnet.`,
} satisfies Translation<typeof english.draw>;
