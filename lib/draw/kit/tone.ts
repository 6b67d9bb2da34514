import { clampChroma, converter, formatHex } from 'culori';

const toOklch = converter('oklch');

/** OKLCH of a `#rrggbb`: lightness 0 to 1, chroma, hue in degrees. */
export const oklch = (hex: string): { readonly l: number; readonly c: number; readonly h: number } => {
  const colour = toOklch(hex);
  return { l: colour?.l ?? 0, c: colour?.c ?? 0, h: colour?.h ?? 0 };
};

export const fromOklch = (l: number, c: number, h: number): string =>
  formatHex(clampChroma({ mode: 'oklch', l, c, h }, 'oklch'));

const COOL = 281;
const WARM = 74;

/**
 * The colour lighter or darker by `by` (OKLCH lightness), chroma times `chroma`. Shade drifts to the cool, light to the
 * warm, as paint on paper does.
 */
export const tone = (hex: string, by: number, chroma = 1): string => {
  const { l, c, h } = oklch(hex);
  const turn = (((by < 0 ? COOL : WARM) - h + 540) % 360) - 180;
  const drift = Math.max(-9, Math.min(9, turn * 0.12)) * Math.min(1, Math.abs(by) * 5);
  return fromOklch(Math.min(0.985, Math.max(0.1, l + by)), c * chroma, h + drift);
};

/** Between two colours, in OKLab. */
export const blend = (a: string, b: string, share: number): string => {
  const [p, q] = [oklch(a), oklch(b)];
  const at = ({ c, h }: { c: number; h: number }): [number, number] => [
    c * Math.cos((h * Math.PI) / 180),
    c * Math.sin((h * Math.PI) / 180),
  ];
  const [pa, pb] = at(p);
  const [qa, qb] = at(q);
  const x = pa + (qa - pa) * share;
  const y = pb + (qb - pb) * share;
  return fromOklch(p.l + (q.l - p.l) * share, Math.hypot(x, y), (Math.atan2(y, x) * 180) / Math.PI);
};
