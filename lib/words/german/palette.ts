import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { colourWords } from './colours.ts';
import { sentence } from './sentence.ts';

/** German sentences of the palette page. */
export const palette = {
  'wheel said': (v) => `Die Palette im Farbkreis. ${v.families.join(' ')}`,
  'wheel family': (v, f) => sentence(`${v.family}: ${f.list(colourWords(v.colours))}`),
  'wheel means': () =>
    'Jeder Punkt ist eine Farbe. Die Richtung ist der Ton, der Abstand von der Mitte die Kraft, die Größe, wie viel davon zu sehen ist. Was sich über die Mitte hinweg gegenüberliegt, ist Gegenfarbe.',
  'hue heading': () => 'Ton',
  'colour and pieces': () => 'Farbe, und die Teile, die sie zeigen',
  'hardly seen': (_, f) => `unter ${f.percent(0.01)}`,
  'relations heading': () => 'Wie sie zusammengehen',
  'relations means': () =>
    'Zwei Farben werden danach beurteilt, wo sie im Farbkreis stehen, wie kräftig und wie hell sie sind.',
  'neutrals go': (v, f) => `Neutral und zu jeder Farbe hier passend: ${f.list(colourWords(v.colours))}.`,
  'metals go': (v, f) => `${f.list(colourWords(v.colours))}: Metall passt zu allem.`,
  'every two': () => 'Je zwei Farben, mit dem Grund',
  'two colours': () => 'Zwei Farben',
  relation: () => 'Verhältnis',
  why: () => 'Warum',
  apart: () => 'Wie weit auseinander',
  'pairs heading': () => 'Oberteile zu Unterteilen, nach Farbe',
  'pairs means': () => 'Jede Kombination, wie sie getragen wird, das Oberteil oben. Hier zählt nur die Farbe:',
  'pairs in full': () => 'alle Kombinationen, mit allen Gründen',
  tops: () => 'Oberteile',
  bottoms: () => 'Unterteile',
  goes: () => 'passt',
  'does not go': () => 'passt nicht',
  'notes heading': () => 'Einen zweiten Blick wert',
  'nothing alone': () => 'Kein Teil steht allein: Jedes hat etwas, wozu es passt.',
  'nothing alike': () => 'Keine zwei Teile mit derselben Aufgabe sind sich farblich zu ähnlich.',
  'more heading': () => 'Eine Farbe mehr',
  'more means': () => 'Was ein einfarbiges Teil mehr brächte, in den Farben der Stimmung.',
  'more means any': () => 'Was ein einfarbiges Teil mehr brächte.',
  'nothing more': () => 'Keine neue Farbe brächte mehr Kombinationen.',
  'vision heading': () => 'Wie andere es sehen',
  'vision means': () =>
    'Etwa einer von zwölf Männern und eine von zweihundert Frauen unterscheiden Rot und Grün schlechter als andere. Die Streifen zeigen die Palette, wenn eine Zapfenart fehlt. Wo das einen Look betrifft, stehen die Namen der Teile neben jedem Bild davon.',
  'vision usual': () => 'Mit allen drei Zapfenarten',
  'vision without': (v) => `Gesehen ${v.plain}`,
  'palette in order': (v, f) => sentence(f.list(colourWords(v.colours))),
  'seen as': () => 'Wie sie sind und wie sie gesehen werden',
  'nothing hard': () =>
    'Keine zwei Teile, die in diesem Lookbook zusammen getragen werden, sehen für irgendwen gleich aus.',
} satisfies Translation<typeof english.palette>;
