import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { bodyPart, doing } from './glossary.ts';

const BANDS: Readonly<Record<string, string>> = {
  low: 'niedrig',
  moderate: 'mäßig',
  high: 'hoch',
  'very high': 'sehr hoch',
  extreme: 'extrem',
};

const asksExtra = ({ band }: { readonly band: string }): boolean => band === 'very high' || band === 'extreme';
const sunAdvice = (v: { readonly band: string }): string =>
  asksExtra(v)
    ? 'die Mittagssonne meiden; Hemd, Hut mit Krempe und Sonnenschutz sind ein Muss'
    : 'mittags in den Schatten, Haut bedecken, Sonnenschutz auftragen';
const ofCloth = (v: { readonly band: string }): string =>
  asksExtra(v)
    ? ' Kein Stoff hier ist auf UV geprüft: dicht Gewebtes hält das meiste ab, oder Kleidung mit UPF 30 und mehr.'
    : '';

/** German sentences of the comfort room. */
export const comfort = {
  'comfortable outdoors': (v, f) =>
    `Angenehm draußen bei ${f.celsiusRange(v.low, v.high)} beim ${doing(v.activity)}, Schicht für Schicht.`,
  'comfortable indoors': (v, f) =>
    `Angenehm in Räumen mit ${f.celsiusRange(v.low, v.high)} beim ${doing(v.activity)}, Schicht für Schicht.`,
  'how degrees are found': () =>
    'Die Gradangaben sind aus veröffentlichten Kleidungstabellen geschätzt, auf ein Viertel der Isolation genau: ISO 7730 in Räumen und bei Wärme, ISO 11079 bei Kälte; der Übergang zwischen 10 und 20 °C ist unser eigener. Jeder empfindet anders: Was zählt, ist Ihr Gefühl.',
  'feels cold': () => 'Eine halbe Stufe wärmer angezogen als die meisten, für jemanden, der leicht friert (geschätzt).',
  'feels cold short': () => 'für jemanden, der leicht friert',
  'feels warm short': () => 'für jemanden, dem leicht warm ist',
  'feels warm': () =>
    'Eine halbe Stufe luftiger angezogen als die meisten, für jemanden, dem leicht warm ist (geschätzt).',
  'clo range': (v, f) =>
    `Dieser Look dämmt mit ${f.number(v.off, 2)} clo ohne Schichten und ${f.number(v.on, 2)} clo mit allen (geschätzt).`,
  'counted as worn': (v, f) =>
    `Wäsche ist mitgerechnet (${f.number(v.underthings, 2)} clo), in geschlossenen Schuhen auch dünne Socken (${f.number(v.socks, 2)} clo), ob sie auf der Liste stehen oder nicht.`,
  'uv index': (v, f) => `UV-Index bis ${f.count(v.index)} (${BANDS[v.band] ?? v.band}) bei klarem Himmel.`,
  'uv index if it clears': (v, f) =>
    `UV-Index höchstens ${f.count(v.index)} (${BANDS[v.band] ?? v.band}), falls es aufklart.`,
  'sun on the trip': (v, f) =>
    `Sonne: UV-Index bis ${f.count(v.index)} (${BANDS[v.band] ?? v.band}) bei klarem Himmel, mehr auf Schnee, am Wasser und in der Höhe. Am ${f.list(f.dateStretches(v.firstDays, v.lastDays))} ${sunAdvice(v)}; örtliche UV-Warnungen beachten.${ofCloth(v)}`,
  'sun on the trip if it clears': (v, f) =>
    `Sonne: UV-Index höchstens ${f.count(v.index)} (${BANDS[v.band] ?? v.band}), falls es aufklart, mehr auf Schnee, am Wasser und in der Höhe. Klart es am ${f.list(f.dateStretches(v.firstDays, v.lastDays))} auf: ${sunAdvice(v)}; örtliche UV-Warnungen beachten.${ofCloth(v)}`,
  'take for the sun': (v, f) => `Gegen die Sonne mitnehmen: ${f.list(v.pieces)}.`,
  'take a hat': () => 'Nichts im Gepäck beschattet das Gesicht: einen Hut mit Krempe mitnehmen.',
  'take sunglasses': () => 'Sonnenbrille mitnehmen.',
  'bare to the sun': (v, f) => `Der Sonne ausgesetzt: ${f.list(v.parts.map(bodyPart))}.`,
  'sheer to the sun': (v, f) =>
    `Durchsichtiges lässt die Sonne durch: auch darunter Sonnenschutz auftragen (${f.list(v.parts.map(bodyPart))}).`,
  'cold caution': (v, f) =>
    `Es kann bis ${f.celsius(v.low)} kalt werden. Kopf, Hände und Füße bedeckt und trocken halten, sich oft drinnen aufwärmen und örtliche Kältewarnungen beachten; bei Herz-, Lungen- oder Kreislauferkrankungen vorher ärztlichen Rat einholen.`,
  'beyond travel clothes': (v, f) =>
    `Bei ${f.celsius(v.low)} reicht keine Kleidung aus einem Reisegepäck. Drinnen bleiben oder Kälteschutzkleidung und Rat von Ortskundigen holen; örtliche Warnungen beachten. Erfrierungen sind ein medizinischer Notfall.`,
  'too cold to keep still': (v, f) =>
    `Bei ${f.celsius(v.low)} reicht beim ${doing(v.activity)} keine Kleidung aus einem Reisegepäck. Kurz bleiben, in Bewegung bleiben, sich zwischendurch drinnen aufwärmen oder Kleidung für solche Kälte leihen; örtliche Kältewarnungen beachten, bei Herz-, Lungen- oder Kreislauferkrankungen vorher ärztlichen Rat einholen.`,
  'cold swim': (v, f) =>
    `Die Luft hat ${f.celsius(v.low)}, und offenes Wasser ist dann kalt: es nimmt sofort den Atem und binnen Minuten die Kraft. Nur baden, wo Rettungsschwimmer oder Ortskundige es erlauben, nie allein; langsam hineingehen, kurz bleiben, gleich abtrocknen und warm anziehen. Bei Herz- oder Kreislauferkrankungen oder im Zweifel vorher ärztlichen Rat einholen.`,
  'cold swim in short': () =>
    'Kaltes Wasser nimmt sofort den Atem: langsam hinein, kurz bleiben, nie allein; im Zweifel vorher ärztlichen Rat einholen.',
  'dark all day': () =>
    'Die Sonne geht nicht auf: es dämmert höchstens. Etwas Helles oder Reflektierendes tragen, ein Licht mitnehmen und auf Eis achten, das man nicht sieht.',
  'dark on the trip': (v, f) =>
    `Am ${f.list(f.dateStretches(v.firstDays, v.lastDays))} geht die Sonne nicht auf: es dämmert höchstens. Etwas Helles oder Reflektierendes tragen, ein Licht mitnehmen und auf Eis achten, das man nicht sieht.`,
  'dark mark': () => 'Kein Sonnenaufgang.',
  'heat caution': (v, f) =>
    `Es kann bis ${f.celsius(v.high)} heiß werden. Wasser trinken, im Schatten bleiben, in den heißesten Stunden ausruhen und örtliche Hitzewarnungen beachten; bei Erkrankungen vorher ärztlichen Rat einholen.`,
  'wet ground': () => 'Der Boden kann nass und rutschig sein: griffige Sohlen tragen und sich Zeit lassen.',
  'wet on the trip': (v, f) =>
    `Am ${f.list(f.dateStretches(v.firstDays, v.lastDays))} kann der Boden nass und rutschig sein: griffige Sohlen tragen und sich Zeit lassen.`,
  'wet mark': () => 'Nasser Boden.',
  'wet and uneven': () =>
    'Nasser, unebener Boden: griffige Schuhe tragen, bei schlechtem Wetter umkehren und örtliche Berg- und Wegewarnungen beachten.',
  'wet and uneven on the trip': (v, f) =>
    `Am ${f.list(f.dateStretches(v.firstDays, v.lastDays))} nasser, unebener Boden: griffige Schuhe tragen, bei schlechtem Wetter umkehren und örtliche Berg- und Wegewarnungen beachten.`,
  'wet and uneven mark': () => 'Nasser, unebener Boden.',
  'heels on bad ground': () =>
    'Diese Absätze sind auf solchem Boden nicht sicher: in der Tasche tragen und erst am Ziel wechseln.',
} satisfies Translation<typeof english.comfort>;
