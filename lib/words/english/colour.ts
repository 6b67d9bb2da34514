import type { Formats } from '../formats.ts';
import { capital } from '../letters.ts';

interface TwoColours {
  readonly one: string;
  readonly two: string;
}

/** "Rust with rust" reads badly; two colours of one name are said once. */
const pair = ({ one, two }: TwoColours): string => (one === two ? `two tones of ${one}` : `${one} and ${two}`);

interface Differing extends TwoColours {
  readonly direction: string;
}

/** "Brighter" could be taken for lighter; it is chroma that is meant. */
const way = ({ direction }: Differing): string => (direction === 'brighter' ? 'more colourful' : direction);

interface Addition {
  readonly colour: string;
  readonly as: string;
  readonly count: number;
  readonly of: number;
}

interface AdditionOfPieces extends Addition {
  readonly pieces: readonly string[];
}

const article = (word: string): string => (/^[aeiou]/i.test(word) ? `an ${word}` : `a ${word}`);

const others = ({ as }: Addition): { one: string; other: string } =>
  as === 'top' ? { one: '# bottom', other: '# bottoms' } : { one: '# top', other: '# tops' };

const goesWith = (v: Addition, f: Formats): string => {
  const whole = f.plural(v.of, others(v));
  const would = `${article(`${v.colour} ${v.as}`)} would go with`;
  if (v.count < v.of) return `${would} ${f.count(v.count)} of ${whole}`;
  const other = v.as === 'top' ? 'bottom' : 'top';
  if (v.of <= 2) return v.of === 1 ? `${would} the only ${other}` : `${would} both ${other}s`;
  return `${would} all ${whole}`;
};

const VISIONS: Readonly<Record<string, string>> = {
  protanopia: 'no red cones (protanopia)',
  deuteranopia: 'no green cones (deuteranopia)',
  tritanopia: 'no blue cones (tritanopia)',
};

interface Template {
  readonly type: string;
  readonly first: readonly string[];
  readonly second: readonly string[];
  readonly outside: readonly string[];
}

/** How the colours lie on the wheel, by hue template; the groups come as lists that were said already. */
const TEMPLATES: Readonly<Record<string, (first: string, second: string, many: boolean) => string>> = {
  i: (first, _, many) => (many ? `${first} lie close together on the colour wheel` : `${first} keeps one hue`),
  I: (first, second) => `${first} and, opposite on the colour wheel, ${second} keep to two hues`,
  V: (first, _, many) => `${first} ${many ? 'keep' : 'keeps'} to a third of the colour wheel`,
  L: (first, second) => `${first} and, farther round the colour wheel, ${second} make two groups`,
  'L mirrored': (first, second) => `${first} and, farther round the colour wheel, ${second} make two groups`,
  Y: (first, second, many) =>
    `${first} ${many ? 'keep' : 'keeps'} to one side of the colour wheel, with ${second} as the counterpoint opposite`,
  T: (first) => `${first} keep to one half of the colour wheel`,
  X: (first, second, many) => `${first} ${many ? 'face' : 'faces'} ${second} across the colour wheel`,
};

const SCHEMES: Readonly<Record<string, string>> = {
  'tone on tone': 'lighter and darker tones of it',
  neighbouring: 'its neighbours on the colour wheel',
  split: 'the two colours beside its opposite',
  opposite: 'its opposite on the colour wheel',
  triad: 'the two colours a third of the wheel away',
};

/** Relations of two colours whose own names are of the trade. */
const RELATIONS: Readonly<Record<string, string>> = {
  'near miss': 'nearly alike',
  split: 'nearly opposite',
  triad: 'a third apart',
  'shared colour': 'a colour in common',
};

