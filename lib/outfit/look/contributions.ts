import { CORE_FORMS, LEVELS, type Level } from '../grammar/forms.ts';
import type { Ground } from '../ground.ts';
import type { Restriction } from '../restriction.ts';
import { compileSpace } from '../space/compile.ts';
import { countSpace } from '../space/count.ts';
import { tallySpace } from '../space/tally.ts';

/** Looks that contain a piece, at each level: what is lost if it stays at home. */
export interface Contribution {
  readonly piece: string;
  readonly core: bigint;
  readonly layered: bigint;
  readonly complete: bigint;
}

/** Looks of one level that contain each piece, by piece id. */
const tallyLevel = (ground: Ground, level: Level, restriction: Restriction): ReadonlyMap<string, bigint> => {
  const looks = new Map<string, bigint>(ground.pieces.map(({ id }) => [id, 0n]));
  const add = (id: string, more: bigint): void => {
    looks.set(id, (looks.get(id) ?? 0n) + more);
  };
  for (const form of CORE_FORMS) {
    const space = compileSpace(ground, form, level, restriction);
    if (space === undefined) continue;
    const tally = tallySpace(space, ground.seats.length);
    if (tally !== undefined) {
      for (const { index, piece } of ground.seats) add(piece.id, BigInt(tally[index] ?? 0));
      continue;
    }
    for (const { id } of ground.pieces) {
      const forced = compileSpace(ground, form, level, {
        ...restriction,
        pieces: [...(restriction.pieces ?? []), id],
      });
      if (forced !== undefined) add(id, countSpace(forced));
    }
  }
  return looks;
};

/** Counts every piece's looks, all pieces at once. */
export const contributionsOf = (ground: Ground, restriction: Restriction): readonly Contribution[] => {
  const [core, layered, complete] = LEVELS.map((level) => tallyLevel(ground, level, restriction));
  return ground.pieces.map(({ id }) => ({
    piece: id,
    core: core?.get(id) ?? 0n,
    layered: layered?.get(id) ?? 0n,
    complete: complete?.get(id) ?? 0n,
  }));
};
