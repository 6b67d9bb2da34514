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

/** What stands for a character no font has: its number, so that nothing is lost. */
export const standIn = (character: string): string =>
  `[U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`;
