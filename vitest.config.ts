import { defineConfig } from 'vitest/config';

// Browser tests need a built page and a browser, so they run from their own command (addon/build/test.mjs).
// Every core: left alone, Vitest keeps one free, which is half of two.
export default defineConfig({
  test: { include: ['test/**/*.test.ts'], exclude: ['test/browser/**'], testTimeout: 60_000, hookTimeout: 60_000, maxWorkers: '100%' },
});
