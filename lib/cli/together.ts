import { type Together, tellBag, tellMove } from '../capsule/index.ts';
import { type Trip, writeInstead } from '../content/index.ts';
import { buildGuides, type Guide, guidesTogether } from '../guide/index.ts';
import type { Capsule } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { phrase } from '../words/index.ts';
import { contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb } from './verb.ts';
import { jsonText, type Voice, voiceOf } from './voice.ts';

/** The capsules named, or the first of each traveller. */
const capsulesTogether = ({ brief, capsules }: Trip, ids: readonly string[]): readonly Capsule[] => {
  const stranger = ids.find((id) => capsules.every((capsule) => capsule.id !== id));
  if (stranger !== undefined)
    throw new UsageError(
      `the trip "${brief.id}" has no capsule "${stranger}"; ${writeInstead(
        stranger,
        capsules.map(({ id }) => id),
      )}`,
    );
  const asked = ids.length === 0 ? capsules : ids.flatMap((id) => capsules.find((capsule) => capsule.id === id) ?? []);
  const seen = new Map<string, Capsule>();
  for (const capsule of asked) {
    const before = seen.get(capsule.traveller);
    if (before !== undefined && ids.length > 0)
      throw new UsageError(`"${before.id}" and "${capsule.id}" are both for ${capsule.traveller}; name one each`);
    if (before === undefined) seen.set(capsule.traveller, capsule);
  }
  if (seen.size < 2)
    throw new UsageError(
      `the trip "${brief.id}" has capsules for one traveller only; wayfold compare ${brief.id} compares moods`,
    );
  return [...seen.values()];
};

const dayLines = (together: Together, guides: readonly Guide[], { say, formats }: Voice): readonly string[] => {
  const [first] = guides;
  const whatOf = (id: string): string => first?.brief.occasions.find((occasion) => occasion.id === id)?.what ?? id;
  const nameOf = (traveller: string, id: string): string =>
    guides.find(({ capsule }) => capsule.traveller === traveller)?.pieces.find((piece) => piece.id === id)?.name ?? id;
  return [...new Set(together.days.map(({ date }) => date))].flatMap((date) => [
    '',
    formats.date(date),
    ...together.days
      .filter((day) => day.date === date)
      .flatMap(({ occasion, travellers, goes, reasons, instead }) => [
        `  ${whatOf(occasion)} (${formats.list(travellers)}): ${say(goes ? phrase('compare', 'sits well said', {}) : phrase('compare', 'sits badly said', {}))}`,
        ...reasons.map((reason) => `      ${say(reason)}`),
        ...(instead === undefined
          ? []
          : [
              `      ${say(
                phrase('compare', 'instead', {
                  traveller: instead.traveller,
                  pieces: instead.look.worn.map(({ piece }) => nameOf(instead.traveller, piece)),
                }),
              )}`,
            ]),
      ]),
  ]);
};

const bagLines = ({ bags }: Together, guides: readonly Guide[], { say }: Voice): readonly string[] => {
  const nameOf = (id: string): string =>
    guides.flatMap(({ pieces }) => pieces).find((piece) => piece.id === id)?.name ?? id;
  return [
    say(phrase('compare', 'bags heading', {})),
    `  ${say(bags.fits ? phrase('compare', 'bags fit', {}) : phrase('compare', 'bags over', {}))}`,
    ...bags.bags.map((bag) => `  ${say(tellBag(bag))}`),
    ...(bags.gramsAtMost === undefined
      ? []
      : [
          `  ${say(
            phrase('compare', 'bags weigh', {
              grams: bags.grams.value,
              most: bags.gramsAtMost,
              left: bags.gramsAtMost - bags.grams.value,
            }),
          )}`,
        ]),
    ...bags.moves.map((move) => `  ${say(tellMove(move, nameOf(move.piece)))}`),
    ...(bags.bags.some(({ gramsLeft = 0 }) => gramsLeft < 0) && bags.moves.length === 0
      ? [`  ${say(phrase('compare', 'no moves', {}))}`]
      : []),
    `  ${say(phrase('compare', 'estimates in weights', {}))} ${say(phrase('compare', 'ask about sharing', {}))}`,
  ];
};

const togetherLines = (together: Together, guides: readonly Guide[], voice: Voice): readonly string[] => {
  const { say } = voice;
  const good = together.days.filter(({ goes }) => goes).length;
  return [
    say(phrase('compare', 'travellers lede', { good, of: together.days.length, travellers: together.travellers })),
    say(
      phrase('compare', 'travellers taken', {
        of: guides.map(({ capsule }) =>
          phrase('compare', 'capsule of', { capsule: capsule.title, traveller: capsule.traveller }),
        ),
      }),
    ),
    ...dayLines(together, guides, voice),
    '',
    say(phrase('compare', 'lend heading', {})),
    ...(together.lendable.length === 0 ? [`  ${say(phrase('compare', 'no lend', {}))}`] : []),
    ...together.lendable.map(
      ({ piece, from, to, why, goesWith, planned }) =>
        `  ${say(phrase('compare', 'lend', { piece: piece.name, from, to, goesWith, planned }))} ${say(phrase('compare', 'why so', { why: say(why) }))}`,
    ),
    '',
    ...bagLines(together, guides, voice),
  ];
};

export const togetherVerb: Verb = {
  name: 'together',
  words: '<trip> [capsule…]',
  summary: 'Set travellers of one trip side by side: looks in one picture, what they can lend, the bags they share.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 12,
  async run([name = '', ...ids], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const trip = tripNamed(content, name);
    const capsules = capsulesTogether(trip, ids);
    const guides = await buildGuides({ ...content, trips: [{ brief: trip.brief, capsules }] }, await loadSolver());
    const together = guidesTogether(guides, content.houseRules);
    if (together === undefined) return 1;
    const voice = voiceOf(content.studio);
    if (options.json === true) {
      const lendable = together.lendable.map(({ piece, ...rest }) => ({ piece: piece.id, ...rest }));
      const taken = guides.map(({ capsule }) => capsule.id);
      world.out(jsonText({ capsules: taken, ...together, lendable }, voice));
    } else for (const line of togetherLines(together, guides, voice)) world.out(line);
    return 0;
  },
};
