import type { Look, Piece } from '../model/index.ts';
import { type Candidate, isFinishing } from './candidates.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';

/**
 * Puts the finishing pieces on a planned look: bag, jewellery, belt and the like, as the ranking likes them best. The
 * clothes stay what they are; a look that cannot be finished is worn as it is. Fixed looks are left alone.
 */
export const dressUp = (source: LookSource, moment: Moment, candidate: Candidate, pieces: readonly Piece[]): Look => {
  if (candidate.fixed || candidate.favourite) return candidate.look;
  const worn = new Set(candidate.pieces);
  const others = pieces.filter((piece) => !isFinishing(piece) && !worn.has(piece.id)).map(({ id }) => id);
  const finished = source.rank(1, {
    ...moment.restriction,
    pieces: [...candidate.pieces],
    ...(others.length === 0 ? {} : { without: others }),
  })[0]?.look;
  if (finished === undefined) return candidate.look;
  const slots = new Map(finished.worn.map(({ piece, slot }) => [piece, slot]));
  return candidate.look.worn.every(({ piece, slot }) => slots.get(piece) === slot) ? finished : candidate.look;
};
