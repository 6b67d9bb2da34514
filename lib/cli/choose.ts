import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { checkList, chooseCapsule, listFromTraits, type Proposal } from '../capsule/index.ts';
import { wardrobeOn, writeInstead } from '../content/index.ts';
import type { Brief, Capsule, PackingListPlan, Piece } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { phrase } from '../words/index.ts';
import { contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb, wholeNumber } from './verb.ts';
import { findingText, jsonText, type Voice, voiceOf } from './voice.ts';

/** The stylist's sets of pieces, as far as the proposal has them whole. */
const setsText = (
  field: 'never' | 'always',
  sets: readonly (readonly string[])[],
  { pieces }: Proposal,
): readonly string[] => {
  const whole = sets.filter((set) => set.every((id) => pieces.some((piece) => piece.id === id)));
  return whole.length === 0 ? [] : [`${field}:`, ...whole.map((set) => `  - [${set.join(', ')}]`)];
};

const rulesText = ({ rules }: Capsule): readonly string[] => {
  const set = Object.entries(rules).map(([rule, setting]) => `  ${rule}: ${JSON.stringify(setting)}`);
  return set.length === 0 ? [] : ['rules:', ...set];
};

/** A capsule's file as the stylist would write it. JSON strings are YAML strings, so names need no care. */
const capsuleText = (proposal: Proposal, like: Capsule, title: string): string =>
  [
    '---',
    `title: ${JSON.stringify(title)}`,
    `traveller: ${JSON.stringify(like.traveller)}`,
    `wardrobe: ${like.wardrobe}`,
    ...(like.list === '' ? [] : [`list: ${like.list}`]),
    'mood:',
    `  palette: [${like.mood.palette.map(({ name }) => name).join(', ')}]`,
    `  words: [${like.mood.words.map((word) => JSON.stringify(word)).join(', ')}]`,
    'pieces:',
    ...proposal.pieces.map(({ id }) => `  - ${id}`),
    ...setsText('never', like.never, proposal),
    ...setsText('always', like.always, proposal),
    ...rulesText(like),
    '---',
    '',
  ].join('\n');

/** What fills each line of the list, and what is packed beside it. */
const piecesText = ({ pieces }: Proposal, list: PackingListPlan, voice: Voice): readonly string[] => {
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  const { lines, unlisted } = checkList(pieces, list);
  const beside = [...lines.flatMap(({ over }) => over), ...unlisted];
  return [
    ...lines.map(({ what, pieces: filling, over }) => [what, filling.filter((id) => !over.includes(id))] as const),
    ...(beside.length > 0 ? [['beside the list', beside] as const] : []),
  ].map(([what, ids]) => `  ${what}: ${voice.formats.list(ids.map(nameOf))}`);
};

/** What is proposed, and for which question. */
interface Asked {
  readonly brief: Brief;
  readonly list: PackingListPlan;
  readonly level: 'core' | 'layered';
}

const proposalLines = (
  proposal: Proposal,
  number: number,
  { brief, list, level }: Asked,
  voice: Voice,
): readonly string[] => {
  const { counts, bound, gapAtMost, serves, unserved, plan, packed, brings, leaves, wins, loses, findings } = proposal;
  const whatOf = (id: string): string => brief.occasions.find((occasion) => occasion.id === id)?.what ?? id;
  const left = plan?.unserved.map(({ occasion }) => occasion) ?? unserved;
  const looks = Number(counts[level]);
  const names = (some: readonly Piece[]): readonly string[] => some.map(({ name }) => name);
  return [
    `Proposal ${number}: ${proposal.pieces.length} pieces`,
    `  ${voice.say(phrase('capsule', 'bound', { looks, gap: gapAtMost, bound, level }))}`,
    `  ${plan?.served ?? serves.length} of ${plan?.of ?? serves.length + unserved.length} occasions dressed${left.length > 0 ? `; not ${left.map(whatOf).join(', ')}` : ''}`,
    `  ${voice.formats.grams(packed.grams)} and ${voice.formats.litres(packed.litres)} in the bags`,
    ...piecesText(proposal, list, voice),
    ...(brings.length > 0
      ? [`  ${voice.say(phrase('capsule', 'unlike first', { brings: names(brings), leaves: names(leaves) }))}`]
      : []),
    ...wins.map((said) => `  + ${voice.say(said)}`),
    ...loses.map((said) => `  - ${voice.say(said)}`),
    ...findings.map((finding) => `  ${findingText(finding, voice)}`),
    '',
  ];
};

/** What a trip without a capsule is chosen by: its first traveller, the only list there is, every colour. */
const anyMood = ({ id, title, travellers }: Brief, lists: readonly PackingListPlan[]): Capsule => ({
  id: 'new',
  file: `trips/${id}/brief.md`,
  trip: id,
  title,
  traveller: travellers[0]?.name ?? '',
  wardrobe: travellers[0]?.wardrobe ?? '',
  list: lists.length === 1 ? (lists[0]?.id ?? '') : '',
  mood: { palette: [], words: [] },
  pieces: [],
  never: [],
  always: [],
  favourites: [],
  fixed: [],
  rules: {},
  rationale: '',
});

