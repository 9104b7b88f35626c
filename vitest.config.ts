import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    // In a browser: vitest.screen.config.ts.
    exclude: ['test/screen/**'],
    // All cores; left to itself a run leaves one idle, which of two is half.
    maxWorkers: availableParallelism(),
    setupFiles: ['test/seed.ts'],
    // Laws over thousands of trains on a small machine.
    testTimeout: 60_000,
  },
});
