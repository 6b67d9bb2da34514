import type { Finding, Piece, PieceField } from '../model/index.ts';
import { HEEL_CM, KINDS, within } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { DrawnPiece } from './drawing.ts';
import { lengthNote } from './garment.ts';

/** A note when a heel is higher than any that is drawn, or no height at all. */
export const heelNote = ({ kind, name, heelCm }: DrawnPiece): Phrase | undefined => {
  const drawn = within(HEEL_CM, heelCm);
  if (KINDS[kind].group !== 'shoes' || drawn === heelCm) return undefined;
  return phrase('draw', 'heel held', { name, asked: heelCm, drawn });
};

/** A note when a piece is written without a colour. */
const colourNote = ({ name, colours, estimated }: Piece): Phrase | undefined =>
  estimated.includes('colours') ? phrase('draw', 'no colour', { name, colour: colours[0]?.name ?? '' }) : undefined;

/**
 * What a stylist should know of the drawings: measures that no such piece has, held to the nearest that one can have,
 * and colours left open. A photo shows the measures as they are.
 */
export const drawingFindings = (pieces: readonly Piece[]): readonly Finding[] =>
  pieces.flatMap((piece) => {
    const say = (message: Phrase | undefined, field: PieceField, mend: Phrase): readonly Finding[] => {
      const line = piece.lines?.[field];
      if (message === undefined) return [];
      const at = { file: piece.file, ...(line === undefined ? {} : { line }) };
      return [{ level: 'warning', rule: 'drawing', message, mend, ...at, about: [piece.id] }];
    };
    const measures =
      piece.photo === undefined
        ? [
            ...say(lengthNote(piece), 'length cm', phrase('draw', 'measure again', {})),
            ...say(heelNote(piece), 'heel cm', phrase('draw', 'measure again', {})),
          ]
        : [];
    return [...measures, ...say(colourNote(piece), 'colours', phrase('draw', 'no colour mend', {}))];
  });
