import type { Finding, Piece } from '../model/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { DrawnPiece } from './drawing.ts';
import { HEEL_AT_MOST } from './feet/index.ts';
import { lengthNote } from './garment.ts';

/** A note when a heel is higher than any that is drawn, or no height at all. */
export const heelNote = ({ kind, name, heelCm }: DrawnPiece): Phrase | undefined => {
  if (KINDS[kind].group !== 'shoes' || (heelCm >= 0 && heelCm <= HEEL_AT_MOST)) return undefined;
  return phrase('draw', 'heel held', { name, asked: heelCm, drawn: heelCm > 0 ? HEEL_AT_MOST : 0 });
};

/** What a stylist should know of the drawings: measures that no such piece has, and that are drawn as something else. */
export const drawingFindings = (pieces: readonly Piece[]): readonly Finding[] =>
  pieces.flatMap((piece) => {
    // a photo shows the piece as it is
    if (piece.photo !== undefined) return [];
    return [lengthNote(piece), heelNote(piece)]
      .filter((message) => message !== undefined)
      .map(
        (message): Finding => ({
          level: 'warning',
          rule: 'drawing',
          message,
          mend: phrase('draw', 'measure again', {}),
          file: piece.file,
          about: [piece.id],
        }),
      );
  });
