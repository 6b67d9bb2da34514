import type { PackedPiece, Piece, Plan } from '../model/index.ts';
import { piecesOfWay } from '../plan/index.ts';
import { KINDS, type KindId } from '../vocabulary/index.ts';

const ROLLED = new Set(['knits', 'swimwear', 'legwear']);
const LAID_FLAT = new Set(['satin', 'silk']);
/** What is hollow and keeps its shape when small things are put inside. */
const FILLED: ReadonlySet<KindId> = new Set(['felt hat', 'sun hat', 'bucket hat', 'cap', 'flat cap']);
const IN_A_POUCH: ReadonlySet<KindId> = new Set(['sunglasses', 'spectacles']);
const ROLLED_KINDS: ReadonlySet<KindId> = new Set(['belt', 'tie']);

/** How a piece goes in. common practice, no source */
export const foldOf = (piece: Piece): PackedPiece['fold'] => {
  const { group } = KINDS[piece.kind];
  if (group === 'shoes') return 'shoe bag';
  if (group === 'jewellery' || IN_A_POUCH.has(piece.kind)) return 'pouch';
  if (group === 'bags' || FILLED.has(piece.kind)) return 'fill';
  if (ROLLED.has(group) || ROLLED_KINDS.has(piece.kind)) return 'roll';
  if (LAID_FLAT.has(piece.fabric)) return 'flat';
  return group === 'tops' && piece.fabric === 'cotton jersey' ? 'roll' : 'fold';
};

/** When each piece is first worn after the first departure: number of the occasion in the plan. */
export const firstNeeded = (plan: Plan): ReadonlyMap<string, number> => {
  const first = new Map<string, number>();
  plan.days
    .flatMap(({ occasions }) => occasions)
    .forEach(({ look, layersCarried, way }, index) => {
      for (const piece of [...(look?.worn ?? []).map((worn) => worn.piece), ...layersCarried, ...piecesOfWay(way)]) {
        if (!first.has(piece)) first.set(piece, index);
      }
    });
  return first;
};

/**
 * Packing order, first in first: shoes at the wheels, then the heavy things low, and on top what the first day asks for,
 * the very first last. common practice, no source
 */
export const inPackingOrder = (pieces: readonly PackedPiece[], plan: Plan): readonly PackedPiece[] => {
  const needed = firstNeeded(plan);
  const firstDay = plan.days[0]?.occasions.length ?? 0;
  const tier = ({ piece, group }: PackedPiece): number =>
    group === 'shoes' ? 0 : (needed.get(piece) ?? Number.POSITIVE_INFINITY) < firstDay ? 2 : 1;
  return pieces.toSorted(
    (a, b) =>
      tier(a) - tier(b) ||
      (tier(a) === 2 ? (needed.get(b.piece) ?? 0) - (needed.get(a.piece) ?? 0) : 0) ||
      b.grams.value - a.grams.value ||
      (a.piece < b.piece ? -1 : 1),
  );
};
