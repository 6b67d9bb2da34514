import type { Brief, IsoDate, Plan } from '../model/index.ts';
import { packedDamp } from '../plan/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** What travels damp on which day, and what to do with it, in words. */
export const dampInWords = (
  plan: Pick<Plan, 'days'>,
  brief: Pick<Brief, 'occasions'>,
  nameOf: (piece: string) => string,
): readonly { readonly on: IsoDate; readonly said: Phrase }[] =>
  packedDamp(plan, brief).map(({ on, pieces, journey, dryBy, dryAt }) => ({
    on,
    said: phrase('plan', 'pack damp', {
      pieces: pieces.map(nameOf),
      journey: brief.occasions.find(({ id }) => id === journey)?.what ?? journey,
      dryBy,
      at: dryAt,
    }),
  }));
