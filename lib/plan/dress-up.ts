import { shadesEyes, shadesFace, uvBand } from '../comfort/index.ts';
import type { Look, Piece } from '../model/index.ts';
import { type Candidate, isFinishing } from './candidates.ts';
import { finished, putOn } from './finish.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { isColdOutdoors, isForCold, isIdleInWarmth } from './warmth.ts';

/** Ways of finishing a look for a journey of which the heaviest is worn: a bag on the shoulder is not in the case. */
const TRIED_IN_TRANSIT = 24;

/** A sun hat and dark glasses stay away where there is no sun; on a journey they are worn to save room. common practice, no source */
const isIdleInShade = ({ occasion, uvIndex = 0 }: Moment, piece: Piece): boolean =>
  (shadesFace(piece) || shadesEyes(piece)) &&
  piece.suits.includes('sun') &&
  uvBand(uvIndex) === 'low' &&
  !occasion.needs.includes('sun') &&
  !occasion.transit;

/** Head, neck and hands covered in the cold, with what of the bag goes with the rest. */
const coveredInTheCold = (source: LookSource, moment: Moment, look: Look, pieces: readonly Piece[]): Look => {
  if (!isColdOutdoors(moment)) return look;
  const wanted = (['headwear', 'scarf', 'gloves'] as const)
    .filter((slot) => look.worn.every((worn) => worn.slot !== slot))
    .map(
      (slot) =>
        (piece: Piece): boolean =>
          isForCold(piece) && piece.places.includes(slot),
    );
  return putOn(source, look, pieces, wanted, moment.restriction);
};

/**
 * Puts the finishing pieces on a planned look: bag, jewellery, belt and the like, as the ranking likes them best. The
 * clothes stay what they are; a look that cannot be finished is worn as it is. The
 * stylist's own looks are left alone.
 */
export const dressUp = (source: LookSource, moment: Moment, candidate: Candidate, pieces: readonly Piece[]): Look => {
  if (candidate.fixed || candidate.favourite) return candidate.look;
  const worn = new Set(candidate.pieces);
  const others = pieces
    .filter(
      (piece) =>
        !worn.has(piece.id) && (!isFinishing(piece) || isIdleInShade(moment, piece) || isIdleInWarmth(moment, piece)),
    )
    .map(({ id }) => id);
  const ranked = source.rank(moment.occasion.transit ? TRIED_IN_TRANSIT : 1, {
    ...moment.restriction,
    pieces: [...candidate.pieces],
    ...(others.length === 0 ? {} : { without: others }),
  });
  const grams = new Map(pieces.map((piece) => [piece.id, piece.grams.value]));
  const weightOf = (look: Look): number => look.worn.reduce((sum, { piece }) => sum + (grams.get(piece) ?? 0), 0);
  const [best] = ranked.map(({ look }) => look).toSorted((a, b) => weightOf(b) - weightOf(a));
  const finish = (look: Look): Look => coveredInTheCold(source, moment, finished(source, moment, look, pieces), pieces);
  if (best === undefined) return finish(candidate.look);
  const slots = new Map(best.worn.map(({ piece, slot }) => [piece, slot]));
  const keeps = candidate.look.worn.every(({ piece, slot }) => slots.get(piece) === slot);
  return finish(keeps ? best : candidate.look);
};
