import type { english } from '../english/index.ts';
import type { Formats } from '../formats.ts';
import type { Translation } from '../translation.ts';
import { asked, dress, hueFamily, need, patternScale, place } from './glossary.ts';
import { quoted, sentence } from './sentence.ts';

const enough = (most: number, f: Formats): string => f.plural(most, { one: 'eines genügt', other: '# genügen' });

/** German sentences of the outfit room. Names stand where they need no article: first, after a colon, or in quotes. */
export const outfit = {
  'rule colour': () => 'Was zusammen getragen wird, passt farblich zusammen.',
  'rule hue-families': () => 'Ein Look bleibt bei wenigen Farbfamilien; Neutrale zählen nicht.',
  'rule pattern-count': () => 'Ein Look hat wenige Muster.',
  'rule pattern-scale': () => 'Zwei Muster unterscheiden sich in der Größe.',
  'rule pattern-colour': () => 'Zwei Muster haben eine Farbe gemeinsam.',
  'rule proportion': () => 'Oben weit, unten schmal; oder oben schmal, unten weit.',
  'rule lengths': () => 'Ein langes Oberteil braucht ein Unterteil, das mindestens bis zum Knie reicht.',
  'rule layer-over': () => 'Eine Schicht hat Platz für das darunter und ist nicht kürzer als eine Schicht darunter.',
  'rule one-of-a-kind': () => 'Zwei Teile derselben Art werden nicht übereinander getragen.',
  'rule fabric': () => 'Feiner Stoff nicht mit grobem, und Denim nicht mit Denim in fast demselben Blau.',
  'rule dress-meets': () => 'Alle Teile eines Looks haben einen Dresscode gemeinsam.',
  'rule one-season': () => 'Shorts und offene Schuhe werden nicht mit Winterkleidung getragen.',
  'rule shoes-suit': () => 'Die Schuhe passen zum Saum darüber.',
  'rule on-the-way': () =>
    'Mantel, Handschuhe und Wollschal bestimmen nicht, wie elegant der Look ist; sie sollen aber dazu passen.',
  'rule shorts-shoes': () => 'Zu Shorts gehören leichte Schuhe: Sneaker, Stoffschuhe, Loafer oder Sandalen.',
  'rule underlayer-hidden': () =>
    'Thermowäsche trägt man unter dem, was sie verdeckt: lange Ärmel und bedeckte Schultern oder bedeckte Beine, nichts Durchsichtiges.',
  'rule underlayer-alone': () => 'Ein Thermoshirt trägt man unter etwas.',
  'rule bag-by-the-water': () => 'Eine Tasche fürs Wasser ist aus Stoff oder Stroh.',
  'rule legwear-suits': () => 'Strümpfe passen zu den Schuhen und sind unter dem Saum zu sehen.',
  'rule bare-legs': () => 'Ein eleganter knielanger Saum verlangt Strümpfe.',
  'rule heels-on-ground': () => 'Auf unebenem Boden und langen Wegen sind die Absätze niedrig.',
  'rule dry-feet': () => 'Bei Regen und Schnee sind die Schuhe geschlossen.',
  'rule one-statement': () => 'Ein Blickfang trägt einen Look.',
  'rule ornaments': () => 'Ein Look hat wenig Schmuck.',
  'rule metals': () => 'Gold zu Gold, Silber zu Silber.',
  'rule one-at-the-neck': () => 'Am Hals nur eines: Tuch, Kette, Krawatte oder Schleife.',
  'rule tie-suits': () =>
    'Eine Krawatte braucht einen passenden Kragen, lange Hosen und Lederschuhe und sitzt unter Sakko, Weste oder feinem Strick.',
  'rule tie-jacket': () => 'Eine Krawatte trägt man nicht nur zum Hemd.',
  'rule belt-suits': () => 'Ein Gürtel braucht Schlaufen oder eine Taille; Hosenträger brauchen eine Hose.',
  'rule lapel-suits': () => 'Ein Einstecktuch braucht eine Brusttasche.',
  'rule off-the-skin': () =>
    'Stoff, der laut Briefing nicht auf die Haut soll, kommt nicht dorthin, wo er sie berührt.',
  'rule sleeves-beneath': () => 'Unter einer ungefütterten Schicht aus solchem Stoff sind die Ärmel ebenso lang.',
  'rule pocket-square': () => 'Ein Einstecktuch braucht ein Sakko oder einen Blazer.',
  'rule never-together': () => 'Was im Styling getrennt bleiben soll, wird nie zusammen getragen.',
  'rule always-together': () => 'Was im Styling zusammengehört, wird zusammen getragen.',

  'unit families': () => 'Farbfamilien in einem Look',
  'unit prints': () => 'Muster in einem Look',
  'unit pieces': () => 'Teile in einem Look',
  'unit volume': () => 'Stufen der Weite, von 0 schmal bis 3 weit',
  'unit difference': () => 'Farbabstand, CIEDE2000',
  'unit steps': () => 'Stufen auf der Dresscode-Skala',
  'unit dress': () => `Stufe auf der Dresscode-Skala, von 0 ${dress('casual')} bis 4 ${dress('formal')}`,
  'unit clo': () => 'clo',
  'unit cm': () => 'cm',

  'too many hues': (v, f) =>
    sentence(
      `${f.list(v.families.map(hueFamily))} sind ${f.count(v.families.length)} Farbfamilien; höchstens ${f.count(v.most)} in einem Look`,
    ),
  'too many prints': (v, f) =>
    v.most === 0
      ? `${f.list(v.pieces)}: In dieser Capsule trägt nichts ein Muster.`
      : `${f.list(v.pieces)} sind ${f.count(v.pieces.length)} Muster; ${enough(v.most, f)}.`,
  'prints of one scale': (v) =>
    `${v.one} und ${v.two} sind zwei Muster derselben Größe (${patternScale(v.scale)}): eines wählen, oder ein kleineres mit einem größeren.`,
  'prints share no colour': (v) => `${v.one} und ${v.two} sind zwei Muster ohne gemeinsame Farbe.`,
  'full on full': (v) => `${v.top} und ${v.bottom} sind beide weit: eines davon sollte näher am Körper sein.`,
  'long over short': (v) =>
    `${v.top} reicht bis zum Oberschenkel und verdeckt das Unterteil (${v.bottom}): etwas Längeres wählen.`,
  'no room under': (v) => `${v.under}: zu weit, um darunter zu passen (${v.over}).`,
  'hangs out under': (v) => `${v.under} ist länger und schaut unten heraus: ${v.over}.`,
  'jacket on jacket': (v) => `${v.over} ist selbst eine Jacke: Über ${v.under} gehört ein Mantel.`,
  'layer under layer': (v) => `${v.under} ist selbst eine Lage und gehört nicht unter ${v.over}.`,
  'jumper on jumper': (v) => `${v.over} trägt man über etwas Flachem, nicht über ${v.under}.`,
  'thick on thick': (v) => `${v.under} und ${v.over} sind zwei dicke Stricke: einer genügt.`,
  'two of a kind': (v) => `${v.one} und ${v.two}: zweimal dieselbe Art, übereinander.`,
  'fine with rough': (v, f) => `${v.one} und ${v.two}: Die Stoffe vertragen sich nicht gut (${f.list(v.fabrics)}).`,
  'denim on denim': (v) =>
    `${v.one} und ${v.two} sind Denim in fast demselben Blau: etwas deutlich Helleres oder Dunkleres wählen.`,
  'leather on leather': (v) => `${v.one} und ${v.two} sind beide aus Leder: eines genügt.`,
  'dress apart': (v) =>
    `${v.plain} (bis ${dress(v.ends)}) und ${v.dressy} (ab ${dress(v.begins)}) haben keinen Dresscode gemeinsam.`,
  'plainer on the way': (v) =>
    `${v.piece} ist schlichter als der Rest: für den Weg in Ordnung, drinnen bleibt es an der Garderobe.`,
  'dressier on the way': (v) =>
    `${v.piece} ist eleganter als der Rest: für den Weg in Ordnung, drinnen bleibt es an der Garderobe.`,
  'dress span': (v) =>
    v.low === v.high ? `Dresscode: nur ${dress(v.low)}.` : `Dresscodes: ${dress(v.low)} bis ${dress(v.high)}.`,
  'dress no plainer': (v, f) => `Nicht schlichter als ${dress(v.low)}: ${f.list(v.pieces)}.`,
  'dress no dressier': (v, f) => `Nicht eleganter als ${dress(v.high)}: ${f.list(v.pieces)}.`,
  'two seasons': (v) => `${v.bare} und ${v.winter}: das eine für warme Tage, das andere für kalte.`,
  'bag not by water': (v) => `${v.bag}: besser fern von Nassem und Sand.`,
  'bare shoes': (v) => `${v.shoes}: gehört an bloße Füße, ohne Strümpfe (${v.legwear}).`,
  'socks with heels': (v) => `${v.legwear} und ${v.shoes}: Diese Strümpfe passen nicht zum Absatz.`,
  'unseen legwear': (v) => `${v.legwear} und ${v.garment}: Die Strümpfe sieht niemand.`,
  'boots under trousers': (v) =>
    `${v.shoes}: braucht ein schmales Bein oder einen Saum darüber; hier staut sich der Stoff (${v.garment}).`,
  'walking boots with fine': (v) => `${v.shoes} und ${v.garment}: Die Schuhe sind zu derb dafür.`,
  'closed shoes by water': (v) => `${v.shoes}: geschlossen; zu Bademode offene Schuhe tragen.`,
  'bare legs': (v) => `${v.garment}: so elegant und kurz, dass Strümpfe dazugehören.`,
  'heels on ground': (v, f) =>
    `${v.shoes}: Absatz ${f.centimetres(v.heelCm)}; auf unebenem Boden und langen Wegen höchstens ${f.centimetres(v.mostCm)}.`,
  'open in rain': (v) => `${v.shoes}: offen, die Füße werden nass und kalt.`,
  'too many statements': (v, f) =>
    `${f.list(v.pieces)} wollen alle der Blickfang sein; ${v.most === 0 ? 'weglassen' : 'eines behalten'}.`,
  'too many ornaments': (v, f) =>
    `${f.list(v.pieces)} sind ${f.count(v.pieces.length)} Schmuckstücke; ${enough(v.most, f)}.`,
  'metals apart': (v) => `${v.one} und ${v.two} sind aus verschiedenen Metallen.`,
  'two at the neck': (v) => `${v.one} und ${v.two} sitzen beide am Hals.`,
  'against the skin': (v, f) => `Nicht auf der Haut zu tragen, dort aber vorgesehen: ${f.list(v.pieces)}.`,
  'bare beneath': (v) =>
    `${v.over} berührt die Haut, wo ${v.beneath} sie frei lässt; das Briefing schließt diesen Stoff dort aus.`,
  'takes no tie': (v) => `${v.top}: kein Kragen für eine Krawatte (${v.tie}).`,
  'tie with shorts': (v) => `${v.tie}: nicht zu ${v.shorts}.`,
  'tie with shoes': (v) => `${v.tie}: verlangt Lederschuhe, nicht ${v.shoes}.`,
  'heavy with shorts': (v) => `${v.shoes}: zu schwer zu ${v.shorts}.`,
  'underlayer seen': (v) => `${v.under}: wäre unter ${v.over} zu sehen.`,
  'underlayer alone': (v) => `${v.top}: gehört unter etwas anderes.`,
  'tie under layer': (v) => `${v.tie}: nicht unter ${v.layer}.`,
  'tie without jacket': (v) => `${v.tie}: nur mit Sakko, Weste oder feinem Strick darüber.`,
  'takes no belt': (v) => `${v.garment}: ohne ${v.belt} tragen.`,
  'no breast pocket': (v) => `${v.layer}: keine Brusttasche für das Einstecktuch (${v.square}).`,
  'square without jacket': (v) => `${v.square}: nur mit Sakko oder Blazer.`,
  'never together': (v, f) => `In dieser Capsule bewusst getrennt: ${f.list(v.pieces)}.`,
  'always together': (v) => `${v.piece} gehört in dieser Capsule zusammen mit ${v.missing}.`,

  'same place': (v) => `${v.one} und ${v.two} haben denselben Platz (${place(v.place)}): eines wählen.`,
  'no common form': (v) => `${v.one} und ${v.two} haben in einem Look nicht zusammen Platz.`,
  'too many pieces': (v, f) =>
    `${f.list(v.pieces)} teilen sich ${f.plural(v.places.length, { one: 'einen Platz', other: '# Plätze' })} eines Looks (${f.list(v.places.map(place))}): ${f.plural(v.pieces.length - v.places.length, { one: 'eines', other: '#' })} weglassen.`,
  'no form for all': (v, f) => `${f.list(v.pieces)} haben in einem Look nicht zusammen Platz.`,
  'missing piece': (v, f) => `Zum ganzen Look fehlt noch: ${f.either(v.places.map(place))}.`,
  'not in wardrobe': (v) => `Ein Teil namens ${quoted(v.piece)} gibt es hier nicht.`,

  'dress too plain': (v) => `${v.piece}: nur bis ${dress(v.ends)}; der Anlass verlangt ${dress(v.asked)}.`,
  'dress too formal': (v) => `${v.piece}: erst ab ${dress(v.begins)}; der Anlass verlangt ${dress(v.asked)}.`,
  'form not asked': (v) =>
    v.swim > 0 ? 'Bademode ist nur zum Schwimmen da.' : 'Der Anlass lässt diese Form von Look nicht zu.',
  'swim asked': () => 'Der Anlass verlangt Bademode.',
  'left out': (v) => `${v.piece}: weglassen.`,
  'must be worn': (v) => `${v.piece}: muss dabei sein.`,
  'heel too high': (v, f) =>
    `${v.piece}: Absatz ${f.centimetres(v.heelCm)}; verlangt sind höchstens ${f.centimetres(v.mostCm)}.`,
  'shoes do not suit': (v) => `${v.piece}: nicht gemacht für ${need(v.need)}.`,
  'need unmet': (v) => `Nichts darin ist gedacht für ${need(v.need)}.`,
  'too cold': (v, f) => `Mit allem sind es ${f.number(v.on, 2)} clo; nötig sind ${f.number(v.min, 2)}.`,
  'too warm': (v, f) =>
    `Auch ohne Schichten sind es ${f.number(v.off, 2)} clo; angenehm sind höchstens ${f.number(v.max, 2)}.`,

  'no piece for': (v) => `Es fehlt ein Teil für diesen Platz: ${place(v.place)}.`,
  'rule forbids all': (v) => `Die Hausregel ${quoted(v.rule)} schließt jeden Look aus: abschalten oder lockern.`,
  'rules forbid all': (v, f) => `Zusammen schließen diese Hausregeln jeden Look aus: ${f.list(v.rules.map(quoted))}.`,
  'asked forbids all': (v) => `Das Gewünschte schließt jeden Look aus: ${asked(v.asked)}.`,
  'pieces forbid all': () => 'Aus diesen Teilen entsteht kein Look, auch ohne jede Hausregel.',
  'goes with none': (v) => `${v.piece}: passt zu nichts an diesem Platz (${place(v.place)}).`,
} satisfies Translation<typeof english.outfit>;
