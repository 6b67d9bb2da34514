import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind, DrawnPiece } from '../drawing.ts';
import type { DrawnLength } from '../kit/index.ts';
import { sideLength } from '../lower/index.ts';
import { drawSocks, sockHeight } from './sock.ts';
import type { SockDesign } from './sock-parts.ts';
import { drawThermals } from './thermals.ts';
import { drawTights, tightsLength } from './tights.ts';
import type { TightsDesign } from './tights-leg.ts';

/** Top of the cuff to the heel, by where the sock ends on the leg. common practice, no source */
const SHAFT = { none: 7, cropped: 8, ankle: 16, calf: 29, knee: 42 } as const;
const shaft = ({ length }: Pick<DrawnPiece, 'length'>): number => {
  if (length in SHAFT) return SHAFT[length as keyof typeof SHAFT];
  return length === 'thigh' || length === 'full' ? 56 : SHAFT.calf;
};

const PLAIN: SockDesign = {
  shaft,
  top: 9,
  calf: 9.6,
  cuff: 4.5,
  ribbed: false,
  thick: 0.3,
  patches: false,
  stripes: 0,
  arch: false,
  turned: false,
};

const socks =
  (design: Partial<SockDesign>): DrawKind =>
  (piece, detail) =>
    drawSocks(piece, detail, { ...PLAIN, ...design });

const tights =
  (design: TightsDesign): DrawKind =>
  (piece, detail) =>
    drawTights(piece, detail, design);

/** Socks and tights: everything of the group `legwear`. */
export const LEGWEAR = {
  socks: socks({ stripes: 2, arch: true }),
  'dress socks': socks({ top: 8.6, calf: 9.6, cuff: 3, ribbed: true, thick: 0 }),
  'walking socks': socks({ top: 10, calf: 10.6, cuff: 8, thick: 1.1, patches: true, stripes: 1, arch: true }),
  'knee socks': socks({ top: 9.6, calf: 11, cuff: 6.5, ribbed: true, thick: 0.6, turned: true }),
  tights: tights({ thick: 0, ribs: false, sheer: true, band: 3.4 }),
  'wool tights': tights({ thick: 0.6, ribs: true, sheer: false, band: 4.6 }),
  'thermal leggings': drawThermals,
} satisfies Partial<Record<KindId, DrawKind>>;

/** The length a piece of the group is drawn at: a sock to its heel, tights to the toe, leggings to the hem. */
export const legwearLength = (piece: Pick<DrawnPiece, 'kind' | 'length' | 'lengthCm'>): DrawnLength => {
  if (piece.kind === 'thermal leggings') return sideLength(piece);
  return piece.kind === 'tights' || piece.kind === 'wool tights'
    ? tightsLength(piece)
    : sockHeight(piece, shaft(piece));
};
