// An aircraft as a whole: what it is, put in under another name, saved to a file and taken from one, removed; and files that are refused.
import { beforeAll, describe, expect, it } from 'vitest';
import { aircraftFile, aircraftInFile } from '../../../addon/workbook/aircraft/aircraftFile';
import { manualTables } from '../../../addon/workbook/aircraft/aircraftLists';
import { aircraftStanding } from '../../../addon/workbook/aircraft/aircraftStanding';
import { newAircraft } from '../../../addon/workbook/aircraft/newAircraft';
import { aircraftPutIn, aircraftRemoved, columnsOf, wholeAircraft, type AircraftRows } from '../../../addon/workbook/aircraft/wholeAircraft';
import { standsStill, contentsOf, turnedRound, type CellsChanged } from '../../../addon/workbook/cellChanges';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../../addon/workbook/snapshot';
import { sheetTemplates } from '../../../sheets-templates';
import { demoSnapshot } from '../../browser/answeredDouble';

let demo: WorkbookSnapshot;
beforeAll(async () => {
  demo = await demoSnapshot();
});
const tables = (workbook = demo): SheetSnapshot => manualTables(workbook, sheetTemplates);

/** The workbook after a change, as a host makes it: refused where a cell holds something else. */
function changed(workbook: WorkbookSnapshot, changes: readonly CellsChanged[]): WorkbookSnapshot {
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => {
      const values = sheet.values.map((line) => [...line]);
      for (const change of changes.filter((one) => one.sheet === sheet.name)) {
        const now = change.before.map((line, down) => contentsOf({ ...sheet, values }, change.row + down, change.column, line.length));
        if (!standsStill(change, now)) throw new Error('moved');
        change.after.forEach((line, down) => {
          line.forEach((content, across) => {
            const row = (values[change.row - 1 + down] ??= []);
            while (row.length < change.column + across) row.push('');
            row[change.column - 1 + across] = content as CellValue;
          });
        });
      }
      return { ...sheet, values };
    }),
  };
}
const filled = (workbook: WorkbookSnapshot) =>
  workbook.sheets.map(({ name, values }) => [
    name,
    values.map((line) => line.map((value, at) => [at, value] as const).filter(([, value]) => value !== '')).filter((line) => line.length > 0),
  ]);

describe('an aircraft as a whole', () => {
  it('is everything of it but the loads of the day', () => {
    const { lists } = wholeAircraft(demo, tables(), 'Quillon Four');
    expect(Object.fromEntries(Object.entries(lists).map(([key, rows]) => [key, rows.length]))).toMatchObject({
      aircraft: 1,
      stations: 4,
      tanks: 2,
      corners: 12,
      corrections: 8,
      tankArms: 4,
      takeoff: 64,
    });
    expect(lists['stations']?.map(({ weight }) => weight)).toEqual([1702, undefined, undefined, undefined]);
    expect(lists['tanks']).toEqual([
      { tank: 'left wing', burnOrder: 1 },
      { tank: 'right wing', burnOrder: 1 },
    ]);
  });

  it('goes under another name into blank rows and can be removed again, and nothing else changes', () => {
    const whole = { ...wholeAircraft(demo, tables(), 'Quillon Four'), name: 'Copy One' };
    const changes = aircraftPutIn(demo, tables(), whole);
    for (const { before } of changes) expect(before.flat().every((content) => content === '')).toBe(true);
    const put = changed(demo, changes);
    expect(wholeAircraft(put, tables(put), 'Copy One')).toEqual(whole);
    expect(wholeAircraft(put, tables(put), 'Quillon Four').lists).toEqual(whole.lists);
    const removal = aircraftRemoved(put, tables(put), 'copy one');
    expect(removal.rows).toHaveLength(Object.values(whole.lists).flat().length);
    expect(filled(changed(put, removal.changes))).toEqual(filled(demo));
    expect(filled(changed(changed(put, removal.changes), turnedRound(removal.changes)))).toEqual(filled(put));
  });

  it('is not put in twice, nor removed while it is in use', () => {
    const whole = wholeAircraft(demo, tables(), 'Quillon Four');
    expect(() => aircraftPutIn(demo, tables(), whole)).toThrow(
      '"Manual tables" has an aircraft "Quillon Four" already. Give another name, or remove that one first.',
    );
    expect(() => aircraftRemoved(demo, tables(), 'Quillon Four')).toThrow(
      'Quillon Four is the aircraft in use. Choose another one on Start first, then ask again.',
    );
    expect(aircraftRemoved(demo, tables(), 'Brindle Two').rows.length).toBeGreaterThan(20);
  });

  it('is refused where a list has too few blank rows, and nothing is written', () => {
    let full = demo;
    for (const name of ['A', 'B', 'C', 'D', 'E'].map((letter) => `Copy ${letter}`)) {
      const lists: AircraftRows = {
        aircraft: [{ weightIn: 'kg' }],
        stations: Array.from({ length: 4 }, (_, index) => ({ station: `seat ${index}`, arm: index })),
      };
      try {
        full = changed(full, aircraftPutIn(full, tables(full), { name, lists }));
      } catch (thrown) {
        expect(String(thrown)).toMatch(/has too few blank rows there: 4 needed, \d found\. Put rows in above row \d+, then ask again\./);
        return;
      }
    }
    throw new Error('never full');
  });

  it('says in order what it has and what is missing', () => {
    expect(aircraftStanding(demo, tables(), 'Quillon Four').map(({ title, verdict }) => `${title} ${verdict}`)).toEqual([
      'aircraft list OK',
      'stations OK',
      'tanks OK',
      'envelope OK',
      'take-off table OK',
      'landing table OK',
      'climb table OK',
      'corrections OK',
    ]);
    const row = {
      weightIn: 'kg',
      armIn: 'mm',
      distanceIn: 'm',
      fuelIn: 'L',
      fuelWeight: '0.72',
      usableFuel: '100',
      mostTakeoffWeight: '1000',
      mostLandingWeight: '1000',
    };
    const { aircraft } = newAircraft('Fresh One', row, undefined);
    if (aircraft === undefined) throw new Error('not read');
    const put = changed(demo, aircraftPutIn(demo, tables(), aircraft));
    expect(aircraftStanding(put, tables(put), 'Fresh One').map(({ title, verdict, said }) => `${title} ${verdict} ${said}`)).toEqual([
      'aircraft list OK complete, and nothing looks wrong',
      'stations UNKNOWN none yet',
      'tanks UNKNOWN none yet',
      'envelope UNKNOWN none yet',
      'take-off table UNKNOWN none yet',
      'landing table UNKNOWN none yet',
      'climb table UNKNOWN none yet',
      expect.stringMatching(/^corrections OK none/),
    ]);
  });
});

