import { comfortInWords, lookComfort } from '../comfort/index.ts';
import type { Look, Piece, Way } from '../model/index.ts';
import { CORE_SLOTS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { Candidate } from './candidates.ts';
import { coatsByWarmth, warmestCoat } from './coats.ts';
import type { Moment } from './moments.ts';
import { isFrosty } from './warmth.ts';
import { piecesOfWay } from './way-record.ts';

export interface ReasonsQuestion {
  readonly moment: Moment;
  readonly candidate: Candidate;
  readonly look: Look;
  /** What is worn on the way and not there. */
  readonly way: Way | undefined;
  /** Every piece worn on the trip so far; empty before its first look. */
  readonly wornBefore: ReadonlySet<string>;
  readonly pieces: ReadonlyMap<string, Piece>;
}

const namesOf = (ids: readonly string[], pieces: ReadonlyMap<string, Piece>): readonly string[] =>
  ids.map((id) => pieces.get(id)?.name ?? id);

/** A kilogram less to carry is worth a word. Own choice, grams. */
const WORTH_SAYING_GRAMS = 1000;

/** What is worn on a journey is not carried. */
const forTheBags = ({ moment, look, way, pieces }: ReasonsQuestion): readonly Phrase[] => {
  const worn = new Set([...look.worn.map(({ piece }) => piece), ...piecesOfWay(way)]);
  const grams = [...worn].reduce((sum, piece) => sum + (pieces.get(piece)?.grams.value ?? 0), 0);
  return moment.occasion.transit && grams >= WORTH_SAYING_GRAMS ? [phrase('plan', 'not in the bag', { grams })] : [];
};

/** The coat, where no other that is packed for such an occasion is as warm. */
const forTheFrost = ({ moment, look, pieces }: ReasonsQuestion): readonly Phrase[] => {
  const all = [...pieces.values()];
  const warmest = isFrosty(moment) ? warmestCoat(all, moment.occasion.dress) : undefined;
  const others = coatsByWarmth(all).length > 1;
  return warmest !== undefined && others && look.worn.some(({ piece }) => piece === warmest.id)
    ? [phrase('plan', 'the warmest coat', { coat: warmest.name })]
    : [];
};

/** Clothes worn for the first time, once the trip has begun; swimwear changes by what is dry. */
const forAChange = ({ moment, look, wornBefore, pieces }: ReasonsQuestion): readonly Phrase[] => {
  const fresh = look.worn.filter(
    ({ piece, slot }) => (CORE_SLOTS.has(slot) || slot === 'mid layer') && !wornBefore.has(piece),
  );
  return moment.swims || wornBefore.size === 0 || fresh.length === 0
    ? []
    : [
        phrase('plan', 'first worn', {
          pieces: namesOf(
            fresh.map(({ piece }) => piece),
            pieces,
          ),
        }),
      ];
};

/** How dressy a coat is beside the rest is the stylist's to weigh, and no reason to wear it. */
const WEIGHED: ReadonlySet<string> = new Set(['plainer on the way', 'dressier on the way']);

/** Why an occasion has the look it has: by whom it was chosen, its warmth, its needs, the bag, a change, and its colours. */
export const reasonsFor = (question: ReasonsQuestion): readonly Phrase[] => {
  const { moment, candidate, look, pieces } = question;
  const { occasion, swims, feels } = moment;
  const { activity, setting, degreesOff = 0 } = occasion;
  const needs = occasion.needs.filter((need) => need !== 'swim');
  return [
    ...(candidate.fixed ? [phrase('plan', 'fixed by the stylist', {})] : []),
    ...(candidate.favourite ? [phrase('plan', 'a favourite', {})] : []),
    ...(swims ? [] : [comfortInWords(lookComfort(look, pieces, activity, setting.where, feels))]),
    ...(degreesOff > 0 ? [phrase('plan', 'degrees off', { degrees: degreesOff })] : []),
    ...(needs.length > 0 ? [phrase('plan', 'made for', { needs })] : []),
    ...(candidate.fixed
      ? []
      : [
          ...forTheFrost(question),
          ...forTheBags(question),
          ...forAChange(question),
          ...candidate.reasons().filter(({ key }) => !WEIGHED.has(key)),
        ]),
  ];
};
