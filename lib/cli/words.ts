import { COLOUR_NAMES, NEUTRAL_REGIONS } from '../colour/index.ts';
import { HOUSE_RULES } from '../outfit/index.ts';
import {
  ACTIVITIES,
  COVERAGE,
  type Coverage,
  CUTS,
  DRESS_CODES,
  FABRIC_WORDS,
  FEELS,
  JEWELLERY_SITES,
  KIND_GROUPS,
  KIND_IDS,
  KINDS,
  LENGTHS,
  NEEDS,
  type Need,
  PATTERN_SCALES,
  PATTERN_TYPES,
  PLACES,
} from '../vocabulary/index.ts';
import { capital, createFormats, english, type Phrase, say } from '../words/index.ts';
import { UsageError, type Verb } from './verb.ts';

const FORMATS = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const inEnglish = (said: Phrase): string => say(english, FORMATS, said);

const ruleRows = (): readonly string[] => [
  '| rule | what it says | does | threshold |',
  '|---|---|---|---|',
  ...HOUSE_RULES.map(({ id, says, severity, threshold }) => {
    const limit = threshold === undefined ? '' : `${threshold.default} ${inEnglish(threshold.unit)}`;
    return `| \`${id}\` | ${inEnglish(says)} | ${severity} | ${limit} |`;
  }),
];

const neutralRows = (): readonly string[] => [
  'a colour in one of these regions of OKLCH, unless `house-rules.md` says otherwise for every piece (`neutral: [rust]`, `not neutral: [burgundy]`) or a piece for its own colour (`{name: copper, neutral: false}`)',
  '',
  '| neutral | lightness | chroma under | hue |',
  '|---|---|---|---|',
  ...NEUTRAL_REGIONS.map(({ name, l: [from, to], mostChroma, hue }) => {
    const degrees = hue?.map((degree) => `${(degree + 360) % 360}°`).join(' to ') ?? 'any';
    return `| ${name} | ${from} to ${Math.min(1, to)} | ${mostChroma} | ${degrees} |`;
  }),
];

/** How a piece's own words stand to those of its kind. */
const besides = (field: 'suits' | 'covers', word: Need | Coverage): string =>
  `in a piece’s \`${field}\` they add to what its kind ${field}, and \`not ${word}\` takes ${word} away`;

/** Every word a content file may use, by heading. */
const SECTIONS: Readonly<Record<string, () => readonly string[]>> = {
  kinds: () =>
    KIND_GROUPS.map((group) => `- **${group}**: ${KIND_IDS.filter((id) => KINDS[id].group === group).join(', ')}`),
  places: () => [`${PLACES.join(', ')}; jewellery sits at the ${JEWELLERY_SITES.join(', ')}`],
  'dress codes': () => [DRESS_CODES.join(' < ')],
  needs: () => [`${NEEDS.join(', ')}; ${besides('suits', 'rain')}`],
  activities: () => [Object.keys(ACTIVITIES).join(', ')],
  feels: () => [
    `${FEELS.join(', ')}: how a traveller feels where most people are comfortable; dressed half a unit warmer or cooler on ISO 7730’s scale from −3 cold to +3 hot (an estimate)`,
  ],
  cover: () => [`${COVERAGE.join(', ')}; ${besides('covers', 'forearms')}`],
  cuts: () => [Object.keys(CUTS).join(', ')],
  lengths: () => [LENGTHS.join(', ')],
  patterns: () => [`${PATTERN_TYPES.join(', ')}; scales ${PATTERN_SCALES.join(', ')}`],
  fabrics: () => [`any description with one of these words in it: ${FABRIC_WORDS.join(', ')}`],
  colours: () => [
    `any CSS colour, or one of these names, also with light, dark, pale or deep before it: ${[...COLOUR_NAMES].toSorted().join(', ')}`,
  ],
  neutrals: neutralRows,
  'house rules': ruleRows,
};

/** The sections as Markdown, as README.md has them. */
export const wordsAsMarkdown = (names: readonly string[] = Object.keys(SECTIONS)): string =>
  names.map((name) => [`### ${capital(name)}`, '', ...(SECTIONS[name]?.() ?? [])].join('\n')).join('\n\n');

export const wordsVerb: Verb = {
  name: 'words',
  words: '[heading]',
  summary: `List the words content may use: ${Object.keys(SECTIONS).join(', ')}.`,
  options: {},
  fewestWords: 0,
  mostWords: 2,
  async run(words, _options, world) {
    const name = words.join(' ');
    if (name !== '' && !(name in SECTIONS)) {
      throw new UsageError(`there is no heading "${name}"; write ${Object.keys(SECTIONS).join(', ')}`);
    }
    world.out(wordsAsMarkdown(name === '' ? undefined : [name]));
    return 0;
  },
};
