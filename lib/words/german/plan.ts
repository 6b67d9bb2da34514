import type { english } from '../english/index.ts';
import type { Formats } from '../formats.ts';
import { clause } from '../letters.ts';
import type { Translation } from '../translation.ts';
import { doing, dress, need } from './glossary.ts';
import { OCCASIONS, quoted, sentence } from './sentence.ts';

/** The first few of a list, and how many more. */
const FEW = 4;
const few = (items: readonly string[]): readonly string[] =>
  items.length <= FEW ? items : [...items.slice(0, FEW - 1), `${items.length - FEW + 1} weitere`];

/** What a look leaves uncovered. */
const BARE: Readonly<Record<string, string>> = {
  'shoulders covered': 'lässt die Schultern frei',
  'knees covered': 'lässt die Knie frei',
  'head covered': 'lässt den Kopf unbedeckt',
};

const entryWords = ({
  actions,
  fields,
  values,
  places,
}: Readonly<Record<'actions' | 'fields' | 'values' | 'places', readonly string[]>>): readonly string[] =>
  actions.map((action, index) => {
    const [field = '', value = '', place = ''] = [fields[index], values[index], places[index]];
    if (action === 'write') return `${quoted(`${field}: ${value}`)} schreiben (${place})`;
    return action === 'add'
      ? `${value} bei ${quoted(field)} ergänzen (${place})`
      : `${value} aus ${quoted(field)} streichen (${place})`;
  });

/** German sentences of the plan room. */
/** What is lost for certain, and what may be. */
const noLookLeft = (
  { occasions, perhaps }: { readonly occasions: readonly string[]; readonly perhaps: readonly string[] },
  f: Formats,
): string => {
  const may = f.list(few(perhaps));
  if (occasions.length === 0) return `fehlt vielleicht ein Look für ${may}`;
  return `bleibt kein Look für ${f.list(few(occasions))}${may === '' ? '' : ` und vielleicht auch keiner für ${may}`}`;
};

