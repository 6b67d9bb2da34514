import type { LineCheck, Mood, MoodSide } from '../capsule/index.ts';
import { briefFor, type Content, type Trip, wardrobeOn, writeInstead } from '../content/index.ts';
import { areMoods, type MoodPair, moodPair, planGuide } from '../guide/index.ts';
import type { Capsule, LookCounts } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { contentFor, tripNamed } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, UsageError, type Verb } from './verb.ts';
import { jsonText, type Voice, voiceOf } from './voice.ts';

const capsuleOf = ({ brief, capsules }: Trip, id: string): Capsule => {
  const found = capsules.find((capsule) => capsule.id === id);
  if (found !== undefined) return found;
  throw new UsageError(
    `the trip "${brief.id}" has no capsule "${id}"; ${writeInstead(
      id,
      capsules.map((capsule) => capsule.id),
    )}`,
  );
};

/** The two capsules named, or the first two of one wardrobe. */
const twoMoods = (trip: Trip, ids: readonly string[]): readonly [Capsule, Capsule] => {
  const { brief, capsules } = trip;
  const [one, two] = ids;
  if (one !== undefined && two === undefined)
    throw new UsageError(`wayfold compare wants two capsules or none, not one; name one more beside "${one}"`);
  if (one !== undefined && two !== undefined) {
    const [a, b] = [capsuleOf(trip, one), capsuleOf(trip, two)];
    if (a === b) throw new UsageError(`"${one}" cannot be compared with itself; name two capsules`);
    if (!areMoods({ capsule: a }, { capsule: b }))
      throw new UsageError(
        `"${one}" is filled from the wardrobe ${a.wardrobe}, "${two}" from ${b.wardrobe}; wayfold together ${brief.id} sets travellers side by side`,
      );
    return [a, b];
  }
  for (const [index, a] of capsules.entries()) {
    const b = capsules.slice(index + 1).find((other) => areMoods({ capsule: a }, { capsule: other }));
    if (b !== undefined) return [a, b];
  }
  throw new UsageError(`the trip "${brief.id}" has no two capsules of one wardrobe to compare`);
};

/** Counts as digits in order of level. */
const digits = ({ core, layered, complete }: LookCounts) => ({
  core: String(core),
  layered: String(layered),
  complete: String(complete),
});

const lineSaid = (line: LineCheck, nameOf: (id: string) => string, { say, formats }: Voice): string => {
  const notes: readonly Phrase[] = [
    ...(line.under > 0 ? [phrase('compare', 'line lacks', { under: line.under })] : []),
    ...(line.over.length > 0 ? [phrase('compare', 'line over', { pieces: line.over.map(nameOf) })] : []),
  ];
  const filling =
    line.pieces.length === 0 ? say(phrase('compare', 'line empty', {})) : formats.list(line.pieces.map(nameOf));
  return [filling, ...notes.map(say)].join('; ');
};

const sideLines = (side: MoodSide, nameOf: (id: string) => string, { say, formats }: Voice): readonly string[] => {
  const { counts, plan, grams, palette } = side;
  const row = (label: Phrase, value: string): string => `  ${say(label)}: ${value}`;
  return [
    '',
    `${side.title}, ${formats.plural(side.pieces.length, { one: '# piece', other: '# pieces' })}`,
    `  ${formats.count(counts.core)} core, ${formats.count(counts.layered)} layered, ${formats.count(counts.complete)} complete looks`,
    row(
      phrase('compare', 'served', {}),
      say(phrase('compare', 'served of', { served: plan.served, of: plan.of, proven: plan.proven ? 1 : 0 })),
    ),
    row(phrase('compare', 'changes', {}), formats.count(plan.changes)),
    row(phrase('compare', 'looks worn', {}), formats.count(plan.looks)),
    row(phrase('compare', 'unworn', {}), say(phrase('compare', 'unworn which', { pieces: plan.unworn.map(nameOf) }))),
    row(
      phrase('compare', 'pieces weigh', {}),
      say(phrase('compare', 'grams', { grams: grams.value, spread: (grams.high - grams.low) / 2 })),
    ),
    row(phrase('compare', 'palette is', {}), formats.list(palette.colours.map(({ colour }) => colour.name))),
  ];
};

