import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** What a person does in a real browser, on the screen that stands in dist/web. */
export default defineConfig({
  test: {
    include: ['test/screen/**/*.test.ts'],
    // Long walks are for ./prove, which sets LONG.
    exclude: process.env['LONG'] ? [] : ['test/screen/long/**'],
    // A browser a core, which the files of a worker share (test/screen/browser.ts).
    maxWorkers: availableParallelism(),
    isolate: false,
    testTimeout: 180_000,
    hookTimeout: 60_000,
    // A machine that is busy takes its time: what is waited for is seen, or it never is.
    expect: { poll: { timeout: 30_000 } },
  },
});