/** Below the trip's folder and new: a name is one word of letters, digits and hyphens, and nothing is overwritten. */
const writeNew = async (folder: string, trip: string, name: string, text: string): Promise<string> => {
  if (!/^[a-z0-9][a-z0-9-]*$/.test(name))
    throw new UsageError(`--write wants a name of small letters, digits and hyphens, not "${name}"`);
  const file = path.join(folder, 'trips', trip, `${name}.md`);
  try {
    await writeFile(file, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    throw new UsageError(`${name}.md is there already; nothing was written. Choose another name`);
  }
  return file;
};

export const chooseVerb: Verb = {
  name: 'choose',
  words: '<trip>',
  summary: 'Propose the pieces for one bag out of a wardrobe, and print the capsule. Writes nothing unless asked.',
  options: {
    mood: { type: 'string', value: 'capsule', help: 'take mood, list, rules and wardrobe of this capsule (the first)' },
    list: {
      type: 'string',
      value: 'list',
      help: "fill this list (the capsule's; without any, one made from the trip)",
    },
    pieces: { type: 'string', value: 'n', help: 'at most this many pieces' },
    grams: { type: 'string', value: 'n', help: 'at most this much in the bags' },
    litres: { type: 'string', value: 'n', help: 'at most this volume in the bags' },
    most: { type: 'string', value: 'level', help: 'the most looks of this level: layered (unless said) or core' },
    proposal: { type: 'string', value: 'n', help: 'print and write this proposal (1)' },
    write: { type: 'string', value: 'name', help: 'write it as a new capsule of the trip; never overwrites' },
    json: JSON_OPTION,
    content: CONTENT_OPTION,
  },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    const most = wholeNumber(options.pieces, 'pieces', 0);
    const grams = wholeNumber(options.grams, 'grams', 0);
    const litres = wholeNumber(options.litres, 'litres', 0);
    const level = options.most ?? 'layered';
    if (level !== 'core' && level !== 'layered')
      throw new UsageError(`--most wants core or layered, not "${String(level)}"`);
    const wanted = wholeNumber(options.proposal, 'proposal', 1);
    const content = await contentFor(options.content, world, { withoutCapsules: true });
    if (content === undefined) return 1;
    const { brief, capsules } = tripNamed(content, name);
    const like =
      options.mood === undefined
        ? (capsules[0] ?? anyMood(brief, content.lists))
        : capsules.find(({ id }) => id === options.mood);
    if (like === undefined) {
      throw new UsageError(
        `the trip has no capsule "${String(options.mood)}"; it has ${capsules.map(({ id }) => id).join(', ') || 'none yet'}`,
      );
    }
    const listId = options.list === undefined ? like.list : String(options.list);
    const written = content.lists.find(({ id }) => id === listId);
    if (options.list !== undefined && written === undefined) {
      throw new UsageError(
        `there is no list "${listId}"; ${writeInstead(
          listId,
          content.lists.map(({ id }) => id),
        )}`,
      );
    }
    const list = written ?? listFromTraits(brief).list;
    const choice = await chooseCapsule({
      wardrobe: wardrobeOn(content.wardrobes, brief, like),
      brief,
      traveller: like.traveller,
      list,
      mood: like.mood,
      keep: like.choose?.keep ?? [],
      leaveOut: like.choose?.leaveOut ?? [],
      ...(most === 0 ? {} : { piecesAtMost: most }),
      ...(grams === 0 ? {} : { gramsAtMost: grams }),
      ...(litres === 0 ? {} : { litresAtMost: litres }),
      most: level,
      rules: { ...content.houseRules, ...like.rules },
      never: like.never,
      always: like.always,
      solver: await loadSolver(),
    });
    const voice = voiceOf(content.studio);
    if (!choice.possible) {
      if (options.json === true) world.out(jsonText(choice, voice));
      else for (const finding of choice.findings) world.err(findingText(finding, voice));
      return 1;
    }
    const proposal = choice.proposals[wanted - 1];
    if (proposal === undefined)
      throw new UsageError(`there is no proposal ${wanted}; there are ${choice.proposals.length}`);
    const text = capsuleText(proposal, { ...like, list: written?.id ?? '' }, `${like.title}, proposal ${wanted}`);
    if (options.json === true) world.out(jsonText(choice, voice));
    else {
      choice.proposals.forEach((each, index) => {
        for (const line of proposalLines(each, index + 1, { brief, list, level }, voice)) world.out(line);
      });
      for (const note of choice.notes) world.out(voice.say(note));
      world.out(text);
    }
    if (options.write === undefined) return 0;
    const folder = path.resolve(world.folder, String(options.content ?? 'content'));
    const file = await writeNew(folder, brief.id, String(options.write), text);
    world.err(`written: ${path.relative(world.folder, file)}`);
    return 0;
  },
};
