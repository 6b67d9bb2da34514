import {
  type Addition,
  costsOf,
  gainOf,
  type Improvements,
  tellAddition,
  tellPurchase,
  tellSwap,
  thingOf,
  toPay,
} from '../../capsule/index.ts';
import type { Guide } from '../../guide/index.ts';
import type { Piece } from '../../model/index.ts';
import { type Phrase, phrase } from '../../words/index.ts';
import type { PictureIndex } from '../pictures.ts';
import { type GarmentFile, garmentFile } from '../svg/garment.ts';
import type { SiteVoice } from '../voice.ts';
import { type Frame, frameOf } from './frame.ts';
import type { ImageView } from './pictures.ts';
import { pieceHref, pieceToScale } from './pieces.ts';

/** One thing that would help: its drawing, its name, and why. */
export interface HelpView {
  readonly drawing: GarmentFile;
  readonly name: string;
  /** The gain, short: "88 layered looks more". */
  readonly gain: string;
  readonly said: readonly string[];
}

export interface CostRow {
  readonly name: string;
  readonly href: string;
  readonly price: string;
  readonly looks: string;
  readonly aLook: string;
  readonly wears: string;
  readonly aWear: string;
}

export interface ShoppingView {
  readonly frame: Frame;
  readonly kick: string;
  readonly heading: string;
  readonly lede: string;
  readonly toBuy: {
    readonly heading: string;
    readonly pieces: readonly {
      readonly name: string;
      readonly href: string;
      readonly fabric: string;
      readonly price: string;
      readonly image: (ImageView & { readonly shown: number; readonly shownHeight: number }) | undefined;
    }[];
    readonly totals: readonly string[];
  };
  /** Swaps, additions and purchases; empty in the client's edition. */
  readonly helps: readonly {
    readonly heading: string;
    readonly entries: readonly HelpView[];
    readonly notes: readonly string[];
  }[];
  readonly costs: { readonly heading: string; readonly heads: readonly string[]; readonly rows: readonly CostRow[] };
  readonly costsMean: string;
}

const PX_PER_CM = 1.75;

const stillToBuy = ({ pieces }: Guide): readonly Piece[] => pieces.filter(({ status }) => status === 'to buy');

/** True when a guide has a shopping page: for the stylist always, for the client when something is still to buy. */
export const hasShopping = (guide: Guide, edition: 'client' | 'stylist'): boolean =>
  edition === 'stylist' || stillToBuy(guide).length > 0;

const costRows = (guide: Guide, pieces: readonly Piece[], { say, formats, word }: SiteVoice): readonly CostRow[] => {
  const looks = guide.earnings.map(({ piece, layeredLooks, completeLooks }) => ({
    piece,
    layered: layeredLooks,
    complete: completeLooks,
  }));
  return costsOf(pieces, looks, guide.plan.wears).map((cost) => {
    const { piece, price, level, wears, aLook, aWear } = cost;
    const money = (amount: number | undefined, digits: number): string =>
      amount === undefined ? '' : formats.money(amount, price.currency, digits);
    return {
      name: pieces.find(({ id }) => id === piece)?.name ?? piece,
      href: pieceHref(piece),
      price: money(price.amount, 0),
      looks: say(
        phrase('improve', 'looks counted', { looks: String(cost.looks), complete: level === 'complete' ? 1 : 0 }),
      ),
      aLook: money(aLook, 2),
      wears: word('times', { count: wears }),
      aWear: money(aWear, 2),
    };
  });
};

