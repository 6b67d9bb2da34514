import { type Coverage, KINDS, type KindGroup, type KindId } from '../../vocabulary/index.ts';
import type { DrawnPiece } from '../drawing.ts';
import type { SleeveShape, UpperShape } from './shape.ts';

/** How far down the arm sleeves reach. */
type Reach = 'none' | 'short' | 'long';

const reachOf = (covers: readonly Coverage[]): Reach => {
  if (covers.includes('forearms')) return 'long';
  return covers.includes('upper arms') ? 'short' : 'none';
};

/** Groups whose sleeves follow what a piece covers; what is worn over them is cut for the weather. */
const FOLLOWS: readonly KindGroup[] = ['tops', 'knits', 'one-pieces'];

/** Worn over a top, whose sleeves these are not. */
const OVER_A_TOP: readonly KindId[] = ['dungarees', 'pinafore', 'slipover'];

/** The sleeves asked of a piece where they are other than its kind's. */
export const askedReach = (piece: Pick<DrawnPiece, 'kind' | 'covers'>): Reach | undefined => {
  const kind = KINDS[piece.kind];
  if (piece.covers === undefined || !FOLLOWS.includes(kind.group) || OVER_A_TOP.includes(piece.kind)) return undefined;
  const reach = reachOf(piece.covers);
  return reach === reachOf(kind.covers) ? undefined : reach;
};

/** Sleeves of medium size, laid flat, for a kind that has others. common practice, no source */
const ASKED: Readonly<Record<Exclude<Reach, 'none'>, SleeveShape>> = {
  long: { length: 58, elbow: 15, cuff: 9.5, upper: 22, fore: 8 },
  short: { length: 20, elbow: 17, cuff: 16, upper: 53, fore: 50 },
};
/** A sleeve hangs from a shoulder at least this broad against the chest. */
const LEAST_SHOULDER = 0.82;

/** The usual shape of a kind with the sleeves that this piece of it has. */
export const withItsSleeves = (piece: Pick<DrawnPiece, 'kind' | 'covers'>, usual: UpperShape): UpperShape => {
  const reach = askedReach(piece);
  if (reach === undefined) return usual;
  if (reach === 'none') return { ...usual, sleeve: undefined };
  return { ...usual, shoulder: Math.max(usual.shoulder, usual.chest * LEAST_SHOULDER), sleeve: ASKED[reach] };
};
