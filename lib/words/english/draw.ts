import type { Formats } from '../formats.ts';

/** English sentences of the draw room. */
export const draw = {
  'length held': (v: { name: string; asked: number; drawn: number }, f: Formats) =>
    `${v.name}: ${f.number(v.asked)} cm is no length for this kind of piece; it is drawn at ${f.number(v.drawn)} cm.`,
  'length unused': (v: { name: string; asked: number }, f: Formats) =>
    `${v.name}: ${f.number(v.asked)} cm is no length for this kind of piece; it is drawn at its usual size.`,
  'no colour': (v: { name: string; colour: string }) =>
    `${v.name}: no colour is written; it is drawn and judged as ${v.colour}.`,
  'no colour mend': () => 'Write its colours, the ground first, like colours: [navy].',
  'heel held': (v: { name: string; asked: number; drawn: number }, f: Formats) =>
    `${v.name}: a heel of ${f.number(v.asked)} cm is none that is worn; it is drawn at ${f.number(v.drawn)} cm.`,
  'measure again': () => 'Measure it again and correct its file.',
  'drawn larger': (v: { pieces: string[] }, f: Formats) => `${f.list(v.pieces)} drawn larger.`,
} satisfies Record<string, (values: never, formats: Formats) => string>;
