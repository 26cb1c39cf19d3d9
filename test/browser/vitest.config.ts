// The browser tests, run by `npm test` after the others: they need a Chromium, whose path is in CHROME_PATH.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/browser/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 240_000,
    expect: { poll: { timeout: 20_000 } },
    globalSetup: 'test/browser/buildOnce.ts',
    // Each file has a browser and a server of its own; more of them than cores would only wait for each other.
    maxWorkers: 2,
  },
});
