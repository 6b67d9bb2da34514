import type { Brief, Piece } from '../model/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { CostOfPiece } from './costs.ts';
import type { Addition } from './gains.ts';
import type { Swap } from './improve.ts';
import type { Purchase } from './purchases.ts';

/** Occasions and colours named in a sentence before the rest is counted. */
const NAMED = 3;

/** The first few names; "and 1 more" says less than the last name. */
const fewOf = (names: readonly string[]): readonly string[] =>
  names.length <= NAMED + 1 ? names : names.slice(0, NAMED);

const whatOf = (ids: readonly string[], brief: Brief): readonly string[] =>
  ids.map((id) => brief.occasions.find((occasion) => occasion.id === id)?.what ?? id);

const occasionsSaid = ({ serves, wornFor }: Pick<Addition, 'serves' | 'wornFor'>, brief: Brief): readonly Phrase[] => {
  const others = whatOf(
    wornFor.filter((id) => !serves.includes(id)),
    brief,
  );
  const named = fewOf(others);
  return [
    ...(serves.length === 0 ? [] : [phrase('improve', 'serves', { occasions: whatOf(serves, brief) })]),
    ...(named.length === 0
      ? []
      : [phrase('improve', 'worn for', { occasions: named, more: others.length - named.length })]),
    ...(wornFor.length === 0 ? [phrase('improve', 'worn for nothing', {})] : []),
  ];
};

const weightSaid = ({ grams }: Piece): Phrase =>
  phrase('improve', 'weighs', { grams: grams.value, estimated: grams.basis === 'estimated' ? 1 : 0 });

/** What a swap brings, in sentences, the gain first. */
export const tellSwap = ({ out, in: inn, adds, serves }: Swap, brief: Brief): readonly Phrase[] => [
  phrase('improve', 'swap', { out: out.name, in: inn.name, adds: String(adds) }),
  ...(serves.length === 0 ? [] : [phrase('improve', 'serves', { occasions: whatOf(serves, brief) })]),
];

/** Looks more, as sentences take them. */
export const gainOf = ({ adds, level }: Pick<Addition, 'adds' | 'level'>) => ({
  adds: String(adds),
  complete: level === 'complete' ? 1 : 0,
});

/** What a piece of the wardrobe brings, in sentences, the gain first. */
export const tellAddition = (addition: Addition, brief: Brief): readonly Phrase[] => [
  phrase('improve', 'add', { piece: addition.piece.name, ...gainOf(addition) }),
  ...occasionsSaid(addition, brief),
  weightSaid(addition.piece),
];

/** An imagined piece as it would be asked for in a shop. */
export const thingOf = ({ kind, colours: [ground], pattern, cut }: Piece) => ({
  kind,
  colour: ground?.name ?? '',
  pattern: pattern.type === 'plain' ? '' : pattern.type,
  cut: cut === KINDS[kind].cut ? '' : cut,
});

/** What a piece to buy brings, in sentences, the gain first. */
export const tellPurchase = (purchase: Purchase, brief: Brief): readonly Phrase[] => {
  const { piece, instead } = purchase;
  const alsoIn = purchase.alsoIn.map(({ name }) => name);
  const colours = fewOf(alsoIn);
  return [
    phrase('improve', 'buy', { ...thingOf(piece), ...gainOf(purchase) }),
    ...occasionsSaid(purchase, brief),
    ...(alsoIn.length === 0 ? [] : [phrase('improve', 'also in', { colours, more: alsoIn.length - colours.length })]),
    weightSaid(piece),
    ...(instead === undefined ? [] : [phrase('improve', 'instead', { piece: instead.piece.name, ...gainOf(instead) })]),
  ];
};

/** What a piece costs a look and a wear, in one sentence. */
export const tellCost = ({ price, level, looks, wears }: CostOfPiece, name: string): Phrase =>
  phrase('improve', 'cost', {
    piece: name,
    amount: price.amount,
    currency: price.currency,
    looks: String(looks),
    complete: level === 'complete' ? 1 : 0,
    wears,
  });

/** What is still to pay, by currency, with the pieces of which no price is known. */
export const toPay = (
  shopping: readonly Piece[],
): { readonly totals: ReadonlyMap<string, number>; readonly unpriced: number } => {
  const totals = new Map<string, number>();
  for (const { price } of shopping)
    if (price !== undefined) totals.set(price.currency, (totals.get(price.currency) ?? 0) + price.amount);
  return { totals, unpriced: shopping.filter(({ price }) => price === undefined).length };
};
