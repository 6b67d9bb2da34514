import path from 'node:path';
import { checkList, chooseCapsule, listFromTraits, type Proposal } from '../capsule/index.ts';
import { briefFor, type Trip, wardrobeOn, writeInstead } from '../content/index.ts';
import type { Brief, Capsule, PackingListPlan, Piece } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { capital, phrase } from '../words/index.ts';
import { capsuleText } from './capsule-text.ts';
import { contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb, wholeNumber } from './verb.ts';
import { findingText, jsonText, type Voice, voiceOf } from './voice.ts';
import { writeNew } from './write-new.ts';

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

/** What a traveller without a capsule is chosen by: the only list there is, every colour. */
const anyMood = (
  { id, title }: Brief,
  traveller: Brief['travellers'][number] | undefined,
  lists: readonly PackingListPlan[],
): Capsule => ({
  id: 'new',
  file: `trips/${id}/brief.md`,
  trip: id,
  title,
  traveller: traveller?.name ?? '',
  wardrobe: traveller?.wardrobe ?? '',
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

/** The capsule a choice is made like: the one named, else the traveller's first, else none but the traveller. */
const likeOf = (
  { brief, capsules }: Trip,
  lists: readonly PackingListPlan[],
  mood: string | undefined,
  named: string | undefined,
): Capsule => {
  const names = brief.travellers.map(({ name }) => name);
  if (named !== undefined && !names.includes(named))
    throw new UsageError(`nobody called "${named}" travels; ${writeInstead(named, names)}`);
  const theirs = capsules.filter(({ traveller }) => named === undefined || traveller === named);
  if (mood === undefined)
    return (
      theirs[0] ??
      anyMood(
        brief,
        brief.travellers.find(({ name }) => name === (named ?? name)),
        lists,
      )
    );
  const found = theirs.find(({ id }) => id === mood);
  if (found !== undefined) return found;
  throw new UsageError(
    `${named ?? 'the trip'} has no capsule "${mood}"; it has ${theirs.map(({ id }) => id).join(', ') || 'none yet'}`,
  );
};

/** A limit given to an option; nothing fits into none, so 0 is refused. */
const limitOf = (option: string | boolean | undefined, name: string): number | undefined => {
  if (option === undefined) return undefined;
  const limit = wholeNumber(option, name, 0);
  if (limit === 0) throw new UsageError(`--${name} wants at least 1, not 0`);
  return limit;
};

/** A title made of the name a new file is given: "lighter-linen" is "Lighter linen". */
const titleOf = (name: string): string => capital(name.replaceAll('-', ' '));

export const chooseVerb: Verb = {
  name: 'choose',
  words: '<trip>',
  summary: 'Propose the pieces for one bag out of a wardrobe, and print the capsule. Writes nothing unless asked.',
  options: {
    traveller: { type: 'string', value: 'name', help: 'choose for this traveller (that of the capsule, or the first)' },
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
    const most = limitOf(options.pieces, 'pieces');
    const grams = limitOf(options.grams, 'grams');
    const litres = limitOf(options.litres, 'litres');
    const level = options.most ?? 'layered';
    if (level !== 'core' && level !== 'layered')
      throw new UsageError(`--most wants core or layered, not "${String(level)}"`);
    const wanted = wholeNumber(options.proposal, 'proposal', 1);
    const content = await contentFor(options.content, world, { withoutCapsules: true });
    if (content === undefined) return 1;
    const trip = tripNamed(content, name);
    const text = (option: string | boolean | undefined): string | undefined =>
      option === undefined ? undefined : String(option);
    const like = likeOf(trip, content.lists, text(options.mood), text(options.traveller));
    const brief = briefFor(trip.brief, like.traveller);
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
      ...(most === undefined ? {} : { piecesAtMost: most }),
      ...(grams === undefined ? {} : { gramsAtMost: grams }),
      ...(litres === undefined ? {} : { litresAtMost: litres }),
      most: level,
      rules: { ...content.houseRules, ...like.rules },
      never: like.never,
      always: like.always,
      solver: await loadSolver(),
    });
    const voice = voiceOf(content.studio);
    const whose = { name: like.traveller, wardrobe: like.wardrobe };
    if (!choice.possible) {
      if (options.json === true) world.out(jsonText(choice, voice));
      else {
        world.err(voice.say(phrase('capsule', 'chosen for', whose)));
        for (const finding of choice.findings) world.err(findingText(finding, voice));
      }
      return 1;
    }
    const proposal = choice.proposals[wanted - 1];
    if (proposal === undefined)
      throw new UsageError(`there is no proposal ${wanted}; there are ${choice.proposals.length}`);
    const title = options.write === undefined ? `${like.title}, proposal ${wanted}` : titleOf(String(options.write));
    const file = capsuleText(proposal, { ...like, list: written?.id ?? '' }, title);
    if (options.json === true) world.out(jsonText(choice, voice));
    else {
      world.out(voice.say(phrase('capsule', 'chosen for', whose)));
      world.out('');
      choice.proposals.forEach((each, index) => {
        for (const line of proposalLines(each, index + 1, { brief, list, level }, voice)) world.out(line);
      });
      for (const note of choice.notes) world.out(voice.say(note));
      world.out(file);
    }
    if (options.write === undefined) return 0;
    const folder = path.resolve(world.folder, String(options.content ?? 'content'));
    const at = await writeNew(folder, path.join('trips', brief.id), String(options.write), file);
    world.err(`written: ${path.relative(world.folder, at)}`);
    return 0;
  },
};
