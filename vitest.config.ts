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
    // The house is read once a worker, not once a file: no room keeps what another could trip over.
    isolate: false,
    // Laws over thousands of trains on a small machine.
    testTimeout: 60_000,
  },
});
