import type { CloRange, Look, Piece, WornPiece } from '../model/index.ts';
import type { KindId, Slot } from '../vocabulary/index.ts';

/** Underthings nobody lists. Source: ASHRAE Handbook Fundamentals ch. 9 table 9, men's briefs 0.04; panties 0.03 with bra 0.01. */
export const UNDERTHINGS_CLO = 0.04;
/** Socks or thin stockings nobody lists, in shoes that cover the foot. Source: as above, ankle socks 0.02, panty hose 0.02. */
export const SOCKS_CLO = 0.02;

const coversFeet = ({ covers }: Piece): boolean => covers.includes('feet');

/**
 * What a piece adds to a look where it is worn, clo. Socks are assumed in every closed shoe, as the whole outfits of
 * the published tables have them; socks or tights of the look stand in their place.
 */
export const wornClo = (piece: Piece, slot: Slot): number => {
  if (slot === 'shoes' && coversFeet(piece)) return piece.clo.value + SOCKS_CLO;
  if (slot === 'legwear' && coversFeet(piece)) return Math.max(0, piece.clo.value - SOCKS_CLO);
  return piece.clo.value;
};

/** Layers a wearer can take off and put back on during an occasion. */
const REMOVABLE: ReadonlySet<Slot> = new Set(['mid layer', 'outer layer', 'cover-up', 'scarf', 'headwear', 'gloves']);

export const isRemovable = (slot: Slot): boolean => REMOVABLE.has(slot);

/** What comes off at the door of a room beside the coat; a thin scarf or a shawl may stay. common practice, no source */
const LEFT_AT_THE_DOOR: ReadonlySet<KindId> = new Set<KindId>([
  'beanie',
  'chunky scarf',
  'gloves',
  'leather gloves',
  'mittens',
]);

/** True for a coat, and what goes with it into the cloakroom; a jacket that is worn under coats as well is none. */
export const isLeftAtTheDoor = ({ places, kind }: Pick<Piece, 'places' | 'kind'>): boolean =>
  places.every((place) => place === 'outer layer') || LEFT_AT_THE_DOOR.has(kind);

/** A look as it is in a room, its coat and what goes with it left at the door. */
export const inARoom = (look: Look, pieces: ReadonlyMap<string, Piece>): Look => ({
  ...look,
  worn: look.worn.filter(({ piece }) => !isLeftAtTheDoor(pieceOf(pieces, piece))),
});

/**
 * Insulation of a look in clo, from all removable layers off to all on. `slots[i]` is where `pieces[i]` is worn.
 * Source: ASHRAE Handbook Fundamentals ch. 9, equation 43: the sum of the single garments, underthings and socks among
 * them; the handbook gives itself about a quarter either way.
 */
export const lookClo = (pieces: readonly Piece[], slots: readonly Slot[]): CloRange => {
  let off = slots.includes('swim') ? 0 : UNDERTHINGS_CLO;
  let removable = 0;
  pieces.forEach((piece, index) => {
    const slot = slots[index];
    if (slot === undefined) throw new Error(`"${piece.id}" is worn nowhere`);
    if (isRemovable(slot)) removable += wornClo(piece, slot);
    else off += wornClo(piece, slot);
  });
  return { off: roundClo(off), on: roundClo(off + removable) };
};

/** The same for a look and the pieces it is made of, by id. Throws on a piece that is not there: a bug. */
export const cloOfLook = (look: Look, pieces: ReadonlyMap<string, Piece>): CloRange =>
  lookClo(
    look.worn.map(({ piece }) => pieceOf(pieces, piece)),
    look.worn.map(({ slot }) => slot),
  );

export const pieceOf = (pieces: ReadonlyMap<string, Piece>, id: string): Piece => {
  const piece = pieces.get(id);
  if (piece === undefined) throw new Error(`the look wears "${id}", which is not among the pieces`);
  return piece;
};

/** Removable pieces of a look that warm. */
export const warmLayers = (look: Look, pieces: ReadonlyMap<string, Piece>): readonly WornPiece[] =>
  look.worn.filter(({ piece, slot }) => isRemovable(slot) && pieceOf(pieces, piece).clo.value > 0);

/** Sums of table values carry dust in the last digits; comparisons must not. */
export const roundClo = (clo: number): number => Math.round(clo * 1000) / 1000;
