import type { Aversions, Brief, Capsule, Piece } from '../model/index.ts';
import { keptOffSkin } from '../vocabulary/index.ts';

const joined = <T>(one: readonly T[] = [], two: readonly T[] = []): readonly T[] => [...new Set([...one, ...two])];

/** Everything that either refuses; of two heels the lower. */
const both = (one: Aversions, two: Aversions): Aversions => {
  const heels = [one.heelCmOver, two.heelCmOver].filter((heelCm) => heelCm !== undefined);
  return {
    colours: joined(one.colours, two.colours),
    fabrics: joined(one.fabrics, two.fabrics),
    againstSkin: joined(one.againstSkin, two.againstSkin),
    ...(heels.length === 0 ? {} : { heelCmOver: Math.min(...heels) }),
  };
};

/** The brief as it is for one traveller: what nobody wears, and what this one does not. */
export const briefFor = (brief: Brief, traveller: string): Brief => {
  const own = brief.travellers.find(({ name }) => name === traveller)?.avoid;
  return own === undefined ? brief : { ...brief, avoid: both(brief.avoid, own) };
};

/** The wardrobe a capsule chooses from, as its client wears it on this trip; empty when there is none of that name. */
export const wardrobeOn = (
  wardrobes: ReadonlyMap<string, readonly Piece[]>,
  { avoid }: Pick<Brief, 'avoid'>,
  { wardrobe }: Pick<Capsule, 'wardrobe'>,
): readonly Piece[] => (wardrobes.get(wardrobe) ?? []).map((piece) => keptOffSkin(piece, avoid));
