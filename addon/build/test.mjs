// npm test: types, lint, format, generated files, unit and sheet tests, then the page in a real browser. Installs what is missing.
// npm test -- <subject>: types, lint and format, then only the tests whose path holds that word.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from './browser.mjs';
import { installMissing, root } from './install.mjs';
import { killRunning, runStep } from './runStep.mjs';

const subjects = process.argv.slice(2);
if (subjects.some((word) => word.startsWith('-'))) {
  console.error('npm test takes no options; npm test -- <subject> runs only the tests whose path holds that word.');
  process.exit(2);
}
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(1));
process.on('exit', killRunning);

/** Paths of the tests, with slashes on every system. */
const tests = readdirSync(join(root, 'test'), { recursive: true })
  .map((path) => `test/${path.replaceAll('\\', '/')}`)
  .filter((path) => path.endsWith('.test.ts') && (subjects.length === 0 || subjects.some((word) => path.includes(word))));
const [inBrowser, others] = [true, false].map((wanted) => tests.filter((path) => path.startsWith('test/browser/') === wanted));
if (tests.length === 0) {
  console.error(`No test has ${subjects.map((word) => `"${word}"`).join(' or ')} in its path under test/.`);
  process.exit(2);
}

await installMissing();
const browser = inBrowser.length === 0 ? '' : findBrowser();
if (browser === undefined) {
  console.error('The browser tests need Chromium or Chrome. Install one, or set CHROME_PATH to its program.');
  process.exit(1);
}

const projects = readdirSync(root)
  .filter((name) => /^tsconfig\.\w+\.json$/.test(name) && name !== 'tsconfig.base.json')
  .sort();
const tool = (path, ...words) => [process.execPath, `node_modules/${path}`, ...words];
const vitest = (paths, ...words) => tool('vitest/vitest.mjs', 'run', ...words, ...(subjects.length === 0 ? [] : paths));

/** Two lines of steps side by side, for two cores; each step begins when the one before it has passed. */
const beside = [
  projects.map((project) => [`types of ${project}`, tool('typescript/bin/tsc', '-p', project)]),
  [
    ['lint', tool('eslint/bin/eslint.js', '.', '--max-warnings', '0')],
    ['format', tool('prettier/bin/prettier.cjs', '--check', '.')],
    ['generated files', [process.execPath, '--import', 'tsx', 'addon/build/generate.ts', '--check']],
  ],
];
const after = [
  ...(others.length === 0 ? [] : [['unit and sheet tests', vitest(others)]]),
  ...(inBrowser.length === 0 ? [] : [['browser tests', vitest(inBrowser, '--config', 'test/browser/vitest.config.ts')]]),
];
const limits = { minutes: 45, silentMinutes: 10, env: { ...process.env, CHROME_PATH: browser } };

function tell(name, { passed, seconds, output, tooLong }) {
  process.stdout.write(output);
  if (tooLong !== undefined) console.log(`The step "${name}" ${tooLong}.`);
  console.log(`== ${name}: ${passed ? 'passed' : 'FAILED'} in ${seconds.toFixed(1)} s`);
  return passed;
}

/** Whether all of them passed. The output of a step beside others is kept together. */
async function inTurn(steps, kept) {
  for (const [name, words] of steps) {
    if (!kept) console.log(`\n== ${name}`);
    const outcome = await runStep(words, { ...limits, kept });
    if (kept) console.log(`\n== ${name}`);
    if (!tell(name, outcome)) return false;
  }
  return true;
}

const began = performance.now();
const passed = (await Promise.all(beside.map((steps) => inTurn(steps, true)))).every(Boolean) && (await inTurn(after, false));
if (!passed) process.exit(1);
console.log(`\nAll passed in ${((performance.now() - began) / 1000).toFixed(0)} s.`);
