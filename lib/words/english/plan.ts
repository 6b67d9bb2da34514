import type { Formats } from '../formats.ts';
import { capital, clause } from '../letters.ts';
import { doing } from './doing.ts';

const NEEDS: Readonly<Record<string, string>> = {
  swim: 'swimming',
  'uneven ground': 'uneven ground',
  'long walking': 'long walks',
  rain: 'rain',
  snow: 'snow',
  'shoulders covered': 'covered shoulders',
  'knees covered': 'covered knees',
  'head covered': 'a covered head',
  sun: 'strong sun',
};
/** What a look leaves uncovered. */
const BARE: Readonly<Record<string, string>> = {
  'shoulders covered': 'it leaves the shoulders bare',
  'knees covered': 'it leaves the knees bare',
  'head covered': 'it leaves the head bare',
};
const needWords = (need: string): string => NEEDS[need] ?? need;

/** The first few of a list, and how many more. */
const FEW = 4;
const few = (items: readonly string[]): readonly string[] =>
  items.length <= FEW ? items : [...items.slice(0, FEW - 1), `${items.length - FEW + 1} more`];

/** What is lost for certain, and what may be. */
const noLookLeft = (
  { occasions, perhaps }: { readonly occasions: readonly string[]; readonly perhaps: readonly string[] },
  f: Formats,
): string => {
  const may = f.list(few(perhaps));
  if (occasions.length === 0) return `there may be no look for ${may}`;
  return `no look is left for ${f.list(few(occasions))}${may === '' ? '' : `, and perhaps none for ${may}`}`;
};

interface Mend {
  readonly pieces: readonly string[];
  /** Pieces that stay at home to make room. */
  readonly left: readonly string[];
  readonly washDays: readonly string[];
  readonly dress: string;
  readonly needs: readonly string[];
  readonly degrees: number;
  readonly free: number;
  readonly occasion: string;
  /** What to write, one entry a change: these four run side by side. */
  readonly actions: readonly string[];
  readonly fields: readonly string[];
  readonly values: readonly string[];
  readonly places: readonly string[];
}

const entryWords = ({ actions, fields, values, places }: Mend): readonly string[] =>
  actions.map((action, index) => {
    const [field = '', value = '', place = ''] = [fields[index], values[index], places[index]];
    if (action === 'write') return `write “${field}: ${value}” (${place})`;
    return action === 'add' ? `add ${value} to “${field}” (${place})` : `take ${value} out of “${field}” (${place})`;
  });

