import type { Formats } from '../formats.ts';

const looksLeft = (looks: number, f: Formats): string => f.plural(looks, { one: '# look', other: '# looks' });

/** A plan made again counts wears and washes; without one each occasion was only asked for by itself. */
const occasionsThen = ({ unserved, counts }: Pick<LeavingOut, 'unserved' | 'counts'>, f: Formats): string =>
  unserved === 0
    ? counts === 'planned again'
      ? 'Planned again without them, every occasion is still dressed.'
      : 'Each occasion still has a look of its own; wears and washes were not counted again.'
    : counts === 'planned again'
      ? `Planned again without them, ${f.plural(unserved, { one: '# occasion loses its look', other: '# occasions lose their look' })}.`
      : `${f.plural(unserved, { one: '# occasion loses its last look', other: '# occasions lose their last look' })}.`;

interface LeavingOut {
  readonly pieces: readonly string[];
  readonly grams: number;
  readonly looks: number;
  readonly unserved: number;
  /** Whether the trip was planned again without the pieces, or each occasion asked for by itself. */
  readonly counts: string;
}

/** English sentences of the bag room. */
export const bag = {
  'heaviest on': ({ bag: name, date, grams }: { bag: string; date: string; grams: number }, f: Formats) =>
    `${name}: heaviest on ${f.date(date)}, ${f.kilograms(grams / 1000)}.`,
  'ask the carrier': () => 'Ask your carrier for its sizes and weights: its own rule always holds, and rules change.',
  'guideline is': (
    { bag: name, assumed, read }: { bag: string; assumed: readonly ('size' | 'limit')[]; read: string },
    f: Formats,
  ) =>
    assumed.length === 0
      ? `${name}: ask the carrier, its own rule always holds.`
      : `${name}: its ${f.list(assumed)} ${assumed.length === 1 ? 'is' : 'are'} assumed from the published guideline, read in ${f.month(read)}. Ask the carrier: its own rule always holds.`,
  'shared by': ({ bag: name, travellers }: { bag: string; travellers: readonly string[] }, f: Formats) =>
    `${name} is packed by ${f.list(travellers)} together; the figures here are for one equal share of it.`,
  'shared mend': ({ trip }: { trip: string }) =>
    `This is one share of a shared bag; the others may have room. Look at the travellers' page, or run: wayfold together ${trip}`,
  'flight rules': ({ read }: { read: string }, f: Formats) =>
    `Liquids and batteries were checked by the usual rules, read in ${f.month(read)}. Ask your carrier and your airport: theirs always hold.`,
  'over weight': (
    { bag: name, over, limit, date }: { bag: string; over: number; limit: number; date: string },
    f: Formats,
  ) => `${name}: over its limit of ${f.kilograms(limit / 1000)} by ${f.grams(over)} on ${f.date(date)}`,
  'near the limit': (
    { bag: name, grams, high, limit }: { bag: string; grams: number; high: number; limit: number },
    f: Formats,
  ) =>
    `${name}: ${f.kilograms(grams / 1000)}, but it could be ${f.kilograms(high / 1000)}, and the limit is ${f.kilograms(limit / 1000)}`,
  'weigh them': () => 'Weigh the pieces that are marked estimated.',
  'over full': ({ bag: name, litres, room }: { bag: string; litres: number; room: number }, f: Formats) =>
    `${name}: ${f.litres(litres)} to pack, room for ${f.litres(room)}`,
  'leave out': ({ pieces, grams, looks, unserved, counts }: LeavingOut, f: Formats) =>
    `Leave out ${f.list(pieces)}: ${f.grams(grams)} less. ${f.plural(looks, { one: '# look remains', other: '# looks remain' })}. ${occasionsThen({ unserved, counts }, f)}`,
  'leave out in vain': () =>
    'Even without the clothes it does not fit. Take a larger bag, or fewer of the small things.',
  'pack less': () => 'Take a larger bag, or fewer of the small things.',
  'no room': ({ bag: name }: { bag: string }) => `${name}: its limit leaves no room for anything`,
  'no room mend': () => "Write a limit above the bag's own weight, and litres above nothing.",
  'too long': ({ piece, sides }: { piece: string; sides: string }) =>
    `${piece}: about ${sides} cm, and goes into none of the bags`,
  'too long mend': () => 'Take a larger bag, leave it at home, or wear it on every journey.',
  'too heavy': ({ piece, grams }: { piece: string; grams: number }, f: Formats) =>
    `${piece}: ${f.grams(grams)}, more than any of the bags may hold`,
  'too heavy mend': () => 'Take a bag with a higher limit, leave it at home, or wear it on every journey.',
  'over guideline': (
    { bag: name, length, width, depth }: { bag: string; length: number; width: number; depth: number },
    f: Formats,
  ) =>
    `${name}: larger than the usual cabin guideline of ${f.centimetres(length)} by ${f.centimetres(width)} by ${f.centimetres(depth)}`,
  'carrier rule': ({ bag: name }: { bag: string }) => `${name}: no rule of your carrier is written for it`,
  'carrier rule mend': () => "Ask the carrier, then write its own size and weight as the bag's cm and kg.",
  'container too large': (
    { what, millilitres, limit, bag: name }: { what: string; millilitres: number; limit: number; bag: string },
    f: Formats,
  ) =>
    `${what}, in ${name}: a container of ${f.number(millilitres, 0)} ml; the usual limit in the cabin is ${f.number(limit, 0)} ml`,
  'container too large mend': () => 'Decant it, check it into the hold, or buy it there. Ask your carrier and airport.',
  'liquids too many': ({ millilitres, limit }: { millilitres: number; limit: number }, f: Formats) =>
    `Liquids in the cabin: ${f.number(millilitres, 0)} ml; the clear bag holds ${f.number(limit, 0)} ml`,
  'liquids too many mend': () => 'Take smaller containers or fewer of them, or check a bag into the hold.',
  'battery refused': ({ what, wattHours, limit }: { what: string; wattHours: number; limit: number }, f: Formats) =>
    `${what}: ${f.number(wattHours, 0)} Wh; over ${f.number(limit, 0)} Wh is not carried`,
  'battery refused mend': () => 'Leave it at home. Ask your carrier how it may be sent.',
  'battery asks': ({ what, wattHours, limit }: { what: string; wattHours: number; limit: number }, f: Formats) =>
    `${what}: ${f.number(wattHours, 0)} Wh; over ${f.number(limit, 0)} Wh the carrier must agree`,
  'battery asks mend': () => 'Ask your carrier before you leave, and carry it in the cabin.',
  'spare in the hold': ({ what }: { what: string }) =>
    `${what}: a spare battery, and only a bag for the hold to put it in`,
  'spare in the hold mend': () => 'Add a cabin or personal bag: spare batteries fly in the cabin, terminals covered.',
  'wear it': (
    { occasion, grams, pieces }: { occasion: string; grams: number; pieces: readonly string[] },
    f: Formats,
  ) => `${occasion}: wearing ${f.list(pieces)} takes ${f.grams(grams)} more out of the bags than the planned look`,
  'wear it mend': () => 'Fix this look to the journey in the capsule, if the client likes it.',
  'millilitres missing': ({ what }: { what: string }) => `${what}: a liquid without its millilitres`,
  'millilitres missing mend': () => 'Write ml: … so that the rule for liquids can be checked.',
  // The page and the command line
  'lighter heading': () => 'If it must be lighter',
  'lighter at once': () => 'It has to be lighter',
  'lighter lead': ({ looks, grams }: { looks: number; grams: number }, f: Formats) =>
    `All the pieces together weigh ${f.kilograms(grams / 1000)} and make ${looksLeft(looks, f)}, layers counted. Each dot is the most looks that can be had for its weight; shoes and accessories stay.`,
  'order lead': () =>
    'Leave at home in this order: first what no day of the plan wears; then what costs no occasion its last look, then the fewest looks. Wears and wash days are not counted.',
  'order until it fits': () =>
    'The bags are too heavy or too full. Leave at home, in this order, until they are not. Wears and wash days are not counted.',
  'order planned again': ({ unserved }: { unserved: number }, f: Formats) =>
    `The bags are too heavy or too full. Leave at home, in this order, until they are not. ${occasionsThen({ unserved, counts: 'planned again' }, f)}`,
  'order in vain': () => 'The bags are too heavy or too full, and leaving clothes at home does not mend it.',
  'lighter found': () => 'Found by leaving out one piece after the other; other choices may do better.',
  'front picture': ({ points, looks }: { points: number; looks: number }, f: Formats) =>
    `Looks against weight: ${f.plural(points, { one: '# choice', other: '# choices' })}, up to ${looksLeft(looks, f)}`,
  'head leave': () => 'Leave at home',
  'head saves': () => 'Saves',
  'head saves in all': () => 'Saved in all',
  'head looks left': () => 'Looks left',
  'looks left is': ({ looks }: { looks: number }, f: Formats) => `${looksLeft(looks, f)} left`,
  'head looks lost': () => 'Looks lost',
  'head unserved': () => 'Occasions without a look',
  'worth lead': () =>
    'Each piece by itself: what leaving it at home saves, the layered looks it takes with it, and the occasions that then have no look. Wears and wash days are not counted.',
  'worth heading': () => 'What each piece costs and gives',
  'total is': ({ grams, spread, share }: { grams: number; spread: number; share: number }, f: Formats) =>
    `${f.kilograms(grams / 1000)} ± ${f.number(spread / 1000, 1)} in all, worn and packed, of which ${f.percent(share)} weighed`,
  'litres of': ({ litres, room }: { litres: number; room: number }, f: Formats) =>
    `${f.litres(litres)} of ${f.litres(room)}`,
  'it fits': () => 'It fits.',
  'it does not fit': () => 'It does not fit.',
  'load is': (
    {
      bag: name,
      grams,
      spread,
      limit,
      own,
      litres,
      room,
    }: { bag: string; grams: number; spread: number; limit: number; own: number; litres: number; room: number },
    f: Formats,
  ) =>
    `${name}: ${f.kilograms(grams / 1000)} ± ${f.number(spread / 1000, 1)}${limit > 0 ? ` of ${f.kilograms(limit)}` : ''}${own > 0 ? `, its own ${f.kilograms(own / 1000)} included` : ''}; ${f.litres(litres)} of ${f.litres(room)}`,
  'own weight': ({ own }: { own: number }, f: Formats) => `its own ${f.kilograms(own / 1000)} included`,
  'fold fold': () => 'folded',
  'fold roll': () => 'rolled',
  'fold wear': () => 'worn',
  'fold fill': () => 'filled with small things',
  'fold flat': () => 'laid flat',
  'fold shoe bag': () => 'in a shoe bag',
  'fold pouch': () => 'in a pouch',
  'weight spare': ({ grams }: { grams: number }, f: Formats) => `At the heavy end, ${f.grams(grams)} to spare.`,
  'weight over': ({ grams }: { grams: number }, f: Formats) =>
    `At the heavy end, ${f.grams(grams)} over the limit: weigh the bag before you leave.`,
  'weight likely over': ({ grams }: { grams: number }, f: Formats) =>
    `Over the limit by ${f.grams(grams)}, as far as is known: weigh the bag, or leave something at home.`,
  'weight certainly over': ({ grams }: { grams: number }, f: Formats) =>
    `Over the limit by ${f.grams(grams)}: something has to stay at home.`,
  'weight no limit': () => 'No limit is set for this bag.',
  'packing order': () => 'In the order of packing: the first goes in first, the last lies on top.',
  'bag title': () => 'The bag',
  'bag lead': () => 'What goes where, in which order, what it weighs, and what to leave at home if it has to be less.',
  'to the bag': () => 'How to pack it, and how to get lighter',
  'to the list': () => 'Open the list to tick',
  'bag is': (
    { role, sides, own, limit, room }: { role: string; sides: string; own: number; limit: number; room: number },
    f: Formats,
  ) =>
    [
      role === 'personal' ? 'Under the seat' : role === 'hold' ? 'For the hold' : 'For the cabin',
      ...(sides === '' ? [] : [sides]),
      ...(own > 0 ? [`${f.kilograms(own / 1000)} empty`] : []),
      limit > 0 ? `up to ${f.kilograms(limit)}` : 'no weight limit given',
      `room for ${f.litres(room)}`,
    ].join(', '),
  'first in': () => 'first in',
  'last in': () => 'on top',
  'small things': ({ things }: { things: readonly string[] }, f: Formats) => `Around them: ${f.list(things)}.`,
  'so many': ({ what, count }: { what: string; count: number }) => `${what} × ${count}`,
  'order rule': () =>
    'In the order of packing: shoes first, at the wheels, then what is heavy; on top what the first day asks for.',
  'journeys heading': () => 'On each journey',
  'journeys lead': () => 'What you wear is not in the bag, so each bag weighs something else on each journey.',
  'head journey': () => 'Journey',
  'rules heading': () => 'Liquids, batteries and sizes by air',
  'head rule': () => 'The usual rule',
  'head here': () => 'In your bags',
  'rule container': ({ limit }: { limit: number }, f: Formats) =>
    `Liquids in the cabin: no container over ${f.number(limit, 0)} ml`,
  'rule liquids': ({ limit }: { limit: number }, f: Formats) =>
    `All of them in one clear bag of ${f.number(limit, 0)} ml; medicines apart`,
  'rule battery': ({ limit, most }: { limit: number; most: number }, f: Formats) =>
    `Batteries up to ${f.number(limit, 0)} Wh; up to ${f.number(most, 0)} Wh if the carrier agrees, none above`,
  'rule spare battery': () => 'Spare batteries and power banks in the cabin, never in the hold, terminals covered',
  'rule cabin size': ({ sides }: { sides: string }) => `Cabin bag up to ${sides}, wheels and handles counted`,
  'here millilitres': ({ things, amount }: { things: readonly string[]; amount: number }, f: Formats) =>
    `${f.list(things)}: ${f.number(amount, 0)} ml`,
  'here millilitres in all': ({ amount }: { amount: number }, f: Formats) => `${f.number(amount, 0)} ml`,
  'here watt hours': ({ things, amount }: { things: readonly string[]; amount: number }, f: Formats) =>
    `${f.list(things)}: ${f.number(amount, 0)} Wh`,
  'here in the cabin': ({ things }: { things: readonly string[] }, f: Formats) => `${f.list(things)}: in the cabin`,
  'here in the hold': ({ things }: { things: readonly string[] }, f: Formats) => `${f.list(things)}: in the hold`,
  'here within': ({ things }: { things: readonly string[] }, f: Formats) => `${f.list(things)}: within it`,
  'here too large': ({ things }: { things: readonly string[] }, f: Formats) => `${f.list(things)}: larger`,
  'here nothing': () => 'Nothing',
  'rules source': ({ read }: { read: string }, f: Formats) =>
    `Read in ${f.month(read)}. Sources: ICAO guidance and Regulation (EU) 2015/1998 for liquids, ICAO Technical Instructions for batteries, IATA passenger baggage guideline for sizes.`,
} satisfies Record<string, (values: never, formats: Formats) => string>;
