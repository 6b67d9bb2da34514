import { nearestColourNames, parseColour, suggestPalettes, suggestPalettesFrom } from '../colour/index.ts';
import { writeInstead } from '../content/index.ts';
import type { NamedColour } from '../model/index.ts';
import { coloursOfPhoto } from '../photo/index.ts';
import { contentFolder } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb } from './verb.ts';
import { voiceOf } from './voice.ts';

const HOUSE = { language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' } as const;

/** A path, or a file name with an ending; no colour is written like that. */
const isPhoto = (word: string): boolean => /^[^(]*(\/|\.[a-z]{2,5}$)/i.test(word);

/** As it is written in a piece's front matter. */
const frontMatter = (colours: readonly (NamedColour & { readonly share: number })[]): string =>
  `colours: [${colours
    .map(({ name, hex, share }) => `{name: ${name}, value: "${hex}", share: ${share.toFixed(2)}}`)
    .join(', ')}]`;

export const paletteVerb: Verb = {
  name: 'palette',
  words: '<colour or photo>',
  summary: 'Suggest palettes round a colour, or read the colours out of a photo of the content folder.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 6,
  async run(words, options, world) {
    const word = words.join(' ');
    const { say, formats } = voiceOf({ ...HOUSE, name: '', line: '', paper: 'A4', looksShown: 1, note: '' });
    const folder = contentFolder(options.content, world);
    const photo = isPhoto(word) ? await coloursOfPhoto(folder, word) : undefined;
    if (photo !== undefined && !photo.ok) {
      world.err(`${word}: ${photo.trouble.wrong}\n    ${photo.trouble.mend}`);
      return 1;
    }
    const seed = photo === undefined ? parseColour(word) : undefined;
    if (photo === undefined && seed === undefined) {
      throw new UsageError(
        `no colour is called "${word}"; ${writeInstead(word, nearestColourNames(word), 'write a name or a value like "#4a5560"')}`,
      );
    }
    const palettes = photo?.ok
      ? suggestPalettesFrom(photo.value.colours)
      : seed === undefined
        ? []
        : suggestPalettes(seed);
    if (options.json === true) {
      const told = palettes.map((palette) => ({ ...palette, reason: say(palette.reason) }));
      world.out(JSON.stringify({ ...(photo?.ok ? { photo: photo.value } : { seed }), palettes: told }, null, 2));
      return 0;
    }
    if (photo?.ok) world.out(`${frontMatter(photo.value.colours)}\n`);
    for (const { scheme, colours, reason } of palettes) {
      world.out(`${scheme}: ${say(reason)}`);
      for (const { colour, role, share } of colours) {
        world.out(`  ${colour.hex}  ${formats.percent(share).padStart(4)}  ${role.padEnd(8)} ${colour.name}`);
      }
      world.out('');
    }
    return 0;
  },
};
