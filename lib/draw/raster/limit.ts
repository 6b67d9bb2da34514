/** Runs at most `most` tasks at a time; the others wait in order. */
export const limitTo = (most: number): (<T>(task: () => Promise<T>) => Promise<T>) => {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (task) => {
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve));
    running++;
    try {
      return await task();
    } finally {
      running--;
      waiting.shift()?.();
    }
  };
};
