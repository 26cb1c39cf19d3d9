// npm start as a person uses it: its options, a second start, and what happens to its server when it is killed.
import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const script = 'addon/build/start.mjs';

describe('the options of npm start', () => {
  const ask = (...words: string[]) => spawnSync(process.execPath, [script, ...words], { cwd: root, encoding: 'utf8' });

  it('are all printed by --help', () => {
    const { status, stdout, stderr } = ask('--help');
    expect([status, stderr]).toEqual([0, '']);
    for (const option of ['--print', '--file <path>', '--port <number>', '--lan', '--restore', '--new', '--help'])
      expect(stdout).toContain(`\n  ${option} `);
  });

  it.each([
    [['--port', 'abc'], '--port must be a whole number, 0 to 65535; got "abc"'],
    [['--port', '65536'], '--port must be a whole number, 0 to 65535; got "65536"'],
    [['--port=-1'], '--port must be a whole number, 0 to 65535; got "-1"'],
    [['--port'], '--port must be followed by its value'],
    [['--file', ''], '--file must be the path of a file; got nothing'],
    [['--bogus'], 'There is no option --bogus'],
    [['bogus'], '"bogus" is no option'],
    [['--print=yes'], '--print takes no value'],
  ])('%j is answered in one sentence', (words, sentence) => {
    const { status, stdout, stderr } = ask(...words);
    expect([status, stdout, stderr]).toEqual([2, '', `${sentence}; npm start -- --help tells the options.\n`]);
  });
});

describe('npm start', () => {
  let home: string;
  const running: ChildProcess[] = [];
  const path = (): string => join(home, 'own.json');
  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-start-'));
  });
  afterAll(async () => {
    for (const one of running) one.kill('SIGKILL');
    await rm(home, { recursive: true, force: true });
  });

  const start = (...words: string[]): { readonly child: ChildProcess; readonly said: () => string; readonly ended: Promise<number | null> } => {
    const env = { ...process.env, HOME: home, USERPROFILE: home };
    const child = spawn(process.execPath, [script, '--file', path(), '--port', '0', ...words], { cwd: root, env });
    running.push(child);
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part: Buffer) => (said += part.toString()));
    return { child, said: () => said, ended: new Promise((resolve) => child.once('exit', resolve)) };
  };
  const addressIn = (said: string): string => /http:\S+\/\?key=[0-9a-f]{32}/.exec(said)?.[0] ?? '';
  const answers = (address: string): Promise<number> =>
    fetch(address).then(
      ({ status }) => status,
      () => 0,
    );

  it('serves by an address with a key, which a second start tells; a kill of it takes the server along', async () => {
    const first = start();
    await expect.poll(() => addressIn(first.said()), { timeout: 50_000 }).not.toBe('');
    const address = addressIn(first.said());
    expect(await answers(address)).toBe(200);
    expect(await answers(new URL('/', address).href)).toBe(403);
    const second = start();
    expect(await second.ended).toBe(0);
    expect(second.said()).toContain(`This workbook (${path()}) is open already, at ${address} (process `);
    first.child.kill('SIGKILL');
    await expect.poll(() => answers(address), { timeout: 5000 }).toBe(0);
    await expect.poll(() => readdir(home)).not.toContain('own.json.lock');
  });

  it('asks where the file is damaged, and leaves nothing behind', async () => {
    await writeFile(path(), '{"half": ');
    const one = start();
    expect(await one.ended).toBe(1);
    expect(one.said()).toContain(`npm start -- --file ${path()} --new `);
    expect(await readdir(home)).toEqual(['.rampwright', 'own.json']);
  });
});
