import path from 'node:path';
import { checkList, chooseCapsule, type Proposal } from '../capsule/index.ts';
import type { Brief, PackingListPlan, Piece } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { capital, phrase } from '../words/index.ts';
import { capsuleText } from './capsule-text.ts';
import { questionOf, wishesOf } from './choose-question.ts';
import { contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb } from './verb.ts';
import { findingText, jsonText, type Voice, voiceOf } from './voice.ts';
import { writeIfAsked } from './write-new.ts';

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
    const wishes = wishesOf(options);
    const content = await contentFor(options.content, world, { withoutCapsules: true });
    if (content === undefined) return 1;
    const { question, like } = questionOf(tripNamed(content, name), content, wishes);
    const choice = await chooseCapsule({ ...question, solver: await loadSolver() });
    const voice = voiceOf(content.studio);
    const heading = voice.say(phrase('capsule', 'chosen for', { name: like.traveller, wardrobe: like.wardrobe }));
    if (!choice.possible) {
      if (options.json === true) world.out(jsonText(choice, voice));
      else for (const line of [heading, ...choice.findings.map((found) => findingText(found, voice))]) world.err(line);
      return 1;
    }
    const number = wishes.proposal;
    const proposal = choice.proposals[number - 1];
    if (proposal === undefined)
      throw new UsageError(`there is no proposal ${number}; there are ${choice.proposals.length}`);
    const title = options.write === undefined ? `${like.title}, proposal ${number}` : titleOf(String(options.write));
    const file = capsuleText(proposal, like, title);
    if (options.json === true) world.out(jsonText(choice, voice));
    else {
      const asked = { brief: question.brief, list: question.list, level: wishes.level };
      const told = choice.proposals.flatMap((each, index) => proposalLines(each, index + 1, asked, voice));
      for (const line of [heading, '', ...told, ...choice.notes.map(voice.say), file]) world.out(line);
    }
    await writeIfAsked(path.join('trips', question.brief.id), file, options, world);
    return 0;
  },
};
