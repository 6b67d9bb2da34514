import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { colourWord } from './colours.ts';

const PIECES = { one: '# Teil', other: '# Teile' } as const;
const WHY: Readonly<Record<string, string>> = {
  'left out': 'ausgeschlossen',
  'refused by the brief': 'vom Briefing abgelehnt',
  'outside the mood': 'außerhalb der Stimmung',
  'still to buy': 'noch zu kaufen',
};
const times = (count: number, counted: string): string =>
  count === 1 ? 'einmal' : count === 2 ? 'zweimal' : `${counted}-mal`;

/** German sentences of the capsule room. */
export const capsule = {
  'line under': (v, f) =>
    `Die Liste verlangt bei „${v.what}“ ${f.plural(v.wanted, PIECES)}; vorhanden: ${v.has === 0 ? 'keins' : f.count(v.has)}.`,
  'line under mend': (v, f) => `Bei „${v.what}“ noch ${f.plural(v.under, PIECES)} dazunehmen.`,
  'line over': (v, f) =>
    `Die Liste verlangt bei „${v.what}“ ${f.plural(v.wanted, PIECES)}; darüber hinaus: ${f.list(v.over)}.`,
  'line over mend': () => 'Was über die Liste hinausgeht, zu Hause lassen oder die Liste erweitern.',
  unlisted: (v, f) => `Auf keiner Zeile der Liste: ${f.list(v.pieces)}.`,
  'silhouette repeats': (v, f) => `Gleiche Form: ${f.list(v.pieces)}.`,
  'silhouette repeats mend': () =>
    'Eins gegen einen anderen Schnitt oder eine andere Länge tauschen; so unterscheiden sich die Looks mehr.',
  'few colours': (v, f) => `Alles ist in ${f.list(v.colours)}.`,
  'few colours mend': () => 'Eine weitere Farbe oder einen helleren oder dunkleren Ton mitnehmen.',
  'many colours': (v, f) => `${f.count(v.colours.length)} verschiedene Farben: ${f.list(v.colours)}.`,
  'many colours mend': (v, f) => `Bei etwa ${f.count(v.most)} bleiben, dann passt mehr zusammen.`,
  'few separates': (v, f) =>
    `${f.plural(v.onePieces, { one: '# Kleid', other: '# Kleider' })} und nur ${f.plural(v.separates, { one: '# Einzelteil', other: '# Einzelteile' })}.`,
  'few separates mend': () => 'Ein Kleid gegen ein Oberteil oder Unterteil tauschen: Einzelteile ergeben mehr Looks.',
  'no pattern': () => 'Alles ist neutral und einfarbig.',
  'no pattern mend': () =>
    'Ein Muster mitnehmen, oder stattdessen ein auffälliges Tuch, eine Tasche oder ein Schmuckstück.',
  'one outer length': (v, f) =>
    `${v.pieces.length === 2 ? 'Beide' : 'Alle'} ${v.long === 1 ? 'lang' : 'kurz'}: ${f.list(v.pieces)}.`,
  'one outer length mend': (v) =>
    `Eins gegen ein ${v.long === 1 ? 'kurzes' : 'langes'} tauschen: Röcke und Hosen brauchen verschiedene Längen.`,
  'no flat shoes': () => 'Kein Paar Schuhe ist flach und für lange Wege gemacht.',
  'no flat shoes mend': () => 'Ein flaches Paar mitnehmen, in dem man den ganzen Tag gehen kann.',
  'no dressier shoes': () => 'Alle Schuhe sind gleich festlich.',
  'no dressier shoes mend': () => 'Ein festlicheres Paar mitnehmen, mit einem Absatz, der zu bewältigen ist.',
  swimsuits: (v, f) =>
    `Auf der Reise wird ${times(v.swims, f.count(v.swims))} geschwommen, und es gibt ${v.has === 0 ? 'keine Badebekleidung' : 'nur ein Teil Badebekleidung'}.`,
  'swimsuits mend': (v) =>
    v.wanted === 1 ? 'Eins einpacken.' : 'Zwei einpacken: eins trocknet, während das andere getragen wird.',

  'let in': (v, f) =>
    `${f.count(v.lacking)} der Teile zulassen, die ${WHY[v.why] ?? v.why} sind: ${f.either(v.pieces)}.`,
  'add to wardrobe': (v, f) =>
    `${f.plural(v.lacking, PIECES)} zur Garderobe hinzufügen (${f.either(v.kinds)}) oder bei „${v.what}“ weniger verlangen.`,
  'line unfillable': (v, f) =>
    `Die Liste verlangt bei „${v.what}“ ${f.plural(v.wanted, PIECES)}; davon ${v.lacking === 1 ? 'fehlt' : 'fehlen'} ${f.count(v.lacking)}.`,
  'list too long': (v, f) =>
    `Die Liste verlangt ${f.plural(v.listed, PIECES)}, eingepackt werden dürfen höchstens ${f.count(v.most)}.`,
  'list too long mend': (v, f) => `${f.count(v.over)} von der Liste nehmen oder ${f.count(v.over)} mehr zulassen.`,
  'too heavy': (v, f) =>
    `Selbst die leichtesten Teile, die die Liste${v.kept > 0 ? ' neben den zu behaltenden' : ''} füllen, wiegen im Gepäck ${f.grams(v.least)}; erlaubt sind ${f.grams(v.most)}.`,
  'too heavy mend': (v, f) =>
    `${f.grams(v.over)} mehr zulassen${v.line === '' ? ' oder zwei oder mehr Teile von der Liste nehmen' : ` oder bei „${v.line}“ eins weniger verlangen`}.`,
  'too full': (v, f) =>
    `Selbst die kleinsten Teile, die die Liste${v.kept > 0 ? ' neben den zu behaltenden' : ''} füllen, brauchen ${f.litres(v.least)}; ins Gepäck passen ${f.litres(v.most)}.`,
  'too full mend': (v, f) =>
    `${f.litres(v.over)} mehr Gepäck nehmen${v.line === '' ? ' oder zwei oder mehr Teile von der Liste' : ` oder bei „${v.line}“ eins weniger verlangen`}.`,
  'nothing within': (v, f) =>
    `Es wurde kein Gepäck gefunden, das Gewicht und Volumen zugleich einhält; das nächste braucht ${f.grams(v.grams)} und ${f.litres(v.litres)}.`,
  'nothing within mend': (v, f) =>
    `${f.list([...(v.overGrams > 0 ? [f.grams(v.overGrams)] : []), ...(v.overLitres > 0 ? [f.litres(v.overLitres)] : [])])} mehr zulassen oder ein Teil weniger verlangen.`,
  'nothing left': (v, f) =>
    v.wardrobe === 0
      ? 'Die Garderobe ist leer.'
      : `Alle ${f.count(v.wardrobe)} Teile der Garderobe sind ausgeschlossen oder abgelehnt.`,
  'nothing left mend': () => 'Einige Teile wieder zulassen oder die Palette erweitern.',
  'keep unknown': (v) => `Die Garderobe hat kein Teil „${v.piece}“, das bleiben könnte.`,
  'keep and leave': (v) => `„${v.piece}“ soll bleiben und zugleich wegfallen.`,
  'keep without place': (v, f) => `Die Liste hat keinen Platz für ${f.list(v.pieces)}.`,
  'keep without place mend': (v, f) => `${f.plural(v.lacking, PIECES)} mehr zulassen oder weniger behalten.`,
  'too many looks': (v, f) =>
    `Diese Liste lässt so viel von der Garderobe zu, dass sie mehr als ${f.count(v.most)} Looks mit Schichten ergibt: zu viele für eine Auswahl.`,
  'too many looks mend': () => 'Der Stimmung eine Palette geben oder die Arten auf der Liste kürzen.',
  'fewer proposals': (v, f) =>
    v.found === 1
      ? 'Einen zweiten Vorschlag, der sich vom ersten genug unterscheidet, gibt es nicht.'
      : `Nur ${f.count(v.found)} Vorschläge unterscheiden sich genug voneinander.`,
  'no look in wardrobe': (v) =>
    `Nichts, was die Liste füllt, ergibt einen Look für ${v.occasion}.${v.lacks.length > 0 ? ` Was am nächsten kommt: ${v.lacks.join('; ')}.` : ''}`,
  'no room for look': (v, f) =>
    `Für ${v.occasion} hat die Garderobe einen Look, aber die Liste hat nicht für alles Platz: ${f.list(v.pieces)} ${v.pieces.length === 1 ? 'blieb' : 'blieben'} draußen.`,
  'kept though refused': (v, f) =>
    `Bleibt auf Wunsch dabei, obwohl das Briefing den Stoff ablehnt: ${f.list(v.pieces)}. Für keinen Anlass wird damit gekleidet.`,

  'versus occasions': (v, f) =>
    v.ahead === 1
      ? `kleidet für ${f.count(v.mine)} Anlässe, der nächstbeste für ${f.count(v.theirs)}`
      : `kleidet für ${f.count(v.mine)} Anlässe, jeder andere für mindestens ${f.count(v.theirs)}`,
  'versus core looks': (v, f) =>
    v.ahead === 1
      ? `ergibt ${f.count(v.mine)} Grundlooks, der nächstbeste ${f.count(v.theirs)}`
      : `ergibt ${f.count(v.mine)} Grundlooks, jeder andere mindestens ${f.count(v.theirs)}`,
  'versus layered looks': (v, f) =>
    v.ahead === 1
      ? `ergibt ${f.count(v.mine)} Looks mit Schichten, der nächstbeste ${f.count(v.theirs)}`
      : `ergibt ${f.count(v.mine)} Looks mit Schichten, jeder andere mindestens ${f.count(v.theirs)}`,
  'versus weight': (v, f) =>
    `${v.ahead === 1 ? 'am leichtesten' : 'am schwersten'}: ${f.grams(v.mine)} im Gepäck, der nächste ${f.grams(v.theirs)}`,
  'versus colours': (v, f) =>
    `${v.ahead === 1 ? 'mehr' : 'weniger'} Farben: ${f.count(v.mine)}, der nächste ${f.count(v.theirs)}`,
  'versus shapes': (v, f) =>
    `${v.ahead === 1 ? 'mehr' : 'weniger'} verschiedene Formen: ${f.count(v.mine)}, der nächste ${f.count(v.theirs)}`,
  'versus prints': (v, f) =>
    `${v.ahead === 1 ? 'mehr' : 'weniger'} Muster: ${f.count(v.mine)}, der nächste ${f.count(v.theirs)}`,
  'versus findings': (v, f) =>
    `${v.ahead === 1 ? 'weniger' : 'mehr'} zu verbessern: ${f.count(v.mine)}, beim nächsten ${f.count(v.theirs)}`,
  'chosen for': ({ name, wardrobe }) => `Für ${name}, aus dem Kleiderschrank „${wardrobe}“.`,
  'unlike first': (v, f) =>
    `anders als Vorschlag 1: ${f.list(v.brings)}${v.leaves.length > 0 ? ` statt ${f.list(v.leaves)}` : ''}`,
  bound: (v, f) => {
    const looks = `${f.count(v.looks)} ${v.level === 'core' ? 'Grundlooks' : 'Looks mit Schichten'}`;
    return v.gap === 0
      ? `${looks}, mehr geht nicht: Kein Gepäck, das diese Liste füllt und für diese Anlässe kleidet, ergibt mehr`
      : `${looks}, höchstens ${f.percent(Math.ceil(v.gap * 100) / 100)} vom Bestmöglichen entfernt: Kein Gepäck, das diese Liste füllt und für diese Anlässe kleidet, ergibt mehr als ${f.count(v.bound)}`;
  },

  'why tops': (v, f) =>
    `${f.plural(v.days, { one: '# Tag', other: '# Tage' })}, ${v.washes === 0 ? 'kein Waschtag' : f.plural(v.washes, { one: '# Waschtag', other: '# Waschtage' })}: höchstens ${f.plural(v.stretch, { one: '# Tag', other: '# Tage' })} mit dem, was sauber ist.${v.under > 0 ? ' Eins davon kommt bei Frost unter ein anderes.' : ''}`,
  'why bottoms': (v, f) =>
    `Weniger als die ${f.count(v.tops)} Oberteile: Unterteile trägt man öfter zwischen zwei Wäschen.`,
  'why dresses': (v, f) =>
    v.formal === 0
      ? 'Eins für einen Abend.'
      : f.plural(v.formal, { one: 'Ein Abend verlangt danach.', other: '# Abende verlangen danach.' }),
  'why swimwear': (v, f) => {
    const swimming = `Auf der Reise wird ${times(v.swims, f.count(v.swims))} geschwommen`;
    return v.swimwear > 1
      ? `${swimming}, zu kurz nacheinander zum Trocknen: zwei, damit eins trocknet, während das andere getragen wird.`
      : `${swimming}${v.swims > 1 ? ', mit Zeit zum Trocknen dazwischen' : ''}.`;
  },
  'why layers': () => 'Für drinnen, für den Abend und für unterwegs.',
  'why outers': (v, f) =>
    v.known === 0
      ? 'Das Wetter ist noch nicht bekannt: eine kurze und eine lange.'
      : `Bis hinunter auf ${f.celsius(v.lowC)}, Regen ${f.percent(v.rainPercent / 100)}.`,
  'why shoes': (v) =>
    v.snow === 1
      ? 'Ein Paar für Schnee und Eis, eins zum Gehen, ein festlicheres.'
      : v.rough === 1 && v.formal > 0
        ? 'Ein Paar für unebenen Boden, eins zum Gehen, eins für festliche Anlässe.'
        : 'Ein flaches Paar zum Gehen, ein festlicheres.',
  'why legwear': () =>
    'Thermoleggings unter der Hose, Socken in den Stiefeln; ein Paar trocknet, während das andere getragen wird.',
  'why warm things': (v, f) =>
    v.known === 1 ? `Bis ${f.celsius(v.lowC)}${v.snow === 1 ? ', dazu Schnee' : ''}.` : 'Auf der Reise liegt Schnee.',
  'why bag': () => 'Eine für den Tag.',
  'why shade': () => 'Die Sonne verlangt beides.',
  'why finish': () => 'Ohrringe, ein Tuch, ein Gürtel: klein und leicht, und sie verändern einen Look.',

  'same print': (v) => `${v.one} und ${v.two} sind gleich gemustert: auf einem Bild genügt eins.`,
  'clash in picture': (v) => `${v.one} und ${v.two} passen nebeneinander nicht gut.`,
  answers: (v) => `${v.one} nimmt ${v.two} auf.`,
  'sits well': (v, f) => `Auf dem Bild: ${f.list(v.colours.map(colourWord))}.`,
  'lend any size': () => 'passt allen',
  'lend same size': (v) => `beide tragen Größe ${v.size}`,
} satisfies Translation<typeof english.capsule>;
