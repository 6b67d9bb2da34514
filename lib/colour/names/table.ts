/** Names in plain words, each with lightness (0 to 1), chroma (0 to about 0.3) and hue (degrees) in OKLCH. */
export type NameTable = Readonly<Record<string, readonly [l: number, c: number, h: number]>>;
