import type { DressInterval, Look, LookComfort, Piece, WornPiece } from '../model/index.ts';
import { CORE_SLOTS, dressIndex, LAYER_SLOTS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { TripAir } from './trip-air.ts';

/** What of a look its title is made from. */
export interface TitledLook {
  readonly look: Look;
  readonly dress: DressInterval;
  readonly outdoors: LookComfort;
}

type Weather = 'none' | 'wet' | 'changeable' | 'hot' | 'warm' | 'mild' | 'cool' | 'cold';

/** Order in which the pieces beside the core set a look apart. */
const TELLING_SLOTS: readonly string[] = ['mid layer', 'outer layer', 'cover-up', 'shoes', 'scarf', 'bag', 'headwear'];

const COCKTAIL = dressIndex('cocktail');

/** Degrees Celsius between every layer on and every layer off from which a look is for days that change. Own choice. */
const CHANGEABLE_C = 14;
/** The same of a trip: degrees of its own weather for which a look is right with layers on or off. Own choice. */
const CHANGEABLE_ON_TRIP_C = 9;

/** The coldest that suits a look, °C, and what a day of it is called: words of daily life, no source. */
const DAYS: readonly (readonly [number, Weather])[] = [
  [22, 'hot'],
  [16, 'warm'],
  [9, 'mild'],
  [1, 'cool'],
];

/** The weather a look is for, among the weather that the trip has; `none` when it has none of it. */
const weatherOf = (look: LookComfort, coats: readonly Piece[], trip: TripAir | undefined): Weather => {
  const lowC = Math.max(look.lowC, trip?.lowC ?? look.lowC);
  const highC = Math.min(look.highC, trip?.highC ?? look.highC);
  if (lowC > highC) return 'none';
  if (trip?.wet !== false && coats.some(({ suits }) => suits.includes('rain'))) return 'wet';
  const isWide = look.highC - look.lowC >= CHANGEABLE_C;
  if (isWide && (trip === undefined || highC - lowC >= CHANGEABLE_ON_TRIP_C)) return 'changeable';
  return DAYS.find(([from]) => lowC >= from)?.[1] ?? 'cold';
};

/** What one sees of a piece from afar: its pattern where it has a loud one, else its colour. */
const seenOf = ({ pattern, colours }: Piece): Phrase =>
  pattern.type === 'plain' || pattern.type === 'colour block'
    ? phrase('title', 'colour', { colour: colours[0]?.name ?? '' })
    : phrase('title', 'pattern', { pattern: pattern.type });

const once = (phrases: readonly Phrase[]): readonly Phrase[] => {
  const seen = new Set<string>();
  return phrases.filter((said) => {
    const key = JSON.stringify(said);
    return !seen.has(key) && seen.add(key);
  });
};

const colourList = (pieces: readonly Piece[]): readonly Phrase[] => once(pieces.map(seenOf));

const placeOf = ({ slot }: WornPiece): number => {
  const at = TELLING_SLOTS.indexOf(slot);
  return at < 0 ? TELLING_SLOTS.length : at;
};

/**
 * Titles a look could have, the plainest first: its core's colours (a dress has those of its layer too), then with one
 * piece named that sets it apart, at last every piece by name.
 */
const titlesOf = (
  { look, dress, outdoors }: TitledLook,
  byId: ReadonlyMap<string, Piece>,
  trip: TripAir | undefined,
): readonly Phrase[] => {
  const found = (worn: readonly WornPiece[]): readonly Piece[] => worn.flatMap(({ piece }) => byId.get(piece) ?? []);
  const core = found(look.worn.filter(({ slot }) => CORE_SLOTS.has(slot)));
  const others = found(
    look.worn.filter(({ slot }) => !CORE_SLOTS.has(slot)).toSorted((a, b) => placeOf(a) - placeOf(b)),
  );
  const layers = found(look.worn.filter(({ slot }) => LAYER_SLOTS.has(slot)));
  const isDress = look.worn.some(({ slot }) => slot === 'one-piece');
  const isSwim = look.worn.some(({ slot }) => slot === 'swim');
  const weather = isSwim
    ? 'water'
    : weatherOf(outdoors, found(look.worn.filter(({ slot }) => slot === 'outer layer')), trip);
  const time = dress.high >= COCKTAIL && dress.low > 0 ? 'evening' : 'day';
  const inColours = (pieces: readonly Piece[]): Phrase =>
    phrase('title', 'in colours', { colours: colourList(pieces), weather, time });
  return [
    ...(isDress ? layers.slice(0, 1).map((layer) => inColours([...core, layer])) : []),
    inColours(core),
    ...others.map(({ name }) =>
      phrase('title', 'in colours with', { colours: colourList(core), weather, time, piece: name }),
    ),
    ...others.map((other) => inColours([...core, other])),
    phrase('title', 'of pieces', { pieces: [...core, ...others].map(({ name }) => name) }),
  ];
};

/** Names looks that nobody has named by their colours and the days they are for, each unlike those before it. */
export const createNamer = (byId: ReadonlyMap<string, Piece>, trip?: TripAir): ((look: TitledLook) => Phrase) => {
  const taken = new Set<string>();
  return (look) => {
    const titles = titlesOf(look, byId, trip);
    const title =
      titles.find((each) => !taken.has(JSON.stringify(each))) ??
      titles.at(-1) ??
      phrase('title', 'of pieces', { pieces: [] });
    taken.add(JSON.stringify(title));
    return title;
  };
};
