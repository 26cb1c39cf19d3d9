// Every member's statement out of the lines of Dues: own lines to the cent, and not a word of anybody else in a page, a file or its name's neighbour.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { memberStatements, statementFile, statementFileNames, statementPage } from '../../addon/workbook/memberStatements';
import { sheetTemplates } from '../../sheets-templates';
import { tripAsTyped } from '../support/tripAsTyped';
import { duesPlaces } from '../../sheets-templates/dues/places';
import { sheetNames } from '../../sheets-templates/places';

const people = ['Quonset Arbor', 'Wimble Orrery', 'Zephyrine <b>Took', 'Yarrow Plinth', 'Xanthe/Mullion', 'Xanthe:Mullion'];
const madeOn = '2026-12-01';

describe('the statements of all members', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless([tripAsTyped, ...sheetTemplates.filter(({ key }) => ['start', 'dues', 'statement'].includes(key))]);
    const { first, last } = duesPlaces.members;
    const { first: paid } = duesPlaces.payments;
    const cells: Record<string, string | number | { date: string }> = {};
    for (let row = first; row <= last; row += 1) for (const letter of 'ABCDEF') cells[`${letter}${row}`] = '';
    people.forEach((name, index) => {
      cells[`A${first + index}`] = name;
      cells[`D${first + index}`] = index + 1;
      cells[`E${first + index}`] = `${index}:30`;
      Object.assign(cells, { [`A${paid + index}`]: { date: '2026-02-10' }, [`B${paid + index}`]: name, [`C${paid + index}`]: 100 + index });
      cells[`D${paid + index}`] = 'EUR';
    });
    await workbook.set(sheetNames.dues, cells);
  }, 60_000);
  afterAll(() => workbook.dispose());

  it('hold each what Dues says, and together all of it', () => {
    const statements = memberStatements(workbook.snapshot());
    expect(statements.map(({ member }) => member)).toEqual(people);
    expect(statements[0]).toMatchObject({ period: '2026-01-01 to 2026-12-31', currency: 'EUR', notWhole: false });
    const { first } = duesPlaces.members;
    const sums = workbook.values(sheetNames.dues, `H${first}:J${first + people.length - 1}`);
    expect(statements.map(({ lines }) => lines[lines.length - 1]).map((line) => [line?.charged, line?.paid, line?.balance])).toEqual(sums);
    const rows = workbook.values(sheetNames.dues, `L${first}:Q${first + 60}`).filter(([member]) => member !== '' && member !== 'all');
    expect(statements.reduce((count, { lines }) => count + lines.length, 0)).toBe(rows.length);
  });

  it('hold nobody else, in the page and in the file', () => {
    const statements = memberStatements(workbook.snapshot());
    for (const one of statements)
      for (const text of [statementPage(one, madeOn), statementFile(one, madeOn)]) {
        expect(text).not.toContain('<b>');
        for (const other of people.filter((name) => name !== one.member))
          for (const part of other.split(/[^A-Za-z]/).filter((word) => word.length > 1 && !one.member.includes(word)))
            expect([part, text.includes(part)]).toEqual([part, false]);
      }
  });

  it('have a file name each', () => {
    const names = statementFileNames(memberStatements(workbook.snapshot()));
    expect(new Set(names).size).toBe(people.length);
    expect(names[0]).toBe('Statement Quonset Arbor 2026-01-01 to 2026-12-31.html');
    expect(names[5]).toBe('Statement Xanthe-Mullion 2026-01-01 to 2026-12-31 (2).html');
  });

  it('say that something could not be read, and are none where nothing can be worked out', async () => {
    const { first } = duesPlaces.costs;
    await workbook.set(sheetNames.dues, { [`B${first}`]: 'n/a' });
    const page = statementPage(memberStatements(workbook.snapshot())[0] ?? expect.fail('no statement'), madeOn);
    expect(page).toContain('this statement may change');
    await workbook.set(sheetNames.dues, { [`L${duesPlaces.members.head}`]: 'typed over' });
    expect(() => memberStatements(workbook.snapshot())).toThrow(/cannot be worked out/);
  });
});
