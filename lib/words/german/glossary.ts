import type { ActivityId } from '../../vocabulary/activities.ts';
import type { Coverage } from '../../vocabulary/coverage.ts';
import type { DressCode } from '../../vocabulary/dress-codes.ts';
import type { Need } from '../../vocabulary/needs.ts';
import type { PatternScale } from '../../vocabulary/patterns.ts';
import type { Slot } from '../../vocabulary/places.ts';

/** The tables' words reach sentences in English; a word that is not in the glossary is a name and stays as it is. */
export const lookUp =
  (words: Readonly<Record<string, string>>) =>
  (word: string): string =>
    Object.hasOwn(words, word) ? (words[word] ?? word) : word;

/** Dress codes as they stand on an invitation. */
export const dress = lookUp({
  casual: 'Casual',
  'smart casual': 'Smart Casual',
  business: 'Business',
  cocktail: 'Cocktail',
  formal: 'Festlich',
} satisfies Record<DressCode, string>);

/** What an occasion asks for, to follow "für". */
export const need = lookUp({
  swim: 'Schwimmen',
  'uneven ground': 'unebenen Boden',
  'long walking': 'lange Wege',
  rain: 'Regen',
  snow: 'Schnee',
  'shoulders covered': 'bedeckte Schultern',
  'knees covered': 'bedeckte Knie',
  'head covered': 'bedeckten Kopf',
  sun: 'starke Sonne',
} satisfies Record<Need, string>);

/** Activities, to follow "beim". */
export const doing = lookUp({
  resting: 'Ausruhen',
  sitting: 'Sitzen',
  travelling: 'Reisen',
  standing: 'Stehen',
  'strolling indoors': 'Umhergehen drinnen',
  strolling: 'Bummeln',
  walking: 'Gehen',
  'brisk walking': 'zügigen Gehen',
  dancing: 'Tanzen',
  swimming: 'Schwimmen',
} satisfies Record<ActivityId, string>);

/** The same where it is already said that it is indoors. */
export const doingThere = (activity: string): string => doing(activity).replace(/ drinnen$/u, '');

/** Places of a look, to follow "als", "für" or a colon. */
export const place = lookUp({
  'one-piece': 'Kleid oder Overall',
  top: 'Oberteil',
  bottom: 'Unterteil',
  swim: 'Bademode',
  'cover-up': 'Überwurf',
  'mid layer': 'Zwischenschicht',
  'outer layer': 'Mantel oder Jacke',
  'base layer': 'Unterziehshirt',
  'leg layer': 'Unterziehhose',
  legwear: 'Strümpfe',
  shoes: 'Schuhe',
  bag: 'Tasche',
  'jewellery ears': 'Ohrschmuck',
  'jewellery neck': 'Halsschmuck',
  'jewellery wrist': 'Armschmuck',
  'jewellery finger': 'Ring',
  'jewellery lapel': 'Brosche',
  jewellery: 'Schmuck',
  eyewear: 'Brille',
  headwear: 'Kopfbedeckung',
  scarf: 'Tuch oder Schal',
  tie: 'Krawatte',
  gloves: 'Handschuhe',
  belt: 'Gürtel',
} satisfies Record<Slot | 'jewellery', string>);

/** Parts of the body, in the plural where there are two. */
export const bodyPart = lookUp({
  head: 'Kopf',
  'face shaded': 'Gesicht',
  neck: 'Hals',
  shoulders: 'Schultern',
  'upper arms': 'Oberarme',
  forearms: 'Unterarme',
  hands: 'Hände',
  torso: 'Oberkörper',
  thighs: 'Oberschenkel',
  knees: 'Knie',
  calves: 'Unterschenkel',
  feet: 'Füße',
} satisfies Record<Coverage, string>);

export const patternScale = lookUp({
  small: 'klein',
  medium: 'mittel',
  large: 'groß',
} satisfies Record<PatternScale, string>);

/** What a look can be asked for, by the field of the question. */
export const asked = lookUp({
  pieces: 'bestimmte Teile',
  without: 'weggelassene Teile',
  cores: 'die Form des Looks',
  dress: 'der Dresscode',
  needs: 'die Ansprüche des Anlasses',
  clo: 'die Wärme',
  heelCmAtMost: 'die Absatzhöhe',
  flat: 'flache Schuhe',
});

/** Hue families, as plural nouns. */
export const hueFamily = lookUp({
  neutral: 'Neutrale',
  red: 'Rottöne',
  orange: 'Orangetöne',
  yellow: 'Gelbtöne',
  green: 'Grüntöne',
  teal: 'Petroltöne',
  blue: 'Blautöne',
  purple: 'Violetttöne',
  pink: 'Rosatöne',
});

export const colourRole = lookUp({ base: 'Basis', support: 'Begleiter', accent: 'Akzent' });

export const colourRelation = lookUp({
  metal: 'Metall',
  neutral: 'neutral',
  same: 'gleich',
  'near miss': 'fast gleich',
  'tone on tone': 'Ton in Ton',
  neighbouring: 'benachbart',
  contrast: 'Kontrast',
  triad: 'ein Drittel entfernt',
  split: 'fast gegenüber',
  opposite: 'gegenüber',
  'shared colour': 'gemeinsame Farbe',
  clash: 'beißt sich',
});
