import { listFromTraits, type ReasonedList } from '../capsule/index.ts';
import { contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, type Verb } from './verb.ts';
import { jsonText, type Voice, voiceOf } from './voice.ts';

/** A list's file as the stylist would write it, each line with its reason. JSON strings are YAML strings. */
const listText = ({ list, reasons }: ReasonedList, { say }: Voice): string =>
  [
    '---',
    `title: ${JSON.stringify(list.title)}`,
    'lines:',
    ...list.lines.flatMap(({ what, count, kinds }, index) => {
      const reason = reasons[index];
      return [
        ...(reason === undefined ? [] : [`  # ${say(reason)}`]),
        `  - what: ${JSON.stringify(what)}`,
        `    count: ${count}`,
        `    kinds: [${kinds.join(', ')}]`,
      ];
    }),
    '---',
    '',
  ].join('\n');

export const listVerb: Verb = {
  name: 'list',
  words: '<trip>',
  summary: 'Make a packing list from what the trip is like, each line with its reason, and print its file.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const { brief } = tripNamed(content, name);
    const made = listFromTraits(brief);
    const voice = voiceOf(content.studio);
    world.out(
      options.json === true
        ? jsonText(
            {
              title: made.list.title,
              lines: made.list.lines.map((line, index) => ({ ...line, why: made.reasons[index] })),
            },
            voice,
          )
        : listText(made, voice),
    );
    return 0;
  },
};
