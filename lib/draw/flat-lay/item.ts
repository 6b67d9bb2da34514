import type { Slot, Tuck } from '../../vocabulary/index.ts';
import type { Box, Drawing, Matrix, Point } from '../drawing.ts';

/** A photo with its ground taken away, at true size. */
export interface Cutout {
  /** PNG with transparency. */
  readonly png: Uint8Array;
  readonly pxPerCm: number;
  readonly box: Box;
  /** Closed rings around what is not transparent, centimetres. */
  readonly outline: readonly (readonly Point[])[];
  readonly anchors: Readonly<Record<string, Point>>;
}

/** A piece to be laid: drawn, or cut out of a photo. */
export interface LayItem {
  /** Unique in the lay; seeds the slight turns. */
  readonly id: string;
  readonly slot: Slot;
  readonly picture: Drawing | Cutout;
  /** A top `in` the waistband of the bottom `around` it; undefined where it hangs loose. */
  readonly tuck?: Tuck | undefined;
}

/** The rectangle the pieces may use, pixels. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A piece where it lies. */
export interface Placed {
  readonly item: LayItem;
  /** From the picture's centimetres to pixels. */
  readonly transform: Matrix;
  /** Clockwise, degrees. */
  readonly turn: number;
  /** Extent in pixels. */
  readonly extent: Box;
  /** Share of its area that no other piece covers. */
  readonly visible: number;
}

/** A finished lay, from the bottom layer to the top. */
export interface FlatLay {
  /** Pixels a centimetre, the same for every piece. */
  readonly scale: number;
  readonly frame: Frame;
  readonly placed: readonly Placed[];
}