const helpsOf = (guide: Guide, found: Improvements, { say }: SiteVoice): ShoppingView['helps'] => {
  const { brief } = guide;
  const entry = (
    piece: Piece,
    file: string,
    name: Phrase,
    gain: Pick<Addition, 'adds' | 'level'>,
    said: readonly Phrase[],
  ): HelpView => ({
    drawing: garmentFile(piece, `shopping/${file}.svg`),
    name: say(name),
    gain: say(phrase('improve', 'looks more', gainOf(gain))),
    // the gain stands beside the name
    said: said.slice(1).map(say),
  });
  const named = ({ name }: Piece): Phrase => phrase('guide', 'as written', { text: name });
  return [
    {
      heading: say(phrase('improve', 'buy heading', {})),
      entries: found.purchases.map((purchase, at) =>
        entry(
          purchase.piece,
          `buy-${at + 1}`,
          phrase('improve', 'thing', thingOf(purchase.piece)),
          purchase,
          tellPurchase(purchase, brief),
        ),
      ),
      notes: [
        ...(found.purchases.length === 0 ? [phrase('improve', 'no purchase', {})] : []),
        ...(found.purchases.length > 0 && found.purchases.every(({ instead }) => instead !== undefined)
          ? [phrase('improve', 'nothing worth buying', {})]
          : []),
        phrase('improve', 'tried so many', { things: found.tried }),
      ].map(say),
    },
    {
      heading: say(phrase('improve', 'add heading', {})),
      entries: found.additions.map((addition, at) =>
        entry(addition.piece, `add-${at + 1}`, named(addition.piece), addition, tellAddition(addition, brief)),
      ),
      notes: found.additions.length === 0 ? [say(phrase('improve', 'no addition', {}))] : [],
    },
    {
      heading: say(phrase('improve', 'swaps heading', {})),
      entries: found.swaps.map((swap, at) =>
        entry(swap.in, `swap-${at + 1}`, named(swap.in), { adds: swap.adds, level: 'layered' }, [
          ...tellSwap(swap, brief).slice(0, 1),
          phrase('improve', 'in place of', { out: swap.out.name }),
          ...tellSwap(swap, brief).slice(1),
        ]),
      ),
      notes: found.swaps.length === 0 ? [say(phrase('improve', 'no swap', {}))] : [],
    },
  ];
};

/** What is still to buy, what would help, and what it costs. */
export const shoppingView = (
  guide: Guide,
  found: Improvements | undefined,
  pictures: PictureIndex,
  voice: SiteVoice,
): ShoppingView => {
  const { say, formats } = voice;
  const shopping = stillToBuy(guide);
  const { totals, unpriced } = toPay(shopping);
  const heading = say(
    found === undefined ? phrase('improve', 'shopping heading', {}) : phrase('improve', 'shopping link', {}),
  );
  const lede = [
    ...(found === undefined ? [] : [phrase('improve', 'now', { looks: String(found.looks) })]),
    phrase('improve', 'shopping lede', { count: shopping.length }),
  ];
  return {
    frame: frameOf({
      guide,
      voice,
      page: 'cover',
      path: 'shopping/',
      title: heading,
      description: lede.map(say).join(' '),
    }),
    kick: guide.capsule.title,
    heading,
    lede: lede.map(say).join(' '),
    toBuy: {
      heading: say(phrase('improve', 'still to buy', {})),
      pieces: shopping.map(({ id, name, fabricText, price }) => ({
        name,
        href: pieceHref(id),
        fabric: fabricText,
        price:
          price === undefined
            ? say(phrase('improve', 'price not known', {}))
            : formats.money(price.amount, price.currency),
        image: pieceToScale(id, pictures, PX_PER_CM),
      })),
      totals: [...totals].map(([currency, amount]) =>
        say(phrase('improve', 'total to pay', { amount, currency, unpriced })),
      ),
    },
    helps: found === undefined ? [] : helpsOf(guide, found, voice),
    costs: {
      heading: say(phrase('improve', 'costs heading', {})),
      heads: [
        voice.word('column piece'),
        ...(['column price', 'column looks', 'column a look', 'column wears', 'column a wear'] as const).map((key) =>
          say(phrase('improve', key, {})),
        ),
      ],
      rows: costRows(guide, found === undefined ? shopping : guide.pieces, voice),
    },
    costsMean: say(phrase('improve', 'costs mean', {})),
  };
};
