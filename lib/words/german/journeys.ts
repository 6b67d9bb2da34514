/** Not inside a longer word: "Zug" is a train, "Anzug", "Umzug" and "Autobahn" are none. */
const word = (pattern: string): RegExp => new RegExp(`(?<![a-zäöüß])(?:${pattern})(?![a-zäöüß])`, 'iu');

const JOURNEYS: readonly (readonly [name: string, plural: string, said: RegExp])[] = [
  [
    'Zug',
    'Zugfahrten',
    word(
      '(?:nacht|schnell|fern|regional|früh|abend|euro|liege|schlafwagen)?z[uü]ge?(?:fahrt|reise|es|s)?|(?:eisen)?bahn(?:fahrt|reise)?|train|rail',
    ),
  ],
  [
    'Flug',
    'Flüge',
    word('(?:hin|rück|ab|heim|weiter|nacht|früh)?fl(?:ug|iegen|iegt)(?:es|s|zeug|reise)?|flight|plane|fly'),
  ],
  [
    'Fähre',
    'Fahrten',
    word(
      '(?:nacht|auto|hin|rück)?(?:fähre|überfahrt)|fährfahrt|(?:segel|post)?schiff(?:fahrt|sreise)?|boot(?:sfahrt)?|ferry|boat',
    ),
  ],
];

const ANY_JOURNEY = 'Fahrt';

/** What the journeys are called when all are of one sort, by the stylist's names of them: "Zug", "Flug", "Fähre", "Fahrt". */
export const journeyWord = (journeys: readonly string[]): string =>
  (journeys.length > 0 && JOURNEYS.find(([, , said]) => journeys.every((name) => said.test(name)))?.[0]) || ANY_JOURNEY;

/** How many of them: "Flüge". */
export const journeyPlural = (journey: string): string => JOURNEYS.find(([name]) => name === journey)?.[1] ?? 'Fahrten';
