// One program owns a workbook file: the second is told who does, the note of a killed one is taken over, and of many starts at once
// one gets it.
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ownFile } from '../../addon/local/server/owner';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('the owner of a workbook file', () => {
  let home: string;
  let running: ChildProcess[];
  const path = (): string => join(home, 'workbook.json');
  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-owner-'));
    running = [];
  });
  afterEach(async () => {
    for (const one of running) one.kill('SIGKILL');
    await rm(home, { recursive: true, force: true });
  });

  /** Starts a program on the file; what it says first. */
  const started = (...words: string[]): Promise<string> => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'test/support/ownerProcess.ts', path(), ...words], { cwd: root });
    running.push(child);
    return new Promise((resolve, reject) => {
      let said = '';
      child.stdout.on('data', (part: Buffer) => {
        said += part.toString();
        if (said.includes('\n')) resolve(said.trim());
      });
      child.stderr.on('data', (part: Buffer) => reject(new Error(part.toString())));
    });
  };
  const end = (signal: NodeJS.Signals): Promise<void> =>
    new Promise((ended) => {
      running[0]?.once('exit', () => ended());
      running[0]?.kill(signal);
    });

  it('is told to a second program, with its address', async () => {
    const first = await started();
    expect(await started()).toBe(`owned by ${running[0]?.pid} at ${first.split(' at ')[1]}`);
    expect((await stat(`${path()}.lock`)).mode & 0o777).toBe(0o600);
  });

  it('gives the file up when it ends, and is followed when it was killed', async () => {
    await started();
    await end('SIGTERM');
    expect(await readdir(home)).toEqual([]);
    running = [];
    await started();
    await end('SIGKILL');
    expect(await readdir(home)).toEqual(['workbook.json.lock']);
    expect(await started()).toMatch(/^owner /);
  });

  it('is one of eight that start at once, over the note of a killed one', async () => {
    await started();
    await end('SIGKILL');
    const said = await Promise.all(Array.from({ length: 8 }, () => started()));
    const [owner = ''] = said.filter((one) => one.startsWith('owner '));
    expect(said.filter((one) => one.startsWith('owner '))).toHaveLength(1);
    expect(said.filter((one) => one === `owned by ${owner.split(' ')[1]} at ${owner.split(' at ')[1]}`)).toHaveLength(7);
    expect(await readdir(home)).toEqual(['workbook.json.lock']);
  });

  it('is followed where its number belongs to another program by now, and its port to nobody or to somebody else', async () => {
    const other = createServer((_request, response) => response.end());
    await new Promise<void>((listening) => other.listen(0, '127.0.0.1', listening));
    const { port } = other.address() as AddressInfo;
    const note = JSON.stringify({ pid: process.ppid, computer: hostname(), address: `http://127.0.0.1:${port}/` });
    const isFollowed = async (): Promise<boolean> => {
      await writeFile(`${path()}.lock`, note);
      const owned = await ownFile(path());
      return 'giveUp' in owned;
    };
    expect(await isFollowed()).toBe(true);
    await new Promise((closed) => other.close(closed));
    expect(await isFollowed()).toBe(true);
  });

  it.each(['', 'not a note', '{}', 'null'])('is followed where its note holds "%s"', async (text) => {
    await writeFile(`${path()}.lock`, text);
    const owned = await ownFile(path());
    if ('pid' in owned) throw new Error('not followed');
    await owned.serveAt('http://127.0.0.1:4760/');
    expect(JSON.parse(await readFile(`${path()}.lock`, 'utf8'))).toEqual({
      pid: process.pid,
      computer: hostname(),
      address: 'http://127.0.0.1:4760/',
    });
    owned.giveUp();
    expect(await readdir(home)).toEqual([]);
  });

  it('keeps the file on another computer, of which nothing can be known', async () => {
    const note = { pid: 1, computer: 'another', address: 'http://127.0.0.1:4760/' };
    await writeFile(`${path()}.lock`, JSON.stringify(note));
    expect(await ownFile(path())).toEqual(note);
  });

  it('never moves the note of a start that was quicker, while it takes a useless one away', async () => {
    const [useless, quicker] = ['{"pid":1', JSON.stringify({ pid: process.ppid, computer: 'another', address: 'http://127.0.0.1:4760/' })];
    await writeFile(`${path()}.lock`, useless);
    // A lower number has its turn, so this start waits before it takes away what it has read.
    const turn = `${path()}.lock.turn.${process.ppid}.tmp`;
    await writeFile(turn, '');
    const owned = ownFile(path());
    await new Promise((done) => setTimeout(done, 100));
    await rm(`${path()}.lock`);
    await writeFile(`${path()}.lock`, quicker);
    const { ino, ctimeMs } = await stat(`${path()}.lock`);
    await rm(turn);
    expect(await owned).toEqual(JSON.parse(quicker));
    expect(await stat(`${path()}.lock`)).toMatchObject({ ino, ctimeMs });
  });

  it('waits for no flag of a program that is gone, and for no old one', async () => {
    await writeFile(`${path()}.lock`, '');
    await writeFile(`${path()}.lock.turn.4194303.tmp`, '');
    const old = `${path()}.lock.turn.${process.ppid}.tmp`;
    await writeFile(old, '');
    await utimes(old, new Date(0), new Date(0));
    expect(await ownFile(path())).toHaveProperty('giveUp');
  });

  it('does not serve a file that another program has taken since', async () => {
    const owned = await ownFile(path());
    if ('pid' in owned) throw new Error('not owned');
    const other = JSON.stringify({ pid: process.ppid, computer: hostname(), address: '' });
    await writeFile(`${path()}.lock`, other);
    expect(await owned.serveAt('http://127.0.0.1:4760/')).toBe(false);
    expect(await readFile(`${path()}.lock`, 'utf8')).toBe(other);
  });

  it('does not take away the note of one that followed it', async () => {
    const owned = await ownFile(path());
    if ('pid' in owned) throw new Error('not owned');
    await writeFile(`${path()}.lock`, JSON.stringify({ pid: process.ppid, computer: hostname(), address: '' }));
    owned.giveUp();
    expect(await readdir(home)).toEqual(['workbook.json.lock']);
  });
});
