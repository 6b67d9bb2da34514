import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { kaftan, sarong } from './cover-ups.ts';
import { beachShirt, rashSuit, swimShorts } from './sporty.ts';
import { bikini, swimBriefs, swimsuit } from './suits.ts';

/** Swimwear and what is thrown over it: everything of the group `swimwear`. */
export const SWIM = {
  swimsuit,
  bikini,
  'swim briefs': swimBriefs,
  'swim shorts': swimShorts,
  'rash suit': rashSuit,
  kaftan,
  sarong,
  'beach shirt': beachShirt,
} satisfies Partial<Record<KindId, DrawKind>>;
