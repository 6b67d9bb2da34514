import type { Formats } from '../formats.ts';
import { lower } from '../letters.ts';

/** "Ada’s case", "the shared suitcase"; a bag's name begins with a capital where it stands alone. */
const bagOf = ([owner = '', ...others]: readonly string[], bag: string): string =>
  `${others.length > 0 ? 'the shared' : `${owner}’s`} ${lower(bag)}`;

/** English sentences of moods side by side, and of travellers side by side. Counts come as digits, of any size. */
export const compare = {
  'lines heading': () => 'The list, line by line',
  'line asks': ({ what, wanted }: { what: string; wanted: number }, f: Formats) => `${what}: ${f.count(wanted)}`,
  'line lacks': ({ under }: { under: number }, f: Formats) => `${f.count(under)} missing`,
  'line over': ({ pieces }: { pieces: readonly string[] }, f: Formats) => `beyond it ${f.list(pieces)}`,
  'line empty': () => 'nothing',
  'pieces weigh': () => 'weight of the pieces',
  grams: ({ grams, spread }: { grams: number; spread: number }, f: Formats) =>
    spread < 50
      ? f.kilograms(grams / 1000)
      : `${f.kilograms(grams / 1000)}, give or take ${f.kilograms(spread / 1000)}`,
  served: () => 'occasions dressed',
  'served of': ({ served, of, proven }: { served: number; of: number; proven: number }, f: Formats) =>
    served === of
      ? `all ${f.count(of)}`
      : `${f.count(served)} of ${f.count(of)}${proven === 1 ? ', as many as these pieces can dress' : ''}`,
  changes: () => 'changes of clothes within a day',
  'looks worn': () => 'different looks worn',
  unworn: () => 'pieces the plan never wears',
  'unworn which': ({ pieces }: { pieces: readonly string[] }, f: Formats) =>
    pieces.length === 0 ? 'none' : `${f.count(pieces.length)} (${f.list(pieces)})`,
  'palette is': () => 'palette',
  'column line': () => 'Line',
  'why so': ({ why }: { why: string }) => `It ${why}.`,
  'shared heading': () => 'In both',
  'no shared': () => 'No piece is in both.',
  'together heading': () => 'Both in one bag',
  'union is': (v: { first: number; second: number; shared: number; together: number }, f: Formats) =>
    `${f.count(v.first)} and ${f.count(v.second)} pieces, of which ${f.count(v.shared)} ${v.shared === 1 ? 'is' : 'are'} shared, make ${f.count(v.together)} pieces together.`,
  'union looks': ({ core, layered, complete }: { core: string; layered: string; complete: string }, f: Formats) =>
    `Together they make ${f.count(BigInt(core))} core, ${f.count(BigInt(layered))} layered and ${f.count(BigInt(complete))} complete looks.`,
  'cross looks': ({ core, layered, complete }: { core: string; layered: string; complete: string }, f: Formats) =>
    `Of these, ${f.count(BigInt(core))} core, ${f.count(BigInt(layered))} layered and ${f.count(BigInt(complete))} complete looks mix the two moods; neither makes them alone.`,
  'cross heading': () => 'Looks that take from both',
  'no cross': () => 'No look takes from both.',

  'travellers heading': () => 'Side by side',
  'travellers lede': (
    { good, of, travellers }: { good: number; of: number; travellers: readonly string[] },
    f: Formats,
  ) => `${f.list(travellers)}: at ${f.count(good)} of ${f.count(of)} occasions their looks sit well together.`,
  'capsule of': ({ capsule, traveller }: { capsule: string; traveller: string }) => `“${capsule}” for ${traveller}`,
  'travellers taken': ({ of }: { of: readonly string[] }, f: Formats) => `Shown: ${f.list(of)}.`,
  'sits well said': () => 'sits well',
  'sits badly said': () => 'better not in one picture',
  instead: ({ traveller, pieces }: { traveller: string; pieces: readonly string[] }, f: Formats) =>
    `Better for ${traveller}: ${f.list(pieces)}.`,
  'lend heading': () => 'To lend and borrow',
  'no lend': () => 'Neither has a piece that the other lacks, could wear and has a look for.',
  lend: (v: { piece: string; from: string; to: string; goesWith: number; planned: number }, f: Formats) =>
    `${v.piece}, ${v.from} to ${v.to}: goes with ${f.count(v.goesWith)} of the ${f.plural(v.planned, { one: '# look', other: '# looks' })} planned for ${v.to}.`,
  'bags heading': () => 'The bags together',
  'bags fit': () => 'Every bag holds what is in it.',
  'bags over': () => 'Not every bag holds what is in it.',
  'bag weighs': (
    v: { travellers: readonly string[]; bag: string; grams: number; spread: number; most: number },
    f: Formats,
  ) =>
    `${f.list(v.travellers)}, ${v.bag}${v.travellers.length > 1 ? ', shared' : ''}: ${f.kilograms(v.grams / 1000)}${v.spread < 50 ? '' : ` ± ${f.kilograms(v.spread / 1000)}`}${v.most === 0 ? ', no weight limit given' : ` of ${f.kilograms(v.most / 1000)}`}.`,
  'bags weigh': ({ grams, most, left }: { grams: number; most: number; left: number }, f: Formats) =>
    left >= 0
      ? `Together ${f.kilograms(grams / 1000)} of ${f.kilograms(most / 1000)}: room for ${f.kilograms(left / 1000)} more.`
      : `Together ${f.kilograms(grams / 1000)} of ${f.kilograms(most / 1000)}: ${f.kilograms(-left / 1000)} too much.`,
  move: (
    v: {
      piece: string;
      grams: number;
      from: readonly string[];
      fromBag: string;
      to: readonly string[];
      toBag: string;
    },
    f: Formats,
  ) => `${v.piece} (${f.grams(v.grams)}) goes from ${bagOf(v.from, v.fromBag)} into ${bagOf(v.to, v.toBag)}.`,
  'no moves': () => 'Handing things over does not help: the others have no room.',
  'ask about sharing': () => 'Whether travellers may share their allowance is the carrier’s own rule: ask first.',
  'estimates in weights': () => 'Weights that were not entered are estimates.',
} satisfies Record<string, (values: never, formats: Formats) => string>;
