/** A colour as a person names it and as a screen shows it. */
export interface NamedColour {
  /** What people read: `rust`, `wet slate`. */
  readonly name: string;
  /** sRGB, lower case, `#a0522d`. */
  readonly hex: string;
  /** OKLCH: lightness 0 to 1, chroma 0 to about 0.37, hue in degrees (0 when achromatic). */
  readonly oklch: { readonly l: number; readonly c: number; readonly h: number };
  /** The stylist's word on whether it counts as a neutral; undefined lets the computation decide. */
  readonly neutral?: boolean;
  /** False on cloth that is only called after a metal, such as copper silk; undefined lets the name decide. */
  readonly metal?: boolean;
}

/** A colour of a piece with its share of the surface; the shares of a piece add up to 1. */
export interface PieceColour extends NamedColour {
  readonly share: number;
}