/** English sentences of the plan room. */
export const plan = {
  'fixed by the stylist': () => 'Fixed by your stylist.',
  'a favourite': () => 'A favourite look.',
  'made for': (v: { needs: readonly string[] }, f: Formats) => `Made for ${f.list(v.needs.map(needWords))}.`,
  'wear on the way': (v: { layers: readonly string[]; low: number }, f: Formats) =>
    `Wear on the way: ${f.list(v.layers)}. It may be ${f.celsius(v.low)} outside.`,
  'tights for the way': (v: { piece: string }) => `Put on ${v.piece} under it before you go out.`,
  'shoes for the way': (v: { shoes: string }) => `Walk there in ${v.shoes} and change shoes there.`,
  'after the swim': (v: { layers: readonly string[]; low: number }, f: Formats) =>
    `For the way to the water, and to put on dry at once afterwards: ${f.list(v.layers)}. It may be ${f.celsius(v.low)} outside.`,
  'cool inside': (v: { coats: readonly string[] }, f: Formats) =>
    `Cool in this room once ${f.list(v.coats)} ${v.coats.length === 1 ? 'is' : 'are'} left at the door: take a wrap or a jumper.`,
  'cool without': (v: { coats: readonly string[]; low: number; activity: string }, f: Formats) =>
    `Cool for ${doing(v.activity)} at ${f.celsius(v.low)} without ${f.list(v.coats)}: keep ${v.coats.length === 1 ? 'it' : 'them'} at hand.`,
  'degrees off': (v: { degrees: number }, f: Formats) =>
    `The brief accepts ${f.plural(v.degrees, { one: 'a degree (°C)', other: '# degrees (°C)' })} off comfortable here: another layer or a shorter stay if it does not feel right.`,
  homeward: () => 'Homeward',
  'homeward on': (v: { date: string }, f: Formats) => `${f.date(v.date)}, homeward`,
  'free day': () => 'Nothing is planned: wear what you like best.',
  'homeward day': () => 'Nothing more to dress for: you are home, or on the way in what you set out in.',
  'the warmest coat': (v: { coat: string }) => `${v.coat} is the warmest coat packed.`,
  'not in the bag': (v: { grams: number }, f: Formats) => `Worn on the way, ${f.grams(v.grams)} less to carry.`,
  'first worn': (v: { pieces: readonly string[] }, f: Formats) => `Not worn before on this trip: ${f.list(v.pieces)}.`,
  'take along': (v: { layers: readonly string[] }, f: Formats) => `Take along: ${f.list(v.layers)}.`,

  'change goes on': () => 'Stay as you are.',
  'change layers only': () => 'The same clothes, with other layers.',

  'lacks dress': (v: { dress: string }) => `it does not suit ${v.dress} dress`,
  'lacks flat shoes': () => 'it has a higher heel than the brief allows',
  'too cool for it': (v: { low: number; activity: string }, f: Formats) =>
    `It is on the cool side for ${doing(v.activity)} at ${f.celsius(v.low)}.`,
  'too warm for it': (v: { high: number; activity: string }, f: Formats) =>
    `It is on the warm side for ${doing(v.activity)} at ${f.celsius(v.high)}.`,
  'fixed look misses': (v: { occasion: string; on: string }, f: Formats) =>
    `The look fixed to “${v.occasion}” on ${f.date(v.on)} does not meet all of it.`,
  'fixed look misses why': (v: { misses: readonly string[] }) => v.misses.join(' '),
  'fixed look misses mend': () => 'Add or change a piece of the fixed look, or let it be: it is planned as written.',
  'too many pieces': (v: { pieces: number; most: number }, f: Formats) =>
    `The capsule has ${f.plural(v.pieces, { one: '# piece', other: '# pieces' })}; the brief allows ${f.count(v.most)}.`,
  'too many pieces mend': () => 'Leave out what is worn least, or write a larger number under “pieces at most”.',
  'lacks warmth': (v: { low: number; activity: string }, f: Formats) =>
    `it is not warm enough for ${doing(v.activity)} at ${f.celsius(v.low)}`,
  'lacks coolness': (v: { high: number; activity: string }, f: Formats) =>
    `it is too warm for ${doing(v.activity)} at ${f.celsius(v.high)}`,
  'lacks need': (v: { need: string }) => BARE[v.need] ?? `it has nothing for ${needWords(v.need)}`,
  'lacks swimwear': () => 'there is no swimwear for it',
  'beyond travel clothes': (v: { low: number }, f: Formats) =>
    `at ${f.celsius(v.low)} no clothes in a travel bag are enough`,
  'no look at all': () => 'these pieces make no look at all',
  'still wet': (v: { pieces: readonly string[] }, f: Formats) => `${f.list(v.pieces)} would still be wet`,
  'worn out': (v: { pieces: readonly string[] }, f: Formats) =>
    `${f.list(v.pieces)} would need washing, or would still be drying`,
  'worn on another day': () => 'the same look is worn on another day',
  'fixed look is none': (v: { reasons: readonly string[] }) =>
    `the pieces fixed to it do not make a look${v.reasons.length === 0 ? '' : ` (${v.reasons.map(clause).join('; ')})`}`,

  mend: (v: Mend, f: Formats) => {
    const parts = [
      ...(v.pieces.length > 0
        ? [`pack ${f.list(v.pieces)}${v.left.length > 0 ? ` in place of ${f.list(v.left)}` : ''}`]
        : []),
      ...(v.washDays.length > 0 ? [`wash on ${f.list(v.washDays.map((day) => f.dateShort(day)))}`] : []),
      ...(v.dress === '' ? [] : [`let “${v.occasion}” be ${v.dress}`]),
      ...(v.needs.length > 0 ? [`do without ${f.list(v.needs.map(needWords))} at “${v.occasion}”`] : []),
      ...(v.degrees > 0
        ? [
            `accept “${v.occasion}” ${f.plural(v.degrees, { one: 'a degree (°C)', other: '# degrees (°C)' })} off comfortable`,
          ]
        : []),
      ...(v.free > 0 ? [`leave the look for “${v.occasion}” open`] : []),
    ];
    return `${capital(f.list(parts))}: ${f.list(entryWords(v))}.`;
  },
  'no mend found': () => 'No small change mends it, nor two together: choose other pieces or change the occasion.',
  'mend not sought': () =>
    'Too many occasions have no look to seek a mend for each: mend the first ones, and plan again.',

  'piece spoilt': (v: { piece: string; occasions: readonly string[]; perhaps: readonly string[] }, f: Formats) =>
    `If something happens to ${v.piece}, ${noLookLeft(v, f)}.`,
  'piece spoilt mend': () => 'Pack something that can take its place, or know where to find one there.',
  'rain on a dry day': (v: { date: string; occasions: readonly string[]; perhaps: readonly string[] }, f: Formats) =>
    `If it rains on ${f.date(v.date)}, ${noLookLeft(v, f)}.`,
  'rain on a dry day mend': () => 'Pack something for rain that goes with it, or know what to do indoors that day.',

  'never worn': (v: { pieces: readonly string[]; of: number }, f: Formats) =>
    `${f.count(v.pieces.length)} of ${f.plural(v.of, { one: '# packed piece', other: '# packed pieces' })} ${v.pieces.length === 1 ? 'is' : 'are'} never worn in the plan: ${f.list(few(v.pieces))}.`,
  'never worn mend': () =>
    'The wear table shows all of them: leave at home what is not meant as a reserve, or fix a look that wears it.',

  'no socks': (v: { occasions: readonly string[] }, f: Formats) =>
    `No socks are packed for the laced shoes worn to ${f.list(few(v.occasions))}.`,
  'no socks mend': () => 'Add dress socks to the capsule, or socks to the stock of sundries.',
  'no belt': (v: { occasions: readonly string[] }, f: Formats) =>
    `No belt is packed for the trousers with loops worn to ${f.list(few(v.occasions))}.`,
  'no belt mend': () => 'Add a belt or braces to the capsule, or leave it so where the trousers close without one.',

  'all served': (v: { of: number }, f: Formats) =>
    v.of === 0
      ? 'There is no occasion to dress for.'
      : f.plural(v.of, { one: 'The one occasion has its look.', other: 'All # occasions have their look.' }),
  'no look': () => 'No look serves this.',
  'nothing in reserve': () => 'Where there is nothing in reserve:',
  'plan served': (v: { served: number; of: number }, f: Formats) =>
    `${f.count(v.served)} of ${f.plural(v.of, { one: '# occasion has its look', other: '# occasions have their look' })}`,
  'plan proven': () => 'No plan with these pieces serves more.',
  'plan not proven': () => 'Best found; it is not proven that no plan serves more.',
  'pack damp': (v: { pieces: readonly string[]; journey: string; dryBy: string; at: string }, f: Formats) =>
    `Still damp for “${v.journey}”: ${f.list(v.pieces)}. Pack ${v.pieces.length === 1 ? 'it' : 'them'} in a bag of ${v.pieces.length === 1 ? 'its' : 'their'} own and hang ${v.pieces.length === 1 ? 'it' : 'them'} up on arrival: dry by ${f.weekday(v.dryBy)}, ${f.time(v.at)}.`,
  'wash and dry': (v: { piece: string; dryBy: string; at: string }, f: Formats) =>
    `${v.piece}, dry by ${f.dayAndTime(v.dryBy, v.at)}.`,

  'missing weather': (v: { occasion: string; place: string }) =>
    `There is no weather for “${v.occasion}”${v.place === '' ? '' : ` in ${v.place}`}, so its warmth is not checked.`,
  'missing weather mend': () =>
    'Write the weather of the place in the brief, or add its month to the table of normals.',
  'outside the trip': (v: { occasion: string; on: string; from: string; to: string }, f: Formats) =>
    `“${v.occasion}” is on ${f.date(v.on)}, outside the trip (${f.dateRange(v.from, v.to)}); it is not planned.`,
  'outside the trip mend': () => 'Correct its date or the dates of the trip.',
  'two at one hour': (v: { first: string; second: string; on: string }, f: Formats) =>
    `“${v.first}” and “${v.second}” are at the same hour on ${f.date(v.on)}.`,
  'two at one hour mend': () => 'Give one of them another hour, or name the travellers each is for.',
  'hours overlap': (v: { first: string; second: string; on: string; until: string; starts: string }, f: Formats) =>
    `“${v.first}” is taken to last until ${f.time(v.until)}, and “${v.second}” begins at ${f.time(v.starts)} on ${f.date(v.on)}.`,
  'hours overlap mend': (v: { first: string; starts: string }) =>
    `Write when “${v.first}” ends, at the latest until: "${v.starts}", give one of them another hour, or name the travellers each is for.`,
  'no room in the part': (v: { vague: string; part: string; fixed: string; on: string }, f: Formats) =>
    `“${v.fixed}” leaves less than two hours for “${v.vague}” in the ${v.part} of ${f.date(v.on)}.`,
  'no room in the part mend': (v: { vague: string }) =>
    `Write the hour at which “${v.vague}” begins, or name the travellers each is for.`,
  'swims without need': (v: { occasion: string }) => `“${v.occasion}” is swimming, but does not ask for swimwear.`,
  'swims without need mend': () => 'Add the need "swim".',
  'no sun': (v: { occasion: string; place: string }) =>
    `The sun does not rise in ${v.place} on the day of “${v.occasion}”: it asks for sun, and there is none.`,
  'no sun mend of the need': () => 'Take the need "sun" away; plan for darkness and ice instead.',
  'no sun mend of the place': () => 'Write “where: outdoors shade”; plan for darkness and ice instead.',
  'sun is down': (v: { occasion: string }) => `“${v.occasion}” asks for sun, but the sun is down by then.`,
  'sun is down mend of the need': () => 'Take the need "sun" away, or correct the hour or the time zone of the place.',
  'sun is down mend of the place': () =>
    'Write “where: outdoors shade”, or correct the hour or the time zone of the place.',
  'cold swim': (v: { occasion: string; low: number }, f: Formats) =>
    `“${v.occasion}” is a swim in the open in air of ${f.celsius(v.low)}: unless the water is heated, it is a danger within minutes.`,
  'cold swim mend': () =>
    'Move it indoors or to a warmer hour, or plan it only where lifeguards watch over it, brief and never alone, with a doctor’s word first; pack a towel and dry, warm clothes for straight after.',
  'too cold for clothes': (v: { occasion: string; low: number }, f: Formats) =>
    `“${v.occasion}” may be as cold as ${f.celsius(v.low)}: no travel look serves.`,
  'too cold for clothes mend': () =>
    'Leave it out, or make it short, with breaks indoors, in cold-weather clothing hired there and with people who know the place. Follow local warnings.',
  'too cold to keep still': (v: { occasion: string; low: number; activity: string }, f: Formats) =>
    `“${v.occasion}” may be as cold as ${f.celsius(v.low)}: no travel look serves for ${doing(v.activity)} in such cold.`,
  'too cold to keep still mend': () =>
    'No piece of the wardrobe is warm enough. Make it shorter, with breaks indoors, and keep moving; or buy or hire clothing made for such cold. Follow local warnings.',
  'real clo may help': (v: { piece: string }) =>
    `The warmth of ${v.piece} is only estimated: where its label or maker gives it in clo, writing that as “clo” in its file may help.`,
  'wash day outside': (v: { on: string }, f: Formats) => `The wash day ${f.date(v.on)} is outside the trip.`,
  'wash day outside mend': () => 'Correct its date.',
  'wash day too late': (v: { on: string }, f: Formats) =>
    `Nothing is worn after the wash day ${f.date(v.on)}: it does not help.`,
  'wash day too late mend': () => 'Wash earlier.',
  'nothing dries': (
    v: {
      on: string;
      hung: string;
      occasion: string;
      day: string;
      at: string;
      piece: string;
      dryBy: string;
      dryAt: string;
    },
    f: Formats,
  ) =>
    `Nothing washed on ${f.date(v.on)} and hung up at ${f.time(v.hung)} is dry for “${v.occasion}” (${f.dayAndTime(v.day, v.at)}), the last there is to dress for: ${v.piece}, the quickest, takes until ${f.dayAndTime(v.dryBy, v.dryAt)}.`,
  'nothing dries mend': (v: { latest: string }, f: Formats) =>
    v.latest === ''
      ? 'Take the wash day out.'
      : `Wash on ${f.dateShort(v.latest)} at the latest, or take the wash day out.`,
  'some never dry': (
    v: { on: string; pieces: readonly string[]; occasion: string; day: string; at: string },
    f: Formats,
  ) =>
    `Washed on ${f.date(v.on)}, ${f.list(few(v.pieces))} would still be damp at “${v.occasion}” (${f.dayAndTime(v.day, v.at)}), the last there is to dress for.`,
  'some never dry mend': (v: { pieces: number; latest: string }, f: Formats) =>
    `Leave ${v.pieces === 1 ? 'it' : 'them'} out of that wash${v.latest === '' ? '' : `, or wash on ${f.dateShort(v.latest)} at the latest`}.`,
  'packed damp': (
    v: { on: string; pieces: readonly string[]; occasion: string; day: string; at: string },
    f: Formats,
  ) =>
    `Washed on ${f.date(v.on)}, ${f.list(few(v.pieces))} will still be damp when “${v.occasion}” sets off (${f.dayAndTime(v.day, v.at)}).`,
  'packed damp mend': () => 'Wash a day earlier, or carry a waterproof bag for what is still damp.',
  'seen again': (v: { clothes: readonly string[]; occasions: readonly string[] }, f: Formats) =>
    `The same clothes come again, ${f.list(v.clothes)}: at ${f.list(v.occasions)}.`,
  'seen at': (v: { occasion: string; on: string }, f: Formats) => `“${v.occasion}” on ${f.dateShort(v.on)}`,
  'seen again mend': () =>
    'Pack one more top, bottom or dress that suits them, or fix looks of your own to these occasions.',
  'coat in a room': (v: { occasion: string; on: string; coats: readonly string[] }, f: Formats) =>
    `The look for “${v.occasion}” on ${f.date(v.on)} is cool once ${f.list(v.coats)} ${v.coats.length === 1 ? 'is' : 'are'} left at the door.`,
  'coat in a room mend': () =>
    'Add a wrap, cardigan or jumper that stays on indoors, or write "degrees off" for the occasion.',
  'coat in a room mend with': (v: { layers: readonly string[] }, f: Formats) =>
    `Packed, goes with it and stays on indoors: ${f.list(v.layers)}.`,
  unserved: (v: { occasion: string; on: string }, f: Formats) => `No look serves “${v.occasion}” on ${f.date(v.on)}.`,
  'nearest lacks': (v: { look: readonly string[]; lacks: readonly string[] }, f: Formats) =>
    `The nearest is ${f.list(v.look)}${v.lacks.length > 0 ? `, but ${f.list(v.lacks)}` : ''}.`,
  'what is lacking': (v: { lacks: readonly string[] }, f: Formats) => `${capital(f.list(v.lacks))}.`,
} satisfies Record<string, (values: never, formats: Formats) => string>;
