import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    // every core: the machine that runs them has nothing else to do
    maxWorkers: '100%',
    testTimeout: 180_000,
    hookTimeout: 300_000,
  },
});
