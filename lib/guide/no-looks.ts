import type { Capsule, Finding } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';

/** Why the pieces of a capsule make no look at all, one finding a cause; none when they make one. */
export const noLookFindings = (engine: WardrobeEngine, { file }: Capsule): readonly Finding[] =>
  engine.diagnose().map(({ message }) => ({ level: 'error', rule: 'no-looks', message, about: [], file }));
