import type { Piece } from '../model/index.ts';
import type { Tuck } from '../vocabulary/index.ts';

/** Centimetres, y downwards. */
export type Point = readonly [x: number, y: number];

/** Affine transform as in SVG `matrix(a b c d e f)`. */
export type Matrix = readonly [number, number, number, number, number, number];

/** A flat colour (`#rrggbb`) or a tile of the drawing, by name. */
export type Paint = string | { readonly tile: string };

/** One painted shape. Paths use absolute M, L, C, Q and Z only, in centimetres, so that SVG and PDF can both paint them. */
export interface Mark {
  readonly path: string;
  readonly fill?: Paint;
  readonly evenOdd?: boolean;
  readonly stroke?: string;
  /** Stroke width, centimetres. */
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly round?: boolean;
  readonly opacity?: number;
}

/** Marks painted together, clipped to a path or moved. */
export interface MarkGroup {
  readonly marks: readonly (Mark | MarkGroup)[];
  readonly clip?: string;
  readonly transform?: Matrix;
  readonly opacity?: number;
}

/** A repeating piece of cloth: weave, rib, print. */
export interface Tile {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly transform?: Matrix;
  readonly ground?: string;
  readonly marks: readonly (Mark | MarkGroup)[];
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A garment drawn at true size, as data; `svg.ts` and the PDF painter turn it into pictures. */
export interface Drawing {
  readonly box: Box;
  /** Closed rings the cloth covers, for layout, contact shade and hit tests. */
  readonly outline: readonly (readonly Point[])[];
  readonly tiles: readonly Tile[];
  readonly marks: readonly (Mark | MarkGroup)[];
  /** Named points for laying pieces together: `neck`, `waist`, `hem`, `left shoulder`… */
  readonly anchors: Readonly<Record<string, Point>>;
  /** The cloth itself for a swatch of the legend: painted with the same tiles. */
  readonly cloth: Paint;
}

/** `full` for cards and pages; `small` is for under 100 px: fewer folds, lighter outlines, coarser patterns. */
export type Detail = 'full' | 'small';

/** What drawing needs to know of a piece. */
export type DrawnPiece = Pick<
  Piece,
  'id' | 'wardrobe' | 'name' | 'kind' | 'colours' | 'pattern' | 'cut' | 'length' | 'lengthCm' | 'heelCm' | 'fabric'
> &
  Partial<Pick<Piece, 'covers'>> & {
    /** A top is drawn as far as the waistband takes it in, a bottom without what the top in it hides. */
    readonly tuck?: Tuck | undefined;
  };

/** Draws one kind of garment. Pure and seeded: the same piece always looks the same. */
export type DrawKind = (piece: DrawnPiece, detail: Detail) => Drawing;
