import type { Brief, Capsule, Finding, Piece, Plan } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { coreOf, fixedTo } from './candidates.ts';
import { finding } from './finding.ts';
import type { Assignment, PlanProblem } from './problem.ts';
import { clothesSeen, isDressed } from './seen.ts';

/** One occasion with what is seen at it. */
export interface Seen {
  readonly day: number;
  /** One-piece, or top and bottom; empty for a swim. */
  readonly core: string;
  /** Core and the layers worn over it. */
  readonly clothes: string;
  readonly dressed: boolean;
  /** The stylist chose it. */
  readonly fixed: boolean;
}

/** Clothes that come again, and where in the list they are seen. */
export interface Repeat {
  /** At two occasions people dress for, or else on everyday ones. */
  readonly dressed: boolean;
  readonly at: readonly number[];
}

interface Placed extends Seen {
  readonly at: number;
}

/** Places of which some two are on different days, and not all chosen by the stylist; the first of each day. */
const onSeveralDays = (seen: readonly Placed[]): readonly number[] => {
  const days = new Map<number, number>();
  for (const { day, at } of seen) if (!days.has(day)) days.set(day, at);
  return days.size < 2 || seen.every(({ fixed }) => fixed) ? [] : [...days.values()];
};

const repeatOf = (seen: readonly Placed[]): readonly Repeat[] => {
  const dressed = onSeveralDays(seen.filter((one) => one.dressed));
  if (dressed.length > 0) return [{ dressed: true, at: dressed }];
  const again = seen.filter((one) =>
    seen.some(
      (other) => Math.abs(other.day - one.day) === 1 || (other.day !== one.day && other.clothes === one.clothes),
    ),
  );
  const everyday = onSeveralDays(again);
  return everyday.length > 0 ? [{ dressed: false, at: everyday }] : [];
};

/**
 * The clothes a trip shows more often than it should: the same one-piece, or top with bottom, at two occasions people
 * dress for or on two days in a row, and the same look on any two days. What the stylist chose counts as meant.
 */
export const repeatsOf = (seen: readonly (Seen | undefined)[]): readonly Repeat[] => {
  const byCore = new Map<string, Placed[]>();
  seen.forEach((one, at) => {
    if (one === undefined || one.core === '') return;
    byCore.set(one.core, [...(byCore.get(one.core) ?? []), { ...one, at }]);
  });
  return [...byCore.values()].flatMap(repeatOf);
};

/** Days on which an assignment shows clothes again that it should not. */
export const countRepeats = (problem: PlanProblem, assignment: Assignment): number => {
  const seen = assignment.map((candidate, index): Seen | undefined => {
    const moment = problem.moments[index];
    if (candidate === undefined || moment === undefined) return undefined;
    const clothes = problem.seen(index, candidate);
    return {
      day: moment.day,
      core: clothes === '' ? '' : candidate.core,
      clothes,
      dressed: isDressed(moment.occasion),
      fixed: candidate.fixed,
    };
  });
  return repeatsOf(seen).reduce((sum, { at }) => sum + at.length - 1, 0);
};

/** Clothes the plan shows again for want of others, one finding each; what the stylist fixed is meant. */
export const findingsOfRepeats = (
  plan: Plan,
  brief: Brief,
  capsule: Pick<Capsule, 'fixed'>,
  pieces: readonly Piece[],
): readonly Finding[] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const worn = plan.days.flatMap(({ occasions }, day) =>
    occasions.flatMap(({ occasion: id, look, layersOn }) => {
      const occasion = brief.occasions.find((other) => other.id === id);
      if (occasion === undefined || look === undefined) return [];
      const clothes = clothesSeen(look, layersOn, byId);
      const seen: Seen = {
        day,
        core: clothes === '' ? '' : coreOf(look),
        clothes,
        dressed: isDressed(occasion),
        fixed: fixedTo(capsule, occasion) !== undefined,
      };
      return [{ occasion, look, seen }];
    }),
  );
  return repeatsOf(worn.map(({ seen }) => seen)).map(({ dressed, at }) => {
    const shown = at.flatMap((index) => worn[index] ?? []);
    const core = new Set((shown[0]?.seen.core ?? '').split('+'));
    const message = phrase('plan', 'seen again', {
      clothes: [...core].map((id) => byId.get(id)?.name ?? id),
      occasions: shown.map(({ occasion: { what, on } }) => phrase('plan', 'seen at', { occasion: what, on })),
    });
    const mend = phrase('plan', 'seen again mend', {});
    const occasions = shown.map(({ occasion }) => occasion);
    return finding(dressed ? 'warning' : 'advice', 'seen-again', message, mend, brief, occasions);
  });
};
