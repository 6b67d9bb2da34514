import { type PaletteReport, paletteReport } from '../colour/index.ts';
import type { Capsule, HouseRuleSettings, LookCounts, PackingListPlan, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine, type RankedLook } from '../outfit/index.ts';
import { checkList, type LineCheck } from './list-check.ts';

/** One mood of a trip: a capsule with what was computed of it. */
export interface Mood {
  readonly capsule: Capsule;
  readonly pieces: readonly Piece[];
  readonly counts: LookCounts;
  readonly plan: Plan;
}

export interface MoodSide {
  readonly id: string;
  readonly title: string;
  readonly pieces: number;
  readonly counts: LookCounts;
  readonly palette: PaletteReport;
  readonly served: number;
  readonly of: number;
  readonly grams: number;
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

const sideOf = ({ capsule, pieces, counts, plan }: Mood): MoodSide => ({
  id: capsule.id,
  title: capsule.title,
  pieces: pieces.length,
  counts,
  palette: paletteReport(pieces),
  served: plan.served,
  of: plan.of,
  grams: pieces.reduce((sum, { grams }) => sum + grams.value, 0),
});

const sharedBy = (a: readonly Piece[], b: readonly Piece[]): readonly string[] => {
  const ids = new Set(b.map(({ id }) => id));
  return a.map(({ id }) => id).filter((id) => ids.has(id));
};

/** Two capsules on one list, side by side. */
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
  /** The best of those looks, varied in their cores. */
  readonly crossLooks: readonly RankedLook[];
}

const CROSS_RANKED = 400;
const CROSS_SHOWN = 8;

/** Two capsules in one bag: what they make together, and what neither makes alone. Vetoes of both hold. */
export const combineMoods = (
  a: Pick<Mood, 'capsule' | 'pieces'>,
  b: Pick<Mood, 'capsule' | 'pieces'>,
  houseRules: HouseRuleSettings,
): CombinedMoods => {
  const shared = sharedBy(a.pieces, b.pieces);
  const inBoth = new Set(shared);
  const onlyA = new Set(a.pieces.map(({ id }) => id).filter((id) => !inBoth.has(id)));
  const onlyB = b.pieces.filter(({ id }) => !inBoth.has(id));
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
  const idsOfB = new Set(onlyB.map(({ id }) => id));
  const cores = new Set<string>();
  const crossLooks = union
    .rank(CROSS_RANKED)
    .filter(
      ({ look }) => look.worn.some(({ piece }) => onlyA.has(piece)) && look.worn.some(({ piece }) => idsOfB.has(piece)),
    )
    .filter(({ look }) => {
      const core = look.worn
        .filter(({ slot }) => ['top', 'bottom', 'one-piece', 'swim'].includes(slot))
        .map(({ piece }) => piece)
        .join('+');
      return !cores.has(core) && cores.add(core);
    })
    .slice(0, CROSS_SHOWN);
  return {
    pieces,
    shared,
    counts,
    cross: { core: across('core'), layered: across('layered'), complete: across('complete') },
    crossLooks,
  };
};
