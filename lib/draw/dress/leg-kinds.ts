import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { dungarees } from './dungarees.ts';
import { jumpsuit } from './jumpsuit.ts';
import { playsuit } from './playsuit.ts';
import { drawSuit, type SuitDesign } from './suit.ts';

const kind =
  (design: SuitDesign): DrawKind =>
  (piece, detail) =>
    drawSuit(piece, detail, design);

/** One-pieces with legs. */
export const LEGGED = {
  jumpsuit: kind(jumpsuit),
  playsuit: kind(playsuit),
  dungarees: kind(dungarees),
} satisfies Partial<Record<KindId, DrawKind>>;
