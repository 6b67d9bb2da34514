import { cautionsOfDay, cautionsOfTrip, feelsInWords, skyOf } from '../comfort/index.ts';
import { briefFor, wardrobeOn } from '../content/index.ts';
import { freeDay, inPlaceOfLook, planGuide, wayInWords } from '../guide/index.ts';
import type { PlannedDay, PlannedOccasion } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { capsuleNamed, contentFor } from './content.ts';
import { findingsToTell, type Planned, planData } from './plan-data.ts';
import { CONTENT_OPTION, JSON_OPTION, type Verb } from './verb.ts';
import { findingLines, jsonText, type Voice, voiceOf } from './voice.ts';

/** Columns before what is said of an occasion: two of margin, the widest of the times and parts of the day, one between. */
const INDENT = 10;

const nameIn =
  ({ pieces }: Planned) =>
  (id: string): string =>
    pieces.find((piece) => piece.id === id)?.name ?? id;

const occasionLines = (
  planned: Planned,
  occasionPlan: PlannedOccasion,
  cautions: readonly Phrase[],
  voice: Voice,
): readonly string[] => {
  const { brief } = planned;
  const { occasion: id, look, change, reasons } = occasionPlan;
  const occasion = brief.occasions.find((other) => other.id === id);
  const time = occasion?.at === undefined ? (occasion?.part ?? '') : voice.formats.time(occasion.at);
  const stays = change === 'goes on' || change === 'layers only';
  const said = [
    ...(look === undefined
      ? inPlaceOfLook(planned.plan, id, nameIn(planned)).map(voice.say)
      : [look.worn.map(({ piece }) => nameIn(planned)(piece)).join(', ')]),
    ...(stays ? [voice.say(phrase('plan', `change ${change}`, {}))] : []),
    ...[...wayInWords(occasionPlan, nameIn(planned)), ...reasons, ...cautions].map(voice.say),
  ];
  return [
    `  ${time.padEnd(INDENT - 3)} ${occasion?.what ?? id}`,
    ...said.map((line) => `${' '.repeat(INDENT)}${line}`),
  ];
};

const headingOf = ({ date, place, weather, homeward }: PlannedDay, { say, formats }: Voice): string => {
  if (homeward === true) return say(phrase('plan', 'homeward on', { date }));
  const where = `${formats.date(date)}${place === undefined ? '' : `, ${place}`}`;
  if (weather === undefined) return where;
  const told = { low: weather.lowC, high: weather.highC, sky: skyOf(weather.rainPercent) };
  return `${where}: ${say(phrase('site', 'weather of a day', told))}`;
};

const dayLines = (planned: Planned, day: PlannedDay, voice: Voice): readonly string[] => {
  const cautions = cautionsOfDay(day.occasions.map((occasion) => occasion.cautions));
  const free = freeDay(day);
  const washed = day.wash.map(({ piece, dryBy, dryAt }) =>
    voice.say(phrase('plan', 'wash and dry', { piece: nameIn(planned)(piece), dryBy, at: dryAt })),
  );
  return [
    '',
    headingOf(day, voice),
    ...cautions.day.map((caution) => `  ${voice.say(caution)}`),
    ...day.occasions.flatMap((occasion, index) =>
      occasionLines(planned, occasion, cautions.occasions[index] ?? [], voice),
    ),
    ...(day.occasions.length === 0 ? [`  ${voice.say(free)}`] : []),
    ...washed.map((line, index) => `${index === 0 ? '  wash'.padEnd(INDENT) : ' '.repeat(INDENT)}${line}`),
  ];
};

/** How many occasions have their look, and where some have none, whether that is the most there can be. */
const servedLine = ({ plan: { served, of, proven } }: Planned, { say }: Voice): string => {
  if (served === of) return say(phrase('plan', 'all served', { of }));
  const most = phrase('plan', proven ? 'plan proven' : 'plan not proven', {});
  return `${say(phrase('plan', 'plan served', { served, of }))}. ${say(most)}`;
};

const planLines = (planned: Planned, voice: Voice): readonly string[] => {
  const { plan, brief, capsule } = planned;
  const findings = findingsToTell(planned);
  const weak = plan.weakPoints.map(({ what }) => `  ${voice.say(what)}`);
  return [
    servedLine(planned, voice),
    ...[...feelsInWords(brief, capsule.traveller), ...cautionsOfTrip(plan.days)].map(voice.say),
    ...plan.days.flatMap((day) => dayLines(planned, day, voice)),
    ...(findings.length > 0 ? ['', ...findingLines(findings, voice)] : []),
    ...(weak.length > 0 ? ['', voice.say(phrase('plan', 'nothing in reserve', {})), ...weak] : []),
  ];
};

export const planVerb: Verb = {
  name: 'plan',
  words: '<trip>/<capsule>',
  summary: 'Dress every occasion: the look, the layers, the washes; what cannot be served and what would mend it.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const { trip, capsule } = capsuleNamed(content, name);
    const brief = briefFor(trip.brief, capsule.traveller);
    const planned = {
      brief,
      capsule,
      ...(await planGuide({
        brief,
        capsule,
        wardrobe: wardrobeOn(content.wardrobes, brief, capsule),
        houseRules: content.houseRules,
        solver: await loadSolver(),
      })),
    };
    const voice = voiceOf(content.studio);
    if (options.json === true) world.out(jsonText(planData(planned), voice));
    else for (const line of planLines(planned, voice)) world.out(line);
    return planned.plan.unserved.length > 0 ? 1 : 0;
  },
};
