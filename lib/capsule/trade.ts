import { isNeutral, isNeutralPiece } from '../colour/index.ts';
import type { Brief, Finding, Piece } from '../model/index.ts';
import { FLAT_HEEL_CM } from '../outfit/index.ts';
import { KINDS, LENGTHS, QUIET_PATTERNS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { swimsOf } from './swims.ts';

/** Every threshold here: common practice, no source. */
const LEAST_SEPARATES_SHARE = 0.6;
const FEWEST_COLOURS = 3;
const MOST_COLOURS = 6;
const LONG_FROM = LENGTHS.indexOf('thigh');
const REPEATED_AT_MOST = 1;

const has = (piece: Piece, place: Piece['places'][number]): boolean => piece.places.includes(place);

/** What people see of a garment's shape: kind, cut and length. Pieces that only finish a look have none. */
export const silhouetteOf = ({ kind, cut, length, places }: Piece): string | undefined =>
  places.some((place) => ['top', 'bottom', 'one-piece', 'mid layer', 'outer layer'].includes(place))
    ? `${kind}, ${cut}, ${length}`
    : undefined;

/** Long is from the thigh down. common practice, no source */
export const isLong = (length: Piece['length']): boolean => LENGTHS.indexOf(length) >= LONG_FROM;

const advice = (rule: string, message: Phrase, mend: Phrase, about: readonly Piece[] = []): Finding => ({
  level: 'advice',
  rule,
  message,
  mend,
  about: about.map(({ id }) => id),
});

const repeats = (pieces: readonly Piece[]): readonly Finding[] => {
  const bySilhouette = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const silhouette = silhouetteOf(piece);
    if (silhouette !== undefined) bySilhouette.set(silhouette, [...(bySilhouette.get(silhouette) ?? []), piece]);
  }
  return [...bySilhouette.values()]
    .filter((same) => same.length > REPEATED_AT_MOST)
    .map((same) =>
      advice(
        'silhouette-repeats',
        phrase('capsule', 'silhouette repeats', { pieces: same.map(({ name }) => name) }),
        phrase('capsule', 'silhouette repeats mend', {}),
        same,
      ),
    );
};

const colours = (pieces: readonly Piece[]): readonly Finding[] => {
  const worn = pieces.filter((piece) => silhouetteOf(piece) !== undefined);
  const grounds = worn.flatMap(({ colours: [ground] }) => ground ?? []);
  const names = [...new Set(grounds.map(({ name }) => name))];
  const bright = [...new Set(grounds.filter((ground) => !isNeutral(ground)).map(({ name }) => name))];
  const few = names.length < FEWEST_COLOURS;
  if (worn.length < FEWEST_COLOURS || (!few && bright.length <= MOST_COLOURS)) return [];
  return [
    few
      ? advice(
          'colour-variety',
          phrase('capsule', 'few colours', { colours: names }),
          phrase('capsule', 'few colours mend', {}),
        )
      : advice(
          'colour-variety',
          phrase('capsule', 'many colours', { colours: bright }),
          phrase('capsule', 'many colours mend', { most: MOST_COLOURS }),
        ),
  ];
};

const separates = (pieces: readonly Piece[]): readonly Finding[] => {
  const apart = pieces.filter((piece) => has(piece, 'top') || has(piece, 'bottom'));
  const whole = pieces.filter((piece) => has(piece, 'one-piece'));
  const share = apart.length / Math.max(1, apart.length + whole.length);
  return apart.length + whole.length < 3 || share >= LEAST_SEPARATES_SHARE
    ? []
    : [
        advice(
          'separates-share',
          phrase('capsule', 'few separates', { separates: apart.length, onePieces: whole.length }),
          phrase('capsule', 'few separates mend', {}),
          whole,
        ),
      ];
};

/** A neutral capsule holds a pattern, or a statement accessory in its stead. common practice, no source */
const interest = (pieces: readonly Piece[]): readonly Finding[] => {
  const worn = pieces.filter((piece) => silhouetteOf(piece) !== undefined);
  const carried = pieces.some(({ statement, pattern }) => statement || !QUIET_PATTERNS.has(pattern.type));
  return worn.length === 0 || carried || !worn.every(isNeutralPiece)
    ? []
    : [advice('pattern-or-statement', phrase('capsule', 'no pattern', {}), phrase('capsule', 'no pattern mend', {}))];
};

const outerLayers = (pieces: readonly Piece[]): readonly Finding[] => {
  const outer = pieces.filter(({ places }) => places[0] === 'outer layer');
  const long = outer.filter(({ length }) => isLong(length));
  if (outer.length < 2 || (long.length > 0 && long.length < outer.length)) return [];
  return [
    advice(
      'short-and-long-outer',
      phrase('capsule', 'one outer length', { long: long.length > 0 ? 1 : 0, pieces: outer.map(({ name }) => name) }),
      phrase('capsule', 'one outer length mend', { long: long.length > 0 ? 1 : 0 }),
      outer,
    ),
  ];
};

const shoes = (pieces: readonly Piece[]): readonly Finding[] => {
  const pairs = pieces.filter((piece) => has(piece, 'shoes'));
  if (pairs.length < 2) return [];
  const flat = pairs.some(({ heelCm, suits }) => heelCm <= FLAT_HEEL_CM && suits.includes('long walking'));
  const highest = Math.max(...pairs.map(({ dress }) => dress.high));
  const lowest = Math.min(...pairs.map(({ dress }) => dress.high));
  return [
    ...(flat
      ? []
      : [
          advice(
            'flat-shoes',
            phrase('capsule', 'no flat shoes', {}),
            phrase('capsule', 'no flat shoes mend', {}),
            pairs,
          ),
        ]),
    ...(highest > lowest
      ? []
      : [
          advice(
            'dressier-shoes',
            phrase('capsule', 'no dressier shoes', {}),
            phrase('capsule', 'no dressier shoes mend', {}),
            pairs,
          ),
        ]),
  ];
};

/** Two swimsuits where one would still be wet at the next swim. common practice, no source */
const swimwear = (pieces: readonly Piece[], brief: Brief): readonly Finding[] => {
  const { swims, wanted } = swimsOf(brief);
  const suits = pieces.filter((piece) => has(piece, 'swim'));
  if (suits.length >= wanted) return [];
  return [
    {
      ...advice(
        'two-swimsuits',
        phrase('capsule', 'swimsuits', { has: suits.length, swims }),
        phrase('capsule', 'swimsuits mend', { wanted }),
        suits,
      ),
      level: 'warning',
    },
  ];
};

/** What the trade would say of a capsule, each with the name of its rule. */
export const tradeFindings = (pieces: readonly Piece[], brief: Brief): readonly Finding[] => {
  // two pieces of one set (a suit) are not repeats of each other
  const apart = pieces.filter(({ kind }) => KINDS[kind].group !== 'swimwear');
  return [
    ...swimwear(pieces, brief),
    ...repeats(apart),
    ...colours(apart),
    ...separates(pieces),
    ...interest(pieces),
    ...outerLayers(pieces),
    ...shoes(pieces),
  ];
};
