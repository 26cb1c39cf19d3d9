// Words that change with the workbook: of the demonstration only while it is in use, and which entry of the loading is missing.
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openHeadless, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates/index';
import { sheetNames } from '../../sheets-templates/places';
import type { SheetKey } from '../../sheets-templates/template';

let workbook: HeadlessWorkbook;
beforeAll(async () => {
  workbook = await openHeadless(sheetTemplates);
});
afterAll(() => workbook.dispose());

/** Every text on the sheet that begins so, or holds it. */
function said(key: SheetKey, part: string): CellResult[] {
  const { rows = 0, columns = 0 } = sheetTemplates.find((sheet) => sheet.key === key) ?? {};
  const last = String.fromCharCode(64 + Math.min(columns, 26));
  return workbook
    .values(sheetNames[key], `A1:${last}${rows}`)
    .flat()
    .filter((value) => typeof value === 'string' && value.includes(part));
}

it('says Invented only while a demonstration aircraft is in use', async () => {
  const keys: readonly SheetKey[] = ['trip', 'card', 'balance', 'ledger', 'currency', 'fields', 'tables'];
  const invented = (): readonly SheetKey[] => keys.filter((key) => said(key, 'Invented ').length > 0);
  expect(invented()).toEqual(keys);
  expect(said('start', 'are invented for demonstration.')).toHaveLength(1);
  await workbook.set(sheetNames.start, { A7: 'My own' });
  expect(invented()).toEqual([]);
  expect(said('start', 'invented')).toEqual([]);
  expect(said('fields', 'Type your own')).toEqual(['Type your own from current official data; the trip chooses them by name.']);
  await workbook.set(sheetNames.start, { A7: 'Quillon Four' });
  expect(invented()).toEqual(keys);
});

it('names the category without an envelope, and the tank without arms', async () => {
  const points = (): unknown => workbook.values(sheetNames.balance, 'B44:B46').flat();
  expect(points()).toEqual(['OK', 'OK', 'OK']);
  await workbook.set(sheetNames.balance, { F4: 'aerobatic' });
  expect(said('balance', 'No envelope')).toEqual(['No envelope named aerobatic for this aircraft in section 4: the points stay UNKNOWN.']);
  expect(points()).not.toContain('OK');
  await workbook.set(sheetNames.balance, { F4: 'normal', B28: 'left tip' });
  expect(said('balance', 'No fuel arm')).toEqual(['No fuel arm for left tip: add it in section 6 of Manual tables. The points stay UNKNOWN.']);
  expect(points()).not.toContain('OK');
});
