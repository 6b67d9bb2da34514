/** n over k, or infinity beyond doubles. */
export const choose = (n: number, k: number): number => {
  let ways = 1;
  for (let i = 1; i <= k; i += 1) ways = (ways * (n - k + i)) / i;
  return k > n ? 0 : Math.round(ways);
};

/** All sets of `k` of the numbers 0 to `n` − 1, in lexicographic order. The array is reused. */
export function* combinations(n: number, k: number): Generator<readonly number[], void, undefined> {
  const chosen = Array.from({ length: k }, (_, index) => index);
  if (k > n) return;
  for (;;) {
    yield chosen;
    let at = k - 1;
    while (at >= 0 && chosen[at] === n - k + at) at -= 1;
    if (at < 0) return;
    chosen[at] = (chosen[at] as number) + 1;
    for (let later = at + 1; later < k; later += 1) chosen[later] = (chosen[later - 1] as number) + 1;
  }
}

/** Sum of the largest `k` values; negative values are not there. `scratch` holds the best so far. */
export const sumOfLargest = (values: ArrayLike<number>, k: number, scratch: Float64Array): number => {
  if (k <= 0) return 0;
  scratch.fill(0, 0, k);
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index] as number;
    if (value <= (scratch[k - 1] as number)) continue;
    let at = k - 1;
    while (at > 0 && (scratch[at - 1] as number) < value) {
      scratch[at] = scratch[at - 1] as number;
      at -= 1;
    }
    scratch[at] = value;
  }
  let sum = 0;
  for (let index = 0; index < k; index += 1) sum += scratch[index] as number;
  return sum;
};
