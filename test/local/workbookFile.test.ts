// The user's file: made at first, replaced whole, copied as it was before the session, never overwritten unseen.
import { chmod, chown, mkdir, mkdtemp, readdir, readFile, readlink, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backupsOf } from '../../addon/local/server/backups';
import { ChangedMeanwhileError, NotOursToWriteError, WorkbookFile } from '../../addon/local/server/workbookFile';

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

  it('is replaced whole, and nothing else is left in its folder but the copy of before', async () => {
    const file = open();
    const { version } = await file.read();
    const second = await file.write('second', [version]);
    await file.write('third', [second.version]);
    expect(await readFile(file.path, 'utf8')).toBe('third');
    expect((await readdir(join(home, 'inner'))).sort()).toEqual(['workbook.json', expect.stringMatching(/^workbook\.json\.backup-[\dT-]+Z$/)]);
  });

  it('is copied as it was before each session, and before each day of a long one', async () => {
    const day = 24 * 60 * 60 * 1000;
    let now = Date.UTC(2026, 10, 1, 8);
    const session = (): WorkbookFile =>
      new WorkbookFile(
        join(home, 'own.json'),
        () => 'first',
        () => now,
      );
    const copies = async (): Promise<string[]> => Promise.all((await backupsOf(join(home, 'own.json'))).map(({ path }) => readFile(path, 'utf8')));
    const one = session();
    let { version } = await one.read();
    for (const text of ['second', 'third']) ({ version } = await one.write(text, [version]));
    expect(await copies()).toEqual(['first']);
    now += day;
    ({ version } = await one.write('fourth', [version]));
    expect(await copies()).toEqual(['third', 'first']);
    now += 60_000;
    const two = session();
    await two.write('fifth', [(await two.read()).version]);
    expect(await copies()).toEqual(['fourth', 'third', 'first']);
  });

  it('is not begun anew where it is gone and copies of it are there, or where it was there before', async () => {
    const file = open('own.json');
    await file.write('second', [(await file.read()).version]);
    await rm(file.path);
    await expect(file.read()).rejects.toThrow(/is gone\. Nothing was put in its place/);
    await expect(open('own.json').read()).rejects.toThrow(/is gone/);
    expect(await readdir(home)).toEqual([expect.stringContaining('backup')]);
  });

  it('takes a save again that has landed unanswered, and goes on from it', async () => {
    const file = open();
    const { version } = await file.read();
    const landed = await file.write('landed', [version]);
    expect(await file.write('landed', [version])).toEqual(landed);
    await expect(file.write('more', [version])).rejects.toThrow(ChangedMeanwhileError);
    expect((await file.write('more', [version, landed.version])).text).toBe('more');
  });

  it('is written through a link, which stays, and keeps its mode', async () => {
    await mkdir(join(home, 'far'));
    await writeFile(join(home, 'far/real.json'), 'mine');
    await chmod(join(home, 'far/real.json'), 0o640);
    await symlink('far/real.json', join(home, 'link.json'));
    const file = open('link.json');
    await file.write('second', [(await file.read()).version]);
    expect(await readlink(join(home, 'link.json'))).toBe('far/real.json');
    expect(await readFile(join(home, 'far/real.json'), 'utf8')).toBe('second');
    expect((await stat(join(home, 'far/real.json'))).mode & 0o777).toBe(0o640);
  });

  it.runIf(process.getuid?.() === 0)('keeps its owner and its group', async () => {
    await writeFile(join(home, 'own.json'), 'mine');
    await chown(join(home, 'own.json'), 12_345, 23_456);
    const file = open('own.json');
    await file.write('second', [(await file.read()).version]);
    const { uid, gid } = await stat(file.path);
    expect([uid, gid]).toEqual([12_345, 23_456]);
  });

  it('is not written where it may only be read', async () => {
    await writeFile(join(home, 'own.json'), 'mine');
    await chmod(join(home, 'own.json'), 0o444);
    const file = open('own.json');
    await expect(file.write('second', [(await file.read()).version])).rejects.toThrow(/own\.json may only be read, so nothing was written/);
    expect(await readdir(home)).toEqual(['own.json']);
    expect(await readFile(file.path, 'utf8')).toBe('mine');
  });

  it('is not written where a later version of the program wrote it', async () => {
    const later = JSON.stringify({ sheetOrder: ['a'], sheets: { a: {} }, custom: { rampwright: { format: 99 } } });
    await writeFile(join(home, 'own.json'), later);
    const file = open('own.json');
    await expect(file.write('second', [(await file.read()).version])).rejects.toThrow(NotOursToWriteError);
    expect(await readFile(file.path, 'utf8')).toBe(later);
  });

  it('is not overwritten where another program changed it', async () => {
    const file = open();
    const { version } = await file.read();
    await writeFile(file.path, 'theirs');
    await expect(file.write('ours', [version])).rejects.toThrow(ChangedMeanwhileError);
    expect(await readFile(file.path, 'utf8')).toBe('theirs');
  });

  it('lists its copies, and makes one at once where it is asked, so that going back can be taken back', async () => {
    let now = Date.UTC(2026, 10, 1, 8);
    const book = (word: string): string => JSON.stringify({ sheetOrder: ['a'], sheets: { a: { name: word } } });
    await mkdir(join(home, 'inner'));
    await writeFile(join(home, 'inner/workbook.json'), book('first'));
    const file = new WorkbookFile(
      join(home, 'inner/workbook.json'),
      () => '',
      () => now,
    );
    let { version } = await file.read();
    for (const word of ['second', 'third']) {
      now += 60_000;
      ({ version } = await file.write(book(word), [version]));
    }
    const [first] = await file.copies();
    expect(await file.copies()).toEqual([{ made: Date.UTC(2026, 10, 1, 8, 1), standing: 'whole' }]);
    now += 60_000;
    const back = await file.copyOf(first?.made ?? 0);
    expect(back).toBe(book('first'));
    ({ version } = await file.write(back ?? '', [version], true));
    expect((await file.copies()).map(({ made }) => new Date(made).toISOString().slice(11, 16))).toEqual(['08:03', '08:01']);
    expect(await file.copyOf(Date.UTC(2026, 10, 1, 8, 3))).toBe(book('third'));
    expect(await file.copyOf(1)).toBeUndefined();
    await writeFile(`${file.path}.backup-2026-11-01T07-00-00Z`, '{"half": ');
    expect((await file.copies())[2]?.standing).toBe('damaged');
  });

  it('lets only the first of two writers with the same version through', async () => {
    const file = open();
    const { version } = await file.read();
    const results = await Promise.allSettled([file.write('one', [version]), file.write('two', [version])]);
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected']);
    expect(await readFile(file.path, 'utf8')).toBe('one');
  });

  it('says in words why it cannot be written', async () => {
    const file = open();
    const { version } = await file.read();
    await rm(join(home, 'inner'), { recursive: true });
    await writeFile(join(home, 'inner'), 'a file where the folder was');
    await expect(file.write('ours', [version])).rejects.toThrow(/its folder is gone/);
  });

  it('is written again where somebody deleted it, since nothing can be lost by that', async () => {
    const file = open();
    const { version } = await file.read();
    await rm(file.path);
    await file.write('kept', [version]);
    expect(await readFile(file.path, 'utf8')).toBe('kept');
  });
});
