import type { Formats } from '../formats.ts';
import { capital } from '../letters.ts';
import { aThing, type Thing, thingWords } from './things.ts';

const looks = (count: string, f: Formats): string =>
  f.plural(BigInt(count), { one: '# layered look', other: '# layered looks' });
/** Looks gained; complete ones for what only finishes a look. */
interface Gain {
  readonly adds: string;
  readonly complete: number;
}
const gained = ({ adds, complete }: Gain, f: Formats): string =>
  complete === 1 ? f.plural(BigInt(adds), { one: '# complete look', other: '# complete looks' }) : looks(adds, f);

/** English sentences of what would make a capsule better, and of what it costs. Counts come as digits, of any size. */
export const improve = {
  heading: () => 'Better by one piece',
  now: ({ looks: count }: { looks: string }, f: Formats) => `The capsule makes ${looks(count, f)} now.`,
  'swaps heading': () => 'To swap',
  'no swap': () => 'No swap within a line of the list makes more looks and still dresses every occasion.',
  swap: ({ out, in: inn, adds }: { out: string; in: string; adds: string }, f: Formats) =>
    `${inn} in place of ${out} makes ${looks(adds, f)} more.`,
  'add heading': () => 'To add from the wardrobe',
  'no addition': () => 'Nothing else in the wardrobe would add a look.',
  add: (v: Gain & { piece: string }, f: Formats) => `${v.piece} would add ${gained(v, f)}.`,
  'buy heading': () => 'Worth buying',
  'no purchase': () => 'No piece on the list would add a look.',
  'nothing worth buying': () => 'Nothing has to be bought: the wardrobe already holds what adds as much.',
  thing: (thing: Thing) => capital(thingWords(thing)),
  buy: (v: Thing & Gain, f: Formats) => `${capital(aThing(v))} would add ${gained(v, f)}.`,
  'also in': ({ colours, more }: { colours: readonly string[]; more: number }, f: Formats) =>
    `As many in ${f.either(more === 0 ? colours : [...colours, f.plural(more, { one: '# colour more', other: '# colours more' })])}.`,
  instead: (v: Gain & { piece: string }, f: Formats) =>
    `No need to buy it: ${v.piece}, from the wardrobe, adds ${gained(v, f)}.`,
  serves: ({ occasions }: { occasions: readonly string[] }, f: Formats) =>
    `It gives ${f.list(occasions)} a look, which ${occasions.length === 1 ? 'has' : 'have'} none now.`,
  'worn for': ({ occasions, more }: { occasions: readonly string[]; more: number }, f: Formats) =>
    `Good for ${more === 0 ? f.list(occasions) : f.list([...occasions, f.plural(more, { one: '# more occasion', other: '# more occasions' })])}.`,
  'worn for nothing': () => 'It suits none of the occasions of this trip.',
  weighs: ({ grams, estimated }: { grams: number; estimated: number }, f: Formats) =>
    estimated === 1 ? `About ${f.grams(grams)}, estimated.` : `${f.grams(grams)}.`,
  'tried so many': ({ things }: { things: number }, f: Formats) =>
    `${f.plural(things, { one: '# piece was', other: '# pieces were' })} tried on this capsule: every kind on the list, in the colours of the mood and the usual neutrals, plain and patterned, in more than one cut.`,
  'shopping link': () => 'Shopping and swaps',
  'in place of': ({ out }: { out: string }) => `in place of ${out}`,
  'looks more': (v: Gain, f: Formats) => `${gained(v, f)} more`,
  'costs heading': () => 'What it costs',
  'no price': () => 'No piece of this capsule has a price written in its file.',
  cost: (
    v: { piece: string; amount: number; currency: string; looks: string; complete: number; wears: number },
    f: Formats,
  ) => {
    const made =
      v.complete === 1
        ? f.plural(BigInt(v.looks), { one: '# complete look', other: '# complete looks' })
        : looks(v.looks, f);
    const aLook =
      v.looks === '0' ? 'in no look' : `${f.money(v.amount / Number(v.looks), v.currency, 2)} a look (${made})`;
    const aWear =
      v.wears === 0
        ? 'not worn by the plan'
        : `${f.money(v.amount / v.wears, v.currency, 2)} a wear (worn ${f.plural(v.wears, { one: 'once', other: '# times' })})`;
    return `${v.piece}, ${f.money(v.amount, v.currency)}: ${aLook}, ${aWear}.`;
  },
  'shopping heading': () => 'Shopping list',
  'shopping lede': ({ count }: { count: number }, f: Formats) =>
    count === 0
      ? 'Everything in this capsule is there already.'
      : f.plural(count, {
          one: '# piece of this capsule is still to buy.',
          other: '# pieces of this capsule are still to buy.',
        }),
  'still to buy': () => 'Still to buy',
  'price not known': () => 'price not written',
  'total to pay': (
    { amount, currency, unpriced }: { amount: number; currency: string; unpriced: number },
    f: Formats,
  ) =>
    `${f.money(amount, currency)} in all${unpriced === 0 ? '' : `, and ${f.plural(unpriced, { one: '# piece', other: '# pieces' })} without a price`}.`,
  'column price': () => 'Price',
  'column looks': () => 'Looks with it',
  'column a look': () => 'A look',
  'column wears': () => 'Worn',
  'column a wear': () => 'A wear',
  'looks counted': ({ looks: count, complete }: { looks: string; complete: number }, f: Formats) =>
    complete === 1 ? `${f.count(BigInt(count))} complete` : `${f.count(BigInt(count))} layered`,
  'costs mean': () =>
    'A look costs the price of the piece shared out over the looks with it: layered looks for clothes, complete looks for shoes and accessories. A wear costs the price shared out over the times it is worn on this trip alone.',
} satisfies Record<string, (values: never, formats: Formats) => string>;
