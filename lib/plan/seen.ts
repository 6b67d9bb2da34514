import type { Look, Occasion, Piece } from '../model/index.ts';
import { CORE_SLOTS, dressIndex } from '../vocabulary/index.ts';
import type { Candidate } from './candidates.ts';
import { layersFor } from './layers.ts';
import type { Moment } from './moments.ts';

/** From this dress code on people remember what somebody wore. Own choice. */
const DRESSED_FROM = dressIndex('smart casual');

/** An occasion people dress for: what was seen at one is not worn to another. */
export const isDressed = ({ dress }: Pick<Occasion, 'dress'>): boolean => dressIndex(dress) >= DRESSED_FROM;

const isOverlayer = ({ places }: Piece): boolean => places.includes('mid layer') || places.includes('outer layer');

/**
 * The clothes that are seen of a look, whatever place they take: the core, and each layer worn over it, but none
 * that is only carried or hung up. Shoes and accessories make no other look of it. Empty for a swim.
 */
export const clothesSeen = (look: Look, layersOn: readonly string[], pieces: ReadonlyMap<string, Piece>): string => {
  if (look.worn.some(({ slot }) => slot === 'swim')) return '';
  return look.worn
    .filter(({ piece, slot }) => {
      const found = pieces.get(piece);
      return CORE_SLOTS.has(slot) || (found !== undefined && isOverlayer(found) && layersOn.includes(piece));
    })
    .map(({ piece }) => piece)
    .sort()
    .join('+');
};

export const seenAt = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): string =>
  clothesSeen(look, layersFor(moment, look, pieces).on, pieces);

/** What is seen of a candidate at each occasion, reckoned once. */
export const createSeen = (
  moments: readonly Moment[],
  pieces: ReadonlyMap<string, Piece>,
): ((index: number, candidate: Candidate) => string) => {
  const known = moments.map(() => new Map<Candidate, string>());
  return (index, candidate) => {
    const moment = moments[index];
    if (moment === undefined) return '';
    const seen = known[index]?.get(candidate) ?? seenAt(moment, candidate.look, pieces);
    known[index]?.set(candidate, seen);
    return seen;
  };
};
