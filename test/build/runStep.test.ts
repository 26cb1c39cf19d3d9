// The steps of npm test: a program that hangs is ended, with all that it has started, and said so in a sentence.
import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

interface Outcome {
  readonly passed: boolean;
  readonly seconds: number;
  readonly output: string;
  readonly tooLong?: string;
}

const run = (program: string, limits: object): Outcome => {
  const code = `import { runStep } from './addon/build/runStep.mjs';
    console.log(JSON.stringify(await runStep([process.execPath, '-e', ${JSON.stringify(program)}], ${JSON.stringify({ kept: true, ...limits })})));`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code], { cwd: root, encoding: 'utf8' });
  if (stderr !== '') throw new Error(stderr);
  return JSON.parse(stdout) as Outcome;
};

describe('a step of npm test', () => {
  it('passes or fails by its exit, and keeps what it wrote', () => {
    expect(run("console.log('fine')", { minutes: 1 })).toMatchObject({ passed: true, output: 'fine\n' });
    expect(run("console.error('not'); process.exit(3)", { minutes: 1 })).toMatchObject({ passed: false, output: 'not\n' });
  });

  it('is ended when it writes nothing for too long, and what it started too', async () => {
    const home = await mkdtemp(join(tmpdir(), 'rampwright-step-'));
    const beats = join(home, 'beats');
    const beating = `setInterval(() => require('fs').appendFileSync(${JSON.stringify(beats)}, '.'), 20)`;
    const hangs = `require('child_process').spawn(process.execPath, ['-e', ${JSON.stringify(beating)}]); setInterval(() => 0, 1e6);`;
    const { passed, tooLong } = run(hangs, { minutes: 1, silentMinutes: 0.05 });
    expect([passed, tooLong]).toEqual([false, 'was ended, because it wrote nothing for 0.05 minutes: a worker hangs']);
    const counted = (): Promise<number> => readFile(beats, 'utf8').then(({ length }) => length);
    const atEnd = await counted();
    expect(atEnd).toBeGreaterThan(0);
    await new Promise((done) => setTimeout(done, 300));
    expect(await counted()).toBe(atEnd);
    await rm(home, { recursive: true });
  });

  it('is ended when it takes too long, however much it writes', () => {
    expect(run('setInterval(() => console.log(1), 50)', { minutes: 0.02, silentMinutes: 1 })).toMatchObject({
      passed: false,
      tooLong: 'was ended, because it took more than 0.02 minutes',
    });
  });
});

describe('npm test', () => {
  const test = (...words: string[]) => spawnSync(process.execPath, ['addon/build/test.mjs', ...words], { cwd: root, encoding: 'utf8' });

  it('says so where no test has the subject in its path, and takes no options', () => {
    expect(test('nothing-of-that-name')).toMatchObject({ status: 2, stderr: 'No test has "nothing-of-that-name" in its path under test/.\n' });
    expect(test('--watch').status).toBe(2);
  });
});
