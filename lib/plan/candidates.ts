import type { Capsule, Look, Piece } from '../model/index.ts';
import type { Slot } from '../vocabulary/index.ts';
import type { Phrase } from '../words/index.ts';
import type { LookRestriction, LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';

/** A look that could serve an occasion. */
export interface Candidate {
  readonly look: Look;
  readonly pieces: readonly string[];
  /** One-piece, or top and bottom, or swimwear. */
  readonly core: string;
  /** Core with mid layer: what people see indoors. Two days must not share it. Empty for swimming. */
  readonly identity: string;
  /** 0 worst to 1 best of its occasion. */
  readonly quality: number;
  readonly favourite: boolean;
  readonly fixed: boolean;
  readonly reasons: readonly Phrase[];
}

export interface Pool {
  readonly candidates: readonly Candidate[];
  /** True when the source has no look for this occasion beyond these. */
  readonly complete: boolean;
}

const CORE: ReadonlySet<Slot> = new Set(['one-piece', 'top', 'bottom', 'swim']);
/** Slots that dress a look up; left out of the planning and put on last, since they seldom decide whether it serves. */
const FINISHING: ReadonlySet<string> = new Set([
  'bag',
  'jewellery',
  'eyewear',
  'headwear',
  'scarf',
  'tie',
  'gloves',
  'belt',
]);

/** Looks asked of the source for one question, and kept of them. */
const ASKED = 240;
const KEPT = 72;
/** Kept with the same core, so that the pool has many cores rather than one in many shoes. */
const KEPT_A_CORE = 4;

export const isFinishing = (piece: Piece): boolean => piece.places.every((place) => FINISHING.has(place));

const joined = (look: Look, belongs: (slot: Slot) => boolean): string =>
  look.worn
    .filter(({ slot }) => belongs(slot))
    .map(({ piece }) => piece)
    .join('+');

export const coreOf = (look: Look): string => joined(look, (slot) => CORE.has(slot));

/** What may not be worn on two days; empty when the look is for swimming. */
export const identityOf = (look: Look): string =>
  look.worn.some(({ slot }) => slot === 'swim') ? '' : joined(look, (slot) => CORE.has(slot) || slot === 'mid layer');

const candidateOf = (
  look: Look,
  quality: number,
  reasons: readonly Phrase[],
  favourites: readonly (readonly string[])[],
): Candidate => {
  const pieces = look.worn.map(({ piece }) => piece);
  const worn = new Set(pieces);
  return {
    look,
    pieces,
    core: coreOf(look),
    identity: identityOf(look),
    quality,
    favourite: favourites.some((favourite) => favourite.every((piece) => worn.has(piece))),
    fixed: false,
    reasons,
  };
};

/** Asks the source once for each different question. */
export const rememberRanks = (source: LookSource): LookSource => {
  const answers = new Map<string, ReturnType<LookSource['rank']>>();
  return {
    explain: source.explain,
    rank: (k, restriction) => {
      const key = JSON.stringify([k, restriction]);
      const known = answers.get(key) ?? source.rank(k, restriction);
      answers.set(key, known);
      return known;
    },
  };
};

/** Finishing pieces that an occasion has no use for: it is planned without them. */
export const leftForLater = (moment: Moment, pieces: readonly Piece[]): readonly string[] => {
  const { needs } = moment.occasion;
  const cold = moment.air !== undefined && moment.occasion.setting.where === 'outdoors' && moment.air.lowC < 12;
  return pieces
    .filter(isFinishing)
    .filter((piece) => !piece.suits.some((need) => needs.includes(need)))
    .filter((piece) => !(needs.includes('head covered') && piece.covers.includes('head')))
    .filter((piece) => !(needs.includes('shoulders covered') && piece.covers.includes('shoulders')))
    .filter((piece) => !(cold && piece.clo.value > 0))
    .map(({ id }) => id);
};

/** A varied part of a ranking, best first: at most so many of one core, then the rest in order until it is full. */
const varied = (candidates: readonly Candidate[]): readonly Candidate[] => {
  const perCore = new Map<string, number>();
  const first = candidates.filter(({ core }) => {
    const count = (perCore.get(core) ?? 0) + 1;
    perCore.set(core, count);
    return count <= KEPT_A_CORE;
  });
  const chosen = new Set(first.slice(0, KEPT));
  for (const candidate of candidates) {
    if (chosen.size >= KEPT) break;
    chosen.add(candidate);
  }
  return candidates.filter((candidate) => chosen.has(candidate));
};

/** Candidates for one question in ranking order. */
export const candidatesFor = (
  source: LookSource,
  restriction: LookRestriction,
  favourites: readonly (readonly string[])[],
  asked = ASKED,
): Pool => {
  const ranked = source.rank(asked, restriction);
  const scores = ranked.map(({ score }) => score);
  const best = Math.max(...scores);
  const spread = best - Math.min(...scores);
  const all = ranked.map(({ look, score, reasons }) =>
    candidateOf(look, spread > 0 ? 1 - (best - score) / spread : 1, reasons, favourites),
  );
  const kept = varied(all);
  return { candidates: kept, complete: ranked.length < asked && kept.length === all.length };
};

/** The look the stylist fixed to an occasion, when its pieces make one at all. */
const fixedCandidate = (source: LookSource, moment: Moment, pieces: readonly string[]): Candidate | undefined => {
  const told = source.explain(pieces, moment.restriction);
  const look = told.look ?? source.explain(pieces).look;
  return look === undefined ? undefined : { ...candidateOf(look, 1, told.goes ? [] : told.reasons, []), fixed: true };
};

/** The pieces the stylist fixed to an occasion, named by its id or by its words. */
export const fixedFor = (capsule: Pick<Capsule, 'fixed'>, moment: Moment): readonly string[] | undefined =>
  capsule.fixed.find(({ occasion }) => occasion === moment.occasion.id || occasion === moment.occasion.what)?.pieces;

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
      return { candidates: candidate === undefined ? [] : [candidate], complete: true };
    }
    const later = leftForLater(moment, pieces);
    const bare = candidatesFor(source, withoutPieces(moment.restriction, later), favourites);
    const pool =
      bare.candidates.length > 0 || later.length === 0 ? bare : candidatesFor(source, moment.restriction, favourites);
    const wished = capsule.favourites
      .map(({ pieces: worn }) => source.explain(worn, moment.restriction))
      .flatMap(({ goes, look }) => (goes && look !== undefined ? [candidateOf(look, 1, [], favourites)] : []))
      .filter(({ look }) => !pool.candidates.some((candidate) => candidate.look.id === look.id));
    return {
      candidates: [...wished, ...pool.candidates],
      complete: pool.complete && (pool !== bare || later.length === 0),
    };
  });
};

export const withoutPieces = (restriction: LookRestriction, pieces: readonly string[]): LookRestriction =>
  pieces.length === 0
    ? restriction
    : { ...restriction, without: [...new Set([...(restriction.without ?? []), ...pieces])].sort() };
