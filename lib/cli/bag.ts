import { leavingOut } from '../bag/index.ts';
import { buildGuides, type Guide } from '../guide/index.ts';
import type { Measure } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { phrase } from '../words/index.ts';
import { capsuleNamed, contentFor } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, type Verb } from './verb.ts';
import { findingText, jsonText, type Voice, voiceOf } from './voice.ts';

const spreadOf = ({ low, high }: Measure): number => (high - low) / 2;

const isAboutBags = ({ rule }: Guide['findings'][number]): boolean =>
  /^(bag|piece-too|liquid|battery|spare|carrier|wear-in)/.test(rule);

const bagLines = (guide: Guide, voice: Voice): readonly string[] => {
  const { formats, say } = voice;
  const { packing, bagReport: report } = guide;
  const nameOf = (id: string): string => guide.pieces.find((piece) => piece.id === id)?.name ?? id;
  const { lead, steps } = leavingOut(report);
  const occasionsLost = (count: number): string =>
    count === 0 ? '' : `, ${formats.plural(count, { one: '# occasion', other: '# occasions' })}`;
  const line = (count: number, name: string, grams: Measure, how: string): string =>
    `  ${String(count).padStart(2)}  ${name}, ${formats.grams(grams.value)}${grams.basis === 'estimated' ? ' estimated' : ''}${how}`;
  return [
    say(report.fits ? phrase('bag', 'it fits', {}) : phrase('bag', 'it does not fit', {})),
    say(
      phrase('bag', 'total is', {
        grams: report.grams.value,
        spread: spreadOf(report.grams),
        share: packing.weighedShare,
      }),
    ),
    ...packing.bags.flatMap(({ bag, pieces, sundries, grams, litres }) => [
      '',
      say(
        phrase('bag', 'load is', {
          bag: bag.name,
          grams: grams.value,
          spread: spreadOf(grams),
          limit: bag.limitKg ?? 0,
          own: bag.ownGrams,
          litres: litres.value,
          room: bag.litres,
        }),
      ),
      ...pieces.map(({ piece, grams: each, fold }) =>
        line(1, nameOf(piece), each, `, ${say(phrase('bag', `fold ${fold}`, {}))}`),
      ),
      ...sundries.map(({ sundry, grams: each }) => line(sundry.count, sundry.name, each, '')),
    ]),
    ...(packing.worn.length === 0
      ? []
      : ['', `${say(phrase('site', 'worn in transit', {}))}: ${formats.grams(packing.wornGrams.value)}`]),
    ...packing.worn.map(({ piece, grams }) => line(1, nameOf(piece), grams, '')),
    ...(packing.notes.length === 0 ? [] : ['', ...packing.notes.map(say)]),
    ...guide.findings.filter(isAboutBags).flatMap((finding) => ['', findingText(finding, voice)]),
    '',
    say(lead),
    ...steps.map(
      ({ piece, grams, looksLeft, unserved }) =>
        `  ${nameOf(piece)}: ${formats.grams(grams)}; ${say(phrase('bag', 'looks left is', { looks: looksLeft }))}${occasionsLost(unserved.length)}`,
    ),
    '',
    say(phrase('bag', 'worth heading', {})),
    ...report.worth
      .toSorted((a, b) => a.looksLost - b.looksLost)
      .map(
        ({ piece, grams, litres, looksLost, unserved }) =>
          `  ${nameOf(piece)}: ${formats.grams(grams)}, ${formats.litres(litres)}; ${formats.plural(looksLost, { one: '# look', other: '# looks' })}${occasionsLost(unserved.length)}`,
      ),
  ];
};

export const bagVerb: Verb = {
  name: 'bag',
  words: '<trip>/<capsule>',
  summary: 'Pack the bags: what goes where, what it weighs, whether it fits, and what to leave out when it does not.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const { trip, capsule } = capsuleNamed(content, name);
    const only = { ...content, trips: [{ brief: trip.brief, capsules: [capsule] }] };
    const [guide] = await buildGuides(only, await loadSolver());
    if (guide === undefined) return 1;
    const voice = voiceOf(content.studio);
    if (options.json === true) {
      const told = {
        packing: guide.packing,
        report: guide.bagReport,
        findings: guide.findings.filter(isAboutBags),
      };
      world.out(jsonText(told, voice));
    } else for (const line of bagLines(guide, voice)) world.out(line);
    return guide.bagReport.fits ? 0 : 1;
  },
};