export const plan = {
  'fixed by the stylist': () => 'Im Styling fest vorgesehen.',
  'a favourite': () => 'Ein Lieblingslook.',
  'made for': (v, f) => `Gemacht für ${f.list(v.needs.map(need))}.`,
  'wear on the way': (v, f) =>
    `Unterwegs anziehen: ${f.list(v.layers)}. Draußen kann es ${f.celsius(v.low)} kalt sein.`,
  'tights for the way': (v) => `Vor dem Hinausgehen darunter anziehen: ${v.piece}.`,
  'shoes for the way': (v) => `Für den Weg: ${v.shoes}. Dort die Schuhe wechseln.`,
  'after the swim': (v, f) =>
    `Für den Weg zum Wasser und gleich danach, trocken anzuziehen: ${f.list(v.layers)}. Draußen kann es ${f.celsius(v.low)} kalt sein.`,
  'cool inside': (v, f) =>
    `Kühl in diesem Raum, sobald ${f.list(v.coats)} an der Garderobe hängt: ein Tuch oder einen Pullover mitnehmen.`,
  'cool without': (v, f) =>
    `Bei ${f.celsius(v.low)} beim ${doing(v.activity)} ohne ${f.list(v.coats)} kühl: griffbereit halten.`,
  'degrees off': (v, f) =>
    `Hier lässt das Briefing ${f.plural(v.degrees, { one: 'ein Grad (°C)', other: '# Grad (°C)' })} abseits des Angenehmen gelten: bei Bedarf eine Schicht mehr oder kürzer bleiben.`,
  homeward: () => 'Heimwärts',
  'homeward on': (v, f) => `${f.date(v.date)}, heimwärts`,
  'free day': () => 'Nichts vorgesehen: anziehen, was am meisten Freude macht.',
  'homeward day': () => 'Nichts mehr anzuziehen: Sie sind zu Hause oder in dem unterwegs, was Sie anhaben.',
  'the warmest coat': (v) => `${v.coat}: nichts Wärmeres zum Überziehen ist eingepackt.`,
  'not in the bag': (v, f) => `Unterwegs angezogen: ${f.grams(v.grams)} weniger im Gepäck.`,
  'first worn': (v, f) => `Auf dieser Reise noch nicht getragen: ${f.list(v.pieces)}.`,
  'take along': (v, f) => `Mitnehmen: ${f.list(v.layers)}.`,

  'change goes on': () => 'So bleiben.',
  'change layers only': () => 'Nur die Schichten wechseln.',

  'lacks dress': (v) => `passt nicht zum Dresscode ${dress(v.dress)}`,
  'lacks flat shoes': () => 'hat einen höheren Absatz, als das Briefing erlaubt',
  'too cool for it': (v, f) => `Bei ${f.celsius(v.low)} ist er beim ${doing(v.activity)} eher kühl.`,
  'too warm for it': (v, f) => `Bei ${f.celsius(v.high)} ist er beim ${doing(v.activity)} eher warm.`,
  'fixed look misses': (v, f) =>
    `Der für ${quoted(v.occasion)} am ${f.date(v.on)} festgelegte Look erfüllt nicht alles, was verlangt ist.`,
  'fixed look misses why': (v) => `Im Einzelnen: ${v.misses.join(' ')}`,
  'fixed look misses mend': () =>
    'Ein Teil des Looks ergänzen oder tauschen, oder es dabei lassen: geplant wird er, wie er dasteht.',
  'too many pieces': (v, f) =>
    `Die Capsule hat ${f.plural(v.pieces, { one: '# Teil', other: '# Teile' })}; das Briefing erlaubt ${f.count(v.most)}.`,
  'too many pieces mend': () =>
    'Weglassen, was am seltensten getragen wird, oder unter „pieces at most“ eine größere Zahl schreiben.',
  'lacks warmth': (v, f) => `ist bei ${f.celsius(v.low)} beim ${doing(v.activity)} nicht warm genug`,
  'lacks coolness': (v, f) => `ist bei ${f.celsius(v.high)} beim ${doing(v.activity)} zu warm`,
  'lacks need': (v) => BARE[v.need] ?? `hat nichts für ${need(v.need)}`,
  'lacks swimwear': () => 'es gibt keine Bademode dafür',
  'beyond travel clothes': (v, f) => `bei ${f.celsius(v.low)} reicht keine Kleidung aus einem Reisegepäck`,
  'no look at all': () => 'aus diesen Teilen entsteht kein Look',
  'still wet': (v, f) => `noch nass: ${f.list(v.pieces)}`,
  'worn out': (v, f) => `müsste in die Wäsche oder trocknet noch: ${f.list(v.pieces)}`,
  'worn on another day': () => 'derselbe Look wird an einem anderen Tag getragen',
  'fixed look is none': (v) =>
    `die fest vorgesehenen Teile ergeben keinen Look${v.reasons.length === 0 ? '' : ` (${v.reasons.map(clause).join('; ')})`}`,

  mend: (v, f) => {
    const parts = [
      ...(v.pieces.length > 0
        ? [`${f.list(v.pieces)} ${v.left.length > 0 ? `statt ${f.list(v.left)} ` : ''}einpacken`]
        : []),
      ...(v.washDays.length > 0 ? [`am ${f.list(v.washDays.map((day) => f.dateShort(day)))} waschen`] : []),
      ...(v.dress === '' ? [] : [`für ${quoted(v.occasion)} den Dresscode ${dress(v.dress)} gelten lassen`]),
      ...(v.needs.length > 0 ? [`bei ${quoted(v.occasion)} nichts verlangen für ${f.list(v.needs.map(need))}`] : []),
      ...(v.degrees > 0
        ? [
            `bei ${quoted(v.occasion)} ${f.plural(v.degrees, { one: 'ein Grad (°C)', other: '# Grad (°C)' })} abseits des Angenehmen hinnehmen`,
          ]
        : []),
      ...(v.free > 0 ? [`den Look für ${quoted(v.occasion)} offen lassen`] : []),
    ];
    return sentence(`${f.list(parts)}: ${f.list(entryWords(v))}`);
  },
  'no mend found': () =>
    'Weder eine kleine Änderung noch zwei zusammen beheben es: andere Teile wählen oder den Anlass ändern.',
  'mend not sought': () =>
    'Zu viele Anlässe haben keinen Look, um für jeden eine Abhilfe zu suchen: erst die ersten beheben, dann neu planen.',

  'piece spoilt': (v, f) => `${v.piece}: Passiert damit etwas, ${noLookLeft(v, f)}.`,
  'piece spoilt mend': () => 'Etwas einpacken, das einspringen kann, oder wissen, wo es vor Ort Ersatz gibt.',
  'rain on a dry day': (v, f) => `Regnet es am ${f.date(v.date)}, ${noLookLeft(v, f)}.`,
  'rain on a dry day mend': () =>
    'Etwas für Regen einpacken, das dazu passt, oder für den Tag etwas unter Dach vorsehen.',

  'never worn': (v, f) =>
    `${f.count(v.pieces.length)} von ${f.plural(v.of, { one: '# gepackten Teil', other: '# gepackten Teilen' })} ${v.pieces.length === 1 ? 'wird' : 'werden'} nach Plan nie getragen: ${f.list(few(v.pieces))}.`,
  'never worn mend': () =>
    'Die Tragetabelle zeigt sie alle: Was keine Reserve sein soll, zu Hause lassen, oder einen Look damit festlegen.',

  'no socks': (v, f) => `Zu den Schnürschuhen für ${f.list(few(v.occasions))} sind keine Socken eingepackt.`,
  'no socks mend': () => 'Feine Socken in die Capsule nehmen oder Socken in den Vorrat schreiben.',
  'no belt': (v, f) => `Zur Hose mit Schlaufen für ${f.list(few(v.occasions))} ist kein Gürtel eingepackt.`,
  'no belt mend': () => 'Gürtel oder Hosenträger in die Capsule nehmen, oder es dabei lassen, wenn die Hose ohne hält.',

  'all served': (v, f) =>
    v.of === 0
      ? 'Es gibt keinen Anlass, für den etwas anzuziehen ist.'
      : f.plural(v.of, { one: 'Der eine Anlass hat seinen Look.', other: 'Alle # Anlässe haben ihren Look.' }),
  'no look': () => 'Dafür gibt es keinen Look.',
  'nothing in reserve': () => 'Wo nichts in Reserve ist:',
  'plan served': (v, f) =>
    `${f.count(v.served)} von ${f.plural(v.of, { one: OCCASIONS.one, other: '# Anlässen' })} ${v.served === 1 ? 'hat' : 'haben'} einen Look`,
  'plan proven': () => 'Kein Plan mit diesen Teilen bedient mehr Anlässe.',
  'plan not proven': () => 'Der beste gefundene Plan; ob ein anderer mehr Anlässe bedient, ist nicht bewiesen.',
  'pack damp': (v, f) =>
    `Bei ${quoted(v.journey)} noch feucht: ${f.list(v.pieces)}. In einen eigenen Beutel packen und nach der Ankunft aufhängen; trocken bis ${f.weekday(v.dryBy)}, ${f.time(v.at)}.`,
  'wash and dry': (v, f) => sentence(`${v.piece}, trocken bis ${f.dayAndTime(v.dryBy, v.at)} Uhr`),

  'missing weather': (v) =>
    `Für ${quoted(v.occasion)}${v.place === '' ? '' : ` (${v.place})`} gibt es kein Wetter, die Wärme ist nicht geprüft.`,
  'missing weather mend': () =>
    'Das Wetter des Ortes ins Briefing schreiben oder seinen Monat in die Tabelle der Mittelwerte eintragen.',
  'outside the trip': (v, f) =>
    `${quoted(v.occasion)} am ${f.date(v.on)} liegt außerhalb der Reise (${f.dateRange(v.from, v.to)}) und wird nicht geplant.`,
  'outside the trip mend': () => 'Dieses Datum oder die Reisedaten berichtigen.',
  'two at one hour': (v, f) =>
    `${quoted(v.first)} und ${quoted(v.second)} fallen am ${f.date(v.on)} auf dieselbe Stunde.`,
  'two at one hour mend': () => 'Eines davon verlegen oder eintragen, für wen welcher Anlass gilt.',
  'hours overlap': (v, f) =>
    `${quoted(v.first)} dauert nach unserer Annahme bis ${f.time(v.until)} Uhr, ${quoted(v.second)} beginnt am ${f.date(v.on)} um ${f.time(v.starts)} Uhr.`,
  'hours overlap mend': (v) =>
    `Schreiben, wann ${quoted(v.first)} endet, spätestens until: "${v.starts}", eines davon verlegen oder eintragen, für wen welcher Anlass gilt.`,
  'no room in the part': (v, f) =>
    `${quoted(v.fixed)} lässt am ${f.date(v.on)} für ${quoted(v.vague)} (at: ${v.part}) weniger als zwei Stunden.`,
  'no room in the part mend': (v) =>
    `Schreiben, um wie viel Uhr ${quoted(v.vague)} beginnt, oder eintragen, für wen welcher Anlass gilt.`,
  'swims without need': (v) => `${quoted(v.occasion)} ist Schwimmen, verlangt aber keine Bademode.`,
  'swims without need mend': () => 'Unter „needs“ das Wort „swim“ ergänzen.',
  'no sun': (v) =>
    `Am Tag von ${quoted(v.occasion)} geht die Sonne nicht auf (${v.place}): Sonne ist verlangt, aber es gibt keine.`,
  'no sun mend of the place': () => '„where: outdoors shade“ schreiben; stattdessen mit Dunkelheit und Eis rechnen.',
  'no sun mend of the need': () => 'Unter „needs“ das Wort „sun“ streichen; stattdessen Dunkelheit und Eis einplanen.',
  'sun is down': (v) => `${quoted(v.occasion)} verlangt Sonne, aber dann steht sie nicht am Himmel.`,
  'cold swim': (v, f) =>
    `${quoted(v.occasion)} ist ein Bad im Freien bei ${f.celsius(v.low)}: ist das Wasser nicht beheizt, wird es binnen Minuten gefährlich.`,
  'cold swim mend': () =>
    'Nach drinnen oder auf eine wärmere Stunde verlegen, oder nur unter Aufsicht einplanen, kurz und nie allein, nach ärztlichem Rat; Handtuch und trockene, warme Kleidung für gleich danach einpacken.',
  'sun is down mend of the place': () =>
    '„where: outdoors shade“ schreiben, oder die Stunde oder die Zeitzone des Ortes berichtigen.',
  'sun is down mend of the need': () =>
    'Unter „needs“ das Wort „sun“ streichen oder die Uhrzeit oder die Zeitzone des Ortes berichtigen.',
  'too cold for clothes': (v, f) =>
    `Bei ${quoted(v.occasion)} kann es bis ${f.celsius(v.low)} kalt werden: dafür reicht kein Reiselook.`,
  'too cold for clothes mend': () =>
    'Weglassen, oder nur kurz, mit Pausen drinnen, in dort geliehener Kälteschutzkleidung und mit Ortskundigen. Örtliche Warnungen beachten.',
  'too cold to keep still': (v, f) =>
    `Bei ${quoted(v.occasion)} kann es bis ${f.celsius(v.low)} kalt werden: beim ${doing(v.activity)} reicht dafür kein Reiselook.`,
  'too cold to keep still mend': () =>
    'Kein Teil des Kleiderschranks ist warm genug. Kürzer, mit Pausen drinnen, und in Bewegung bleiben; oder Kleidung für solche Kälte kaufen oder leihen. Örtliche Warnungen beachten.',
  'real clo may help': (v) =>
    `Die Wärme von ${v.piece} ist nur geschätzt: Steht sie auf dem Etikett oder beim Hersteller in clo, kann es helfen, sie in der Datei unter „clo“ einzutragen.`,
  'wash day outside': (v, f) => `Der Waschtag am ${f.date(v.on)} liegt außerhalb der Reise.`,
  'wash day outside mend': () => 'Das Datum berichtigen.',
  'wash day too late': (v, f) => `Nach dem Waschtag am ${f.date(v.on)} wird nichts mehr getragen: er hilft nicht.`,
  'wash day too late mend': () => 'Früher waschen.',
  'nothing dries': (v, f) =>
    `Nichts, was am ${f.date(v.on)} gewaschen und um ${f.time(v.hung)} Uhr aufgehängt wird, ist trocken für ${quoted(v.occasion)} (${f.dayAndTime(v.day, v.at)} Uhr), den letzten Anlass danach. Am schnellsten trocknet ${v.piece}: bis ${f.dayAndTime(v.dryBy, v.dryAt)} Uhr.`,
  'nothing dries mend': (v, f) =>
    v.latest === ''
      ? 'Den Waschtag streichen.'
      : `Spätestens am ${f.dateShort(v.latest)} waschen oder den Waschtag streichen.`,
  'some never dry': (v, f) =>
    `Am ${f.date(v.on)} gewaschen noch feucht bei ${quoted(v.occasion)} (${f.dayAndTime(v.day, v.at)} Uhr), dem letzten Anlass danach: ${f.list(few(v.pieces))}.`,
  'some never dry mend': (v, f) =>
    v.latest === ''
      ? 'Dann lieber nicht mitwaschen.'
      : `Dann lieber nicht mitwaschen, oder spätestens am ${f.dateShort(v.latest)} waschen.`,
  'packed damp': (v, f) =>
    `Am ${f.date(v.on)} gewaschen noch feucht, wenn ${quoted(v.occasion)} beginnt (${f.dayAndTime(v.day, v.at)} Uhr): ${f.list(few(v.pieces))}.`,
  'packed damp mend': () => 'Einen Tag früher waschen oder einen wasserdichten Beutel für Feuchtes mitnehmen.',
  'seen again': (v, f) => `Dieselben Sachen, ${f.list(v.clothes)}, kommen mehrmals vor: bei ${f.list(v.occasions)}.`,
  'seen at': (v, f) => `${quoted(v.occasion)} am ${f.dateShort(v.on)}`,
  'seen again mend': () =>
    'Ein passendes Oberteil, Unterteil oder Kleid mehr einpacken oder diesen Anlässen eigene Looks fest zuordnen.',
  'coat in a room': (v, f) =>
    `Der Look für ${quoted(v.occasion)} am ${f.date(v.on)} ist kühl, sobald ${f.list(v.coats)} an der Garderobe hängt.`,
  'coat in a room mend': () =>
    'Ein Tuch, eine Strickjacke oder einen Pullover dazugeben, der drinnen an bleibt, oder beim Anlass "degrees off" schreiben.',
  'coat in a room mend with': (v, f) => `Eingepackt ist, was dazu passt und drinnen an bleibt: ${f.list(v.layers)}.`,
  unserved: (v, f) => `Für ${quoted(v.occasion)} am ${f.date(v.on)} gibt es keinen Look.`,
  'nearest lacks': (v, f) =>
    `Am nächsten kommt: ${f.list(v.look)}.${v.lacks.length > 0 ? ` Woran es fehlt: ${v.lacks.join('; ')}.` : ''}`,
  'what is lacking': (v) => sentence(`Woran es fehlt: ${v.lacks.join('; ')}`),
} satisfies Translation<typeof english.plan>;
