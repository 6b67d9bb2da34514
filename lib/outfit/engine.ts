import type { Look, LookCounts } from '../model/look.ts';
import { type CoreForm, LEVELS, type Level } from './grammar/forms.ts';
import type { LookId } from './grammar/look-id.ts';
import { createGround, type Ground } from './ground.ts';
import { benchOf } from './judge/bench.ts';
import { type Cause, diagnose } from './judge/diagnose.ts';
import {
  explainPair,
  explainPiece,
  type PairGrid,
  type PairVerdict,
  type PieceVerdict,
  pairGrid,
} from './judge/piece.ts';
import { judge, type Verdict } from './judge/verdict.ts';
import { type Contribution, contributionsOf } from './look/contributions.ts';
import { enumerateLooks } from './look/enumerate.ts';
import { type RankedLook, rankLooks } from './look/rank.ts';
import { type VariedOptions, variedLooks } from './look/varied.ts';
import type { Restriction } from './restriction.ts';
import type { WardrobeRules } from './rules/rulebook.ts';
import { compileSpace } from './space/compile.ts';
import { countSpace } from './space/count.ts';

export interface EnumerateOptions {
  /** Go on behind this look; need not be a look of this question. */
  readonly after?: LookId;
  readonly restriction?: Restriction;
  /** `complete` when absent. */
  readonly level?: Level;
}

/** Everything that can be asked of a wardrobe under its rules. Pure: the same question has the same answer. */
export interface WardrobeEngine {
  /**
   * Exact counts. Asked for an occasion (dress, needs, clo, heels), a core or layered look counts when it can be
   * finished into a complete look that serves the occasion; asked without, when its own pieces go together.
   */
  readonly count: (restriction?: Restriction) => LookCounts;
  /** The same counts by form of core, so that swim looks can be told apart. */
  readonly countByForm: (restriction?: Restriction) => Readonly<Record<CoreForm, LookCounts>>;
  /**
   * All looks, one at a time, in constant memory. Order: separates, one-pieces, swimwear; within a form slot by slot
   * in the order of `SLOTS`; within a slot nothing first, then the pieces in the order they were given.
   */
  readonly enumerate: (options?: EnumerateOptions) => Iterable<Look>;
  /** The best k complete looks, exactly; of equal score the first in the order of `enumerate`. */
  readonly rank: (k: number, restriction?: Restriction) => readonly RankedLook[];
  /** A few looks that show the wardrobe: every piece if it can be, several occasions and dress codes, none nearly alike. */
  readonly varied: (k: number, options?: VariedOptions) => readonly RankedLook[];
  readonly explain: (pieceIds: readonly string[], restriction?: Restriction) => Verdict;
  readonly explainPair: (a: string, b: string) => PairVerdict;
  readonly explainPiece: (id: string) => PieceVerdict;
  /** The grid of tops and bottoms. */
  readonly pairs: () => readonly PairGrid[];
  /** For each piece the looks that contain it, which are the looks lost if it stays at home; counted as `count` counts. */
  readonly contributions: (restriction?: Restriction) => readonly Contribution[];
  /** Pieces that are in no complete look. */
  readonly idle: () => readonly string[];
  /** Pieces that every complete look contains. */
  readonly essential: () => readonly string[];
  /** Why there is no complete look; empty when there is one. */
  readonly diagnose: (restriction?: Restriction) => readonly Cause[];
}

const countForm = (ground: Ground, form: CoreForm, restriction: Restriction): LookCounts => {
  const at = (level: Level): bigint => {
    const space = compileSpace(ground, form, level, restriction);
    return space === undefined ? 0n : countSpace(space);
  };
  return { core: at('core'), layered: at('layered'), complete: at('complete') };
};

const sum = (counts: readonly LookCounts[], level: Level): bigint =>
  counts.reduce((total, count) => total + count[level], 0n);

/** Judges the wardrobe once and answers questions about it. Throws RangeError on two pieces with one id or an unknown rule. */
export const createWardrobeEngine = (wardrobe: WardrobeRules): WardrobeEngine => {
  const ground = createGround(wardrobe);
  const countByForm = (restriction: Restriction = {}): Readonly<Record<CoreForm, LookCounts>> => ({
    separates: countForm(ground, 'separates', restriction),
    'one-piece': countForm(ground, 'one-piece', restriction),
    swim: countForm(ground, 'swim', restriction),
  });
  const count = (restriction?: Restriction): LookCounts => {
    const counts = Object.values(countByForm(restriction));
    const [core, layered, complete] = LEVELS.map((level) => sum(counts, level));
    return { core: core ?? 0n, layered: layered ?? 0n, complete: complete ?? 0n };
  };
  const contributions = (restriction: Restriction = {}): readonly Contribution[] =>
    contributionsOf(ground, restriction);
  const rank = (k: number, restriction: Restriction = {}): readonly RankedLook[] => rankLooks(ground, k, restriction);
  return {
    count,
    countByForm,
    enumerate: (options = {}) => ({ [Symbol.iterator]: () => enumerateLooks(ground, options) }),
    rank,
    varied: (k, options = {}) => variedLooks(ground, k, options),
    explain: (pieceIds, restriction = {}) => judge(benchOf(ground, restriction), pieceIds),
    explainPair: (a, b) => explainPair(ground, a, b),
    explainPiece: (id) => explainPiece(ground, id),
    pairs: () => pairGrid(ground),
    contributions,
    idle: () => contributions().flatMap(({ piece, complete }) => (complete === 0n ? [piece] : [])),
    essential: () => {
      const total = count().complete;
      return contributions().flatMap(({ piece, complete }) => (total > 0n && complete === total ? [piece] : []));
    },
    diagnose: (restriction = {}) => diagnose(wardrobe, ground, restriction),
  };
};
