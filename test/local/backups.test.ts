// Copies of the workbook beside it: dated, the ten newest and then one a week, and none lost to a full disk.
import { mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backupsOf, makeBackup } from '../../addon/local/server/backups';
import { removeLeftOvers } from '../../addon/local/server/replaceFile';

const day = 24 * 60 * 60 * 1000;

describe('the copies of a workbook', () => {
  let home: string;
  const path = (): string => join(home, 'workbook.json');
  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-backups-'));
  });
  afterEach(() => rm(home, { recursive: true, force: true }));

  const copyDaily = async (days: number): Promise<void> => {
    for (let count = 0; count < days; count += 1) {
      await writeFile(path(), `day ${count}`);
      await makeBackup(path(), Date.UTC(2026, 0, 1, 9) + count * day);
    }
  };

  it('are dated, newest first', async () => {
    await copyDaily(2);
    expect((await backupsOf(path())).map((one) => one.path)).toEqual([
      `${path()}.backup-2026-01-02T09-00-00Z`,
      `${path()}.backup-2026-01-01T09-00-00Z`,
    ]);
    expect(await readFile(`${path()}.backup-2026-01-01T09-00-00Z`, 'utf8')).toBe('day 0');
  });

  it('are two where two are made within a second', async () => {
    for (const content of ['one', 'two']) {
      await writeFile(path(), content);
      await makeBackup(path(), Date.UTC(2026, 0, 1, 9));
    }
    const found = await backupsOf(path());
    expect(await Promise.all(found.map((one) => readFile(one.path, 'utf8')))).toEqual(['two', 'one']);
  });

  it('are the ten newest, and one a week of those before', async () => {
    await copyDaily(80);
    const ages = (await backupsOf(path())).map(({ made }) => Math.round((Date.UTC(2026, 0, 80, 9) - made) / day));
    expect(ages.slice(0, 10)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
    const older = ages.slice(10);
    expect(older.length).toBeGreaterThanOrEqual(10);
    const gaps = older.slice(1).map((age, index) => age - (older[index] ?? 0));
    expect(gaps.slice(0, -1).every((gap) => gap === 7)).toBe(true);
  });

  it('are not made twice of the same content', async () => {
    await copyDaily(1);
    await makeBackup(path(), Date.UTC(2026, 0, 5));
    expect(await backupsOf(path())).toHaveLength(1);
  });

  it('count the one without a date that version 0.1.0 kept, and never lose it', async () => {
    await writeFile(`${path()}.backup`, 'of version 0.1.0');
    await utimes(`${path()}.backup`, new Date(Date.UTC(2025, 5, 1)), new Date(Date.UTC(2025, 5, 1)));
    await copyDaily(30);
    expect((await backupsOf(path())).at(-1)).toEqual({ path: `${path()}.backup`, made: Date.UTC(2025, 5, 1) });
  });

  it('stay where no further one can be made', async () => {
    await copyDaily(12);
    const before = await readdir(home);
    await rm(path());
    await expect(makeBackup(path(), Date.UTC(2027, 0, 1))).rejects.toThrow('ENOENT');
    expect(await readdir(home)).toEqual(before.filter((name) => name !== 'workbook.json'));
  });

  it('leave out what only looks like one', async () => {
    for (const name of ['workbook.json.backup-', 'workbook.json.backup-2026-13-45T09-00-00Z', 'workbook.json.backups', 'other.json.backup'])
      await writeFile(join(home, name), '');
    expect(await backupsOf(path())).toEqual([]);
  });

  it('and what a killed program left half written goes, but nothing of a running one or of anybody else', async () => {
    // No system numbers its programs so high.
    const killed = 999_999_999;
    const stay = ['workbook.json', `workbook.json.${process.ppid}.tmp`, 'workbook.json.notes.tmp', `other.json.${killed}.tmp`];
    const go = [`workbook.json.${killed}.tmp`, `workbook.json.backup-2026-01-01T09-00-00Z.${killed}.tmp`, `workbook.json.${process.pid}.tmp`];
    for (const name of [...stay, ...go]) await writeFile(join(home, name), '');
    await removeLeftOvers(path());
    expect((await readdir(home)).sort()).toEqual([...stay].sort());
  });
});
