import type { Shape } from '../draw/flat-lay/index.ts';

/** A picture file: its address below the guide's folder, and its size in pixels. */
export interface Picture {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** One motif at several widths, widest first, for light pages and for dark ones. */
export interface PictureSet {
  readonly clear: readonly Picture[];
  readonly night: readonly Picture[];
}

export interface PiecePictures extends PictureSet {
  /** True size of what the picture shows, centimetres, margins included: for one scale on a page. */
  readonly widthCm: number;
  readonly heightCm: number;
  /** Its outline, for laying it out in a page. */
  readonly shape: Shape;
}

export interface CardPictures {
  /** 1080 × 1350, PNG. */
  readonly portrait: Picture;
  /** 1200 × 630, PNG, for link previews. */
  readonly landscape: Picture;
  /** Address of the card as SVG. */
  readonly svg: string;
}

/** Every picture of one guide. */
export interface PictureIndex {
  /** By the look's slug. */
  readonly looks: Readonly<Record<string, PictureSet>>;
  readonly cards: Readonly<Record<string, CardPictures>>;
  /** By piece id. */
  readonly pieces: Readonly<Record<string, PiecePictures>>;
  readonly cloth: Readonly<Record<string, Picture>>;
  /** Pixels a centimetre of the widest picture of a look, by its slug; absent where nobody measured. */
  readonly scales?: Readonly<Record<string, number>>;
}

/** A file to download: `print/packing-list-a4.pdf`. */
export interface Download {
  readonly kind: 'packing list' | 'day plan' | 'wear table' | 'booklet' | 'booklet to fold' | 'card sheet';
  readonly paper: 'A4' | 'A5' | 'Letter';
  readonly address: string;
  readonly bytes: number;
}
