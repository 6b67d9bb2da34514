import type { Brief } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import { momentsOf } from '../plan/index.ts';

/** Which occasions lose their last look when pieces stay at home. Each occasion by itself: washing and wears are the plan's affair. */
export type Unserved = (without: readonly string[]) => readonly string[];

/** Asks the engine only about occasions whose best look needs one of the pieces; an occasion without any look is not counted as lost. */
export const createUnserved = (brief: Brief, traveller: string, engine: WardrobeEngine): Unserved => {
  const asked = momentsOf(brief, traveller).flatMap(({ occasion, restriction }) => {
    const best = engine.rank(1, restriction)[0];
    if (best === undefined) return [];
    return [{ id: occasion.id, restriction, known: [new Set(best.look.worn.map(({ piece }) => piece))] }];
  });
  return (without) =>
    asked.flatMap(({ id, restriction, known }) => {
      if (known.some((look) => without.every((piece) => !look.has(piece)))) return [];
      const other = engine.rank(1, { ...restriction, without })[0];
      if (other === undefined) return [id];
      known.push(new Set(other.look.worn.map(({ piece }) => piece)));
      return [];
    });
};
