// The user's file: made at first, replaced whole, kept as it was before the session, never overwritten unseen.
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ChangedMeanwhileError, WorkbookFile } from '../../addon/local/server/workbookFile';

describe('the workbook file', () => {
  let home: string;
  const open = (name = 'inner/workbook.json'): WorkbookFile => new WorkbookFile(join(home, name), () => 'first');
  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-file-'));
  });
  afterEach(() => rm(home, { recursive: true, force: true }));

  it('is made from the templates when first read, folder and all', async () => {
    const { text } = await open().read();
    expect(text).toBe('first');
    expect(await readFile(join(home, 'inner/workbook.json'), 'utf8')).toBe('first');
  });

  it('is read as it stands when it is there', async () => {
    await writeFile(join(home, 'own.json'), 'mine');
    expect((await open('own.json').read()).text).toBe('mine');
  });

  it('is replaced whole, and nothing else is left in its folder but the backup', async () => {
    const file = open();
    const { version } = await file.read();
    const second = await file.write('second', version);
    await file.write('third', second.version);
    expect(await readFile(file.path, 'utf8')).toBe('third');
    expect((await readdir(join(home, 'inner'))).sort()).toEqual(['workbook.json', 'workbook.json.backup']);
  });

  it('is kept once more as it was before the session', async () => {
    const file = open();
    const second = await file.write('second', (await file.read()).version);
    await file.write('third', second.version);
    expect(await readFile(file.backupPath, 'utf8')).toBe('first');
    const nextSession = open();
    await nextSession.write('fourth', (await nextSession.read()).version);
    expect(await readFile(file.backupPath, 'utf8')).toBe('third');
  });

  it('is not overwritten where another program changed it', async () => {
    const file = open();
    const { version } = await file.read();
    await writeFile(file.path, 'theirs');
    await expect(file.write('ours', version)).rejects.toThrow(ChangedMeanwhileError);
    expect(await readFile(file.path, 'utf8')).toBe('theirs');
  });

  it('lets only the first of two writers with the same version through', async () => {
    const file = open();
    const { version } = await file.read();
    const results = await Promise.allSettled([file.write('one', version), file.write('two', version)]);
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected']);
    expect(await readFile(file.path, 'utf8')).toBe('one');
  });

  it('says in words why it cannot be written', async () => {
    const file = open();
    const { version } = await file.read();
    await rm(join(home, 'inner'), { recursive: true });
    await writeFile(join(home, 'inner'), 'a file where the folder was');
    await expect(file.write('ours', version)).rejects.toThrow(/its folder is gone/);
  });

  it('is written again where somebody deleted it, since nothing can be lost by that', async () => {
    const file = open();
    const { version } = await file.read();
    await rm(file.path);
    await file.write('kept', version);
    expect(await readFile(file.path, 'utf8')).toBe('kept');
  });
});
