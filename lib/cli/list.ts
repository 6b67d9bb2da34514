import { checkList, findingsOfList, type ListCheck, listFromTraits, type ReasonedList } from '../capsule/index.ts';
import type { Content } from '../content/index.ts';
import { piecesOfCapsule } from '../guide/index.ts';
import type { Piece } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { capsuleNamed, contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, type ExitCode, JSON_OPTION, type Surroundings, UsageError, type Verb } from './verb.ts';
import { findingText, jsonText, type Voice, voiceOf } from './voice.ts';
import { writeIfAsked } from './write-new.ts';

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

/** Every line of the list with the pieces that fill it, then what is missing or beyond. */
const checkLines = (check: ListCheck, pieces: readonly Piece[], voice: Voice): readonly string[] => {
  const { say, formats } = voice;
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  const filling = (ids: readonly string[]): string =>
    ids.length === 0 ? say(phrase('compare', 'line empty', {})) : formats.list(ids.map(nameOf));
  const asks = ({ what, wanted }: ListCheck['lines'][number]): Phrase =>
    phrase('compare', 'line asks', { what, wanted });
  return [
    ...check.lines.flatMap((line) => [say(asks(line)), `    ${filling(line.pieces)}`]),
    ...findingsOfList(check, pieces).map((finding) => findingText(finding, voice)),
  ];
};

const printCheck = (name: string, content: Content, json: boolean, world: Surroundings): ExitCode => {
  const { capsule } = capsuleNamed(content, name);
  const list = content.lists.find(({ id }) => id === capsule.list);
  if (list === undefined) throw new UsageError(`"${name}" is on no list; write "list:" into ${capsule.file}`);
  const pieces = piecesOfCapsule(capsule, content.wardrobes.get(capsule.wardrobe) ?? []);
  const check = checkList(pieces, list);
  const voice = voiceOf(content.studio);
  if (json) world.out(jsonText({ list: list.id, ...check }, voice));
  else for (const line of checkLines(check, pieces, voice)) world.out(line);
  return 0;
};

export const listVerb: Verb = {
  name: 'list',
  words: '<trip>[/<capsule>]',
  summary:
    'Make a packing list from what the trip is like, each line with its reason, and print its file (write it when asked). With a capsule: say which pieces fill its list.',
  options: {
    write: { type: 'string', value: 'name', help: 'write the list made as a new file of lists; never overwrites' },
    json: JSON_OPTION,
    content: CONTENT_OPTION,
  },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    if (options.write !== undefined && name.includes('/'))
      throw new UsageError('--write is for a list made from a trip; name the trip alone');
    const content = await contentFor(options.content, world, { withoutCapsules: true });
    if (content === undefined) return 1;
    if (name.includes('/')) return printCheck(name, content, options.json === true, world);
    const { brief } = tripNamed(content, name);
    const made = listFromTraits(brief);
    const voice = voiceOf(content.studio);
    const file = listText(made, voice);
    if (options.json === true) {
      const lines = made.list.lines.map((line, index) => ({ ...line, why: made.reasons[index] }));
      world.out(jsonText({ title: made.list.title, lines }, voice));
    } else world.out(file);
    await writeIfAsked('lists', file, options, world);
    return 0;
  },
};