const pairLines = ({ comparison, combined }: MoodPair, voice: Voice): readonly string[] => {
  const { say, formats } = voice;
  const { sides, shared, lines } = comparison;
  const names = new Map(combined.pieces.map(({ id, name }) => [id, name]));
  const nameOf = (id: string): string => names.get(id) ?? id;
  return [
    ...sides.flatMap((side) => sideLines(side, nameOf, voice)).slice(1),
    ...(lines.length === 0 ? [] : ['', say(phrase('compare', 'lines heading', {}))]),
    ...lines.flatMap(({ what, wanted, sides: checks }) => [
      `  ${say(phrase('compare', 'line asks', { what, wanted }))}`,
      ...checks.map((check, side) => `    ${sides[side]?.title}: ${lineSaid(check, nameOf, voice)}`),
    ]),
    '',
    say(phrase('compare', 'shared heading', {})),
    `  ${shared.length === 0 ? say(phrase('compare', 'no shared', {})) : formats.list(shared.map(nameOf))}`,
    '',
    say(phrase('compare', 'together heading', {})),
    `  ${say(
      phrase('compare', 'union is', {
        first: sides[0].pieces.length,
        second: sides[1].pieces.length,
        shared: shared.length,
        together: combined.pieces.length,
      }),
    )}`,
    `  ${say(phrase('compare', 'union looks', digits(combined.counts)))}`,
    `  ${say(phrase('compare', 'cross looks', digits(combined.cross)))}`,
    '',
    say(phrase('compare', 'cross heading', {})),
    ...(combined.crossLooks.length === 0 ? [`  ${say(phrase('compare', 'no cross', {}))}`] : []),
    ...combined.crossLooks.map(({ look }) => `  ${look.worn.map(({ piece }) => nameOf(piece)).join(', ')}`),
  ];
};

const pairJson = ({ comparison, combined }: MoodPair) => ({
  sides: comparison.sides.map(({ pieces, palette, ...side }) => ({
    ...side,
    pieces: pieces.map(({ id }) => id),
    palette: palette.colours.map(({ colour, role, share }) => ({ name: colour.name, hex: colour.hex, role, share })),
  })),
  lines: comparison.lines,
  shared: comparison.shared,
  together: {
    pieces: combined.pieces.map(({ id }) => id),
    counts: combined.counts,
    cross: combined.cross,
    crossLooks: combined.crossLooks.map(({ look }) => look),
  },
});

const moodOf = async (capsule: Capsule, trip: Trip, { wardrobes, houseRules }: Content): Promise<Mood> => {
  const brief = briefFor(trip.brief, capsule.traveller);
  const wardrobe = wardrobeOn(wardrobes, brief, capsule);
  const { pieces, engine, plan } = await planGuide({
    brief,
    capsule,
    wardrobe,
    houseRules,
    solver: await loadSolver(),
  });
  return { capsule, pieces, plan, counts: engine.count() };
};

export const compareVerb: Verb = {
  name: 'compare',
  words: '<trip> [capsule capsule]',
  summary: 'Set two moods of a trip side by side, line by line, and say what they make in one bag.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 3,
  async run([name = '', ...ids], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const trip = tripNamed(content, name);
    const [one, two] = twoMoods(trip, ids);
    const pair = moodPair(
      await moodOf(one, trip, content),
      await moodOf(two, trip, content),
      content.lists,
      content.houseRules,
    );
    const voice = voiceOf(content.studio);
    if (options.json === true) world.out(jsonText(pairJson(pair), voice));
    else for (const line of pairLines(pair, voice)) world.out(line);
    return 0;
  },
};
