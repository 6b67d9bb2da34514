/** A number as a content stream writes it: at most three decimals, no exponent, no minus zero. */
export const num = (value: number, digits = 3): string => {
  const text = value.toFixed(digits).replace(/\.?0+$/, '');
  return text === '-0' || text === '' ? '0' : text;
};

export const nums = (...values: readonly number[]): string => values.map((value) => num(value)).join(' ');

const channel = (hex: string, at: number): number => Number.parseInt(hex.slice(at, at + 2), 16) / 255;

/** `#rrggbb` as three shares for `rg` and `RG`. */
export const rgb = (hex: string): string => nums(channel(hex, 1), channel(hex, 3), channel(hex, 5));
