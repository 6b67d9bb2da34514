import type { Judge, Verdict } from '../../../outfit/index.ts';
import type { Phrase } from '../../../words/phrase.ts';
import type { TryData } from '../../try-data.ts';

/** What there is to say of the pieces a reader has put together, in sentences. */
export interface Told {
  readonly state: 'empty' | 'goes' | 'so far' | 'not';
  readonly verdict: string;
  readonly reasons: readonly string[];
  readonly advice: readonly string[];
  readonly missing: readonly string[];
  readonly look: { readonly text: string; readonly href: string } | undefined;
}

const saidOf = ({ reasons }: Verdict, severity: 'rules out' | 'lowers the score', say: (said: Phrase) => string) =>
  reasons
    // how dressy a coat is beside the rest is the stylist's to weigh
    .filter(({ rule }) => rule !== 'on-the-way')
    .filter((reason) => reason.severity === severity)
    .map(({ message }) => say(message));

/** Puts a verdict into sentences; a piece that the client's brief refuses speaks against it as well. */
export const told = (
  chosen: readonly string[],
  verdict: Verdict,
  { words, pieces, looks }: TryData,
  say: (said: Phrase) => string,
): Told => {
  const refused = chosen.flatMap((id) => pieces[id]?.refused ?? []);
  const reasons = [...refused, ...saidOf(verdict, 'rules out', say)];
  const state = chosen.length === 0 ? 'empty' : reasons.length > 0 ? 'not' : verdict.complete ? 'goes' : 'so far';
  return {
    state,
    verdict: { empty: words.empty, goes: words.goes, 'so far': words.goesSoFar, not: words.not }[state],
    reasons,
    advice: saidOf(verdict, 'lowers the score', say),
    // what is to come is of no use until what speaks against it is gone
    missing: state === 'empty' || state === 'not' ? [] : verdict.missing.map(say),
    look: verdict.look && looks[verdict.look.id],
  };
};

/** Whether one piece more would do; in a place that is taken, whether it would instead of what has the place. */
export const wouldGo = (judge: Judge, chosen: readonly string[], piece: string): boolean => {
  const { goes, reasons } = judge.explain([...chosen, piece]);
  if (goes || reasons.some(({ rule, severity }) => severity === 'rules out' && rule !== 'grammar')) return goes;
  const rivals = new Set(reasons.flatMap(({ pieces }) => (pieces.includes(piece) ? pieces : [])));
  return judge.explain([...chosen.filter((id) => !rivals.has(id)), piece]).goes;
};
