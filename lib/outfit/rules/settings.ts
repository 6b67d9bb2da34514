import { distance } from 'fastest-levenshtein';
import type { HouseRuleSettings } from '../../model/house-rules.ts';
import { HOUSE_RULES } from './index.ts';

/** Ids that differ in more letters than this from every known one get no suggestion. */
const farthest = (word: string): number => Math.ceil(word.length * 0.3);
const SUGGESTIONS = 2;

const nearestOf = (word: string, words: readonly string[]): readonly string[] =>
  words
    .map((known) => ({ known, far: distance(word.toLowerCase(), known) }))
    .filter(({ far }) => far <= farthest(word))
    .sort((a, b) => a.far - b.far || (a.known < b.known ? -1 : 1))
    .slice(0, SUGGESTIONS)
    .map(({ known }) => known);

/** Settings that name no rule, with the nearest rules there are. Empty when all is well. */
export const checkRuleSettings = (
  settings: HouseRuleSettings,
): readonly { readonly id: string; readonly nearest: readonly string[] }[] => {
  const known = HOUSE_RULES.map(({ id }) => id);
  return Object.keys(settings)
    .filter((id) => !known.includes(id))
    .map((id) => ({ id, nearest: nearestOf(id, known) }));
};

/** Thresholds that are set where there is none (`low` and `high` absent) or lie outside what the rule allows. */
export const checkRuleThresholds = (
  settings: HouseRuleSettings,
): readonly { readonly id: string; readonly threshold: number; readonly low?: number; readonly high?: number }[] =>
  HOUSE_RULES.flatMap(({ id, threshold: allowed }) => {
    const threshold = settings[id]?.threshold;
    if (threshold === undefined) return [];
    if (allowed === undefined) return [{ id, threshold }];
    const within = threshold >= allowed.low && threshold <= allowed.high;
    return within ? [] : [{ id, threshold, low: allowed.low, high: allowed.high }];
  });

/** Piece names in sets of never or always together that no piece has, with the nearest there are. */
export const checkPieceSets = (
  sets: readonly (readonly string[])[],
  pieces: readonly { readonly id: string }[],
): readonly { readonly set: number; readonly id: string; readonly nearest: readonly string[] }[] => {
  const known = pieces.map(({ id }) => id);
  return sets.flatMap((ids, set) =>
    ids.filter((id) => !known.includes(id)).map((id) => ({ set, id, nearest: nearestOf(id, known) })),
  );
};
