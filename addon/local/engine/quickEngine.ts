// Loads the engine of formulas into Node from its mended text (engineSource.ts); whoever asks for the package afterwards gets the same one.
import { readFileSync } from 'node:fs';
import Module from 'node:module';
import { dirname } from 'node:path';
import { Script } from 'node:vm';
import { engineSource } from './engineSource';

type Wrapped = (exports: unknown, require: NodeJS.Require, module: NodeJS.Module, file: string, folder: string) => void;

/** `require`: of the file that wants the engine. The names of its own classes' and of the core's accessors are left alone. */
export function quickEngine(require: NodeJS.Require): unknown {
  const [path, core] = [require.resolve('@univerjs/engine-formula'), require.resolve('@univerjs/core')];
  const loaded = require.cache[path];
  if (loaded !== undefined) return loaded.exports;
  const [source, beside] = [path, core].map((file) => readFileSync(file, 'utf8')) as [string, string];
  const module = new Module(path);
  module.filename = path;
  require.cache[path] = module;
  const run = new Script(Module.wrap(engineSource(source, beside)), { filename: path }).runInThisContext() as Wrapped;
  run(module.exports, Module.createRequire(path), module, path, dirname(path));
  module.loaded = true;
  return module.exports;
}
