// The browser tests, run by `npm test` after the others: they need a Chromium, whose path is in CHROME_PATH.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/browser/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 20_000 } },
    fileParallelism: false,
  },
});
