// Before a workbook is served: what is gone or damaged stops the program, with the two commands that answer it.
import { mkdir, mkdtemp, readdir, readFile, readlink, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { answerFile, checkFile, StopsHereError, type Answer, type Opening } from '../../addon/local/server/opening';
import { realPathOf } from '../../addon/local/server/realPath';

const book = (word: string): string => JSON.stringify({ sheetOrder: ['a'], sheets: { a: { word } } });
const unanswered: Answer = { anew: false, restore: false };
const now = Date.UTC(2026, 10, 29, 12);
const copies = { older: 'workbook.json.backup-2026-11-01T09-00-00Z', newer: 'workbook.json.backup-2026-11-20T09-00-00Z' };

describe('opening a workbook file', () => {
  let home: string;
  const at = (name: string): string => join(home, name);
  const opening = (answer: Answer = unanswered, name = 'workbook.json'): Opening => ({
    given: at(name),
    path: realPathOf(at(name)),
    answer,
    command: 'npm start --',
    makeFirst: () => book('demo'),
  });
  const stopped = (answer: Answer, name?: string): Promise<string> =>
    answerFile(opening(answer, name), now).then(
      () => 'not stopped',
      (thrown: unknown) => (thrown instanceof StopsHereError ? thrown.message : String(thrown)),
    );
  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-opening-'));
  });
  afterEach(() => rm(home, { recursive: true, force: true }));

  it('goes on where nothing is there at all, and where the file is whole', async () => {
    await answerFile(opening(), now);
    expect(await readdir(home)).toEqual([]);
    await writeFile(at('workbook.json'), book('mine'));
    expect(await answerFile(opening(), now)).toEqual([]);
    expect(await readFile(at('workbook.json'), 'utf8')).toBe(book('mine'));
  });

  it('asks where the file is gone and copies of it are there, and changes nothing', async () => {
    await writeFile(at(copies.older), book('older'));
    await writeFile(at(copies.newer), '{"half": ');
    const said = await stopped(unanswered);
    expect(said.split('\n')).toEqual([
      `The workbook ${at('workbook.json')} is gone, but copies of it are there. Nothing was changed. Say what to do:`,
      `  npm start -- --restore    goes on from the copy of 2026-11-01 09:00Z (${copies.older})`,
      '  npm start -- --new        begins a new workbook with the invented demo; copies stay as they are',
    ]);
    expect((await readdir(home)).sort()).toEqual([copies.older, copies.newer]);
    await expect(checkFile(opening())).rejects.toThrow(StopsHereError);
  });

  it('goes on from the newest whole copy where told so', async () => {
    await writeFile(at(copies.older), book('older'));
    await writeFile(at(copies.newer), book('newer'));
    expect(await answerFile(opening({ anew: false, restore: true }), now)).toEqual([
      `The workbook is as in the copy of 2026-11-20 09:00Z (${copies.newer}).`,
    ]);
    expect(await readFile(at('workbook.json'), 'utf8')).toBe(book('newer'));
    expect(await readFile(at(copies.newer), 'utf8')).toBe(book('newer'));
  });

  it('begins anew where told so, and keeps the copies', async () => {
    await writeFile(at(copies.older), book('older'));
    await answerFile(opening({ anew: true, restore: false }), now);
    expect(await readFile(at('workbook.json'), 'utf8')).toBe(book('demo'));
    expect(await readFile(at(copies.older), 'utf8')).toBe(book('older'));
  });

  it.each(['', '{"half": ', 'null'])('asks where the file holds "%s", and sets it aside when told to go on', async (text) => {
    await writeFile(at('workbook.json'), text);
    expect(await stopped(unanswered)).toMatch(
      /is not a workbook of this program, or only a part of one\. Nothing was changed\. Say what to do:\n {2}npm start -- --new/,
    );
    await writeFile(at(copies.older), book('older'));
    expect(await stopped(unanswered)).toContain('--restore');
    const aside = at('workbook.json.damaged-2026-11-29T12-00-00Z');
    expect((await answerFile(opening({ anew: false, restore: true }), now))[0]).toBe(`The file that was there is now ${aside}.`);
    expect([await readFile(aside, 'utf8'), await readFile(at('workbook.json'), 'utf8')]).toEqual([text, book('older')]);
  });

  it('asks where the file is a link that leads nowhere, and goes through it when told to begin anew', async () => {
    await symlink('far/real.json', at('workbook.json'));
    expect(await stopped(unanswered)).toContain(`${at('workbook.json')} is a link to ${at('far/real.json')}, and nothing is there.`);
    expect(await readdir(home)).toEqual(['workbook.json']);
    await answerFile(opening({ anew: true, restore: false }), now);
    expect(await readlink(at('workbook.json'))).toBe('far/real.json');
    expect(await readFile(at('far/real.json'), 'utf8')).toBe(book('demo'));
  });

  it('does nothing to a whole workbook, whatever it is told', async () => {
    await writeFile(at('workbook.json'), book('mine'));
    await writeFile(at(copies.older), book('older'));
    for (const answer of [
      { anew: true, restore: false },
      { anew: false, restore: true },
    ])
      expect(await stopped(answer)).toContain('is whole, so --new and --restore do nothing to it');
    expect(await readFile(at('workbook.json'), 'utf8')).toBe(book('mine'));
  });

  it('says so where there is nothing to go on from, where both are said, and where a folder is there', async () => {
    expect(await stopped({ anew: false, restore: true })).toContain('There is no whole copy');
    expect(await stopped({ anew: true, restore: true })).toBe('Say --new or --restore, not both.');
    await mkdir(at('folder'));
    expect(await stopped(unanswered, 'folder')).toContain('is a folder');
  });
});

describe('where a file really is', () => {
  let home: string;
  beforeEach(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-links-'));
  });
  afterEach(() => rm(home, { recursive: true, force: true }));

  it('is behind every link, also where nothing is there yet', async () => {
    await mkdir(join(home, 'far'));
    await symlink('far', join(home, 'near'));
    await symlink(join(home, 'near/one.json'), join(home, 'two.json'));
    await symlink('two.json', join(home, 'three.json'));
    expect(realPathOf(join(home, 'three.json'))).toBe(join(home, 'far/one.json'));
    expect(realPathOf(join(home, 'near/none/new.json'))).toBe(join(home, 'far/none/new.json'));
    await symlink('round.json', join(home, 'round.json'));
    expect(() => realPathOf(join(home, 'round.json'))).toThrow('ELOOP');
  });
});
