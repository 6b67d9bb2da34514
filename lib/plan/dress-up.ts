import type { Look, Piece } from '../model/index.ts';
import { type Candidate, isFinishing } from './candidates.ts';
import { finished } from './finish.ts';
import { isIdle } from './idle.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';

/** Ways of finishing a look for a journey of which the heaviest is worn: a bag on the shoulder is not in the case. */
const TRIED_IN_TRANSIT = 24;

/**
 * Puts the finishing pieces on a planned look: bag, jewellery, belt and the like, as the ranking likes them best. The
 * clothes stay what they are; a look that cannot be finished is worn as it is. The
 * stylist's own looks are left alone.
 */
export const dressUp = (source: LookSource, moment: Moment, candidate: Candidate, pieces: readonly Piece[]): Look => {
  if (candidate.fixed || candidate.favourite) return candidate.look;
  const worn = new Set(candidate.pieces);
  const others = pieces
    .filter((piece) => !worn.has(piece.id) && (!isFinishing(piece) || isIdle(moment, piece)))
    .map(({ id }) => id);
  const ranked = source.rank(moment.occasion.transit ? TRIED_IN_TRANSIT : 1, {
    ...moment.restriction,
    pieces: [...candidate.pieces],
    ...(others.length === 0 ? {} : { without: others }),
  });
  const grams = new Map(pieces.map((piece) => [piece.id, piece.grams.value]));
  const weightOf = (look: Look): number => look.worn.reduce((sum, { piece }) => sum + (grams.get(piece) ?? 0), 0);
  const [best] = ranked.map(({ look }) => look).toSorted((a, b) => weightOf(b) - weightOf(a));
  if (best === undefined) return finished(source, moment, candidate.look, pieces);
  const slots = new Map(best.worn.map(({ piece, slot }) => [piece, slot]));
  const keeps = candidate.look.worn.every(({ piece, slot }) => slots.get(piece) === slot);
  return finished(source, moment, keeps ? best : candidate.look, pieces);
};
