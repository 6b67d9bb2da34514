import type { Capsule, Look, Occasion, Piece } from '../model/index.ts';
import { CORE_SLOTS } from '../vocabulary/index.ts';
import type { Phrase } from '../words/index.ts';
import type { LookRestriction, LookSource, RankedLook } from './look-source.ts';
import type { Moment } from './moments.ts';

/** A look that could serve an occasion. */
export interface Candidate {
  readonly look: Look;
  readonly pieces: readonly string[];
  /** One-piece, or top and bottom, or swimwear. */
  readonly core: string;
  /** 0 worst to 1 best of its occasion. */
  readonly quality: number;
  readonly favourite: boolean;
  readonly fixed: boolean;
  /** Worded when asked for: of hundreds of looks few are ever told. */
  readonly reasons: () => readonly Phrase[];
}

export interface Pool {
  readonly candidates: readonly Candidate[];
  /** True when the source has no look for this occasion beyond these. */
  readonly complete: boolean;
}

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
export const ASKED = 240;
const KEPT = 72;
/** Kept with the same core, so that the pool has many cores rather than one in many shoes. */
const KEPT_A_CORE = 4;

export const isFinishing = (piece: Piece): boolean => piece.places.every((place) => FINISHING.has(place));

export const coreOf = (look: Look): string =>
  look.worn
    .filter(({ slot }) => CORE_SLOTS.has(slot))
    .map(({ piece }) => piece)
    .sort()
    .join('+');

export const candidateOf = (
  look: Look,
  quality: number,
  reasons: () => readonly Phrase[],
  favourites: readonly (readonly string[])[],
): Candidate => {
  const pieces = look.worn.map(({ piece }) => piece);
  const worn = new Set(pieces);
  return {
    look,
    pieces,
    core: coreOf(look),
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

const hasUnderlayer = ({ look }: Candidate): boolean =>
  look.worn.some(({ slot }) => slot === 'base layer' || slot === 'leg layer');

/**
 * A varied part of a ranking, best first: at most so many of one core, then the rest in order until it is full. Thermal
 * underwear makes no other look, so that looks with one come after those without.
 */
const varied = (ranked: readonly Candidate[]): readonly Candidate[] => {
  const perCore = new Map<string, number>();
  const candidates = [...ranked.filter((one) => !hasUnderlayer(one)), ...ranked.filter(hasUnderlayer)];
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
  return ranked.filter((candidate) => chosen.has(candidate));
};

/** Scores between which a look is judged from worst to best. */
export interface Scale {
  readonly worst: number;
  readonly best: number;
}

export const scaleOf = (ranked: readonly RankedLook[]): Scale => {
  const scores = ranked.map(({ score }) => score);
  return { worst: Math.min(...scores), best: Math.max(...scores) };
};

const qualityOn = ({ worst, best }: Scale, score: number): number =>
  best > worst ? Math.min(1, Math.max(0, (score - worst) / (best - worst))) : 1;

/** Candidates for one question in ranking order; judged among each other unless a scale is given. */
export const candidatesFor = (
  source: LookSource,
  restriction: LookRestriction,
  favourites: readonly (readonly string[])[],
  { asked = ASKED, scale }: { readonly asked?: number; readonly scale?: Scale } = {},
): Pool => {
  const ranked = source.rank(asked, restriction);
  const judged = scale ?? scaleOf(ranked);
  const all = ranked.map((one) => candidateOf(one.look, qualityOn(judged, one.score), () => one.reasons, favourites));
  const kept = varied(all);
  return { candidates: kept, complete: ranked.length < asked && kept.length === all.length };
};

/** The look the stylist fixed to an occasion, when its pieces make one at all. */
export const fixedCandidate = (
  source: LookSource,
  moment: Moment,
  pieces: readonly string[],
): Candidate | undefined => {
  const told = source.explain(pieces, moment.restriction);
  const look = told.look ?? source.explain(pieces).look;
  return look === undefined
    ? undefined
    : { ...candidateOf(look, 1, () => (told.goes ? [] : told.reasons), []), fixed: true };
};

/** The look the stylist fixed to an occasion, named by its id or by its words. */
export const fixedTo = (
  capsule: Pick<Capsule, 'fixed'>,
  { id, what }: Occasion,
): Capsule['fixed'][number] | undefined => capsule.fixed.find(({ occasion }) => occasion === id || occasion === what);

export const fixedFor = (capsule: Pick<Capsule, 'fixed'>, { occasion }: Moment): readonly string[] | undefined =>
  fixedTo(capsule, occasion)?.pieces;

export const withoutPieces = (restriction: LookRestriction, pieces: readonly string[]): LookRestriction =>
  pieces.length === 0
    ? restriction
    : { ...restriction, without: [...new Set([...(restriction.without ?? []), ...pieces])].sort() };
