import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { PIECES } from './sentence.ts';

/** German sentences of moods side by side, and of travellers side by side. */
export const compare = {
  'lines heading': () => 'Die Liste, Zeile für Zeile',
  'line asks': (v, f) => `${v.what}: ${f.count(v.wanted)} Stück`,
  'line lacks': (v, f) => `${f.count(v.under)} ${v.under === 1 ? 'fehlt' : 'fehlen'}`,
  'line over': (v, f) => `darüber hinaus ${f.list(v.pieces)}`,
  'line empty': () => 'nichts',
  'pieces weigh': () => 'Gewicht der Teile allein',
  grams: (v, f) =>
    v.spread < 50
      ? `genau ${f.kilograms(v.grams / 1000)}`
      : `${f.kilograms(v.grams / 1000)} ± ${f.kilograms(v.spread / 1000)}`,
  served: () => 'Anlässe mit Look',
  'served of': (v, f) =>
    v.served === v.of
      ? `alle ${f.count(v.of)}`
      : `${f.count(v.served)} von ${f.count(v.of)}${v.proven === 1 ? ', mehr geht mit diesen Teilen nicht' : ''}`,
  changes: () => 'Umziehen innerhalb eines Tages',
  'looks worn': () => 'verschiedene getragene Looks',
  unworn: () => 'Teile, die der Plan nie trägt',
  'unworn which': (v, f) =>
    v.pieces.length === 0 ? 'keins' : `${f.count(v.pieces.length)} Stück (${f.list(v.pieces)})`,
  'palette is': () => 'Farbpalette',
  'column line': () => 'Zeile',
  'why so': (v) => `Grund: ${v.why}.`,
  'shared heading': () => 'In beiden',
  'no shared': () => 'Kein Teil ist in beiden.',
  'together heading': () => 'Beide in einem Gepäckstück',
  'union is': (v, f) =>
    `${f.count(v.first)} und ${f.count(v.second)} Teile, davon ${f.count(v.shared)} gemeinsam, sind zusammen ${f.plural(v.together, PIECES)}.`,
  'union looks': (v, f) =>
    `Zusammen ergeben sie ${f.count(BigInt(v.core))} Grundlooks, ${f.count(BigInt(v.layered))} Looks mit Schichten und ${f.count(BigInt(v.complete))} ganze Looks.`,
  'cross looks': (v, f) =>
    `Davon mischen ${f.count(BigInt(v.core))} Grundlooks, ${f.count(BigInt(v.layered))} Looks mit Schichten und ${f.count(BigInt(v.complete))} ganze Looks die beiden Stimmungen; keine ergibt sie allein.`,
  'cross heading': () => 'Looks mit Teilen aus beiden',
  'no cross': () => 'Kein Look hat Teile aus beiden.',

  'travellers heading': () => 'Nebeneinander',
  'travellers lede': (v, f) =>
    `${f.list(v.travellers)}: Bei ${f.count(v.good)} von ${f.count(v.of)} Anlässen passen die Looks gut zusammen.`,
  'capsule of': (v) => `„${v.capsule}“ für ${v.traveller}`,
  'travellers taken': (v, f) => `Gezeigt: ${f.list(v.of)}.`,
  'sits well said': () => 'passt zusammen',
  'sits badly said': () => 'besser nicht auf einem Bild',
  instead: (v, f) => `Besser für ${v.traveller}: ${f.list(v.pieces)}.`,
  'lend heading': () => 'Zum Leihen',
  'no lend': () => 'Niemand hat ein Teil, das anderen fehlt, ihnen passt und einen Look ergibt.',
  lend: (v, f) =>
    `${v.piece}, von ${v.from} für ${v.to}: passt zu ${f.count(v.goesWith)} von ${f.plural(v.planned, { one: '# geplanten Look', other: '# geplanten Looks' })} für ${v.to}.`,
  'bags heading': () => 'Das Gepäck zusammen',
  'bags fit': () => 'Jedes Gepäckstück fasst, was darin ist.',
  'bags over': () => 'Nicht jedes Gepäckstück fasst, was darin ist.',
  'bag weighs': (v, f) =>
    `${f.list(v.travellers)}, ${v.bag}${v.travellers.length > 1 ? ', gemeinsam' : ''}: ${f.kilograms(v.grams / 1000)}${v.spread < 50 ? '' : ` ± ${f.kilograms(v.spread / 1000)}`}${v.most === 0 ? ', ohne angegebenes Gewichtslimit' : ` von ${f.kilograms(v.most / 1000)}`}.`,
  'bags weigh': (v, f) =>
    v.left >= 0
      ? `Zusammen ${f.kilograms(v.grams / 1000)} von ${f.kilograms(v.most / 1000)}: noch Platz für ${f.kilograms(v.left / 1000)}.`
      : `Zusammen ${f.kilograms(v.grams / 1000)} von ${f.kilograms(v.most / 1000)}: ${f.kilograms(-v.left / 1000)} zu viel.`,
  move: (v, f) =>
    `${v.piece} (${f.grams(v.grams)}): aus „${v.fromBag}“ (${f.list(v.from)}) in „${v.toBag}“ (${f.list(v.to)}).`,
  'no moves': () => 'Umpacken hilft nicht: Die anderen haben keinen Platz.',
  'ask about sharing': () => 'Ob Reisende ihr Freigepäck zusammenlegen dürfen, bestimmt der Beförderer: vorher fragen.',
  'estimates in weights': () => 'Nicht eingetragene Gewichte sind geschätzt.',
} satisfies Translation<typeof english.compare>;
