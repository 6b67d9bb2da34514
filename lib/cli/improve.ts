import { type Improvements, tellAddition, tellCost, tellPurchase, tellSwap, toPay } from '../capsule/index.ts';
import { wardrobeOn } from '../content/index.ts';
import { type BetterQuestion, improveGuide, planGuide } from '../guide/index.ts';
import type { Brief, Piece } from '../model/index.ts';
import { loadSolver } from '../solver/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { capsuleNamed, contentFor } from './content.ts';
import { CONTENT_OPTION, JSON_OPTION, type Verb } from './verb.ts';
import { jsonText, type Voice, voiceOf } from './voice.ts';

interface Told {
  readonly brief: Brief;
  readonly pieces: readonly Piece[];
  readonly found: Improvements;
}

/** A heading, and one paragraph an entry: the gain on its own line, what else there is to know below. */
const section = (
  heading: Phrase,
  empty: Phrase,
  entries: readonly (readonly Phrase[])[],
  { say }: Voice,
): readonly string[] => [
  '',
  say(heading),
  ...(entries.length === 0 ? [`  ${say(empty)}`] : []),
  ...entries.flatMap(([first, ...others]) => [
    ...(first === undefined ? [] : [`  ${say(first)}`]),
    ...(others.length === 0 ? [] : [`      ${others.map(say).join(' ')}`]),
  ]),
];

const improveLines = ({ brief, pieces, found }: Told, voice: Voice): readonly string[] => {
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  const { shopping } = found;
  const { totals, unpriced } = toPay(shopping);
  return [
    voice.say(phrase('improve', 'now', { looks: String(found.looks) })),
    ...section(
      phrase('improve', 'swaps heading', {}),
      phrase('improve', 'no swap', {}),
      found.swaps.map((swap) => tellSwap(swap, brief)),
      voice,
    ),
    ...section(
      phrase('improve', 'add heading', {}),
      phrase('improve', 'no addition', {}),
      found.additions.map((addition) => tellAddition(addition, brief)),
      voice,
    ),
    ...section(
      phrase('improve', 'buy heading', {}),
      phrase('improve', 'no purchase', {}),
      found.purchases.map((purchase) => tellPurchase(purchase, brief)),
      voice,
    ),
    ...(found.purchases.length > 0 && found.purchases.every(({ instead }) => instead !== undefined)
      ? [`  ${voice.say(phrase('improve', 'nothing worth buying', {}))}`]
      : []),
    `  ${voice.say(phrase('improve', 'tried so many', { things: found.tried }))}`,
    ...(shopping.length === 0
      ? []
      : [
          '',
          voice.say(phrase('improve', 'still to buy', {})),
          ...shopping.map(({ name }) => `  ${name}`),
          ...[...totals].map(
            ([currency, amount]) => `  ${voice.say(phrase('improve', 'total to pay', { amount, currency, unpriced }))}`,
          ),
        ]),
    ...section(
      phrase('improve', 'costs heading', {}),
      phrase('improve', 'no price', {}),
      found.costs.map((cost) => [tellCost(cost, nameOf(cost.piece))]),
      voice,
    ),
  ];
};

/** What a reader of the JSON needs of a piece; the whole record would bury the answer. */
const brieflyOf = (piece: Piece) => ({
  id: piece.id,
  name: piece.name,
  kind: piece.kind,
  colours: piece.colours.map(({ name, hex }) => ({ name, hex })),
  pattern: piece.pattern.type,
  cut: piece.cut,
  grams: piece.grams,
  status: piece.status,
  ...(piece.price === undefined ? {} : { price: piece.price }),
});

const improveJson = ({ brief, found }: Told) => ({
  looks: found.looks,
  swaps: found.swaps.map((swap) => ({
    ...swap,
    out: brieflyOf(swap.out),
    in: brieflyOf(swap.in),
    says: tellSwap(swap, brief),
  })),
  additions: found.additions.map((addition) => ({
    ...addition,
    piece: brieflyOf(addition.piece),
    says: tellAddition(addition, brief),
  })),
  purchases: found.purchases.map((purchase) => ({
    ...purchase,
    piece: brieflyOf(purchase.piece),
    alsoIn: purchase.alsoIn.map(({ name, hex }) => ({ name, hex })),
    ...(purchase.instead === undefined
      ? {}
      : { instead: { ...purchase.instead, piece: brieflyOf(purchase.instead.piece) } }),
    says: tellPurchase(purchase, brief),
  })),
  tried: found.tried,
  shopping: found.shopping.map(brieflyOf),
  costs: found.costs,
});

export const improveVerb: Verb = {
  name: 'improve',
  words: '<trip>/<capsule>',
  summary: 'Make a capsule better by one piece: the best swap, the best to add from the wardrobe, the best to buy.',
  options: { json: JSON_OPTION, content: CONTENT_OPTION },
  fewestWords: 1,
  mostWords: 1,
  async run([name = ''], options, world) {
    const content = await contentFor(options.content, world);
    if (content === undefined) return 1;
    const { trip, capsule } = capsuleNamed(content, name);
    const { brief } = trip;
    const { houseRules } = content;
    const wardrobe = wardrobeOn(content.wardrobes, brief, capsule);
    const list = content.lists.find(({ id }) => id === capsule.list);
    const { pieces, plan } = await planGuide({ brief, capsule, wardrobe, houseRules, solver: await loadSolver() });
    const question: BetterQuestion = { wardrobe, list, houseRules };
    const found = improveGuide({ brief, capsule, pieces, plan }, question);
    const told = { brief, pieces, found };
    const voice = voiceOf(content.studio);
    if (options.json === true) world.out(jsonText(improveJson(told), voice));
    else for (const line of improveLines(told, voice)) world.out(line);
    return 0;
  },
};
