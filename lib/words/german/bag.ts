import type { english } from '../english/index.ts';
import type { Formats } from '../formats.ts';
import type { Translation } from '../translation.ts';

const outfits = (looks: number, f: Formats): string => f.plural(looks, { one: '# Look', other: '# Looks' });

const occasionsThen = ({ unserved, counts }: { unserved: number; counts: string }, f: Formats): string =>
  unserved === 0
    ? counts === 'planned again'
      ? 'Ohne sie neu geplant, ist jeder Anlass weiterhin angezogen.'
      : 'Jeder Anlass für sich behält einen Look; wie oft etwas getragen und gewaschen wird, ist nicht neu gerechnet.'
    : counts === 'planned again'
      ? `Ohne sie neu geplant, ${f.plural(unserved, { one: 'verliert # Anlass seinen Look', other: 'verlieren # Anlässe ihren Look' })}.`
      : `${f.plural(unserved, {
          one: '# Anlass verliert seinen letzten Look',
          other: '# Anlässe verlieren ihren letzten Look',
        })}.`;

/** German sentences of the bag room. */
export const bag = {
  'heaviest on': ({ bag: name, date, grams }, f) =>
    `${name}: am schwersten am ${f.date(date)} mit ${f.kilograms(grams / 1000)}.`,
  'ask the carrier': () =>
    'Fragen Sie Ihr Verkehrsunternehmen nach Maßen und Gewichten: Seine eigene Regel gilt immer, und Regeln ändern sich.',
  'guideline is': ({ bag: name, assumed, read }, f) =>
    assumed.length === 0
      ? `${name}: Fragen Sie bei Ihrer Gesellschaft nach; ihre eigene Regel gilt immer.`
      : `${name}: ${f.list(assumed.map((what) => (what === 'size' ? 'die Größe' : 'das Höchstgewicht')))} ${assumed.length === 1 ? 'ist' : 'sind'} nach dem veröffentlichten Richtwert angenommen, gelesen im ${f.month(read)}. Fragen Sie nach: Die Regel Ihrer Gesellschaft gilt immer.`,
  'shared by': ({ bag: name, travellers }, f) =>
    `${name} packen ${f.list(travellers)} gemeinsam; die Zahlen hier gelten für einen gleichen Anteil.`,
  'shared mend': ({ trip }) =>
    `Das ist ein Anteil an einem gemeinsamen Gepäckstück; vielleicht haben die anderen Platz. Mehr auf der Seite der Reisenden oder mit: wayfold together ${trip}`,
  'flight rules': ({ read }, f) =>
    `Flüssigkeiten und Akkus wurden nach den üblichen Regeln geprüft, gelesen im ${f.month(read)}. Fragen Sie Fluggesellschaft und Flughafen: Deren Regeln gelten immer.`,
  'over weight': ({ bag: name, over, limit, date }, f) =>
    `${name}: am ${f.date(date)} um ${f.grams(over)} über der Grenze von ${f.kilograms(limit / 1000)}`,
  'near the limit': ({ bag: name, grams, high, limit }, f) =>
    `${name}: ${f.kilograms(grams / 1000)}, es könnten aber ${f.kilograms(high / 1000)} sein, und die Grenze ist ${f.kilograms(limit / 1000)}`,
  'weigh them': () => 'Wiegen Sie die Teile, die als geschätzt bezeichnet sind.',
  'over full': ({ bag: name, litres, room }, f) =>
    `${name}: ${f.litres(litres)} zu packen, Platz für ${f.litres(room)}`,
  'leave out': ({ pieces, grams, looks, unserved, counts }, f) =>
    `Zu Hause lassen: ${f.list(pieces)}, ${f.grams(grams)} weniger. Es bleiben ${outfits(looks, f)}. ${occasionsThen({ unserved, counts }, f)}`,
  'leave out in vain': () =>
    'Auch ohne die Kleider passt es nicht. Nehmen Sie eine größere Tasche oder weniger Kleinigkeiten.',
  'pack less': () => 'Nehmen Sie eine größere Tasche oder weniger Kleinigkeiten.',
  'no room': ({ bag: name }) => `${name}: Die Grenze lässt für nichts Platz`,
  'no room mend': () => 'Schreiben Sie eine Grenze über dem Eigengewicht und mehr als null Liter.',
  'too long': ({ piece, sides }) => `${piece}: etwa ${sides} cm, passt in keine der Taschen`,
  'too long mend': () => 'Größere Tasche nehmen, zu Hause lassen oder auf jeder Reise tragen.',
  'too heavy': ({ piece, grams }, f) => `${piece}: ${f.grams(grams)}, mehr als jede der Taschen fassen darf`,
  'too heavy mend': () => 'Tasche mit höherer Grenze nehmen, zu Hause lassen oder auf jeder Reise tragen.',
  'over guideline': ({ bag: name, length, width, depth }, f) =>
    `${name}: größer als der übliche Richtwert für die Kabine, ${f.centimetres(length)} mal ${f.centimetres(width)} mal ${f.centimetres(depth)}`,
  'carrier rule': ({ bag: name }) => `${name}: Dafür ist keine Regel Ihrer Gesellschaft eingetragen`,
  'carrier rule mend': () => 'Fragen Sie nach und tragen Sie Maße und Gewicht als cm und kg der Tasche ein.',
  'container too large': ({ what, millilitres, limit, bag: name }, f) =>
    `${what}: ein Behälter mit ${f.number(millilitres, 0)} ml (${name}); in der Kabine sind üblicherweise ${f.number(limit, 0)} ml erlaubt`,
  'container too large mend': () =>
    'Umfüllen, aufgeben oder vor Ort kaufen. Fragen Sie Fluggesellschaft und Flughafen.',
  'liquids too many': ({ millilitres, limit }, f) =>
    `Flüssigkeiten in der Kabine: ${f.number(millilitres, 0)} ml; der klare Beutel fasst ${f.number(limit, 0)} ml`,
  'liquids too many mend': () => 'Kleinere oder weniger Behälter nehmen oder eine Tasche aufgeben.',
  'battery refused': ({ what, wattHours, limit }, f) =>
    `${what}: ${f.number(wattHours, 0)} Wh; über ${f.number(limit, 0)} Wh wird nicht befördert`,
  'battery refused mend': () => 'Zu Hause lassen. Fragen Sie, wie es verschickt werden darf.',
  'battery asks': ({ what, wattHours, limit }, f) =>
    `${what}: ${f.number(wattHours, 0)} Wh; über ${f.number(limit, 0)} Wh muss die Gesellschaft zustimmen`,
  'battery asks mend': () => 'Fragen Sie vor der Reise, und nehmen Sie den Akku in die Kabine.',
  'spare in the hold': ({ what }) => `${what}: ein Ersatzakku, und es gibt nur eine Tasche, die aufgegeben wird`,
  'spare in the hold mend': () =>
    'Eine Tasche für die Kabine dazunehmen: Ersatzakkus fliegen in der Kabine, mit abgedeckten Kontakten.',
  'wear it': ({ occasion, grams, pieces }, f) =>
    `${occasion}: Getragen nehmen ${f.list(pieces)} ${f.grams(grams)} mehr aus den Taschen als der geplante Look`,
  'wear it mend': () => 'Legen Sie diesen Look in der Kapsel für die Fahrt fest, wenn er gefällt.',
  'millilitres missing': ({ what }) => `${what}: eine Flüssigkeit ohne Milliliter`,
  'millilitres missing mend': () => 'Schreiben Sie ml: …, damit die Regel für Flüssigkeiten geprüft werden kann.',
  'lighter heading': () => 'Wenn es leichter sein muss',
  'lighter at once': () => 'Es muss leichter werden',
  'lighter lead': ({ looks, grams }, f) =>
    `Alle Teile zusammen wiegen ${f.kilograms(grams / 1000)} und ergeben ${outfits(looks, f)}, Schichten mitgezählt. Jeder Punkt zeigt die meisten Looks für sein Gewicht; Schuhe und Accessoires bleiben.`,
  'order lead': () =>
    'Lassen Sie in dieser Reihenfolge zu Hause: zuerst, was an keinem Tag des Plans getragen wird, dann, was keinem Anlass den letzten Look nimmt, dann, was die wenigsten Looks kostet. Tragen und Waschtage zählen nicht mit.',
  'order until it fits': () =>
    'Das Gepäck ist zu schwer oder zu voll. Lassen Sie in dieser Reihenfolge zu Hause, bis es passt. Tragen und Waschtage zählen nicht mit.',
  'order planned again': ({ unserved }, f) =>
    `Das Gepäck ist zu schwer oder zu voll. Lassen Sie in dieser Reihenfolge zu Hause, bis es passt. ${occasionsThen({ unserved, counts: 'planned again' }, f)}`,
  'order in vain': () => 'Das Gepäck ist zu schwer oder zu voll, und Kleidung zu Hause zu lassen hilft nicht ab.',
  'lighter found': () => 'Gefunden, indem ein Teil nach dem anderen weggelassen wurde; anderes mag besser sein.',
  'front picture': ({ points, looks }, f) =>
    `Looks gegen Gewicht: ${f.plural(points, { one: '# Auswahl', other: '# Auswahlen' })}, bis zu ${outfits(looks, f)}`,
  'head leave': () => 'Zu Hause lassen',
  'head saves': () => 'Spart',
  'head saves in all': () => 'Spart zusammen',
  'head looks left': () => 'Looks übrig',
  'looks left is': ({ looks }, f) => `noch ${outfits(looks, f)}`,
  'head looks lost': () => 'Looks verloren',
  'head unserved': () => 'Anlässe ohne Look',
  'worth lead': () =>
    'Jedes Teil für sich: was es spart, wenn es zu Hause bleibt, wie viele Looks mit Schichten es mitnimmt und welche Anlässe dann keinen Look haben. Tragen und Waschtage zählen nicht mit.',
  'worth heading': () => 'Was jedes Teil kostet und bringt',
  'total is': ({ grams, spread, share }, f) =>
    `${f.kilograms(grams / 1000)} ± ${f.number(spread / 1000, 1)} insgesamt, getragen und gepackt, davon ${f.percent(share)} gewogen`,
  'litres of': ({ litres, room }, f) => `${f.litres(litres)} von ${f.litres(room)}`,
  'it fits': () => 'Es passt.',
  'it does not fit': () => 'Es passt nicht.',
  'load is': ({ bag: name, grams, spread, limit, own, litres, room }, f) =>
    `${name}: ${f.kilograms(grams / 1000)} ± ${f.number(spread / 1000, 1)}${limit > 0 ? ` von ${f.kilograms(limit)}` : ''}${own > 0 ? `, davon ${f.kilograms(own / 1000)} Eigengewicht` : ''}; ${f.litres(litres)} von ${f.litres(room)}`,
  'own weight': ({ own }, f) => `davon ${f.kilograms(own / 1000)} Eigengewicht`,
  'fold fold': () => 'gefaltet',
  'fold roll': () => 'gerollt',
  'fold wear': () => 'getragen',
  'fold fill': () => 'mit Kleinem gefüllt',
  'fold flat': () => 'flach gelegt',
  'fold shoe bag': () => 'im Schuhbeutel',
  'fold pouch': () => 'im Täschchen',
  'weight spare': (v, f) => `Im schwersten Fall bleiben ${f.grams(v.grams)} frei.`,
  'weight over': (v, f) => `Im schwersten Fall ${f.grams(v.grams)} über der Grenze: vor der Abreise wiegen.`,
  'weight likely over': (v, f) =>
    `Nach bester Schätzung ${f.grams(v.grams)} über der Grenze: wiegen oder etwas zu Hause lassen.`,
  'weight certainly over': (v, f) => `${f.grams(v.grams)} über der Grenze: etwas muss zu Hause bleiben.`,
  'weight no limit': () => 'Für dieses Gepäckstück ist keine Grenze angegeben.',
  'packing order': () => 'In der Reihenfolge des Packens: das Erste zuunterst, das Letzte obenauf.',
  'bag title': () => 'Das Gepäck',
  'bag lead': () =>
    'Was wohin kommt und in welcher Reihenfolge, was es wiegt und was zu Hause bleibt, wenn es weniger sein muss.',
  'to the bag': () => 'Wie man packt und wie es leichter wird',
  'to the list': () => 'Liste zum Abhaken öffnen',
  'bag is': ({ role, sides, own, limit, room }, f) =>
    [
      role === 'personal' ? 'Unter den Sitz' : role === 'hold' ? 'Zum Aufgeben' : 'Für die Kabine',
      ...(sides === '' ? [] : [sides]),
      ...(own > 0 ? [`leer ${f.kilograms(own / 1000)}`] : []),
      limit > 0 ? `bis ${f.kilograms(limit)}` : 'ohne Gewichtsgrenze',
      `Platz für ${f.litres(room)}`,
    ].join(', '),
  'first in': () => 'zuerst hinein',
  'last in': () => 'obenauf',
  'small things': ({ things }, f) => `Drumherum: ${f.list(things)}.`,
  'so many': ({ what, count }) => `${what} × ${count}`,
  'order rule': () =>
    'In der Reihenfolge des Packens: zuerst die Schuhe, zu den Rollen, dann das Schwere; obenauf, was der erste Tag braucht.',
  'journeys heading': () => 'Auf jeder Fahrt',
  'journeys lead': () => 'Was Sie tragen, ist nicht im Gepäck; darum wiegt es auf jeder Fahrt anders.',
  'head journey': () => 'Fahrt',
  'rules heading': () => 'Flüssigkeiten, Akkus und Maße im Flugzeug',
  'head rule': () => 'Die übliche Regel',
  'head here': () => 'In Ihrem Gepäck',
  'rule container': ({ limit }, f) => `Flüssigkeiten in der Kabine: kein Behälter über ${f.number(limit, 0)} ml`,
  'rule liquids': ({ limit }, f) =>
    `Alle zusammen in einem durchsichtigen Beutel mit ${f.number(limit, 0)} ml; Arzneien ausgenommen`,
  'rule battery': ({ limit, most }, f) =>
    `Akkus bis ${f.number(limit, 0)} Wh; bis ${f.number(most, 0)} Wh mit Zustimmung, darüber keine`,
  'rule spare battery': () => 'Ersatzakkus und Powerbanks in die Kabine, nie ins aufgegebene Gepäck, Pole abgedeckt',
  'rule cabin size': ({ sides }) => `Kabinengepäck bis ${sides}, Rollen und Griffe mitgezählt`,
  'here millilitres': ({ things, amount }, f) => `${f.list(things)}: ${f.number(amount, 0)} ml`,
  'here millilitres in all': ({ amount }, f) => `${f.number(amount, 0)} ml`,
  'here watt hours': ({ things, amount }, f) => `${f.list(things)}: ${f.number(amount, 0)} Wh`,
  'here in the cabin': ({ things }, f) => `${f.list(things)}: in der Kabine`,
  'here in the hold': ({ things }, f) => `${f.list(things)}: im aufgegebenen Gepäck`,
  'here within': ({ things }, f) => `${f.list(things)}: passt`,
  'here too large': ({ things }, f) => `${f.list(things)}: größer`,
  'here nothing': () => 'Nichts',
  'rules source': ({ read }, f) =>
    `Gelesen im ${f.month(read)}. Quellen: ICAO-Leitlinien und Verordnung (EU) 2015/1998 für Flüssigkeiten, ICAO Technical Instructions für Akkus, IATA-Richtwert für Maße.`,
} satisfies Translation<typeof english.bag>;
