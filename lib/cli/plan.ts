import { wardrobeOn } from '../content/index.ts';
import { type Guide, planGuide } from '../guide/index.ts';
import type { PlannedOccasion } from '../model/index.ts';
import { findingsOfPlan } from '../plan/index.ts';
import { loadSolver } from '../solver/index.ts';
import { capsuleNamed, contentFor } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, type Verb } from './verb.ts';
import { jsonText, type Voice, voiceOf } from './voice.ts';

type Planned = Pick<Guide, 'brief' | 'pieces' | 'plan'>;

const occasionLines = ({ brief, pieces }: Planned, planned: PlannedOccasion, voice: Voice): readonly string[] => {
  const occasion = brief.occasions.find(({ id }) => id === planned.occasion);
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  const look = planned.look?.worn.map(({ piece }) => nameOf(piece)) ?? [];
  const time = occasion?.at === undefined ? (occasion?.part ?? '') : voice.formats.time(occasion.at);
  return [
    `  ${time.padEnd(8)} ${occasion?.what ?? planned.occasion}: ${look.length === 0 ? 'no look' : look.join(', ')}`,
    ...[...planned.reasons, ...planned.cautions].map((said) => `           ${voice.say(said)}`),
  ];
};

const planLines = (planned: Planned, voice: Voice): readonly string[] => {
  const { plan, brief, pieces } = planned;
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  return [
    `${plan.served} of ${plan.of} occasions served${plan.proven ? ', proven the most' : ', the most found'}`,
    ...plan.days.flatMap((day) => [
      '',
      `${voice.formats.date(day.date)}${day.place === undefined ? '' : `, ${day.place}`}`,
      ...day.occasions.flatMap((occasion) => occasionLines(planned, occasion, voice)),
      ...(day.wash.length > 0 ? [`  wash     ${day.wash.map(({ piece }) => nameOf(piece)).join(', ')}`] : []),
    ]),
    ...findingsOfPlan(plan, brief, pieces).flatMap(({ message, reason, mend, orElse = [] }) => [
      '',
      voice.say(message),
      ...(reason === undefined ? [] : [`  ${voice.say(reason)}`]),
      ...(mend === undefined ? [] : [`  ${voice.say(mend)}`]),
      ...orElse.map((other) => `  or: ${voice.say(other)}`),
    ]),
    ...(plan.weakPoints.length > 0 ? ['', 'Weak points:'] : []),
    ...plan.weakPoints.map(({ what }) => `  ${voice.say(what)}`),
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
    const wardrobe = wardrobeOn(content.wardrobes, trip.brief, capsule);
    const planned = await planGuide({
      brief: trip.brief,
      capsule,
      wardrobe,
      houseRules: content.houseRules,
      solver: await loadSolver(),
    });
    const voice = voiceOf(content.studio);
    if (options.json === true) {
      world.out(jsonText(planned.plan, voice));
    } else for (const line of planLines({ brief: trip.brief, ...planned }, voice)) world.out(line);
    return planned.plan.unserved.length > 0 ? 1 : 0;
  },
};
