import type { Brief, Capsule, Piece } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import { fixedFor, type Moment, momentsOf, stillWet } from '../plan/index.ts';

/** Which occasions lose their last look when pieces stay at home. Each by itself, save that wet swimwear is not worn; wears and washes are the plan's affair. */
export type Unserved = (without: readonly string[]) => readonly string[];

/** Swims for which all swimwear is still wet, when pieces take turns and the one that was worn longest ago goes first. */
const swimsInTheWet = (swims: readonly Moment[], swimwear: readonly Piece[]): readonly string[] => {
  const wornUntil = new Map<string, number>();
  const lastWorn = ({ id }: Piece): number => wornUntil.get(id) ?? Number.NEGATIVE_INFINITY;
  return swims.flatMap(({ occasion, start, end }) => {
    const dry = swimwear
      .filter((piece) => !stillWet(piece, lastWorn(piece), start))
      .toSorted((a, b) => lastWorn(a) - lastWorn(b))[0];
    if (dry === undefined) return [occasion.id];
    wornUntil.set(dry.id, end);
    return [];
  });
};

/**
 * Asks the engine only about occasions whose best look needs one of the pieces. An occasion without a look from the start
 * is not counted as lost; one whose look the stylist fixed is lost with any piece of it.
 */
export const createUnserved = (
  brief: Brief,
  traveller: string,
  engine: WardrobeEngine,
  pieces: readonly Piece[],
  capsule: Pick<Capsule, 'fixed'>,
): Unserved => {
  const moments = momentsOf(brief, traveller);
  const asked = moments.flatMap((moment) => {
    const { occasion, restriction } = moment;
    const fixed = fixedFor(capsule, moment);
    if (fixed !== undefined) return [{ id: occasion.id, restriction, known: [new Set(fixed)], isFixed: true }];
    const best = engine.rank(1, restriction)[0];
    if (best === undefined) return [];
    return [
      { id: occasion.id, restriction, known: [new Set(best.look.worn.map(({ piece }) => piece))], isFixed: false },
    ];
  });
  const servable = new Set(asked.map(({ id }) => id));
  const swims = moments.filter(({ swims: inWater, occasion }) => inWater && servable.has(occasion.id));
  const swimwear = pieces.filter(({ places }) => places.includes('swim'));
  const wetAnyway = new Set(swimsInTheWet(swims, swimwear));
  return (without) => {
    const missing = asked.flatMap(({ id, restriction, known, isFixed }) => {
      if (known.some((look) => without.every((piece) => !look.has(piece)))) return [];
      if (isFixed) return [id];
      const other = engine.rank(1, { ...restriction, without })[0];
      if (other === undefined) return [id];
      known.push(new Set(other.look.worn.map(({ piece }) => piece)));
      return [];
    });
    const kept = swimwear.filter(({ id }) => !without.includes(id));
    const wet = kept.length === swimwear.length ? [] : swimsInTheWet(swims, kept).filter((id) => !wetAnyway.has(id));
    const lost = new Set([...missing, ...wet]);
    return asked.map(({ id }) => id).filter((id) => lost.has(id));
  };
};
