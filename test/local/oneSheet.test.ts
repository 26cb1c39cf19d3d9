// One sheet handed on: a member's statement holds that member's lines, and not a byte of anybody else.
import { unzipSync, strFromU8 } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { IWorkbookData } from '@univerjs/core';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sharedName } from '../../addon/local/page/sharedName';
import { xlsxOfSheet } from '../../addon/local/xlsx/xlsxFile';
import { sheetTemplates } from '../../sheets-templates';
import { duesPlaces } from '../../sheets-templates/dues/places';
import { sheetNames } from '../../sheets-templates/places';
import { readXlsx } from '../support/readXlsx';

const people = ['Quonset Arbor', 'Wimble Orrery', 'Zephyrine Took', 'Yarrow Plinth', 'Xanthe Mullion'];

/** Everything in the file, taken apart. */
const textsOf = (bytes: Uint8Array): string =>
  Object.entries(unzipSync(bytes))
    .map(([name, part]) => `${name}\n${strFromU8(part)}`)
    .join('\n');

describe('one sheet as an Excel file', () => {
  let workbook: HeadlessWorkbook;
  const idOf = (data: IWorkbookData, name: string): string => data.sheetOrder.find((id) => data.sheets[id]?.name === name) ?? '';
  const fileOf = async (name: string, change: (data: IWorkbookData) => IWorkbookData = (data) => data) => {
    const data = change(workbook.saved());
    return xlsxOfSheet(data, workbook.snapshot(), idOf(data, name), 'file.xlsx');
  };

  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
    const { first } = duesPlaces.members;
    const { first: paid } = duesPlaces.payments;
    const members = Object.fromEntries(people.map((name, index) => [`A${first + index}`, name]));
    const payments = Object.fromEntries(
      people.flatMap((name, index) => [
        [`A${paid + index}`, { date: `2026-02-${10 + index}` }],
        [`B${paid + index}`, name],
        [`C${paid + index}`, 100 + index],
        [`D${paid + index}`, 'EUR'],
      ]),
    ) as Record<string, string>;
    await workbook.set(sheetNames.dues, { ...members, ...payments });
  }, 60_000);
  afterAll(() => workbook.dispose());

  it('is the statement of each member with nobody else in any part of the file', async () => {
    for (const member of people) {
      await workbook.set(sheetNames.statement, { B3: member });
      const { bytes } = await fileOf(sheetNames.statement);
      const text = textsOf(bytes);
      expect(text).toContain(member);
      // Half of a name is as good as the whole.
      for (const other of people.filter((one) => one !== member))
        for (const part of other.split(' ')) expect([part, text.includes(part)]).toEqual([part, false]);
      const [about, ...sheets] = readXlsx(bytes);
      expect([about?.name, sheets.map(({ name, formulas }) => [name, formulas])]).toEqual(['About this file', [[sheetNames.statement, 0]]]);
      const values = [...(sheets[0]?.cells.values() ?? [])].map(({ value }) => value);
      expect(values.filter((value) => typeof value === 'number').length).toBeGreaterThan(2);
    }
  }, 60_000);

  it('tells a statement of nobody, with no lines of anybody', async () => {
    await workbook.set(sheetNames.statement, { B3: 'No such person' });
    const text = textsOf((await fileOf(sheetNames.statement)).bytes);
    expect(text).toContain('Dues has no lines of this member');
    for (const name of people) expect(text).not.toContain(name);
  });

  it('leaves out what is hidden on the sheet, and says so', async () => {
    const { first } = duesPlaces.members;
    const hide = (data: IWorkbookData): IWorkbookData => {
      const id = idOf(data, sheetNames.dues);
      const sheet = data.sheets[id];
      const rowData = { ...sheet?.rowData, [first]: { hd: 1 as const } };
      return { ...data, sheets: { ...data.sheets, [id]: { ...sheet, rowData } } };
    };
    const open = await fileOf(sheetNames.dues);
    expect(textsOf(open.bytes)).toContain('Wimble Orrery');
    const { bytes, said } = await fileOf(sheetNames.dues, hide);
    expect(said).toMatch(/What \d+ hidden rows? .*left out\./);
    const [, sheet] = readXlsx(bytes);
    expect(sheet?.cells.get(`A${first}`)?.value).toBe('Quonset Arbor');
    expect(sheet?.cells.get(`A${first + 1}`)?.value ?? '').toBe('');
  });

  it('has a name with the member and the day in it, whatever the member is called', () => {
    const mark = { key: 'statement' as const, version: 1, set: '1', names: {} };
    const named = (member: string): string => sharedName({ name: 'Statement', mark, values: [[''], [''], ['member', member]], formulas: [] });
    expect(named('Ada')).toMatch(/^Statement Ada \d{4}-\d\d-\d\d$/);
    expect(named('../<b>:*? Zoë "x"')).toMatch(/^Statement \.\.-b- Zoë -x- \d{4}-\d\d-\d\d$/);
    expect(sharedName({ name: 'Trip sheet', values: [], formulas: [] })).toMatch(/^Trip sheet \d{4}-\d\d-\d\d$/);
  });
});
