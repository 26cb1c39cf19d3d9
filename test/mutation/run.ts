// Puts small faults into files of core, one at a time, and runs the tests of their subject: which of them does no test see? Not part of
// npm test, since it takes an hour. It edits the files of the checkout it runs in, and puts each back: use a checkout of its own.
//   npx tsx test/mutation/run.ts core/hold core/runway --faults 30 --seed 1
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomFrom } from '../support/seededRandom';
import { faultsIn, type Fault } from './faults';

interface PlacedFault extends Fault {
  readonly path: string;
}

const option = (name: string, otherwise: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : Number(process.argv[at + 1]);
};
const folders = process.argv.slice(2).filter((word, index, words) => !word.startsWith('--') && !(words[index - 1] ?? '').startsWith('--'));

const filesIn = (path: string): string[] => (statSync(path).isFile() ? [path] : readdirSync(path).flatMap((name) => filesIn(join(path, name))));

/** Basics have few tests of their own: what stands on them tells. */
const besides: Readonly<Record<string, readonly string[]>> = { basics: ['test/core/air/', 'test/functions/ledger/', 'test/functions/currency/'] };
const testsOf = (subject: string): string[] =>
  [
    `test/core/${subject}/`,
    `test/functions/${subject}/`,
    `test/published/${subject}/`,
    ...(besides[subject] ?? []),
    'test/published/published.test.ts',
  ].filter((path) => existsSync(path));

/** So many of all, none twice, the same for the same seed. */
function chosen(all: readonly PlacedFault[], count: number, random: () => number): PlacedFault[] {
  const rest = [...all];
  return Array.from({ length: Math.min(count, rest.length) }, () => rest.splice(Math.floor(random() * rest.length), 1)).flat();
}

/** True where the tests fail, or hang. */
function isSeen(tests: readonly string[]): boolean {
  const { status } = spawnSync(
    'npx',
    ['vitest', 'run', ...tests, '--bail=1', '--no-isolate', '--pool=threads', '--passWithNoTests', '--reporter=dot'],
    {
      stdio: 'ignore',
      timeout: 240_000,
    },
  );
  return status !== 0;
}

for (const folder of folders) {
  const subject = folder.split('/')[1] ?? '';
  const tests = testsOf(subject);
  /** Those of core first: they are quick, and see most. */
  const isSeenByAny = (): boolean => tests.some((path) => isSeen([path]));
  const all = filesIn(folder).flatMap((path) => faultsIn(readFileSync(path, 'utf8')).map((fault) => ({ ...fault, path })));
  const some = chosen(all, option('faults', 30), randomFrom(option('seed', 1)));
  if (isSeenByAny()) throw new Error(`The tests of ${folder} fail without any fault.`);
  let seen = 0;
  for (const { path, start, end, text, told } of some) {
    const source = readFileSync(path, 'utf8');
    try {
      writeFileSync(path, source.slice(0, start) + text + source.slice(end));
      if (isSeenByAny()) seen += 1;
      else console.log(`not seen: ${path} ${told}`);
    } finally {
      writeFileSync(path, source);
    }
  }
  console.log(`${folder}: ${seen} of ${some.length} seen (${all.length} possible)`);
}
