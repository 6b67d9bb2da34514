import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import { Garment } from '../kit/index.ts';
import { ShoeArtist } from './artist.ts';
import { type LastShape, last } from './last.ts';

export interface Stance {
  /** Degrees the toe of the near shoe is turned to the viewer, and how much less the far shoe's. */
  readonly turn: number;
  readonly spread: number;
  readonly down: number;
  readonly tall: number;
  /** Where the far heel stands, seen from the near one. */
  readonly far: Point;
}

export const FROM_THE_SIDE: Stance = { turn: 15, spread: 20, down: 27, tall: 0.96, far: [3.2, -5.4] };
/** Heels show best nearly in profile. */
export const IN_PROFILE: Stance = { turn: 15, spread: 19, down: 21, tall: 0.97, far: [3.6, -4.6] };
export const BOOTS: Stance = { turn: 14, spread: 20, down: 20, tall: 0.98, far: [4.6, -5.2] };
export const FROM_ABOVE: Stance = { turn: 12, spread: 20, down: 52, tall: 0.72, far: [2.6, -8.4] };

export interface ShoeStyle {
  readonly shape: Omit<LastShape, 'inner'>;
  readonly stance: Stance;
  readonly paint: (artist: ShoeArtist) => void;
}

/** Left and right shoe of one last: the far one behind, turned away and higher on the paper. */
export const pair = (piece: DrawnPiece, detail: Detail, styleOf: (garment: Garment) => ShoeStyle): Drawing => {
  const garment = new Garment(piece, detail);
  const { shape, stance, paint } = styleOf(garment);
  const sway = garment.jitter(1.2);
  const shoe = (behind: boolean): void => {
    const view = {
      turn: stance.turn + sway - (behind ? stance.spread : 0),
      down: stance.down,
      tall: stance.tall,
      at: (behind ? stance.far : [0, 0]) as Point,
    };
    paint(new ShoeArtist(garment, last({ ...shape, inner: behind ? 'near' : 'far' }, view), behind));
  };
  shoe(true);
  shoe(false);
  return garment.finish();
};
