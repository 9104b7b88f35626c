import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    // In a browser: vitest.screen.config.ts.
    exclude: ['test/screen/**'],
    setupFiles: ['test/seed.ts'],
    // Laws over thousands of trains on a small machine.
    testTimeout: 60_000,
  },
});
