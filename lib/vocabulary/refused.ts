import type { Piece } from '../model/piece.ts';
import { fabricNamed } from './estimate.ts';
import { FABRICS, type Fabric } from './fabrics.ts';

const FIBRES: ReadonlySet<string> = new Set<Fabric['fibre']>(Object.values(FABRICS).map(({ fibre }) => fibre));

const plain = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replaceAll(/[^\p{L}-]+/gu, ' ')
    .trim()} `;

/** True for a word that names a fibre or a cloth, so that a brief can refuse it. */
export const isFabricWord = (word: string): boolean =>
  FIBRES.has(plain(word).trim()) || fabricNamed(word) !== undefined;

/**
 * The refused word a piece meets, if any: by the fibre of its cloth (`wool` refuses merino and tweed), by the cloth the
 * word names, or by the word as it stands in the description. Rather one too many than one too few: it may be an allergy.
 */
export const fabricRefused = (
  piece: Pick<Piece, 'fabric' | 'fabricText'>,
  refused: readonly string[],
): string | undefined =>
  refused.find((word) => {
    const asked = plain(word);
    return (
      FABRICS[piece.fabric].fibre === asked.trim() ||
      (!FIBRES.has(asked.trim()) && fabricNamed(word) === piece.fabric) ||
      plain(piece.fabricText).includes(asked)
    );
  });

/** The piece as its client wears it: marked where its cloth is to be kept off the skin. */
export const keptOffSkin = (piece: Piece, { againstSkin = [] }: { readonly againstSkin?: readonly string[] }): Piece =>
  fabricRefused(piece, againstSkin) === undefined ? piece : { ...piece, offSkin: true };
