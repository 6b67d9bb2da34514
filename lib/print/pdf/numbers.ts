/** A number as a content stream writes it: at most three decimals, no exponent, no minus zero. */
export const num = (value: number, digits = 3): string => {
  const text = value.toFixed(digits).replace(/\.?0+$/, '');
  return text === '-0' || text === '' ? '0' : text;
};

/** Coordinates in millimetres or points: a hundredth is finer than any printer. */
export const nums = (...values: readonly number[]): string => values.map((value) => num(value, 2)).join(' ');

/** The numbers of a `cm` or `Tm`: its scale is multiplied by long distances. */
export const matrixNums = (...values: readonly number[]): string => values.map((value) => num(value, 5)).join(' ');

const channel = (hex: string, at: number): number => Number.parseInt(hex.slice(at, at + 2), 16) / 255;

/** `#rrggbb` as three shares for `rg` and `RG`. */
export const rgb = (hex: string): string => [1, 3, 5].map((at) => num(channel(hex, at))).join(' ');
