import type { english } from '../english/index.ts';
import type { Formats } from '../formats.ts';
import type { Translation } from '../translation.ts';
import { colourWord, colourWords } from './colours.ts';
import { colourRelation, colourRole, hueFamily, place } from './glossary.ts';
import { forms, sentence } from './sentence.ts';

interface TwoColours {
  readonly one: string;
  readonly two: string;
}

interface Addition {
  readonly colour: string;
  readonly as: string;
  readonly count: number;
  readonly of: number;
}

/** Two colours of one name are said once; the verb after it is in the plural either way. */
const pair = ({ one, two }: TwoColours): string =>
  one === two ? `zwei Töne ${colourWord(one)}` : `${colourWord(one)} und ${colourWord(two)}`;

const PAIRS = forms('Kombination', 'Kombinationen');

/** "Oberteil in Rost": the colour follows, so that it needs no ending. */
const added = ({ colour, as }: Pick<Addition, 'colour' | 'as'>): string => `ein ${place(as)} in ${colourWord(colour)}`;

const goesWith = (v: Addition, f: Formats): string => {
  const [one, other] = v.as === 'top' ? ['Unterteil', 'Unterteilen'] : ['Oberteil', 'Oberteilen'];
  const whole = f.plural(v.of, { one: `# ${one}`, other: `# ${other}` });
  if (v.count === v.of && v.of <= 2) return v.of === 1 ? `passt zum einzigen ${one}` : `passt zu beiden ${other}`;
  if (v.count === v.of) return `passt zu allen ${whole}`;
  return `passt zu ${f.count(v.count)} von ${whole}`;
};

const DIRECTIONS: Readonly<Record<string, string>> = {
  lighter: 'heller',
  darker: 'dunkler',
  brighter: 'kräftiger',
  quieter: 'gedämpfter',
};
const direction = (word: string): string => DIRECTIONS[word] ?? word;

const VISIONS: Readonly<Record<string, string>> = {
  protanopia: 'ohne Rotzapfen (Protanopie)',
  deuteranopia: 'ohne Grünzapfen (Deuteranopie)',
  tritanopia: 'ohne Blauzapfen (Tritanopie)',
};
const vision = (word: string): string => VISIONS[word] ?? word;

/** How the colours lie on the wheel, by hue template; the groups come as lists that were said already. */
const TEMPLATES: Readonly<Record<string, (first: string, second: string, many: boolean) => string>> = {
  i: (first, _, many) => (many ? `${first} liegen im Farbkreis dicht beisammen` : `${first} bleibt bei einem Ton`),
  I: (first, second) => `${first} und gegenüber im Farbkreis ${second} bleiben bei zwei Tönen`,
  V: (first, _, many) => `${first} ${many ? 'bleiben' : 'bleibt'} in einem Drittel des Farbkreises`,
  L: (first, second) => `${first} und weiter herum im Farbkreis ${second} bilden zwei Gruppen`,
  'L mirrored': (first, second) => `${first} und weiter herum im Farbkreis ${second} bilden zwei Gruppen`,
  Y: (first, second, many) =>
    `${first} ${many ? 'bleiben' : 'bleibt'} auf einer Seite des Farbkreises, gegenüber setzt ${second} den Gegenpunkt`,
  T: (first) => `${first} bleiben in einer Hälfte des Farbkreises`,
  X: (first, second, many) => `${first} ${many ? 'liegen' : 'liegt'} im Farbkreis gegenüber von ${second}`,
};

const SCHEMES: Readonly<Record<string, string>> = {
  'tone on tone': 'hellere und dunklere Töne davon',
  neighbouring: 'die Nachbarn im Farbkreis',
  split: 'die zwei Farben neben der Gegenfarbe',
  opposite: 'die Gegenfarbe',
  triad: 'die zwei Farben je ein Drittel des Farbkreises weiter',
};

