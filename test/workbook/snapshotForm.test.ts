// A sheet of a snapshot as a form: what a cell shows, what may be typed into it, and where it stands after the user has moved things.
import { numfmt } from '@univerjs/core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { shownText } from '../../addon/workbook/pocket/shownText';
import { snapshotForm, type FormCell, type FormCells } from '../../addon/workbook/pocket/snapshotForm';
import { tripFigures, tripNames } from '../../addon/workbook/pocket/tripFigures';
import { readTyped } from '../../addon/workbook/pocket/typedEntry';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/addresses';
import { formats, type FormatName } from '../../sheets-templates/look';
import { isEntry, type TemplateCell } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { withRowsInserted } from '../support/headlessSnapshot';
import { templateOf } from '../support/uniqueBook';

describe('what a cell shows', () => {
  const numbers = [0, 1, -1, 0.4, 0.5, 0.25, -0.04, 2.345, 1234.5, 999.95, -1234567.891, 45, 630, 5, 360, 46351, 46351.25];

  // The library by which the grid shows numbers.
  it.each(Object.keys(formats).filter((name) => name !== 'text' && name !== 'general') as FormatName[])('is what the grid shows, as %s', (format) => {
    const shown = (value: number): string => numfmt.format(formats[format], value).replace(/^-(?=[0.]*$)/, '');
    const days = /y/.test(formats[format]);
    const given = days ? numbers.filter((value) => value > 40_000) : numbers;
    expect(given.map((value) => shownText(value, format))).toEqual(given.map(shown));
  });

  it('without a format is the number as people write it', () => {
    expect([0.1 + 0.2, 1 / 3, 12, -0.5, 1_234_567].map((value) => shownText(value))).toEqual(['0.3', '0.3333333333', '12', '-0.5', '1234567']);
    expect([shownText(''), shownText(' as typed '), shownText(true), shownText('#N/A', 'one')]).toEqual(['', 'as typed', 'TRUE', '#N/A']);
  });
});

describe('what is typed', () => {
  const number = { rule: { kind: 'number', minimum: 0, maximum: 600 }, help: 'Minutes.', pattern: '#,##0' } as const;
  const choices = { rule: { kind: 'choices', choices: ['09', '27'], values: new Map([['27', 27]]) }, help: 'A runway.', pattern: '@' } as const;
  const day = { rule: { kind: 'date' }, help: 'A date, such as 2026-11-28.', pattern: 'yyyy-mm-dd' } as const;
  const text = { rule: undefined, help: '', pattern: '@' } as const;
  const free = { rule: undefined, help: '', pattern: '000' } as const;

  it.each([
    ['45', number, 45],
    ['6,5', number, 6.5],
    ['-0', { ...number, rule: undefined }, -0],
    ['', number, ''],
    ['27', choices, 27],
    ['09', choices, '09'],
    ['2026-11-28', day, 46354],
    ['09', text, '09'],
    ['1,500', text, '1,500'],
    ['VRB', free, 'VRB'],
    ['28.11.2026', { ...day, rule: undefined }, 46_354],
    ['1.234,50', free, 1234.5],
    ['220', free, 220],
  ] as const)('%s is taken', (given, look, content) => expect(readTyped(given, look)).toEqual({ content }));

  it.each([
    ['9999', number, '"9999" is not taken here. Minutes.'],
    ['-1', number, '"-1" is not taken here. Minutes.'],
    ['many', number, '"many" is not taken here. Minutes.'],
    ['1,500', number, '"1,500" can be two numbers. Type it without a comma: 1500 or 1.500. Nothing was changed.'],
    ['28', choices, '"28" is not taken here. A runway.'],
    ['2026-02-30', day, '"2026-02-30" is no day. Days are read as 2026-11-26, 26.11.2026 or 26 Nov 2026. Nothing was changed.'],
    ['3/4/2026', day, '"3/4/2026" can be two days. Type it as 2026-04-03 or as 2026-03-04. Nothing was changed.'],
    ['46354', day, '"46354" is not taken here. A date, such as 2026-11-28.'],
    ['46354', { ...day, rule: undefined, help: '' }, '"46354" is not taken here. A date, such as 2026-11-28.'],
    ['=B5*2', text, '"=B5*2" begins as a formula. Type formulas into the sheet itself. Nothing was changed.'],
  ] as const)('%s is refused in the words of the rule', (given, look, refusal) => expect(readTyped(given, look)).toEqual({ refusal }));
});

