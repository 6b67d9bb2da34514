/**
 * Text as it is set: composed accents (NFC), line breaks and control characters as spaces, and without the characters
 * that by definition draw nothing (Unicode property Default_Ignorable_Code_Point: joiners, soft hyphens, marks of direction).
 */
export const plainText = (text: string): string =>
  text
    .normalize('NFC')
    .replaceAll(/\p{Cc}+/gu, ' ')
    .replaceAll(/\p{Default_Ignorable_Code_Point}/gu, '');

/** Text holds characters that none of our fonts has. The caller reports them; nothing is drawn as an empty box. */
export class UncoveredTextError extends Error {
  readonly text: string;
  readonly characters: readonly string[];

  constructor(text: string, characters: readonly string[]) {
    super(`no font has ${characters.join(' ')} of "${text}"`);
    this.name = 'UncoveredTextError';
    this.text = text;
    this.characters = characters;
  }
}

/** What stands for a text of which nothing can be set. */
const NOTHING_LEFT = '…';

/** A text without some of its characters and without the gaps and empty brackets they leave; an ellipsis where nothing is left. */
export const withoutCharacters = (text: string, lost: ReadonlySet<string>): string => {
  if (lost.size === 0) return text;
  // characters in brackets of a pattern, each written by its number so that none is read as a sign of the pattern
  const any = [...lost].map((character) => `\\u{${character.codePointAt(0)?.toString(16)}}`).join('');
  const bare = text.replaceAll(new RegExp(`\\s*(?:[${any}]\\s*)+`, 'gu'), (gap, at: number) => {
    const [before, after] = [text.slice(0, at), text.slice(at + gap.length)];
    const closes = before === '' || after === '' || /^[,.;:!?)\]”’]/u.test(after) || /[([“‘]$/u.test(before);
    return closes || !/\s/u.test(gap) ? '' : ' ';
  });
  const left = bare.replaceAll(/\s*(?:\(\s*\)|\[\s*\])/gu, '');
  return left === '' ? NOTHING_LEFT : left;
};
