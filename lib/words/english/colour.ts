import type { Formats } from '../formats.ts';

interface TwoColours {
  readonly one: string;
  readonly two: string;
}

/** "Rust with rust" reads badly; two colours of one name are said once. */
const pair = ({ one, two }: TwoColours): string => (one === two ? `two tones of ${one}` : `${one} and ${two}`);

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** English sentences of the colour room. */
export const colour = {
  'metal goes': (v: TwoColours) => sentence(`${pair(v)}: metal goes with everything.`),
  same: (v: TwoColours) =>
    sentence(v.one === v.two ? `one colour throughout, ${v.one}.` : `${v.one} and ${v.two} are the same to the eye.`),
  'near darks': (v: TwoColours) => sentence(`${pair(v)} are two different darks: side by side by daylight it shows.`),
  'near neutrals': (v: TwoColours) =>
    sentence(`${pair(v)} nearly match: choose the same one, or a clear step lighter or darker.`),
  'near miss': (v: TwoColours) =>
    sentence(`${pair(v)} nearly match, and that looks like a mistake: choose the same one, or a clear step away.`),
  'two neutrals': (v: TwoColours) => sentence(`${pair(v)}: two neutrals, always right.`),
  'neutral goes': (v: { neutral: string; colour: string }) =>
    sentence(`${v.neutral} is a neutral and leaves the word to ${v.colour}.`),
  'tone on tone': (v: TwoColours) => sentence(`${pair(v)}: tone on tone, one hue lighter and darker.`),
  neighbouring: (v: TwoColours) => sentence(`${pair(v)} are neighbours on the colour wheel.`),
  contrast: (v: TwoColours) => sentence(`${pair(v)} are a contrast that works because one of them keeps back.`),
  triad: (v: TwoColours) => sentence(`${pair(v)} stand a third of the colour wheel apart: lively, yet balanced.`),
  split: (v: TwoColours) => sentence(`${pair(v)} are nearly opposite on the colour wheel: a strong pair.`),
  opposite: (v: TwoColours) => sentence(`${pair(v)} are opposites on the colour wheel: each makes the other glow.`),
  'awkward clash': (v: TwoColours) =>
    sentence(`${pair(v)} are equally strong and neither near nor opposite: they compete.`),
  'vivid clash': (v: TwoColours) =>
    sentence(`${pair(v)} are both vivid and equally light: the edge between them flickers.`),
  'shared colour': (v: TwoColours) =>
    v.one === v.two ? sentence(`${v.one} is in both and ties them.`) : sentence(`${pair(v)} pick each other up.`),
} satisfies Record<string, (values: never, formats: Formats) => string>;
