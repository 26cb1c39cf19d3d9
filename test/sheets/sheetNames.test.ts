// Sheets renamed as people rename them: formulas, names of ranges, the calendar and the Excel file go on, at once and after opening anew.
import type { IWorkbookData } from '@univerjs/core';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { calendarFile } from '../../addon/calendar/calendarFile';
import { openHeadless, openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { resourceNames } from '../../addon/local/engine/workbookResources';
import { xlsxFile } from '../../addon/local/xlsx/xlsxFile';
import { sheetTemplates } from '../../sheets-templates';
import { sheetNames } from '../../sheets-templates/places';

const hostile: Readonly<Record<string, string>> = {
  [sheetNames.start]: "Pilot's [start]",
  [sheetNames.trip]: "'[Go!] today'",
  [sheetNames.ledger]: '@ledger/2026',
  [sheetNames.currency]: "O'Dell's log*",
  [sheetNames.tables]: '"Tables", (all) 100%',
};

describe('the whole workbook, its sheets renamed', () => {
  let before: HeadlessWorkbook;
  let after: HeadlessWorkbook;
  let given: Record<string, string>;
  const nameNow = (name: string): string => given[name] ?? name;
  beforeAll(async () => {
    before = await openHeadless(sheetTemplates);
    after = await openHeadless(sheetTemplates);
    given = Object.fromEntries(Object.entries(hostile).map(([name, wanted]) => [name, after.rename(name, wanted)]));
    const [day] = before.named('as_of')[0] ?? [];
    for (const [workbook, sheet] of [
      [before, sheetNames.start],
      [after, nameNow(sheetNames.start)],
    ] as const) {
      const place = workbook.snapshot().names.find(({ name }) => name === 'as_of')?.range ?? '';
      await workbook.set(sheet, { [place]: Number(day) + 1 });
    }
  }, 180_000);
  afterAll(() => {
    before.dispose();
    after.dispose();
  });

  it('works out the same cells', () => {
    const [ones, others] = [before.snapshot(), after.snapshot()];
    expect(others.sheets.map(({ name }) => name)).toEqual(ones.sheets.map(({ name }) => nameNow(name)));
    expect(others.sheets.map(({ values }) => values)).toEqual(ones.sheets.map(({ values }) => values));
    expect(others.names).toEqual(ones.names.map((one) => ({ ...one, sheet: nameNow(one.sheet) })));
  });

  it('and the same when opened anew', async () => {
    const again = await openSaved(after.saved());
    expect(again.snapshot().sheets.map(({ values }) => values)).toEqual(before.snapshot().sheets.map(({ values }) => values));
    again.dispose();
  });

  it('has the same calendar, and an Excel file', async () => {
    const madeAt = new Date('2026-11-29T12:00:00Z');
    const { text, said } = calendarFile(after.snapshot(), madeAt);
    expect(text).toBe(calendarFile(before.snapshot(), madeAt).text);
    expect(said).not.toContain('no longer');
    const file = await xlsxFile(after.saved(), after.snapshot());
    expect(file.said).toContain(`${sheetTemplates.length} sheets`);
    expect(file.said).not.toContain('The chart');
  });
});

/** Two sheets and a name, as the file holds them. */
const twoSheets = (name: string): IWorkbookData => {
  const quoted = `'${name.replace(/'/g, "''")}'`;
  const record = { id: 'level', name: 'level', formulaOrRefString: `${quoted}!$A$1`, localSheetId: 'AllDefaultWorkbook' };
  const formulas = [`=${quoted}!A1*2`, `=SUM(${quoted}!A1:A3)`, '=level*2', `=ISA_TEMPERATURE(${quoted}!A1)`];
  return {
    id: 'two',
    name: 'two',
    appVersion: '0.25.1',
    locale: 'enUS' as IWorkbookData['locale'],
    styles: {},
    sheetOrder: ['data', 'read'],
    sheets: {
      data: { id: 'data', name, rowCount: 20, columnCount: 5, cellData: { 0: { 0: { v: 21, t: 2 } } } },
      read: {
        id: 'read',
        name: 'Read',
        rowCount: 20,
        columnCount: 5,
        cellData: { 0: Object.fromEntries(formulas.map((f, column) => [column, { f }])) },
      },
    },
    resources: [{ name: resourceNames.names, data: JSON.stringify({ level: record }) }],
  };
};

const letter = fc.oneof(fc.constantFrom(...'\'"[]()!#$%&*+,-./:;<=>?@\\^_`{|}~ ab1é日'), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 1 }));
const anyName = fc
  .array(letter, { minLength: 1, maxLength: 10 })
  .map((letters) => letters.join(''))
  .filter((name) => name.trim() !== '' && name.toLowerCase() !== 'read');

describe('a sheet of a random name', () => {
  it('is read by formulas and names as before: renamed, changed, opened anew, and where an older file has that name', async () => {
    await fc.assert(
      fc.asyncProperty(anyName, async (name) => {
        const workbook = await openSaved(twoSheets('Data'));
        const now = workbook.rename('Data', name);
        await workbook.set(now, { A1: 30 });
        expect(workbook.values('Read', 'A1:C1')).toEqual([[60, 30, 60]]);
        expect(typeof workbook.value('Read', 'D1')).toBe('number');
        const again = await openSaved(workbook.saved());
        expect(again.values('Read', 'A1:D1')).toEqual(workbook.values('Read', 'A1:D1'));
        const older = await openSaved(twoSheets(name));
        expect(older.values('Read', 'A1:C1')).toEqual([[42, 21, 42]]);
        for (const one of [workbook, again, older]) one.dispose();
      }),
      { numRuns: 20, examples: [["Pilot's [trip]"], ['a!b'], ['[x]'], ["''"], ['@SUM'], ['A1']] },
    );
  });
});
