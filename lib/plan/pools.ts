import { cloOfLook } from '../comfort/index.ts';
import type { Capsule, Piece } from '../model/index.ts';
import {
  ASKED,
  type Candidate,
  candidateOf,
  candidatesFor,
  fixedCandidate,
  fixedFor,
  leftForLater,
  type Pool,
  scaleOf,
  withoutPieces,
} from './candidates.ts';
import { coldLooks } from './cold.ts';
import { heavyLooks } from './heavy.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { roomLooks } from './room.ts';

/** Each look once, where it first stands. One set of pieces may be worn in several ways. */
const onceEach = (candidates: readonly Candidate[]): readonly Candidate[] => {
  const seen = new Set<string>();
  return candidates.filter(({ look }) => {
    const way = look.worn.map(({ piece, slot }) => `${slot} ${piece}`).join('+');
    return seen.size < seen.add(way).size;
  });
};

/** In cold beyond travel clothes a look the stylist fixed is worn only when it is warm enough, since it would be a danger. */
const isDangerous = ({ beyondClothes, required }: Moment, { look }: Candidate, pieces: readonly Piece[]): boolean =>
  beyondClothes !== undefined &&
  cloOfLook(look, new Map(pieces.map((piece) => [piece.id, piece]))).on < (required?.min ?? 0);

/** Every occasion's pool. A fixed look is its occasion's only one. */
export const poolsFor = (
  source: LookSource,
  moments: readonly Moment[],
  pieces: readonly Piece[],
  capsule: Capsule,
): readonly Pool[] => {
  const favourites = capsule.favourites.map(({ pieces: worn }) => worn);
  return moments.map((moment) => {
    const fixed = fixedFor(capsule, moment);
    if (fixed !== undefined) {
      const candidate = fixedCandidate(source, moment, fixed);
      const isWorn = candidate !== undefined && !isDangerous(moment, candidate, pieces);
      return { candidates: isWorn ? [candidate] : [], complete: true };
    }
    const later = leftForLater(moment, pieces);
    const bareRestriction = withoutPieces(moment.restriction, later);
    const bare = candidatesFor(source, bareRestriction, favourites);
    const isBare = bare.candidates.length > 0 || later.length === 0;
    const pool = isBare ? bare : candidatesFor(source, moment.restriction, favourites);
    const scale = scaleOf(source.rank(ASKED, isBare ? bareRestriction : moment.restriction));
    const wished = capsule.favourites
      .map(({ pieces: worn }) => source.explain(worn, moment.restriction))
      .flatMap(({ goes, look }) => (goes && look !== undefined ? [candidateOf(look, 1, () => [], favourites)] : []));
    const heavy = heavyLooks(source, moment, pieces, favourites, scale);
    const cold = coldLooks(source, moment, pieces, favourites, scale);
    const room = roomLooks(source, moment, pieces, favourites, scale);
    return {
      candidates: onceEach([...wished, ...pool.candidates, ...heavy, ...cold, ...room]),
      complete: pool.complete && (pool !== bare || later.length === 0),
    };
  });
};
