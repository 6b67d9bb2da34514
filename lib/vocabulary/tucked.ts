import type { KindId } from './kinds.ts';
import type { Slot } from './places.ts';

/** How a top and a bottom meet: the top `in` the waistband, the bottom `around` it. */
export type Tuck = 'in' | 'around';

/** Cut to be worn inside a waistband. common practice, no source */
const ALWAYS: ReadonlySet<KindId> = new Set(['bodysuit', 'dress shirt']);

/** Worn inside a waistband that asks for it, and loose over others. common practice, no source */
const WHERE_ASKED: ReadonlySet<KindId> = new Set([
  'shirt',
  'blouse',
  'bow blouse',
  'camisole',
  'halter top',
  't-shirt',
  'long-sleeved tee',
  'polo shirt',
  'shell top',
  'fine roll-neck',
]);

/** Waistbands that are meant to be seen. common practice, no source */
const SHOWN_WAISTS: ReadonlySet<KindId> = new Set([
  'suit trousers',
  'tailored trousers',
  'wide trousers',
  'pencil skirt',
  'pleated skirt',
  'a-line skirt',
  'wrap skirt',
  'midi skirt',
  'maxi skirt',
]);

interface WornKind {
  readonly kind: KindId;
  readonly slot: Slot;
}

/** Which pieces of a look are tucked in and around, in its order; undefined for all others, and where the top hangs loose. */
export const tucksOf = (worn: readonly WornKind[]): readonly (Tuck | undefined)[] => {
  const tops = worn.filter(({ slot }) => slot === 'top');
  const bottom = worn.find(({ slot }) => slot === 'bottom');
  const [top] = tops;
  if (top === undefined || bottom === undefined || tops.length > 1) return worn.map(() => undefined);
  // a belt or a tie over loose cloth would be for nothing
  const asked = SHOWN_WAISTS.has(bottom.kind) || worn.some(({ slot }) => slot === 'belt' || slot === 'tie');
  const tucked = ALWAYS.has(top.kind) || (asked && WHERE_ASKED.has(top.kind));
  return worn.map((piece) => {
    if (!tucked) return undefined;
    return piece === top ? 'in' : piece === bottom ? 'around' : undefined;
  });
};
