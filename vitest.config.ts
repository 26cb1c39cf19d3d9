import { defineConfig } from 'vitest/config';

// Browser tests need a built page and a browser, so they run from their own command (addon/build/test.mjs).
// The engine makes many values that live for one calculation: with room for them, a tenth less time goes into clearing away.
// Every core: left alone, Vitest keeps one free, which is half of two.
export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/browser/**'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: '100%',
    execArgv: ['--max-semi-space-size=64'],
  },
});
