/** Scripts that this press cannot set: they need shaping from right to left, or fonts of thousands of signs. */
const RIGHT_TO_LEFT = /\p{Script=Hebrew}|\p{Script=Arabic}|\p{Script=Syriac}|\p{Script=Thaana}|\p{Script=Nko}/u;
const EAST_ASIAN =
  /\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}|\p{Script=Bopomofo}|\p{Script=Yi}/u;
/** Scripts whose letters change shape and order beside each other. */
const SHAPED =
  /\p{Script=Devanagari}|\p{Script=Bengali}|\p{Script=Gurmukhi}|\p{Script=Gujarati}|\p{Script=Oriya}|\p{Script=Tamil}|\p{Script=Telugu}|\p{Script=Kannada}|\p{Script=Malayalam}|\p{Script=Sinhala}|\p{Script=Thai}|\p{Script=Lao}|\p{Script=Tibetan}|\p{Script=Myanmar}|\p{Script=Khmer}|\p{Script=Mongolian}/u;

export type RefusedScript = 'right to left' | 'East Asian' | 'shaped';

/** Why a text is refused whole, or undefined when it can be set. */
export const refusedScript = (text: string): RefusedScript | undefined => {
  if (RIGHT_TO_LEFT.test(text)) return 'right to left';
  if (EAST_ASIAN.test(text)) return 'East Asian';
  return SHAPED.test(text) ? 'shaped' : undefined;
};