/** English sentences of the colour room. */
export const colour = {
  'metal goes': (v: TwoColours) => capital(`${pair(v)}: metal goes with everything.`),
  same: (v: TwoColours) =>
    capital(v.one === v.two ? `one colour throughout, ${v.one}.` : `${v.one} and ${v.two} are the same to the eye.`),
  'near darks': (v: TwoColours) => capital(`${pair(v)} are two different darks: side by side by daylight it shows.`),
  'near neutrals': (v: TwoColours) =>
    capital(`${pair(v)} nearly match: choose the same one, or a clear step lighter or darker.`),
  'near miss': (v: TwoColours) =>
    capital(`${pair(v)} nearly match, and that looks like a mistake: choose the same one, or a clear step away.`),
  'two neutrals': (v: TwoColours) => capital(`${pair(v)} are both neutral.`),
  'neutral goes': (v: { neutral: string; colour: string }) =>
    capital(`${v.neutral} is a neutral and lets ${v.colour} speak.`),
  'tone on tone': (v: TwoColours) => capital(`${pair(v)}: tone on tone, one hue lighter and darker.`),
  neighbouring: (v: TwoColours) => capital(`${pair(v)} are neighbours on the colour wheel.`),
  contrast: (v: TwoColours) => capital(`${pair(v)} are a contrast that works because one of them keeps back.`),
  triad: (v: TwoColours) => capital(`${pair(v)} stand a third of the colour wheel apart: lively, yet balanced.`),
  split: (v: TwoColours) => capital(`${pair(v)} are nearly opposite on the colour wheel: a strong pair.`),
  opposite: (v: TwoColours) => capital(`${pair(v)} are opposites on the colour wheel: each makes the other glow.`),
  'awkward clash': (v: TwoColours) =>
    capital(`${pair(v)} are equally strong and neither near nor opposite: they compete.`),
  'vivid clash': (v: TwoColours) =>
    capital(`${pair(v)} are both vivid and equally light: the edge between them flickers.`),
  'shared colour': (v: TwoColours) =>
    v.one === v.two ? capital(`${v.one} is in both and ties them.`) : capital(`${pair(v)} pick each other up.`),
  'same to the eye': (v: TwoColours) => capital(`${pair(v)}: the same to the eye.`),
  'nearly the same': (v: Differing) =>
    capital(
      `${v.two} is nearly ${v.one}, ${v.direction === 'another hue' ? 'with a touch of another hue' : `barely ${way(v)}`}.`,
    ),
  'a shade apart': (v: Differing) =>
    capital(
      v.direction === 'another hue'
        ? `${v.two} leans to another hue than ${v.one}.`
        : `${v.two} is a shade ${way(v)} than ${v.one}.`,
    ),
  'clearly different': (v: Differing) =>
    capital(
      v.direction === 'another hue'
        ? `${v.two} is clearly another colour than ${v.one}.`
        : `${v.two} is clearly ${way(v)} than ${v.one}.`,
    ),
  'far apart': (v: Differing) => capital(`${pair(v)} are far apart.`),

  'palette base': (v: { colours: readonly string[] }, f: Formats) =>
    `Seen most in these clothes: ${f.list(v.colours)}.`,
  'palette support': (v: { colours: readonly string[] }, f: Formats) =>
    capital(`${f.list(v.colours)} ${v.colours.length === 1 ? 'supports' : 'support'} it.`),
  'palette neutrals': (v: { colours: readonly string[] }, f: Formats) =>
    capital(
      `${f.list(v.colours)} ${v.colours.length === 1 ? 'is a quiet neutral beside them' : 'are quiet neutrals beside them'}.`,
    ),
  'palette metal': (v: { colours: readonly string[] }, f: Formats) =>
    capital(
      `${f.list(v.colours)} ${v.colours.length === 1 ? 'is the metal worn with it' : 'are the metals worn with it'}.`,
    ),
  'palette accent': (v: { colours: readonly string[] }, f: Formats) =>
    capital(`${f.list(v.colours)} ${v.colours.length === 1 ? 'is the accent' : 'are the accents'}.`),
  'palette pairs': (v: { going: number; of: number; nearly: number }, f: Formats) =>
    v.going === v.of
      ? `Every top goes with every bottom by colour: ${f.plural(v.of, { one: '# pair', other: '# pairs' })}.`
      : `${f.count(v.going)} of ${f.plural(v.of, { one: '# pair', other: '# pairs' })} of top and bottom go together by colour.${v.nearly === 0 ? '' : ` ${f.plural(v.nearly, { one: '# more nearly matches', other: '# more nearly match' })}, which shows by daylight.`}`,
  'palette lonely': (v: { pieces: readonly string[] }, f: Formats) =>
    `${f.list(v.pieces)} ${v.pieces.length === 1 ? 'goes' : 'go'} with nothing else here by colour.`,
  'cohesion close': () => 'The colours belong together.',
  'cohesion good': () => 'The colours go well together.',
  'cohesion loose': () => 'The colours go together, loosely.',
  'cohesion apart': () => 'The colours pull apart.',
  template: (v: Template, f: Formats) => {
    const stray = `${f.list(v.outside)} ${v.outside.length === 1 ? 'strays' : 'stray'} from the rest of the palette`;
    const kept = TEMPLATES[v.type]?.(f.list(v.first), f.list(v.second), v.first.length > 1);
    if (kept === undefined) return 'The palette is all neutrals.';
    if (v.first.length === 0) return capital(`${stray}.`);
    return capital(`apart from the neutrals, ${kept}${v.outside.length === 0 ? '' : `; ${stray}`}.`);
  },
  'template one': (v: { colour: string }) => capital(`${v.colour} is the one colour among neutrals.`),
  'addition goes': (v: Addition, f: Formats) => capital(`${goesWith(v, f)}.`),
  'addition ties': (v: AdditionOfPieces, f: Formats) =>
    capital(`${goesWith(v, f)} and pick up the colours of ${f.list(v.pieces)}.`),
  'addition frees': (v: AdditionOfPieces, f: Formats) =>
    capital(`${goesWith(v, f)} and give ${f.list(v.pieces)} something to go with.`),
  'suggested palette': (
    v: { scheme: string; seed: string; colours: readonly string[]; bases: readonly string[] },
    f: Formats,
  ) => capital(`${v.seed} with ${SCHEMES[v.scheme] ?? ''}, ${f.list(v.colours)}, on a base of ${f.list(v.bases)}.`),

  lonely: (v: { piece: string }) => `${v.piece} goes with nothing else in the capsule by colour.`,
  'lonely why': (v: { colour: string }) => capital(`${v.colour} clashes or nearly matches wherever it is tried.`),
  'lonely mend': () => 'Leave it at home, or add a neutral to wear it with.',
  'lonely mend by': (v: { colour: string; as: string }) =>
    `Leave it at home, or add ${article(`${v.colour} ${v.as}`)}.`,
  'too alike': (v: { one: string; two: string; place: string; word: string }) =>
    `${v.one} and ${v.two} are ${v.word === 'nearly the same' ? 'nearly the same colour' : 'the same colour to the eye'}, and both are worn as ${v.place === 'swim' ? 'swimwear' : v.place}.`,
  'too alike mend': () => 'For more variety swap one for a lighter or darker shade.',
  'near miss pair': (v: { top: string; bottom: string }) => `${v.top} with ${v.bottom} nearly match.`,
  'few pairs': (v: { going: number; of: number }, f: Formats) =>
    `Only ${f.count(v.going)} of ${f.plural(v.of, { one: '# pair', other: '# pairs' })} of top and bottom go together by colour.`,
  'no neutral bottom': () => 'No bottom is a neutral, so each top has to be matched anew.',
  'no neutral bottom mend': () => 'Pack at least one bottom in navy, grey, camel or another neutral.',
  refused: (v: { piece: string; colour: string; avoided: string }) =>
    v.colour === v.avoided
      ? `${v.piece} is ${v.colour}, which the client does not wear.`
      : `${v.piece} has ${v.colour}, and the client does not wear ${v.avoided}.`,
  'refused mend': () => 'Choose another piece.',
  'outside mood': (v: { piece: string; colour: string }) => `${v.piece} brings ${v.colour}, which is not in the mood.`,
  'outside mood mend': (v: { mood: readonly string[] }, f: Formats) =>
    `Keep to ${f.list(v.mood)}, or add the colour to the mood.`,
  'hard to tell': (v: { one: string; two: string; visions: readonly string[] }, f: Formats) =>
    `${v.one} and ${v.two} look alike to people with ${f.either(v.visions.map((vision) => VISIONS[vision] ?? vision))}.`,
  'hard to tell from': (v: { piece: string; others: readonly string[]; visions: readonly string[] }, f: Formats) =>
    `${v.piece} looks like ${f.list(v.others)} to people with ${f.either(v.visions.map((vision) => VISIONS[vision] ?? vision))}.`,
  'hard to tell in': (v: { looks: readonly string[] }, f: Formats) =>
    `They are worn together in ${v.looks.length === 1 ? 'look' : 'looks'} ${f.list(v.looks)}.`,
  'hard to tell mend': () =>
    'Their names stand with it among the looks, on its day and on its page; name them too wherever else you show it.',

  'role name': (v: { role: string }) => capital(v.role),
  'relation name': (v: { relation: string }) => RELATIONS[v.relation] ?? v.relation,
  'vision plain': (v: { vision: string }) => VISIONS[v.vision] ?? v.vision,
  'family name': (v: { family: string }) => v.family,
} satisfies Record<string, (values: never, formats: Formats) => string>;
