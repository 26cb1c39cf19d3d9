// Bringing a set of sheets up to date: everything typed is there, the older sheets stay beside, and nothing else changes.
import { afterEach, describe, expect, it } from 'vitest';
import { insertSheets } from '../../addon/google/insertSheets';
import { readWorkbook } from '../../addon/google/readWorkbook';
import type { CarriedSheet } from '../../addon/workbook/carriedInputs';
import { sheetTemplates } from '../../sheets-templates';
import type { SheetTemplate } from '../../sheets-templates/template';
import { contentOf, documentOf, formulasOf, insertSmall, rangesOf, sheetNamesOf } from './smallDocument';
import { keyed, smallTemplates } from './smallTemplates';
import { carriedEntries, laterTemplates, setOf, typed, typeEntries, update, yard2 } from './smallUpdate';
import { withDouble, withoutPlatform } from './support';

afterEach(withoutPlatform);

describe('an update', () => {
  it('puts the new sheets under the names and in the places of the older ones, which stay beside them', () => {
    const double = typed();
    expect(update(double)).toEqual({ updated: ['Yard', 'Dock side', 'Hold'], kept: ['Yard (before)', 'Dock side (before)', 'Hold (before)'] });
    expect(sheetNamesOf(double)).toEqual(['Sheet1', 'Yard', 'Yard (before)', 'Dock side', 'Dock side (before)', 'Hold', 'Hold (before)']);
  });

  it('carries everything typed, and leaves no invented entry behind', () => {
    const double = typed();
    update(double);
    const [yard, dock, hold] = ['Yard', 'Dock side', 'Hold'].map((name) => double.sheet(name));
    expect(yard?.cell(5, 2)).toMatchObject({ value: 46100, numberFormat: 'yyyy-mm-dd' });
    expect(yard?.cell(6, 2)).toMatchObject({ value: '07', numberFormat: '@' });
    expect(yard?.cell(3, 1).value).toBe('keeper');
    expect(yard?.cell(3, 2).value).toBe('');
    expect(dock?.cell(2, 1).value).toBe('boxes');
    expect(dock?.cell(2, 2).value).toBe(31);
    expect([hold?.cell(3, 1).value, hold?.cell(3, 2).value, hold?.cell(4, 1).value]).toEqual([1, 2, 3]);
    expect(hold?.cell(4, 2).formula).toBe("='Dock side'!B2+yard_day");
  });

  it('lets the new sheets read one another, and the older ones the older ones', () => {
    const double = typed();
    update(double);
    expect(double.sheet('Dock side').cell(5, 2).formula).toBe(`=IF('Hold'!B2>=B2;"OK, all in";"NO")`);
    expect(double.sheet('Hold').cell(2, 2).formula).toBe(`='Dock side'!$B$2*2`);
    expect(double.sheet('Dock side (before)').cell(3, 2).formula).toBe(`=IF('Hold (before)'!B2>=B2;"OK, all in";"NO")`);
    expect(double.sheet('Hold').cell(2, 3).validation?.facts.criteria).toBe('range');
    expect(double.sheet('Yard').cell(7, 1).formula).toBe(`=HYPERLINK("#gid=${double.sheet('Hold').sheetId}";"to the hold")`);
  });

  it('points the names of the older sheets to the new ones, and makes those that are new', () => {
    const double = typed();
    update(double);
    expect(rangesOf(double).sort()).toEqual(['dock_verdict=Dock side!B5', 'yard_day=Yard!B5', 'yard_keeper=Yard!B3']);
  });

  it('marks the new sheets as a set of their own, and the older ones no more', () => {
    const double = typed();
    const before = setOf(double, 'Yard');
    update(double);
    const { sheets } = readWorkbook({ sheets: 'all' });
    const marks = sheets.flatMap(({ name, mark }) => (mark === undefined ? [] : [{ name, ...mark }]));
    expect(marks.map(({ name, key, version }) => [name, key, version])).toEqual([
      ['Yard', 'start', 2],
      ['Dock side', 'trip', 2],
      ['Hold', 'balance', 2],
    ]);
    expect(marks[0]?.names).toEqual({ yard_day: 'yard_day', yard_keeper: 'yard_keeper' });
    const sets = new Set(marks.map(({ set }) => set));
    expect(sets.size).toBe(1);
    expect(sets.has(before)).toBe(false);
  });

  it("changes nothing of the older sheets but their names, and nothing of the user's", () => {
    const double = typed();
    double
      .sheet('Sheet1')
      .getRange('A1:B1')
      .setValues([['mine', "see 'Yard'!B3"]]);
    double.sheet('Sheet1').getRange('A2').setFormula(`='Yard'!B3&" of 'Yard'!"`);
    double.document.setNamedRange('mine', double.sheet('Sheet1').getRange('A1'));
    const older = ['Yard', 'Dock side', 'Hold'].map((name) =>
      [...double.sheet(name).cells].map(([place, { value, numberFormat, note }]) => [place, value, numberFormat, note]),
    );
    update(double);
    expect(
      ['Yard', 'Dock side', 'Hold'].map((name) =>
        [...double.sheet(`${name} (before)`).cells].map(([place, { value, numberFormat, note }]) => [place, value, numberFormat, note]),
      ),
    ).toEqual(older);
    expect(double.sheet('Sheet1').cell(1, 2).value).toBe("see 'Yard'!B3");
    // A formula of the user's own goes on reading the sheet that it read.
    expect(double.sheet('Sheet1').cell(2, 1).formula).toBe(`='Yard (before)'!B3&" of 'Yard'!"`);
    expect(rangesOf(double)).toContain('mine=Sheet1!A1');
  });

  it('keeps the names that the user gave to sheets, and shows the one that was in sight', () => {
    const double = typed();
    double.sheet('Hold').setName("My 'own' hold");
    double.document.setActiveSheet(double.sheet("My 'own' hold"));
    expect(update(double, carriedEntries("='Yard'!B5"))).toMatchObject({
      updated: ['Yard', 'Dock side', "My 'own' hold"],
      kept: ['Yard (before)', 'Dock side (before)', "My 'own' hold (before)"],
    });
    expect(double.document.active).toBe(double.sheet("My 'own' hold"));
    expect(double.sheet('Dock side').cell(5, 2).formula).toBe(`=IF('My ''own'' hold'!B2>=B2;"OK, all in";"NO")`);
    expect(double.sheet("My 'own' hold").metadata).toHaveLength(1);
  });

  it("leaves the sheet of the user's own in sight, where that was", () => {
    const double = typed();
    double.document.setActiveSheet(double.sheet('Sheet1'));
    update(double);
    expect(double.document.active.name).toBe('Sheet1');
  });

  it("takes a name that was pointed to a cell of the user's own for theirs", () => {
    const double = typed();
    double.document.names.find(({ name }) => name === 'yard_day')?.setRange(double.sheet('Sheet1').getRange('C3'));
    update(double);
    expect(rangesOf(double).sort()).toEqual(['dock_verdict=Dock side!B5', 'yard_day=Sheet1!C3', 'yard_day_2=Yard!B5', 'yard_keeper=Yard!B3']);
    expect(double.sheet('Dock side').cell(6, 2).formula).toBe('=yard_day_2+B2');
  });

  it('makes a name again whose cells or which itself was deleted', () => {
    const double = typed();
    double.document.removeNamedRange('dock_verdict');
    Object.assign(double.document.names[0] ?? {}, {
      getRange: () => {
        throw new Error('The named range no longer exists.');
      },
    });
    update(double, carriedEntries('=1'));
    expect(double.document.names.map(({ name }) => name).sort()).toEqual(['dock_verdict', 'yard_day', 'yard_day_2', 'yard_keeper']);
    expect(double.sheet('Dock side').cell(6, 2).formula).toBe('=yard_day_2+B2');
  });

  it('works twice', () => {
    const double = typed();
    update(double);
    const again: CarriedSheet[] = carriedEntries().map((sheet) =>
      sheet.key === 'start' ? { ...sheet, cells: [...sheet.cells, { row: 3, column: 2, content: 'Invented' }] } : sheet,
    );
    expect(update(double, again)).toEqual({
      updated: ['Yard', 'Dock side', 'Hold'],
      kept: ['Yard (before) 2', 'Dock side (before) 2', 'Hold (before) 2'],
    });
    expect(double.sheet('Yard').cell(3, 2).value).toBe('Invented');
    expect(double.sheet('Hold').cell(4, 2).formula).toBe("='Dock side'!B2+yard_day");
    expect(rangesOf(double).sort()).toEqual(['dock_verdict=Dock side!B5', 'yard_day=Yard!B5', 'yard_keeper=Yard!B3']);
    expect(formulasOf(double.sheet('Dock side (before) 2'))).toContain(`=IF('Hold (before) 2'!B2>=B2;"OK, all in";"NO")`);
  });

  it('touches only its own set of two side by side', () => {
    const double = typed();
    insertSmall();
    const others = ['Yard 2', 'Dock side 2', 'Hold 2'] as const;
    typeEntries(double, others);
    const untouched = ['Sheet1', 'Yard', 'Dock side', 'Hold'].map((name) => contentOf(double.sheet(name)));
    expect(update(double, carriedEntries("='Dock side 2'!B2+yard_day_2"), 'Yard 2').updated).toEqual(others);
    expect(['Sheet1', 'Yard', 'Dock side', 'Hold'].map((name) => contentOf(double.sheet(name)))).toEqual(untouched);
    expect(double.sheet('Dock side 2').cell(5, 2).formula).toBe(`=IF('Hold 2'!B2>=B2;"OK, all in";"NO")`);
    expect(double.sheet('Dock side 2').cell(6, 2).formula).toBe('=yard_day_2+B2');
    expect(rangesOf(double).sort()).toEqual([
      'dock_verdict=Dock side!B3',
      'dock_verdict_2=Dock side 2!B5',
      'yard_day=Yard!B3',
      'yard_day_2=Yard 2!B5',
      'yard_keeper=Yard 2!B3',
    ]);
    // Then the other one.
    expect(update(double).updated).toEqual(['Yard', 'Dock side', 'Hold']);
  });
});