describe('a sheet as a form', () => {
  let workbook: Awaited<ReturnType<typeof openHeadless>>;
  let snapshot: WorkbookSnapshot;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
    snapshot = workbook.snapshot();
  });
  afterAll(() => workbook.dispose());

  const formOf = (of: WorkbookSnapshot, name: string): FormCells => {
    const sheet = of.sheets.find((one) => one.name === name);
    const form = sheet && snapshotForm(of, sheetTemplates, sheet);
    if (form === undefined) throw new Error(`no form of ${name}`);
    return form;
  };
  const cellAt = (key: 'trip' | 'fields' | 'start', row: number, column: number): TemplateCell => {
    const found = templateOf(key).cells.find((one) => one.row === row && one.column === column);
    if (found === undefined) throw new Error('no cell');
    return found;
  };
  const tripCell = (of: WorkbookSnapshot, row: number, column = 2): FormCell | undefined =>
    formOf(of, 'Trip sheet').cellOf(cellAt('trip', row, column));

  it('has the choices of another sheet, as they are there now', () => {
    expect(tripCell(snapshot, tripRows.field)?.rule).toMatchObject({ kind: 'choices', choices: expect.arrayContaining(['Tansy Ridge']) as unknown });
    expect(tripCell(snapshot, tripRows.night)?.rule).toMatchObject({ choices: ['yes', 'no'] });
    expect(tripCell(snapshot, tripRows.reserve)).toMatchObject({ shown: '45', content: 45, isEntry: true, help: 'Minutes.' });
  });

  it('knows an answer from an entry', () => {
    expect(tripCell(snapshot, 3)).toMatchObject({ shown: 'OK', isEntry: false, hasFormula: true });
  });

  it('finds an entry where it stands after rows were put in', () => {
    const moved = withRowsInserted(snapshot, 'Trip sheet', tripRows.reserve, 2);
    expect(tripCell(moved, tripRows.reserve)).toMatchObject({ row: tripRows.reserve + 2, shown: '45', isEntry: true });
  });

  it('leads to the sheets of its own set', () => {
    const links = templateOf('start').cells.filter(({ goesTo }) => goesTo === 'trip');
    expect(links.length).toBeGreaterThan(0);
    expect(formOf(snapshot, 'Start').cellOf(links[0] as TemplateCell)?.goesTo).toBe('Trip sheet');
  });

  it('has no form of a sheet whose keys are gone', () => {
    const [trip] = snapshot.sheets.filter(({ mark }) => mark?.key === 'trip');
    expect(trip && snapshotForm(snapshot, sheetTemplates, { ...trip, formulas: [] })).toBeUndefined();
  });

  it('never offers a cell with a formula of ours for typing, in any sheet', () => {
    const offered = sheetTemplates.flatMap((template) => {
      const form = formOf(snapshot, template.name);
      return template.cells.filter((cell) => !isEntry(cell) && form.cellOf(cell)?.isEntry === true).map(({ row, column }) => address(row, column));
    });
    expect(offered).toEqual([]);
  });

  it('types only into columns that are entries throughout when rows were put into a list', () => {
    const fields = templateOf('fields');
    const first = fields.cells.find((cell) => isEntry(cell) && cell.column === 1) as TemplateCell;
    const run = fields.cells.filter(({ column, row, style }) => column === 1 && row >= first.row && isEntry({ style }));
    const length = run.findIndex(({ row }, index) => row !== first.row + index);
    const last = first.row + (length < 0 ? run.length : length) - 1;
    const moved = withRowsInserted(snapshot, 'Fields', first.row + 1, 3);
    const rows = formOf(moved, 'Fields').rowsOf(first.row, last, first);
    expect([rows.length, rows.every((cell) => cell.isEntry)]).toEqual([last - first.row + 4, true]);
  });

  it('tells the verdict of the trip, its reasons and its day', () => {
    const names = tripNames(
      snapshot.sheets.flatMap(({ name, mark }) => (mark === undefined ? [] : [{ name, mark }])),
      'Fields',
    );
    const values: Record<string, unknown[][]> = {
      trip_verdict: [['NO']],
      trip_reasons: [
        ['Fuel', 'OK', ''],
        ['Pilot', 'CHECK', 'soon'],
        ['Runway', 'NO', 'too short'],
        ['Hold', 'not judged', ''],
      ],
      as_of: [[46351]],
    };
    if (names === undefined) throw new Error('no trip');
    expect(tripFigures(names, (name) => values[name] ?? [], '2026-11-25')).toEqual({
      verdict: 'NO',
      items: [
        { item: 'Runway', word: 'NO', reason: 'too short' },
        { item: 'Pilot', word: 'CHECK', reason: 'soon' },
        { item: 'Hold', word: 'not judged', reason: '' },
      ],
      judgedOn: 'judged on 2026-11-25',
    });
    expect(tripFigures(names, () => [['#N/A']], '2026-11-25')).toMatchObject({
      verdict: 'UNKNOWN',
      judgedOn: expect.stringContaining('not known') as unknown,
    });
  });
});
