import type { Surface } from '../../vocabulary/index.ts';
import type { Tile } from '../drawing.ts';

/** How a cloth falls: how many folds it makes, how broad and how deep they are, 1 being a plain cotton. */
export interface Drape {
  readonly folds: number;
  readonly width: number;
  readonly depth: number;
  /** How crisp the root of a fold is: 0 for thick wool, 1 for paper-like cloth. */
  readonly crisp: number;
}

/** A cloth ready to paint with: the ground, its tones, and what repeats on it. */
export interface Cloth {
  readonly surface: Surface;
  /** The piece's ground colour, untouched. */
  readonly ground: string;
  /** A little darker; the turned or inner side of thin cloth. */
  readonly shade: string;
  /** Clearly darker. */
  readonly deep: string;
  /** Darkest: contour, seams, folds. */
  readonly ink: string;
  /** A little lighter. */
  readonly light: string;
  /** Lightest: ridges and sheen. */
  readonly bright: string;
  readonly lining: string;
  /** Strength of lights, 1 being a plain cotton. */
  readonly sheen: number;
  /** Strength of shade: pale and dark cloth bear less of it. */
  readonly depth: number;
  readonly drape: Drape;
  /** The piece's other colours, most of the surface first; empty for a piece of one colour. */
  readonly accents: readonly string[];
  /** 0 for opaque, up to 0.5 for what is seen through. */
  readonly sheer: number;
  /** A stripe that runs across, as data, for garments that draw it as geometry; its tile is among `tiles` as well. */
  readonly stripes?: {
    readonly repeat: number;
    readonly bands: readonly { readonly at: number; readonly width: number; readonly colour: string }[];
  };
  /** What is laid over the ground, print first, weave last; turned and moved panel by panel. */
  readonly tiles: readonly Tile[];
  /** The cloth with its ground, for a swatch. */
  readonly swatch: Tile | undefined;
}