describe('a set that is not the whole workbook', () => {
  it('adds what the later version reads besides, with no entry in it', () => {
    const double = withDouble();
    insertSheets(['start'], smallTemplates);
    const reading: SheetTemplate = { ...yard2, cells: [...yard2.cells, { row: 9, column: 1, formula: `='Hold'!A3`, style: 'computed' }] };
    const { updated } = update(
      double,
      carriedEntries().filter(({ key }) => key === 'start'),
      'Yard',
      [reading, ...laterTemplates.slice(1)],
    );
    expect(updated).toEqual(['Yard', 'Dock side', 'Hold']);
    expect(sheetNamesOf(double)).toEqual(['Sheet1', 'Yard', 'Yard (before)', 'Dock side', 'Hold']);
    expect(
      [
        [3, 1],
        [3, 2],
        [4, 1],
        [4, 2],
      ].map(([row = 0, column = 0]) => double.sheet('Hold').cell(row, column).value),
    ).toEqual(['', '', '', '']);
    expect(double.sheet('Yard').cell(5, 2).value).toBe(46100);
  });

  it('reads a sheet of another set that is of today, and asks for one that is not to be updated first', () => {
    const [lone] = keyed([{ ...yard2, key: 'tables', name: 'Shed', names: [] }]);
    if (lone === undefined) throw new Error('no sheet');
    const reads = (template: SheetTemplate): SheetTemplate => ({
      ...template,
      cells: [...template.cells, { row: 8, column: 3, formula: `='Shed'!B3`, style: 'computed' }],
    });
    const first = [...smallTemplates.slice(1), { ...smallTemplates[0], names: [] } as SheetTemplate];
    const double = withDouble();
    insertSheets(['start'], first);
    insertSheets(['tables'], [{ ...lone, version: 1 }]);
    const today = [reads({ ...yard2, names: [] }), lone, ...laterTemplates.slice(1)];
    const before = documentOf(double);
    expect(() => update(double, carriedEntries(), 'Yard', today)).toThrow(
      'These sheets read "Shed", which is of another version itself. Bring that one up to date first. Nothing was changed.',
    );
    expect(documentOf(double)).toEqual(before);
    update(double, [{ key: 'tables', cells: [] }], 'Shed', today);
    update(double, carriedEntries(), 'Yard', today);
    expect(double.sheet('Yard').cell(8, 3).formula).toBe(`='Shed'!B3`);
  });
});

describe('the whole workbook', () => {
  it('is brought up to date with what was typed, and says how many calls it takes', () => {
    const double = withDouble('America/New_York');
    const keys = sheetTemplates.map(({ key }) => key);
    insertSheets(keys, sheetTemplates);
    const entries = sheetTemplates.map(({ key, cells }) => ({
      key,
      cells: cells
        .filter(({ style, value }) => (style === 'input' || style === 'inputText') && typeof value === 'number')
        .map(({ row, column, value }) => ({ row, column, content: Number(value) + 1 })),
    }));
    const before = double.recorder.count('document');
    const { updated, kept } = update(double, entries, 'Start', sheetTemplates);
    console.log(`updateSheets: ${updated.length} sheets, ${double.recorder.count('document') - before} calls`);
    expect(updated).toEqual(sheetTemplates.map(({ name }) => name));
    expect(kept).toEqual(sheetTemplates.map(({ name }) => `${name} (before)`));
    for (const { key, name } of sheetTemplates) {
      for (const { row, column, content } of entries.find((one) => one.key === key)?.cells ?? [])
        expect(double.sheet(name).cell(row, column).value).toBe(content);
      expect(formulasOf(double.sheet(name)).join('\n')).not.toContain('(before)');
    }
  });
});
