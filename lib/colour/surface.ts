/** A smooth surface over a picture: v(x, y) = k0 + k1·x + k2·y + k3·x² + k4·x·y + k5·y², with x and y from −1 to 1. */
export type Surface = readonly number[];

const TERMS = 6;

/** The terms of the surface at a pixel. */
export const termsAt = (pixel: number, width: number, height: number): number[] => {
  const x = width < 2 ? 0 : (2 * (pixel % width)) / (width - 1) - 1;
  const y = height < 2 ? 0 : (2 * Math.floor(pixel / width)) / (height - 1) - 1;
  return [1, x, y, x * x, x * y, y * y];
};

/** Height of the surface at given terms. */
export const heightAt = (surface: Surface, terms: readonly number[]): number =>
  terms.reduce((sum, term, index) => sum + term * (surface[index] ?? 0), 0);

/** Solves a small symmetric system by Gauss with pivots; singular directions get 0. */
const solve = (matrix: number[][], right: number[]): number[] => {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < size; row += 1) {
      if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[pivot]?.[column] ?? 0)) pivot = row;
    }
    const best = rows[pivot] ?? [];
    const moved = rows[column] ?? [];
    rows[pivot] = moved;
    rows[column] = best;
    const head = best[column] ?? 0;
    if (Math.abs(head) < 1e-9) continue;
    for (let row = 0; row < size; row += 1) {
      const target = rows[row];
      if (row === column || target === undefined) continue;
      const factor = (target[column] ?? 0) / head;
      for (let index = column; index <= size; index += 1)
        target[index] = (target[index] ?? 0) - factor * (best[index] ?? 0);
    }
  }
  return rows.map((row, index) => {
    const head = row[index] ?? 0;
    return Math.abs(head) < 1e-9 ? 0 : (row[size] ?? 0) / head;
  });
};

/** The least-squares surface through the values of some pixels. A whiff of ridge keeps it flat where they are few. */
export const fitSurface = (values: Float64Array, pixels: readonly number[], width: number, height: number): Surface => {
  const matrix = Array.from({ length: TERMS }, () => new Array<number>(TERMS).fill(0));
  const right = new Array<number>(TERMS).fill(0);
  for (const pixel of pixels) {
    const terms = termsAt(pixel, width, height);
    const value = values[pixel] ?? 0;
    terms.forEach((term, row) => {
      right[row] = (right[row] ?? 0) + term * value;
      const into = matrix[row];
      if (into === undefined) return;
      terms.forEach((other, column) => {
        into[column] = (into[column] ?? 0) + term * other;
      });
    });
  }
  matrix.forEach((row, index) => {
    if (index > 0) row[index] = (row[index] ?? 0) + pixels.length * 1e-4;
  });
  return solve(matrix, right);
};