/** German sentences of the colour room. */
export const colour = {
  'metal goes': (v) => sentence(`${pair(v)}: Metall passt zu allem`),
  same: (v) =>
    sentence(
      v.one === v.two ? `Durchgehend eine Farbe: ${colourWord(v.one)}` : `${pair(v)} sind für das Auge dieselbe Farbe`,
    ),
  'near darks': (v) =>
    sentence(`${pair(v)} sind zwei verschiedene dunkle Farben: nebeneinander sieht man es bei Tageslicht`),
  'near neutrals': (v) =>
    sentence(`${pair(v)} sind fast gleich: dieselbe Farbe wählen oder eine deutlich hellere oder dunklere`),
  'near miss': (v) =>
    sentence(
      `${pair(v)} sind fast gleich, und das sieht nach Versehen aus: dieselbe Farbe wählen oder eine deutlich andere`,
    ),
  'two neutrals': (v) => sentence(`${pair(v)}: beide neutral`),
  'neutral goes': (v) =>
    sentence(
      `${colourWord(v.neutral)} ist neutral und überlässt den Auftritt der anderen Farbe: ${colourWord(v.colour)}`,
    ),
  'tone on tone': (v) => sentence(`${pair(v)}: Ton in Ton, einmal heller, einmal dunkler`),
  neighbouring: (v) => sentence(`${pair(v)} sind Nachbarn im Farbkreis`),
  contrast: (v) => sentence(`${pair(v)}: ein Kontrast, der gelingt, weil sich eine der beiden zurücknimmt`),
  triad: (v) => sentence(`${pair(v)} liegen ein Drittel des Farbkreises auseinander: lebhaft und doch ausgewogen`),
  split: (v) => sentence(`${pair(v)} liegen sich im Farbkreis fast gegenüber: ein starkes Paar`),
  opposite: (v) => sentence(`${pair(v)} liegen sich im Farbkreis gegenüber: jede bringt die andere zum Leuchten`),
  'awkward clash': (v) =>
    sentence(`${pair(v)} sind gleich kräftig und weder benachbart noch gegenüber: sie machen sich Konkurrenz`),
  'vivid clash': (v) => sentence(`${pair(v)} sind beide leuchtend und gleich hell: die Kante dazwischen flimmert`),
  'shared colour': (v) =>
    sentence(
      v.one === v.two ? `${colourWord(v.one)} ist in beiden und verbindet sie` : `${pair(v)} greifen einander auf`,
    ),
  'same to the eye': (v) => sentence(`${pair(v)}: für das Auge gleich`),
  'nearly the same': (v) =>
    sentence(
      `${colourWord(v.two)} ist fast ${colourWord(v.one)}, ${v.direction === 'another hue' ? 'mit einem Hauch eines anderen Tons' : `kaum ${direction(v.direction)}`}`,
    ),
  'a shade apart': (v) =>
    sentence(
      v.direction === 'another hue'
        ? `${colourWord(v.two)} neigt zu einem anderen Ton als ${colourWord(v.one)}`
        : `${colourWord(v.two)} ist eine Spur ${direction(v.direction)} als ${colourWord(v.one)}`,
    ),
  'clearly different': (v) =>
    sentence(
      v.direction === 'another hue'
        ? `${colourWord(v.two)} ist klar eine andere Farbe als ${colourWord(v.one)}`
        : `${colourWord(v.two)} ist deutlich ${direction(v.direction)} als ${colourWord(v.one)}`,
    ),
  'far apart': (v) => sentence(`${pair(v)} liegen weit auseinander`),

  'palette base': (v, f) => `Am meisten zu sehen: ${f.list(colourWords(v.colours))}.`,
  'palette support': (v, f) =>
    sentence(`${f.list(colourWords(v.colours))} ${v.colours.length === 1 ? 'begleitet' : 'begleiten'} sie`),
  'palette neutrals': (v, f) => `Ruhige Neutrale daneben: ${f.list(colourWords(v.colours))}.`,
  'palette metal': (v, f) =>
    `${v.colours.length === 1 ? 'Das Metall' : 'Die Metalle'}: ${f.list(colourWords(v.colours))}.`,
  'palette accent': (v, f) =>
    `${v.colours.length === 1 ? 'Der Akzent' : 'Die Akzente'}: ${f.list(colourWords(v.colours))}.`,
  'palette pairs': (v, f) =>
    v.going === v.of
      ? `Farblich passt jedes Oberteil zu jedem Unterteil: ${f.plural(v.of, PAIRS)}.`
      : `${f.count(v.going)} von ${f.plural(v.of, PAIRS)} aus Oberteil und Unterteil passen farblich.${v.nearly === 0 ? '' : ` ${f.plural(v.nearly, { one: '# weiteres ist fast gleich', other: '# weitere sind fast gleich' })}, was man bei Tageslicht sieht.`}`,
  'palette lonely': (v, f) =>
    sentence(`${f.list(v.pieces)} ${v.pieces.length === 1 ? 'passt' : 'passen'} hier farblich zu nichts anderem`),
  'cohesion close': () => 'Die Farben sind wie aus einem Guss.',
  'cohesion good': () => 'Die Farben passen gut zusammen.',
  'cohesion loose': () => 'Die Farben passen locker zusammen.',
  'cohesion apart': () => 'Die Farben fallen auseinander.',
  template: (v, f) => {
    const stray = `${f.list(colourWords(v.outside))} ${v.outside.length === 1 ? 'fällt' : 'fallen'} aus der Palette heraus`;
    const kept = TEMPLATES[v.type]?.(f.list(colourWords(v.first)), f.list(colourWords(v.second)), v.first.length > 1);
    if (kept === undefined) return 'Die Palette ist ganz neutral.';
    if (v.first.length === 0) return sentence(stray);
    return sentence(`${kept}; ${v.outside.length === 0 ? 'alles Übrige ist neutral' : stray}`);
  },
  'template one': (v) => `Die einzige Farbe unter Neutralen: ${colourWord(v.colour)}.`,
  'addition goes': (v, f) => sentence(`${added(v)} ${goesWith(v, f)}`),
  'addition ties': (v, f) =>
    sentence(`${added(v)} ${goesWith(v, f)} und greift die Farben auf von: ${f.list(v.pieces)}`),
  'addition frees': (v, f) => sentence(`${added(v)} ${goesWith(v, f)} und gibt einen Partner für: ${f.list(v.pieces)}`),
  'suggested palette': (v, f) =>
    sentence(
      `${colourWord(v.seed)}, dazu ${SCHEMES[v.scheme] ?? ''} (${f.list(colourWords(v.colours))}), auf einer Basis aus ${f.list(colourWords(v.bases))}`,
    ),

  lonely: (v) => sentence(`${v.piece} passt farblich zu nichts anderem in der Capsule`),
  'lonely why': (v) => sentence(`${colourWord(v.colour)} beißt sich überall oder liegt knapp daneben`),
  'lonely mend': () => 'Zu Hause lassen oder etwas Neutrales dazu einpacken.',
  'lonely mend by': (v) => `Zu Hause lassen, oder als Partner dazu: ${added(v)}.`,
  'too alike': (v) =>
    `${v.one} und ${v.two}: ${v.word === 'nearly the same' ? 'fast dieselbe Farbe' : 'für das Auge dieselbe Farbe'}, und beide sind ${place(v.place)}.`,
  'too alike mend': () => 'Für mehr Abwechslung eines der beiden gegen etwas Helleres oder Dunkleres tauschen.',
  'near miss pair': (v) => sentence(`${v.top} und ${v.bottom} sind in der Farbe fast gleich`),
  'few pairs': (v, f) =>
    `Nur ${f.count(v.going)} von ${f.plural(v.of, PAIRS)} aus Oberteil und Unterteil ${v.going === 1 ? 'passt' : 'passen'} farblich.`,
  'no neutral bottom': () => 'Kein Unterteil ist neutral, so muss jedes Oberteil neu abgestimmt werden.',
  'no neutral bottom mend': () =>
    'Mindestens ein Unterteil in Marineblau, Grau, Camel oder einer anderen neutralen Farbe einpacken.',
  refused: (v) =>
    v.colour === v.avoided
      ? `${v.piece}: ${colourWord(v.colour)} ist laut Briefing ausgeschlossen.`
      : `${v.piece} enthält ${colourWord(v.colour)}; laut Briefing ausgeschlossen: ${colourWord(v.avoided)}.`,
  'refused mend': () => 'Ein anderes Teil wählen.',
  'outside mood': (v) => `${v.piece} bringt eine Farbe mit, die nicht zur Stimmung gehört: ${colourWord(v.colour)}.`,
  'outside mood mend': (v, f) => `Bei ${f.list(colourWords(v.mood))} bleiben oder die Farbe in die Stimmung aufnehmen.`,
  'hard to tell': (v, f) => `${v.one} und ${v.two} sehen für Menschen ${f.either(v.visions.map(vision))} gleich aus.`,
  'hard to tell from': (v, f) =>
    `${v.piece} sieht für Menschen ${f.either(v.visions.map(vision))} aus wie ${f.list(v.others)}.`,
  'hard to tell in': (v, f) =>
    `Zusammen getragen in ${v.looks.length === 1 ? 'Look' : 'den Looks'} ${f.list(v.looks)}.`,
  'hard to tell mend': () =>
    'Die Namen stehen bei den Looks, am Tag und auf der Seite des Looks; auch überall sonst nennen, wo der Look gezeigt wird.',

  'role name': (v) => colourRole(v.role),
  'relation name': (v) => colourRelation(v.relation),
  'vision plain': (v) => vision(v.vision),
  'family name': (v) => hueFamily(v.family),
} satisfies Translation<typeof english.colour>;