describe('a new aircraft', () => {
  it.each([
    ['172', {}, /^"172" can be taken for a number/],
    ['=Quillon', {}, /can be taken for a number or a formula/],
    ['One', { mostTakeoffWeight: '2,300' }, /^Maximum take-off weight: "2,300" can be 2300 or 2\.3\. Type figures only/],
    ['One', { usableFuel: '100 L' }, /^Usable fuel, all tanks: "100 L" is no plain number/],
  ])('%s %j is refused', (name, typed, sentence) =>
    expect(newAircraft(name, typed, undefined)).toMatchObject({ aircraft: undefined, problems: [expect.stringMatching(sentence)] }),
  );
});

describe('the file of an aircraft', () => {
  const known = () => columnsOf(demo, tables());
  const text = () => aircraftFile(wholeAircraft(demo, tables(), 'Brindle Two'));
  it('gives back what went in', () => {
    const whole = wholeAircraft(demo, tables(), 'Brindle Two');
    expect(aircraftInFile(text(), known())).toEqual(whole);
    expect(JSON.parse(text())).toMatchObject({ format: 'rampwright aircraft', version: 1, aircraft: 'Brindle Two' });
  });

  interface FileText {
    version?: number;
    aircraft: string | null;
    lists: Record<'aircraft' | 'takeoff' | 'tanks' | 'wings', { columns: string[]; rows: unknown[][] }>;
  }
  const edited = (edit: (file: FileText) => void): string => {
    const file = JSON.parse(text()) as FileText;
    edit(file);
    return JSON.stringify(file);
  };
  it.each<readonly [string, () => string]>([
    ['it is not whole, or no JSON', () => text().slice(0, 400)],
    ['its "format" must be "rampwright aircraft"', () => '[1,2]'],
    ['its "version" is missing', () => edited((file) => delete file.version)],
    ['it is of version 2, and this one knows versions up to 1; bring Rampwright up to date', () => edited((file) => (file.version = 2))],
    ['the name of the aircraft is missing', () => edited((file) => (file.aircraft = null))],
    ['it has a list "wings", which this version does not know', () => edited((file) => (file.lists.wings = { columns: [], rows: [] }))],
    ['"takeoff" has a column "slope", which this version does not know', () => edited((file) => file.lists.takeoff.columns.push('slope'))],
    ['"tanks" has a column twice', () => edited((file) => file.lists.tanks.columns.push('tank'))],
    ['row 1 of "tanks" must have 3 values', () => edited((file) => file.lists.tanks.rows[0]?.push(1))],
    [
      'weight in row 1 of "takeoff" must be a number, a text or null; got true',
      () => edited((file) => (file.lists.takeoff.rows[0] = file.lists.takeoff.columns.map(() => true))),
    ],
    [
      'tank in row 1 of "tanks" is the text "=IMPORTXML(1)", which a spreadsheet would read as a formula, a number or a date',
      () => edited((file) => (file.lists.tanks.rows[0] = file.lists.tanks.columns.map(() => '=IMPORTXML(1)'))),
    ],
    ['its "aircraft" must have one row, with units and limits', () => edited((file) => (file.lists.aircraft.rows = []))],
  ])('is refused: %s', (why, made) =>
    expect(() => aircraftInFile(made(), known())).toThrow(`This is no file of an aircraft that can be taken in: ${why}. Nothing was changed.`),
  );
});
