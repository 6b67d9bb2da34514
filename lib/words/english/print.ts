import type { Formats } from '../formats.ts';
import { capital, lower } from '../letters.ts';
import { doingThere } from './doing.ts';

/** English sentences of the print room. */
export const print = {
  // Titles
  'packing title': ({ traveller }: { traveller: string }) => `Packing list for ${traveller}`,
  'day plan title': ({ traveller }: { traveller: string }) => `Day plan for ${traveller}`,
  'wear table title': ({ traveller }: { traveller: string }) => `Wear table for ${traveller}`,
  'booklet title': ({ traveller }: { traveller: string }) => `Lookbook for ${traveller}`,
  'cards title': ({ traveller }: { traveller: string }) => `Look cards for ${traveller}`,
  'document title': ({ what, trip }: { what: string; trip: string }) => `${what}: ${trip}`,
  'what to wear': () => 'What to wear, day by day',
  'pieces and days': ({ pieces, days }: { pieces: number; days: number }, f: Formats) =>
    `${capital(f.plural(pieces, { one: '# piece', other: '# pieces' }))}, ${f.plural(days, { one: '# day', other: '# days' })}`,
  'page of': ({ page, pages }: { page: number; pages: number }, f: Formats) =>
    `Page ${f.count(page)} of ${f.count(pages)}`,
  continued: ({ title }: { title: string }) => `${title}, continued`,
  'true size': () => 'true when printed at 100 %',

  // Packing list
  'dates of trip': ({ from, to }: { from: string; to: string }, f: Formats) => f.dateRange(from, to),
  'list counts': ({ pieces, things }: { pieces: number; things: number }, f: Formats) =>
    things === 0
      ? f.plural(pieces, { one: '# piece', other: '# pieces' })
      : `${f.plural(pieces, { one: '# piece', other: '# pieces' })}, ${f.plural(things, { one: '# other line', other: '# other lines' })}`,
  'on you': () => 'On you',
  'worn out of the door': () => 'worn out of the door',
  'liquids bag': () => 'Liquids',
  'liquids note': ({ bag }: { bag: string }) => `clear one-litre bag (${bag})`,
  'nothing over': ({ limit }: { limit: number }, f: Formats) => `No container over ${f.number(limit, 0)} ml`,
  'with its own': ({ kind, own }: { kind: string; own: number }, f: Formats) =>
    own > 0 ? `${kind}, with its own ${f.kilograms(own / 1000)}` : kind,
  'its own': ({ own }: { own: number }, f: Formats) => `with its own ${f.kilograms(own / 1000)}`,
  'bag role': ({ role }: { role: string }) =>
    role === 'personal' ? 'under the seat' : role === 'hold' ? 'in the hold' : 'in the cabin',
  'table upper': () => 'Coats, layers, tops',
  'group worn': () => 'Head to foot',
  'group upper': () => 'Tops and knits',
  'group lower': () => 'Skirts, trousers, dresses',
  'group over': () => 'Layers and coats',
  'group swim': () => 'Swimwear',
  'group feet': () => 'Shoes and legwear',
  'group finishing': () => 'Bags, jewellery, finishing',
  'group smalls': () => 'Smalls',
  'group wash': () => 'Wash bag',
  'group papers': () => 'Papers and pocket',
  'group other': () => 'Other things',
  'group care': () => 'Medicines and electrics',
  'journey word': ({ journeys }: { journeys: readonly string[] }) => {
    const all = (word: RegExp): boolean => journeys.length > 0 && journeys.every((name) => word.test(name));
    if (all(/\btrain\b|\brail\b/i)) return 'train';
    if (all(/\bflight\b|\bfly\b|\bplane\b/i)) return 'flight';
    if (all(/\bferry\b|\bboat\b/i)) return 'ferry';
    return 'journey';
  },
  'worn on': ({ word, dates }: { word: string; dates: readonly string[] }, f: Formats) =>
    `worn on the ${word} of ${f.list(dates)}`,
  'times journeys': ({ word }: { word: string }) => `${word}s`,
  'head number': () => 'no.',
  'head grams': () => 'grams',
  'head ounces': () => 'oz',
  'head millilitres': () => 'ml',
  estimated: () => 'estimated',
  'estimated key': () => 'estimated, not weighed',
  'tick label': ({ name, count }: { name: string; count: number }, f: Formats) =>
    count === 1 ? `${name}: packed` : `${name}, ${f.count(count)}: packed`,
  'millilitres filled': ({ filled, limit }: { filled: number; limit: number }, f: Formats) =>
    `${f.number(filled, 0)} of ${f.number(limit, 0)} ml`,
  'before you leave': () => 'Before you leave',
  'how it goes in': () => 'How it goes in:',
  'packing order': () => 'Shoes go in first, at the wheels; then what is heavy; on top what the first day asks for.',
  'liquids caution': () =>
    'In the cabin, liquids travel in containers of up to 100 ml, all in one clear one-litre bag. Rules differ and change: ask your carrier before you leave.',
  'battery caution': () =>
    'Spare batteries and power banks stay in the cabin bag, terminals covered. Ask your carrier for its limits.',
  'weight of': ({ bag }: { bag: string }) => `Weight: ${bag}`,
  'weight range': ({ grams, spread }: { grams: number; spread: number }, f: Formats) =>
    spread < 50
      ? f.kilograms(grams / 1000)
      : `${f.kilograms(grams / 1000)}, give or take ${f.number(spread / 1000, 1)}`,
  'weight segment bag': () => 'bag',
  'weight segment clothes': () => 'clothes',
  'weight segment shoes': () => 'shoes etc.',
  'weight segment things': () => 'rest',
  'weight made of': ({ own, contents, liquids }: { own: number; contents: number; liquids: number }, f: Formats) =>
    [
      ...(own > 0 ? [`${f.kilograms(own / 1000)} the bag itself`] : []),
      `${f.kilograms(contents / 1000)} in it`,
      ...(liquids > 0 ? [`${f.kilograms(liquids / 1000)} liquids`] : []),
    ].join(' + '),
  'weight limit': ({ kg }: { kg: number }, f: Formats) => `limit ${f.kilograms(kg)}`,
  'weighed share': ({ share }: { share: number }, f: Formats) =>
    `${f.percent(share)} of the weight was weighed, the rest is estimated.`,
  'weight described': (
    { bag, grams, low, high, kg }: { bag: string; grams: number; low: number; high: number; kg: number },
    f: Formats,
  ) =>
    `Weight bar, ${bag}: about ${f.kilograms(grams / 1000)}, between ${f.kilograms(low / 1000)} and ${f.kilograms(high / 1000)}${kg > 0 ? `, against a limit of ${f.kilograms(kg)}` : ''}.`,
  'days and washes': ({ days, washes }: { days: number; washes: number }, f: Formats) =>
    `${f.plural(days, { one: '# day', other: '# days' })}, ${washes === 0 ? 'no wash' : f.plural(washes, { one: '# wash', other: '# washes' })}`,
  'days described': (
    { days, journeys, washes }: { days: string; journeys: readonly string[]; washes: readonly string[] },
    f: Formats,
  ) =>
    [
      `Calendar of ${days}.`,
      ...(journeys.length > 0 ? [`Journeys on ${f.list(journeys)}.`] : []),
      ...(washes.length > 0 ? [`Washing on ${f.list(washes)}.`] : []),
    ].join(' '),
  'button key': ({ word }: { word: string }) => `worn on that day’s ${word}`,
  'journey key': ({ word }: { word: string }) => `${word} that day`,
  'wash key': () => 'wash',
  'nothing packed': () => 'Nothing is packed yet: the capsule has no pieces.',
  'no place': () => 'on the way',

  // Day plan
  'dress code': ({ dress }: { dress: string }) => dress,
  'part morning': () => 'morning',
  'part day': () => 'day',
  'part evening': () => 'evening',
  'part night': () => 'night',
  'goes on': () => 'Stay as you are.',
  'layers on': ({ pieces }: { pieces: readonly string[] }, f: Formats) => `Layers on: ${f.list(pieces)}.`,
  'on the rail': ({ pieces }: { pieces: readonly string[] }, f: Formats) => `In words: ${f.list(pieces.map(lower))}.`,
  'add or drop': () => 'Same clothes, other layers.',
  'cautions as on': ({ date }: { date: string }) => `Cautions as on ${date}.`,
  'wash that night': ({ pieces }: { pieces: readonly string[] }, f: Formats) => `Wash tonight: ${f.list(pieces)}.`,
  'look described': ({ pieces }: { pieces: readonly string[] }, f: Formats) =>
    `Drawing of the look: ${f.list(pieces)}.`,
  'indoors at': ({ airC }: { airC: number }, f: Formats) => `indoors, ${f.celsius(airC)}`,
  'rain chance': ({ percent }: { percent: number }, f: Formats) => `rain ${f.percent(percent / 100)}`,
  'uv index': ({ uv }: { uv: number }, f: Formats) => `UV ${f.number(uv, 0)}`,
  'on the rail note': () => '“In words” names pieces whose colours not everybody can tell apart.',
  'rail note': () =>
    'Each look hangs on its own rail, drawn as large as the line allows; small things are drawn larger.',
  'plan empty': () => 'There are no occasions in this brief.',
  'plan unserved': ({ count }: { count: number }, f: Formats) =>
    f.plural(count, { one: '# occasion has no look yet', other: '# occasions have no look yet' }),
  'plan served': ({ served, of }: { served: number; of: number }, f: Formats) =>
    `${f.count(served)} of ${f.plural(of, { one: '# occasion', other: '# occasions' })} dressed`,

  // Wear table
  wearings: ({ count }: { count: number }, f: Formats) => f.plural(count, { one: '# wearing', other: '# wearings' }),
  'head piece': () => 'piece',
  'head times worn': () => 'days in use',
  'head grams per wear': () => 'grams per day',
  'head ounces per wear': () => 'oz per day',
  'sorted by use': () => 'sorted by use within each kind',
  'worn all day': () => 'worn by day',
  'worn evening': () => 'evening only',
  'worn carried': () => 'taken along, not worn',
  'pieces used': () => 'pieces used that day',
  'wash line key': () => 'wash that night',

  // Booklet
  'by studio': ({ studio }: { studio: string }) => `Prepared by ${studio}`,
  palette: () => 'Palette',
  'palette of': ({ colours }: { colours: readonly string[] }, f: Formats) => `Palette: ${f.list(colours)}.`,
  'the pieces': () => 'The pieces',
  'the looks': () => 'The looks',
  'the days': () => 'Your days',
  notes: () => 'Notes',
  cautions: () => 'Please note',
  'cautions closing': () =>
    'This booklet helps you dress; it gives no medical advice. For health, allergies, sun, cold and uneven ground follow local advice and ask your doctor or pharmacist; for baggage ask your carrier.',
  'looks counted': ({ layered, complete }: { layered: string; complete: string }) =>
    `${layered} layered looks, ${complete} with shoes and accessories`,
  'good between': ({ low, high, activity }: { low: number; high: number; activity: string }, f: Formats) =>
    `outdoors while ${doingThere(activity)} ${f.celsiusRange(low, high)}`,
  'colours of piece': ({ colours }: { colours: readonly string[] }, f: Formats) => f.list(colours),
  'piece drawing': ({ name, colour }: { name: string; colour: string }) => `Drawing of ${name}, ${colour}.`,
  'piece photo': ({ name }: { name: string }) => `Photograph of ${name}.`,
  'own notes': () => 'Worn, and how it felt',
  'no pieces': () => 'The capsule has no pieces yet.',
  'no looks': () => 'There are no looks to show yet.',
  'cut along': () => 'Cut along the marks.',

  // Findings
  'glyph missing': ({ text, characters }: { text: string; characters: readonly string[] }, f: Formats) =>
    `No font of ours has ${f.list(characters)} in “${text}”: on paper it stands without.`,
  'glyph mend': () => 'Write it with other characters, or leave it so.',
  'list pages': ({ lines, pages }: { lines: number; pages: number }, f: Formats) =>
    `The packing list takes ${f.plural(pages, { one: '# page', other: '# pages' })}: ${f.plural(lines, { one: '# line does', other: '# lines do' })} not fit on one at a size that can be read`,
  'list pages mend': () => 'Put small things together in one line, or print it on both sides.',
  'table pages': ({ pages }: { pages: number }, f: Formats) =>
    `The wear table takes ${f.plural(pages, { one: '# page', other: '# pages' })}`,
  'table pages mend': ({ orientation }: { orientation: string }) =>
    orientation === 'landscape'
      ? 'Print it upright, where more lines fit, or on both sides.'
      : 'Print it on both sides.',
  'picture unreadable': ({ what }: { what: string }) =>
    `The picture of ${what} is neither a JPEG nor a PNG that can be read`,
  'picture unreadable mend': () => 'Save it again as JPEG. The drawing is printed meanwhile.',
} satisfies Record<string, (values: never, formats: Formats) => string>;
