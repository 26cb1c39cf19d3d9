// An esbuild plugin: the engine of formulas from its mended text (engine/engineSource.ts) in the page, as quickEngine.ts has it in Node.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Plugin } from 'esbuild';
import { engineSource } from './engine/engineSource';

const engineFile = /[\\/]@univerjs[\\/]engine-formula[\\/]lib[\\/]es[\\/]index\.js$/;

export const quickEnginePlugin: Plugin = {
  name: 'quick-engine',
  setup(build) {
    build.onLoad({ filter: engineFile }, async ({ path }) => {
      const core = createRequire(path).resolve('@univerjs/core');
      const [source, beside] = (await Promise.all([path, core].map((file) => readFile(file, 'utf8')))) as [string, string];
      return { contents: engineSource(source, beside), loader: 'js' };
    });
  },
};
