import type { DrawnPiece } from '../drawing.ts';
import { askedReach } from '../upper/arms.ts';
import { finishNeck, frontNeck, neckInside } from '../upper/necklines.ts';
import { bodiceShade, type DressDesign } from './draw.ts';
import { shoulderLine } from './frame.ts';

/** What a bodice over the shoulders needs where the kind has straps, centimetres. common practice, no source */
const SHOULDERS = { shoulder: 36.5, slope: 4.2, armhole: 21.5, neck: 21, neckDepth: 14 };

/** A dress of straps, made with shoulders when the piece has sleeves to set in. */
export const withShoulders = (piece: DrawnPiece, design: DressDesign): DressDesign => {
  const reach = askedReach(piece);
  if (reach === undefined || reach === 'none') return design;
  return {
    ...design,
    block: { ...design.block, upper: { ...design.block.upper, ...SHOULDERS } },
    line: shoulderLine((upper) => frontNeck(upper, 'scoop')),
    beneath: ({ garment, upper }) => neckInside(garment, upper, 'scoop', -1.2, false),
    onBodice: bodiceShade,
    over: ({ garment, upper }) => finishNeck(garment, upper, 'scoop', 'edge'),
  };
};
