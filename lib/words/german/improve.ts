import type { english } from '../english/index.ts';
import type { Formats } from '../formats.ts';
import type { Translation } from '../translation.ts';
import { colourWord } from './colours.ts';
import { cutWord, kindWord, patternWord } from './kinds.ts';
import { PIECES, sentence } from './sentence.ts';

const looks = (count: string, f: Formats): string =>
  f.plural(BigInt(count), { one: '# Look mit Schichten', other: '# Looks mit Schichten' });

const gained = ({ adds, complete }: { adds: string; complete: number }, f: Formats): string =>
  complete === 1 ? f.plural(BigInt(adds), { one: '# ganzer Look', other: '# ganze Looks' }) : looks(adds, f);

const thing = (v: { kind: string; colour: string; pattern: string; cut: string }): string =>
  [
    `${kindWord(v.kind)} in ${colourWord(v.colour)}`,
    ...(v.pattern === '' ? [] : [patternWord(v.pattern)]),
    ...(v.cut === '' ? [] : [`Schnitt ${cutWord(v.cut)}`]),
  ].join(', ');

/** German sentences of what would make a capsule better. */
export const improve = {
  heading: () => 'Um ein Teil besser',
  now: (v, f) => `Die Capsule ergibt jetzt ${looks(v.looks, f)}.`,
  'swaps heading': () => 'Zum Tauschen',
  'no swap': () => 'Kein Tausch innerhalb einer Zeile der Liste ergibt mehr Looks und lässt jedem Anlass einen Look.',
  swap: (v, f) => `${v.in} statt ${v.out}: ${looks(v.adds, f)} mehr.`,
  'add heading': () => 'Aus der Garderobe dazunehmen',
  'no addition': () => 'Nichts anderes aus der Garderobe bringt einen Look dazu.',
  add: (v, f) => `${v.piece}: ${gained(v, f)} mehr.`,
  'buy heading': () => 'Was sich zu kaufen lohnt',
  'no purchase': () => 'Kein Teil der Liste bringt einen Look dazu.',
  'nothing worth buying': () => 'Nichts muss gekauft werden: Die Garderobe hat schon, was ebenso viel bringt.',
  thing: (v) => sentence(thing(v)).slice(0, -1),
  buy: (v, f) => sentence(`${thing(v)}: ${gained(v, f)} mehr`),
  'also in': (v, f) => {
    const colours = v.colours.map(colourWord);
    const rest = f.plural(v.more, { one: '# weiteren Farbe', other: '# weiteren Farben' });
    return `Ebenso viele in ${f.either(v.more === 0 ? colours : [...colours, rest])}.`;
  },
  instead: (v, f) => `Nicht nötig: ${v.piece} aus der Garderobe bringt ${gained(v, f)}.`,
  serves: (v, f) => `Damit gibt es einen Look für ${f.list(v.occasions)}; jetzt gibt es dafür keinen.`,
  'worn for': (v, f) =>
    `Geeignet für ${f.list(v.more === 0 ? v.occasions : [...v.occasions, f.plural(v.more, { one: '# weiteren Anlass', other: '# weitere Anlässe' })])}.`,
  'worn for nothing': () => 'Für keinen Anlass dieser Reise geeignet.',
  weighs: (v, f) => (v.estimated === 1 ? `Etwa ${f.grams(v.grams)}, geschätzt.` : `${f.grams(v.grams)}.`),
  'tried so many': (v, f) =>
    `${f.plural(v.things, { one: '# Teil wurde', other: '# Teile wurden' })} an dieser Capsule versucht: jede Art der Liste, in den Farben der Stimmung und den üblichen neutralen, einfarbig und gemustert, in mehr als einem Schnitt.`,
  'shopping link': () => 'Kaufen und Tauschen',
  'in place of': (v) => `statt ${v.out}`,
  'looks more': (v, f) => `${gained(v, f)} mehr`,
  'costs heading': () => 'Was es kostet',
  'no price': () => 'Bei keinem Teil dieser Capsule steht ein Preis.',
  cost: (v, f) => {
    const made =
      v.complete === 1
        ? f.plural(BigInt(v.looks), { one: '# ganzer Look', other: '# ganze Looks' })
        : looks(v.looks, f);
    const aLook =
      v.looks === '0' ? 'in keinem Look' : `${f.money(v.amount / Number(v.looks), v.currency, 2)} je Look (${made})`;
    const aWear =
      v.wears === 0
        ? 'im Plan nicht getragen'
        : `${f.money(v.amount / v.wears, v.currency, 2)} je Tragen (${f.plural(v.wears, { one: 'einmal', other: '# Mal' })})`;
    return `${v.piece}, ${f.money(v.amount, v.currency)}: ${aLook}, ${aWear}.`;
  },
  'shopping heading': () => 'Einkaufsliste',
  'shopping lede': (v, f) =>
    v.count === 0
      ? 'Alles in dieser Capsule ist schon da.'
      : f.plural(v.count, {
          one: '# Teil dieser Capsule ist noch zu kaufen.',
          other: '# Teile dieser Capsule sind noch zu kaufen.',
        }),
  'still to buy': () => 'Noch zu kaufen',
  'price not known': () => 'ohne Preis',
  'total to pay': (v, f) =>
    `Zusammen ${f.money(v.amount, v.currency)}${v.unpriced === 0 ? '' : `, dazu ${f.plural(v.unpriced, PIECES)} ohne Preis`}.`,
  'column price': () => 'Preis',
  'column looks': () => 'Looks damit',
  'column a look': () => 'Je Look',
  'column wears': () => 'Getragen',
  'column a wear': () => 'Je Tragen',
  'looks counted': (v, f) =>
    v.complete === 1 ? `${f.count(BigInt(v.looks))} ganze` : `${f.count(BigInt(v.looks))} mit Schichten`,
  'costs mean': () =>
    'Kosten je Look: der Preis durch die Looks mit diesem Teil; bei Kleidung Looks mit Schichten, bei Schuhen und Accessoires ganze Looks. Kosten je Tragen: der Preis durch die Male, die es auf dieser Reise getragen wird.',
} satisfies Translation<typeof english.improve>;
