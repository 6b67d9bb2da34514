import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { colourWords } from './colours.ts';
import { doing, dress } from './glossary.ts';
import { journeyPlural, journeyWord } from './journeys.ts';
import { DAYS, forms, OCCASIONS, PIECES, quoted } from './sentence.ts';

const PAGES = forms('Seite', 'Seiten');

/** German sentences of the print room. */
export const print = {
  // Titles
  'packing title': (v) => `Packliste für ${v.traveller}`,
  'day plan title': (v) => `Tagesplan für ${v.traveller}`,
  'wear table title': (v) => `Tragetabelle für ${v.traveller}`,
  'booklet title': (v) => `Lookbook für ${v.traveller}`,
  'cards title': (v) => `Look-Karten für ${v.traveller}`,
  'document title': (v) => `${v.what}: ${v.trip}`,
  'what to wear': () => 'Was anziehen, Tag für Tag',
  'pieces and days': (v, f) => `${f.plural(v.pieces, PIECES)}, ${f.plural(v.days, DAYS)}`,
  'page of': (v, f) => `Seite ${f.count(v.page)} von ${f.count(v.pages)}`,
  continued: (v) => `${v.title}, Fortsetzung`,
  'true size': () => 'maßstabsgetreu bei Druck mit 100 %',

  // Packing list
  'dates of trip': (v, f) => f.dateRange(v.from, v.to),
  'list counts': (v, f) =>
    v.things === 0
      ? f.plural(v.pieces, PIECES)
      : `${f.plural(v.pieces, PIECES)}, ${f.plural(v.things, forms('weitere Zeile', 'weitere Zeilen'))}`,
  'on you': () => 'Am Körper',
  'worn out of the door': () => 'bei der Abreise getragen',
  'liquids bag': () => 'Flüssigkeiten',
  'liquids note': (v) => `durchsichtiger Ein-Liter-Beutel, in: ${v.bag}`,
  'nothing over': (v, f) => `Kein Behälter über ${f.number(v.limit, 0)} ml`,
  'with its own': (v, f) => (v.own > 0 ? `${v.kind}, mit eigenen ${f.kilograms(v.own / 1000)}` : v.kind),
  'its own': (v, f) => `mit eigenen ${f.kilograms(v.own / 1000)}`,
  'bag role': (v) => (v.role === 'personal' ? 'unter dem Sitz' : v.role === 'hold' ? 'aufgegeben' : 'in der Kabine'),
  'table upper': () => 'Mäntel, Schichten, Oberteile',
  'group worn': () => 'Von Kopf bis Fuß',
  'group upper': () => 'Oberteile und Strick',
  'group lower': () => 'Röcke, Hosen, Kleider',
  'group over': () => 'Schichten und Mäntel',
  'group swim': () => 'Bademode',
  'group feet': () => 'Schuhe und Strümpfe',
  'group finishing': () => 'Taschen, Schmuck, Details',
  'group smalls': () => 'Wäsche',
  'group wash': () => 'Kulturbeutel',
  'group papers': () => 'Papiere und Kleines',
  'group other': () => 'Sonstiges',
  'group care': () => 'Medizin und Elektrisches',
  'journey word': (v) => journeyWord(v.journeys),
  'worn on': (v, f) => `unterwegs getragen (${v.word}): ${f.list(v.dates)}`,
  'times journeys': (v) => journeyPlural(v.word),
  'head number': () => 'Nr.',
  'head grams': () => 'Gramm',
  'head ounces': () => 'oz',
  'head millilitres': () => 'ml',
  estimated: () => 'geschätzt',
  'estimated key': () => 'geschätzt, nicht gewogen',
  'tick label': (v, f) => (v.count === 1 ? `${v.name}: eingepackt` : `${v.name}, ${f.count(v.count)}: eingepackt`),
  'millilitres filled': (v, f) => `${f.number(v.filled, 0)} von ${f.number(v.limit, 0)} ml`,
  'before you leave': () => 'Vor der Abreise',
  'how it goes in': () => 'Wie es hineinkommt:',
  'packing order': () => 'Zuerst die Schuhe, zu den Rollen; dann das Schwere; obenauf, was der erste Tag braucht.',
  'liquids caution': () =>
    'In der Kabine reisen Flüssigkeiten in Behältern bis 100 ml, alle in einem durchsichtigen Ein-Liter-Beutel. Die Regeln sind verschieden und ändern sich: vor der Abreise beim Beförderungsunternehmen nachfragen.',
  'battery caution': () =>
    'Ersatzakkus und Powerbanks bleiben im Handgepäck, die Kontakte abgedeckt. Grenzwerte beim Beförderungsunternehmen erfragen.',
  'weight of': (v) => `Gewicht: ${v.bag}`,
  'weight range': (v, f) =>
    v.spread < 50
      ? f.kilograms(v.grams / 1000)
      : `${f.kilograms(v.grams / 1000)}, plus/minus ${f.number(v.spread / 1000, 1)}`,
  'weight segment bag': () => 'Gepäckstück',
  'weight segment clothes': () => 'Kleidung',
  'weight segment shoes': () => 'Schuhe usw.',
  'weight segment things': () => 'Rest',
  'weight made of': (v, f) =>
    [
      ...(v.own > 0 ? [`${f.kilograms(v.own / 1000)} Eigengewicht`] : []),
      `${f.kilograms(v.contents / 1000)} Inhalt`,
      ...(v.liquids > 0 ? [`${f.kilograms(v.liquids / 1000)} Flüssigkeiten`] : []),
    ].join(' + '),
  'weight limit': (v, f) => `höchstens ${f.kilograms(v.kg)}`,
  'weighed share': (v, f) => `${f.percent(v.share)} des Gewichts sind gewogen, der Rest ist geschätzt.`,
  'weight described': (v, f) =>
    `Gewichtsbalken, ${v.bag}: etwa ${f.kilograms(v.grams / 1000)}, zwischen ${f.kilograms(v.low / 1000)} und ${f.kilograms(v.high / 1000)}${v.kg > 0 ? `, erlaubt sind ${f.kilograms(v.kg)}` : ''}.`,
  'days and washes': (v, f) =>
    `${f.plural(v.days, DAYS)}, ${v.washes === 0 ? 'keine Wäsche' : f.plural(v.washes, forms('Waschtag', 'Waschtage'))}`,
  'days described': (v, f) =>
    [
      `Kalender: ${v.days}.`,
      ...(v.journeys.length > 0 ? [`Fahrten: ${f.list(v.journeys)}.`] : []),
      ...(v.washes.length > 0 ? [`Waschtage: ${f.list(v.washes)}.`] : []),
    ]
      .join(' ')
      .replaceAll('..', '.'),
  'button key': (v) => `am Reisetag getragen (${v.word})`,
  'journey key': (v) => `Reisetag (${v.word})`,
  'wash key': () => 'Waschtag',
  'nothing packed': () => 'Noch ist nichts eingepackt: Die Capsule hat keine Teile.',
  'no place': () => 'unterwegs',

  // Day plan
  'dress code': (v) => dress(v.dress),
  'part morning': () => 'morgens',
  'part day': () => 'tagsüber',
  'part evening': () => 'abends',
  'part night': () => 'nachts',
  'goes on': () => 'So bleiben.',
  'layers on': (v, f) => `Schichten an: ${f.list(v.pieces)}.`,
  'on the rail': (v, f) => `In Worten: ${f.list(v.pieces)}.`,
  'add or drop': () => 'Dieselben Sachen, andere Schichten.',
  'cautions as on': (v) => `Hinweise wie am ${v.date.replace(/\.$/u, '')}.`,
  'wash that night': (v, f) => `Heute Abend waschen: ${f.list(v.pieces)}.`,
  'look described': (v, f) => `Zeichnung des Looks: ${f.list(v.pieces)}.`,
  'indoors at': (v, f) => `drinnen, ${f.celsius(v.airC)}`,
  'rain chance': (v, f) => `Regen ${f.percent(v.percent / 100)}`,
  'uv index': (v, f) => `UV ${f.number(v.uv, 0)}`,
  'on the rail note': () => '„In Worten“ nennt Teile, deren Farben nicht alle unterscheiden können.',
  'rail note': () =>
    'Jeder Look hängt an seiner eigenen Stange, so groß die Zeile es erlaubt; Kleines ist größer gezeichnet.',
  'plan empty': () => 'In diesem Briefing stehen keine Anlässe.',
  'plan unserved': (v, f) => f.plural(v.count, { one: '# Anlass noch ohne Look', other: '# Anlässe noch ohne Look' }),
  'plan served': (v, f) =>
    `${f.count(v.served)} von ${f.plural(v.of, { one: OCCASIONS.one, other: '# Anlässen' })} mit Look`,

  // Wear table
  wearings: (v, f) => f.plural(v.count, { one: '# Mal getragen', other: '# Mal getragen' }),
  'head piece': () => 'Teil',
  'head times worn': () => 'Tage im Einsatz',
  'head grams per wear': () => 'Gramm je Tag',
  'head ounces per wear': () => 'oz je Tag',
  'sorted by use': () => 'in jeder Gruppe nach Häufigkeit',
  'worn all day': () => 'tagsüber getragen',
  'worn evening': () => 'nur abends',
  'worn carried': () => 'mitgenommen, nicht getragen',
  'pieces used': () => 'Teile an diesem Tag',
  'wash line key': () => 'am Abend waschen',

  // Booklet
  'by studio': (v) => `Zusammengestellt von ${v.studio}`,
  palette: () => 'Farbpalette',
  'palette of': (v, f) => `Farbpalette: ${f.list(colourWords(v.colours))}.`,
  'the pieces': () => 'Die Teile',
  'the looks': () => 'Die Looks',
  'the days': () => 'Ihre Tage',
  notes: () => 'Notizen',
  cautions: () => 'Bitte beachten',
  'cautions closing': () =>
    'Dieses Heft hilft beim Anziehen und gibt keinen medizinischen Rat. Bei Gesundheit, Allergien, Sonne, Kälte und unebenem Boden gelten die örtlichen Hinweise; fragen Sie in Arztpraxis oder Apotheke nach, beim Gepäck das Beförderungsunternehmen.',
  'looks counted': (v) => `${v.layered} Looks mit Schichten, ${v.complete} mit Schuhen und Accessoires`,
  'good between': (v, f) => `draußen beim ${doing(v.activity)} ${f.celsiusRange(v.low, v.high)}`,
  'colours of piece': (v, f) => f.list(colourWords(v.colours)),
  'piece drawing': (v) => `Zeichnung: ${v.name}, ${v.colour}.`,
  'piece photo': (v) => `Foto: ${v.name}.`,
  'own notes': () => 'Getragen, und wie es war',
  'no pieces': () => 'Die Capsule hat noch keine Teile.',
  'no looks': () => 'Noch gibt es keine Looks zu zeigen.',
  'cut along': () => 'An den Marken entlang schneiden.',

  // Findings
  'glyph missing': (v, f) =>
    `Keine unserer Schriften enthält ${f.list(v.characters)} aus ${quoted(v.text)}: auf Papier steht es ohne.`,
  'glyph mend': () => 'Mit anderen Zeichen schreiben oder es dabei lassen.',
  'list pages': (v, f) =>
    `Die Packliste braucht ${f.plural(v.pages, PAGES)}: ${f.plural(v.lines, { one: '# Zeile passt', other: '# Zeilen passen' })} in lesbarer Größe nicht auf eine`,
  'list pages mend': () => 'Kleines in einer Zeile zusammenfassen oder beidseitig drucken.',
  'table pages': (v, f) => `Die Tragetabelle braucht ${f.plural(v.pages, PAGES)}`,
  'table pages mend': (v) =>
    v.orientation === 'landscape'
      ? 'Im Hochformat drucken, wo mehr Zeilen Platz haben, oder beidseitig.'
      : 'Beidseitig drucken.',
  'picture unreadable': (v) => `Dieses Bild ist weder ein lesbares JPEG noch ein lesbares PNG: ${v.what}`,
  'picture unreadable mend': () => 'Noch einmal als JPEG speichern. Bis dahin wird die Zeichnung gedruckt.',
} satisfies Translation<typeof english.print>;
