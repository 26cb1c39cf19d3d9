import { defineConfig } from 'vitest/config';

// Browser tests need a built page and a browser, so they run from their own command (addon/build/test.mjs).
export default defineConfig({ test: { include: ['test/**/*.test.ts'], exclude: ['test/browser/**'], testTimeout: 60_000 } });
