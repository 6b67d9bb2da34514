interface Oklch {
  readonly l: number;
  readonly c: number;
  readonly h: number;
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Moves lightness a share of the way to `target`, and multiplies chroma. */
const towards =
  (target: number, share: number, chroma: number) =>
  ({ l, c, h }: Oklch): Oklch => ({ l: clamp(l + (target - l) * share, 0, 1), c: c * chroma, h });

/** What a word before a colour does to it. Wayfold's own choice, by eye. */
const SHADES: Readonly<Record<string, (base: Oklch) => Oklch>> = {
  light: towards(0.95, 0.45, 0.7),
  pale: towards(0.95, 0.65, 0.5),
  pastel: towards(0.9, 0.7, 0.55),
  dark: towards(0.15, 0.35, 0.85),
  deep: towards(0.2, 0.25, 1),
  bright: towards(0.65, 0.25, 1.3),
  vivid: towards(0.62, 0.2, 1.4),
  muted: towards(0.6, 0.1, 0.6),
  dusty: towards(0.7, 0.25, 0.5),
  soft: towards(0.8, 0.25, 0.65),
  faded: towards(0.85, 0.35, 0.55),
  washed: towards(0.85, 0.35, 0.6),
};

/** A colour lightened, darkened or dulled as the word says; undefined when the word is not a shade. */
export const shaded = (word: string, base: Oklch): Oklch | undefined =>
  Object.hasOwn(SHADES, word) ? SHADES[word]?.(base) : undefined;

/** Words that may stand before any colour name. */
export const SHADE_WORDS: readonly string[] = Object.keys(SHADES);
