import type { Formats } from '../formats.ts';

const pieces = (count: number, f: Formats): string => f.plural(count, { one: '# piece', other: '# pieces' });
const times = (count: number, f: Formats): string =>
  count === 2 ? 'twice' : f.plural(count, { one: 'once', other: '# times' });

/** A figure of one proposal beside the nearest of the others; `ahead` is 1 where it is the best, 0 where it is the worst. */
interface Versus {
  readonly mine: number;
  readonly theirs: number;
  readonly ahead: number;
}
const versusLooks = ({ mine, theirs, ahead }: Versus, level: string, f: Formats): string =>
  ahead === 1
    ? `makes ${f.count(mine)} ${level} looks; the next best makes ${f.count(theirs)}`
    : `makes ${f.count(mine)} ${level} looks; each of the others makes at least ${f.count(theirs)}`;

/** English sentences of the capsule room. */
export const capsule = {
  'line under': ({ what, wanted, has }: { what: string; wanted: number; has: number }, f) =>
    `The list asks for ${pieces(wanted, f)} under “${what}”; there ${has > 1 ? 'are' : 'is'} ${has === 0 ? 'none' : f.count(has)}.`,
  'line under mend': ({ what, under }: { what: string; under: number }, f) =>
    `Add ${f.plural(under, { one: '# more piece', other: '# more pieces' })} for “${what}”.`,
  'line over': ({ what, wanted, over }: { what: string; wanted: number; over: readonly string[] }, f) =>
    `The list asks for ${pieces(wanted, f)} under “${what}”; ${f.list(over)} ${over.length === 1 ? 'is' : 'are'} beyond that.`,
  'line over mend': () => 'Leave at home what is beyond the list, or let the list ask for more.',
  unlisted: ({ pieces: names }: { pieces: readonly string[] }, f) =>
    `${f.list(names)} ${names.length === 1 ? 'is' : 'are'} on no line of the list.`,
  'silhouette repeats': ({ pieces: names }: { pieces: readonly string[] }, f) =>
    `${f.list(names)} have the same shape.`,
  'silhouette repeats mend': () => 'Swap one for another cut or length; it will make the looks more different.',
  'few colours': ({ colours }: { colours: readonly string[] }, f) => `Everything is ${f.list(colours)}.`,
  'few colours mend': () => 'Bring one more colour, or a lighter or darker shade.',
  'many colours': ({ colours }: { colours: readonly string[] }, f) =>
    `There are ${f.count(colours.length)} different colours: ${f.list(colours)}.`,
  'many colours mend': ({ most }: { most: number }, f) => `Keep to ${f.count(most)} or so, and more will go together.`,
  'few separates': ({ separates, onePieces }: { separates: number; onePieces: number }, f) =>
    `${f.plural(onePieces, { one: '# dress', other: '# dresses' })} to ${f.plural(separates, { one: '# separate', other: '# separates' })}.`,
  'few separates mend': () => 'Swap a dress for a top or a bottom: separates make more looks.',
  'no pattern': () => 'All of it is neutral and plain.',
  'no pattern mend': () => 'Bring one pattern, or a bold scarf, bag or piece of jewellery in its stead.',
  'one outer length': ({ long, pieces: names }: { long: number; pieces: readonly string[] }, f) =>
    `${f.list(names)} are ${names.length === 2 ? 'both' : 'all'} ${long === 1 ? 'long' : 'short'}.`,
  'one outer length mend': ({ long }: { long: number }) =>
    `Swap one for a ${long === 1 ? 'short' : 'long'} one: skirts and trousers ask for different lengths.`,
  'no flat shoes': () => 'No pair of shoes is flat and made for long walking.',
  'no flat shoes mend': () => 'Bring a flat pair that the client can walk in all day.',
  'no dressier shoes': () => 'All the shoes are as dressy as each other.',
  'no dressier shoes mend': () => 'Bring one dressier pair, with a heel that can be managed.',
  swimsuits: ({ has, swims }: { has: number; swims: number }, f) =>
    `There is swimming ${times(swims, f)} on this trip, and ${has === 0 ? 'no swimwear' : 'one piece of swimwear'}.`,
  'swimsuits mend': ({ wanted }: { wanted: number }) =>
    wanted === 1 ? 'Pack one.' : 'Pack two, so that one dries while the other is worn.',

  'let in': ({ why, pieces: names, lacking }: { why: string; pieces: readonly string[]; lacking: number }, f) =>
    `Let in ${f.count(lacking)} of the pieces that are ${why}: ${f.either(names)}.`,
  'add to wardrobe': ({ lacking, kinds, what }: { lacking: number; kinds: readonly string[]; what: string }, f) =>
    `Add ${pieces(lacking, f)} to the wardrobe (${f.either(kinds)}), or ask for fewer under “${what}”.`,
  'line unfillable': ({ what, wanted, lacking }: { what: string; wanted: number; lacking: number }, f) =>
    `The list asks for ${pieces(wanted, f)} under “${what}”; ${lacking === wanted ? 'none' : `only ${f.count(wanted - lacking)} of them`} can be found.`,
  'list too long': ({ listed, most }: { listed: number; most: number }, f) =>
    `The list asks for ${pieces(listed, f)}, and at most ${f.count(most)} may be packed.`,
  'list too long mend': ({ over }: { over: number }, f) =>
    `Take ${f.count(over)} off the list, or allow ${f.count(over)} more.`,
  'too heavy': ({ least, most, kept }: { least: number; most: number; kept: number }, f) =>
    `Even the lightest pieces that fill the list${kept > 0 ? ' beside those to keep' : ''} put ${f.grams(least)} in the bags; ${f.grams(most)} are allowed.`,
  'too heavy mend': ({ over, line }: { over: number; line: string }, f) =>
    `Allow ${f.grams(over)} more${line === '' ? ', or take two or more pieces off the list' : `, or ask for one fewer of "${line}"`}.`,
  'too full': ({ least, most, kept }: { least: number; most: number; kept: number }, f) =>
    `Even the smallest pieces that fill the list${kept > 0 ? ' beside those to keep' : ''} take ${f.litres(least)}; the bags hold ${f.litres(most)}.`,
  'too full mend': ({ over, line }: { over: number; line: string }, f) =>
    `Take ${f.litres(over)} more of bag${line === '' ? ', or two or more pieces off the list' : `, or ask for one fewer of "${line}"`}.`,
  'nothing within': ({ grams, litres }: { grams: number; litres: number }, f) =>
    `No bag was found that keeps to weight and volume together; the nearest takes ${f.grams(grams)} and ${f.litres(litres)}.`,
  'nothing within mend': ({ overGrams, overLitres }: { overGrams: number; overLitres: number }, f) =>
    `Allow ${f.list([...(overGrams > 0 ? [f.grams(overGrams)] : []), ...(overLitres > 0 ? [f.litres(overLitres)] : [])])} more, or ask for one piece fewer.`,
  'nothing left': ({ wardrobe }: { wardrobe: number }, f) =>
    wardrobe === 0
      ? 'The wardrobe is empty.'
      : `All ${f.count(wardrobe)} pieces of the wardrobe are left out or refused.`,
  'nothing left mend': () => 'Let some pieces in again, or widen the palette.',
  'keep unknown': ({ piece }: { piece: string }) => `The wardrobe has no piece "${piece}" to keep.`,
  'keep and leave': ({ piece }: { piece: string }) => `"${piece}" is to be kept and to be left out.`,
  'keep without place': ({ pieces: names }: { pieces: readonly string[] }, f) =>
    `The list has no place for ${f.list(names)}.`,
  'keep without place mend': ({ lacking }: { lacking: number }, f) =>
    `Allow ${f.plural(lacking, { one: '# piece', other: '# pieces' })} more, or keep fewer.`,
  'too many looks': ({ most }: { most: number }, f) =>
    `This list lets in so much of the wardrobe that it makes more than ${f.count(most)} layered looks, too many to choose from.`,
  'too many looks mend': () => 'Give the mood a palette, or shorten the kinds on the list.',
  'fewer proposals': ({ found }: { found: number }, f) =>
    found === 1
      ? 'There is no second proposal that differs enough from the first.'
      : `Only ${f.count(found)} proposals differ enough from one another.`,
  'no look in wardrobe': ({ occasion, lacks }: { occasion: string; lacks: readonly string[] }, f) =>
    `Nothing that fills the list makes a look for ${occasion}.${lacks.length > 0 ? ` Of the nearest: ${f.list(lacks)}.` : ''}`,
  'no room for look': ({ occasion, pieces: names }: { occasion: string; pieces: readonly string[] }, f) =>
    `The wardrobe has a look for ${occasion}, but the list has no room for all of it: ${f.list(names)} stayed out.`,
  'kept though refused': ({ pieces: names }: { pieces: readonly string[] }, f) =>
    `${f.list(names)} ${names.length === 1 ? 'is' : 'are'} kept as you asked, though the brief refuses the cloth: no occasion is dressed with ${names.length === 1 ? 'it' : 'them'}.`,

  'versus occasions': ({ mine, theirs, ahead }: Versus, f) =>
    ahead === 1
      ? `dresses ${f.count(mine)} occasions; the next best dresses ${f.count(theirs)}`
      : `dresses ${f.count(mine)} occasions; each of the others dresses at least ${f.count(theirs)}`,
  'versus core looks': (values: Versus, f) => versusLooks(values, 'core', f),
  'versus layered looks': (values: Versus, f) => versusLooks(values, 'layered', f),
  'versus weight': ({ mine, theirs, ahead }: Versus, f) =>
    ahead === 1
      ? `the lightest: ${f.grams(mine)} in the bags, the next ${f.grams(theirs)}`
      : `the heaviest: ${f.grams(mine)} in the bags, the next ${f.grams(theirs)}`,
  'versus colours': ({ mine, theirs, ahead }: Versus, f) =>
    `${ahead === 1 ? 'more' : 'fewer'} colours: ${f.count(mine)}, the next ${f.count(theirs)}`,
  'versus shapes': ({ mine, theirs, ahead }: Versus, f) =>
    `${ahead === 1 ? 'more' : 'fewer'} different shapes: ${f.count(mine)}, the next ${f.count(theirs)}`,
  'versus prints': ({ mine, theirs, ahead }: Versus, f) =>
    `${ahead === 1 ? 'more' : 'fewer'} prints: ${f.count(mine)}, the next ${f.count(theirs)}`,
  'versus findings': ({ mine, theirs, ahead }: Versus, f) =>
    `${ahead === 1 ? 'less' : 'more'} to mend: ${f.plural(mine, { one: '# thing', other: '# things' })}, the next ${f.count(theirs)}`,
  'chosen for': ({ name, wardrobe }: { name: string; wardrobe: string }) =>
    `For ${name}, from the wardrobe "${wardrobe}".`,
  'unlike first': ({ brings, leaves }: { brings: readonly string[]; leaves: readonly string[] }, f) =>
    `unlike proposal 1: ${f.list(brings)}${leaves.length > 0 ? ` instead of ${f.list(leaves)}` : ''}`,
  bound: ({ looks, gap, bound, level }: { looks: number; gap: number; bound: number; level: string }, f) =>
    gap === 0
      ? `${f.count(looks)} ${level} looks, the most possible: no bag that fills this list and dresses these occasions makes more`
      : `${f.count(looks)} ${level} looks, at most ${f.percent(Math.ceil(gap * 100) / 100)} from the best possible: no bag that fills this list and dresses these occasions makes more than ${f.count(bound)}`,

  'why tops': ({ days, washes, stretch, under }: { days: number; washes: number; stretch: number; under: number }, f) =>
    `${f.plural(days, { one: '# day', other: '# days' })}, ${washes === 0 ? 'no wash day' : f.plural(washes, { one: '# wash day', other: '# wash days' })}: at most ${f.count(stretch)} days on what is clean.${under > 0 ? ' One of them goes under another in the frost.' : ''}`,
  'why bottoms': ({ tops }: { tops: number }, f) =>
    `Fewer than the ${f.count(tops)} tops: bottoms are worn more often between washes.`,
  'why dresses': ({ formal }: { formal: number }, f) =>
    formal === 0
      ? 'One for an evening.'
      : f.plural(formal, { one: 'One evening asks for it.', other: '# evenings ask for it.' }),
  'why swimwear': ({ swims, swimwear }: { swims: number; swimwear: number }, f) =>
    swimwear > 1
      ? `There is swimming ${times(swims, f)} on this trip, too close together for one to dry: two, so that one dries while the other is worn.`
      : `There is swimming ${times(swims, f)} on this trip${swims > 1 ? ', with time to dry between' : ''}.`,
  'why layers': () => 'For indoors, the evening, and the journey.',
  'why outers': ({ lowC, known, rainPercent }: { lowC: number; known: number; rainPercent: number }, f) =>
    known === 0
      ? 'The weather is not known yet: one short and one long.'
      : `Down to ${f.celsius(lowC)}, rain ${f.percent(rainPercent / 100)}.`,
  'why shoes': ({ rough, snow, formal }: { rough: number; snow: number; formal: number }) =>
    snow === 1
      ? 'One pair for snow and ice, one to walk in, one dressier.'
      : rough === 1 && formal > 0
        ? 'One pair for rough ground, one to walk in, one to dress up.'
        : 'One flat pair to walk in, one dressier.',
  'why legwear': () => 'Thermal leggings under trousers, socks in boots; one pair dries while the other is worn.',
  'why warm things': ({ lowC, known, snow }: { lowC: number; known: number; snow: number }, f) =>
    known === 1 ? `Down to ${f.celsius(lowC)}${snow === 1 ? ', and snow' : ''}.` : 'There is snow on this trip.',
  'why bag': () => 'One for the day.',
  'why shade': () => 'The sun asks for both.',
  'why finish': () => 'Earrings, a scarf, a belt: small, light, and they change a look.',

  'same print': ({ one, two, pattern }: { one: string; two: string; pattern: string }) =>
    `${one} and ${two} are both ${pattern}: one is enough in a picture.`,
  'clash in picture': ({ one, two }: { one: string; two: string }) => `${one} and ${two} do not sit well side by side.`,
  answers: ({ one, two }: { one: string; two: string }) => `${one} answers ${two}.`,
  'sits well': ({ colours }: { colours: readonly string[] }, f) => `In the picture: ${f.list(colours)}.`,
  'lend any size': () => 'fits anyone',
  'lend same size': ({ size }: { size: string }) => `is in size ${size}, which both wear`,
} satisfies Record<string, (values: never, formats: Formats) => string>;
