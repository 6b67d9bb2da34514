import { sumOf } from '../bag/index.ts';
import { type PaletteReport, paletteReport } from '../colour/index.ts';
import type { Capsule, HouseRuleSettings, LookCounts, Measure, PackingListPlan, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine, type RankedLook } from '../outfit/index.ts';
import { usedIn } from '../plan/index.ts';
import { CORE_SLOTS } from '../vocabulary/index.ts';
import { checkList, type LineCheck } from './list-check.ts';

/** One mood of a trip: a capsule with what was computed of it. */
export interface Mood {
  readonly capsule: Capsule;
  readonly pieces: readonly Piece[];
  readonly counts: LookCounts;
  readonly plan: Plan;
}

/** How well a plan dresses its trip. */
export interface PlanQuality {
  readonly served: number;
  readonly of: number;
  /** True when no plan with these pieces serves more. */
  readonly proven: boolean;
  /** Times that clothes are changed between two occasions of one day. */
  readonly changes: number;
  /** Different looks worn. */
  readonly looks: number;
  /** Piece ids that the plan has no use for. */
  readonly unworn: readonly string[];
}

export interface MoodSide {
  readonly id: string;
  readonly title: string;
  readonly pieces: readonly Piece[];
  readonly counts: LookCounts;
  readonly palette: PaletteReport;
  readonly plan: PlanQuality;
  /** The pieces alone, without bags and sundries. */
  readonly grams: Measure;
}

export interface MoodComparison {
  readonly sides: readonly [MoodSide, MoodSide];
  /** Piece ids in both. */
  readonly shared: readonly string[];
  /** The list line by line; empty without a list. */
  readonly lines: readonly {
    readonly what: string;
    readonly wanted: number;
    readonly sides: readonly [LineCheck, LineCheck];
  }[];
}

export const planQuality = ({ plan, pieces }: Pick<Mood, 'plan' | 'pieces'>): PlanQuality => {
  const occasions = plan.days.flatMap((day) => day.occasions);
  const used = usedIn(plan);
  return {
    served: plan.served,
    of: plan.of,
    proven: plan.proven,
    changes: occasions.filter(({ change }) => change === 'changes clothes').length,
    looks: new Set(occasions.flatMap(({ look }) => look?.id ?? [])).size,
    unworn: pieces.map(({ id }) => id).filter((id) => !used.has(id)),
  };
};

const sideOf = (mood: Mood): MoodSide => ({
  id: mood.capsule.id,
  title: mood.capsule.title,
  pieces: mood.pieces,
  counts: mood.counts,
  palette: paletteReport(mood.pieces),
  plan: planQuality(mood),
  grams: sumOf(mood.pieces.map(({ grams }) => grams)),
});

const sharedBy = (a: readonly Piece[], b: readonly Piece[]): readonly string[] => {
  const ids = new Set(b.map(({ id }) => id));
  return a.map(({ id }) => id).filter((id) => ids.has(id));
};

/** Two capsules of one wardrobe on one list, side by side. */
export const compareMoods = (a: Mood, b: Mood, list?: PackingListPlan): MoodComparison => {
  const one = list === undefined ? [] : checkList(a.pieces, list).lines;
  const two = list === undefined ? [] : checkList(b.pieces, list).lines;
  return {
    sides: [sideOf(a), sideOf(b)],
    shared: sharedBy(a.pieces, b.pieces),
    lines: one.flatMap((left, index) => {
      const right = two[index];
      return right === undefined ? [] : [{ what: left.what, wanted: left.wanted, sides: [left, right] as const }];
    }),
  };
};

export interface CombinedMoods {
  /** Shared pieces once. */
  readonly pieces: readonly Piece[];
  readonly shared: readonly string[];
  readonly counts: LookCounts;
  /** Looks that need a piece only the first has and one only the second has. */
  readonly cross: LookCounts;
  /** The best of those looks, each with a core of its own. */
  readonly crossLooks: readonly RankedLook[];
}

const CROSS_RANKED = 400;
const CROSS_RANKED_AT_MOST = 25_600;
const CROSS_SHOWN = 8;

/** Down the ranking until enough have been met, each with a new core. */
const bestAcross = (
  rank: (k: number) => readonly RankedLook[],
  crosses: (look: RankedLook) => boolean,
): readonly RankedLook[] => {
  for (let asked = CROSS_RANKED; ; asked *= 4) {
    const ranked = rank(asked);
    const cores = new Set<string>();
    const found = ranked.filter(crosses).filter(({ look }) => {
      const core = look.worn.flatMap(({ slot, piece }) => (CORE_SLOTS.has(slot) ? [piece] : [])).join('+');
      return !cores.has(core) && cores.add(core);
    });
    if (found.length >= CROSS_SHOWN || ranked.length < asked || asked >= CROSS_RANKED_AT_MOST)
      return found.slice(0, CROSS_SHOWN);
  }
};

/**
 * Two capsules of one wardrobe in one bag: what they make together, and what neither makes alone. Vetoes of both hold;
 * where their house rules differ the first one's do.
 */
export const combineMoods = (
  a: Pick<Mood, 'capsule' | 'pieces'>,
  b: Pick<Mood, 'capsule' | 'pieces'>,
  houseRules: HouseRuleSettings,
): CombinedMoods => {
  const shared = sharedBy(a.pieces, b.pieces);
  const inBoth = new Set(shared);
  const onlyA = new Set(a.pieces.map(({ id }) => id).filter((id) => !inBoth.has(id)));
  const onlyB = b.pieces.filter(({ id }) => !inBoth.has(id));
  const idsOfB = new Set(onlyB.map(({ id }) => id));
  const pieces = [...a.pieces, ...onlyB];
  const engineFor = (some: readonly Piece[]) =>
    createWardrobeEngine({
      pieces: some,
      rules: { ...houseRules, ...b.capsule.rules, ...a.capsule.rules },
      never: [...a.capsule.never, ...b.capsule.never],
      always: [...a.capsule.always, ...b.capsule.always],
    });
  const union = engineFor(pieces);
  const counts = union.count();
  // all under the same rules, so that a look is of one side, of both, or of neither alone
  const [ofA, ofB, ofBoth] = [a.pieces, b.pieces, a.pieces.filter(({ id }) => inBoth.has(id))].map((some) =>
    engineFor(some).count(),
  );
  const across = (level: keyof LookCounts): bigint =>
    counts[level] - (ofA?.[level] ?? 0n) - (ofB?.[level] ?? 0n) + (ofBoth?.[level] ?? 0n);
  const crosses = ({ look }: RankedLook): boolean =>
    look.worn.some(({ piece }) => onlyA.has(piece)) && look.worn.some(({ piece }) => idsOfB.has(piece));
  return {
    pieces,
    shared,
    counts,
    cross: { core: across('core'), layered: across('layered'), complete: across('complete') },
    crossLooks: bestAcross((k) => union.rank(k), crosses),
  };
};
