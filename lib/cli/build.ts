import path from 'node:path';
import type { PublishResult } from '../publish/index.ts';
import { contentFolder, printProblems } from './content.ts';
import { CONTENT_OPTION, type Given, type Surroundings, UsageError, type Verb } from './verb.ts';
import { findingText, voiceOf } from './voice.ts';

export const EDITIONS = ['client', 'stylist'] as const;

export const OUT_OPTION = { type: 'string', value: 'folder', help: 'where the guide goes (_site)' } as const;
export const TRIP_OPTION = { type: 'string', value: 'trip', help: 'this trip only' } as const;
export const EDITION_OPTION = {
  type: 'string',
  value: 'edition',
  help: "client or stylist; the stylist's has the findings (client)",
} as const;
export const CACHE_OPTION = {
  type: 'string',
  value: 'folder',
  help: 'where finished pictures are kept (.cache)',
} as const;

/** What `build` and `serve` ask of the publisher, from their common options. */
export const publishFrom = async (options: Given, world: Surroundings): Promise<PublishResult> => {
  const edition = String(options.edition ?? 'client') as (typeof EDITIONS)[number];
  if (!EDITIONS.includes(edition))
    throw new UsageError(`there is no edition "${edition}"; write ${EDITIONS.join(' or ')}`);
  // Loaded here, so that the verbs that only compute start at once.
  const { publish } = await import('../publish/index.ts');
  return publish({
    contentFolder: contentFolder(options.content, world),
    out: path.resolve(world.folder, String(options.out ?? '_site')),
    cacheFolder: path.resolve(world.folder, String(options.cache ?? '.cache')),
    edition,
    ...(options.trip === undefined ? {} : { trip: String(options.trip) }),
    ...(world.watched ? { watch: (text: string) => process.stderr.write(text) } : { tell: world.err }),
  });
};

export const buildVerb: Verb = {
  name: 'build',
  words: '',
  summary: 'Build the guides: lookbook site, cards and printable sheets.',
  options: {
    content: CONTENT_OPTION,
    out: OUT_OPTION,
    trip: TRIP_OPTION,
    edition: EDITION_OPTION,
    cache: CACHE_OPTION,
  },
  fewestWords: 0,
  mostWords: 0,
  async run(_words, options, world) {
    const result = await publishFrom(options, world);
    if (!result.ok) {
      printProblems(result.problems, world);
      return 1;
    }
    const { guides, pages, cards, sheets, seconds } = result.made;
    const voice = voiceOf(result.studio);
    for (const { guide, findings } of result.told) {
      const errors = findings.filter(({ level }) => level === 'error');
      if (errors.length > 0)
        world.out([`${guide}:`, ...errors.map((error) => findingText(error, voice)), ''].join('\n'));
    }
    const counted = [
      [guides, { one: '# guide', other: '# guides' }],
      [pages, { one: '# page', other: '# pages' }],
      [cards, { one: '# card', other: '# cards' }],
      [sheets, { one: '# sheet', other: '# sheets' }],
    ] as const;
    const made = counted.map(([count, forms]) => voice.formats.plural(count, forms)).join(', ');
    world.out(`${made} in ${seconds.toFixed(1)} s`);
    world.out(path.relative(world.folder, result.out) || '.');
    return 0;
  },
};
