// npm test: types, lint, generated files, unit and sheet tests, then the page in a real browser. Installs what is missing.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { findBrowser } from './browser.mjs';
import { installMissing, root } from './install.mjs';

installMissing();
const browser = findBrowser();
if (browser === undefined) {
  console.error('The browser tests need Chromium or Chrome. Install one, or set CHROME_PATH to its program.');
  process.exit(1);
}

const projects = readdirSync(root).filter((name) => /^tsconfig\.\w+\.json$/.test(name) && name !== 'tsconfig.base.json').sort();
const tool = (path, ...words) => [process.execPath, `node_modules/${path}`, ...words];

const steps = [
  ...projects.map((project) => [`types of ${project}`, tool('typescript/bin/tsc', '-p', project)]),
  ['lint', tool('eslint/bin/eslint.js', '.', '--max-warnings', '0')],
  ['generated files', [process.execPath, '--import', 'tsx', 'addon/build/generate.ts', '--check']],
  ['unit and sheet tests', tool('vitest/vitest.mjs', 'run')],
  ['browser tests', tool('vitest/vitest.mjs', 'run', '--config', 'test/browser/vitest.config.ts')],
];

const began = performance.now();
for (const [name, [command, ...words]] of steps) {
  const start = performance.now();
  console.log(`\n== ${name}`);
  const { status } = spawnSync(command, words, { cwd: root, stdio: 'inherit', env: { ...process.env, CHROME_PATH: browser } });
  console.log(`== ${name}: ${status === 0 ? 'passed' : 'FAILED'} in ${((performance.now() - start) / 1000).toFixed(1)} s`);
  if (status !== 0) process.exit(1);
}
console.log(`\nAll passed in ${((performance.now() - began) / 1000).toFixed(0)} s.`);
