// Installing the packages: what is there is never taken away by an installation that fails, and two at once do no harm. Instead of
// npm, a small program stands in that does as it is told.
import { spawn } from 'node:child_process';
import { copyFile, mkdir, mkdtemp, readdir, readFile, rename, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const install = fileURLToPath(new URL('../../addon/build/install.mjs', import.meta.url));

const lock = (version: string, other = '1.0.0'): string =>
  JSON.stringify({
    packages: {
      '': { dependencies: { tool: version } },
      'node_modules/tool': { version, integrity: `sha-${version}` },
      'node_modules/other': { version: other, integrity: `sha-${other}` },
      'node_modules/of-another-system': { version: '1.0.0', integrity: 'sha', optional: true },
    },
  });

/** Stands in for npm: counts its runs, takes a while, and installs what the lock file beside it says unless the registry is "out of reach". */
const standIn = `
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
const home = process.env.STAND_IN_HOME;
appendFileSync(home + '/runs', process.argv.slice(2).join(' ') + '\\n');
mkdirSync('node_modules', { recursive: true });
writeFileSync('node_modules/half', '');
await new Promise((done) => setTimeout(done, 700));
if (existsSync(home + '/out-of-reach')) process.exit(1);
writeFileSync('node_modules/.package-lock.json', readFileSync('package-lock.json', 'utf8'));
`;

describe('installing the packages', () => {
  let home: string;
  const at = (name: string): string => join(home, name);
  const installed = (): Promise<string> => readFile(at('node_modules/.package-lock.json'), 'utf8').catch(() => 'none');
  const runs = async (): Promise<string[]> => (await readFile(at('runs'), 'utf8').catch(() => '')).split('\n').filter((line) => line !== '');

  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-install-'));
    await mkdir(at('addon/build'), { recursive: true });
    await copyFile(install, at('addon/build/install.mjs'));
    await writeFile(at('addon/build/run.mjs'), "import { installMissing } from './install.mjs';\nawait installMissing();\nconsole.log('started');\n");
    await writeFile(at('stand-in.js'), standIn);
    await writeFile(at('package.json'), '{ "type": "module" }');
    await writeFile(at('package-lock.json'), lock('2.0.0'));
  });
  afterEach(() => rm(home, { recursive: true, force: true }));

  const start = (): Promise<{ readonly status: number | null; readonly said: string }> =>
    new Promise((resolve) => {
      const env = { ...process.env, npm_execpath: at('stand-in.js'), STAND_IN_HOME: home };
      const child = spawn(process.execPath, [at('addon/build/run.mjs')], { cwd: home, env });
      let said = '';
      for (const stream of [child.stdout, child.stderr]) stream.on('data', (part: Buffer) => (said += part.toString()));
      child.once('exit', (status) => resolve({ status, said }));
    });
  const have = async (text: string): Promise<void> => {
    await mkdir(at('node_modules'));
    await writeFile(at('node_modules/.package-lock.json'), text);
  };

  it('happens where none are there, and leaves nothing beside them', async () => {
    expect(await start()).toMatchObject({ status: 0 });
    expect(await installed()).toBe(lock('2.0.0'));
    expect((await readdir(home)).filter((name) => name.startsWith('node_modules'))).toEqual(['node_modules']);
  });

  it('does not happen where they are there, however old they look', async () => {
    await have(lock('2.0.0'));
    await utimes(at('node_modules/.package-lock.json'), new Date(0), new Date(0));
    expect(await start()).toEqual({ status: 0, said: 'started\n' });
    expect(await runs()).toEqual([]);
  });

  it('takes nothing away where the registry is out of reach, and does not start with another version of what is imported', async () => {
    await have(lock('1.0.0'));
    await writeFile(at('out-of-reach'), '');
    const { status, said } = await start();
    expect(status).toBe(1);
    expect(said).toContain('Those that were there are still there.');
    expect(await readdir(at('node_modules'))).toEqual(['.package-lock.json']);
    expect(await installed()).toBe(lock('1.0.0'));
    expect((await readdir(home)).filter((name) => name.startsWith('node_modules'))).toEqual(['node_modules']);
  });

  it('is done without where only a package behind the imported ones differs', async () => {
    await have(lock('2.0.0', '0.9.0'));
    await writeFile(at('out-of-reach'), '');
    const { status, said } = await start();
    expect(status).toBe(0);
    expect(said).toMatch(/still there\.\nRampwright starts with those[^\n]*\nstarted\n$/);
    expect(await installed()).toBe(lock('2.0.0', '0.9.0'));
  });

  it('happens once for two starts at once', async () => {
    await have(lock('1.0.0'));
    const both = await Promise.all([start(), start()]);
    expect(both.map(({ status }) => status)).toEqual([0, 0]);
    expect(await runs()).toEqual(['ci']);
    expect(await installed()).toBe(lock('2.0.0'));
  });

  it('puts back what one had moved away that was killed then', async () => {
    await have(lock('1.0.0'));
    await rename(at('node_modules'), at('node_modules.old-999999999'));
    await writeFile(at('out-of-reach'), '');
    await start();
    expect(await installed()).toBe(lock('1.0.0'));
  });

  it('goes on after one that was killed', async () => {
    await mkdir(at('node_modules.installing'));
    await writeFile(at('node_modules.installing/pid'), '999999999');
    expect(await start()).toMatchObject({ status: 0 });
    expect((await readdir(home)).filter((name) => name.startsWith('node_modules'))).toEqual(['node_modules']);
  });
});
