// What a check finds in the demo, and in the demo with one thing wrong at a time.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { chartBlocks } from '../../../addon/google/chartData';
import { openHeadless } from '../../../addon/local/engine/headless';
import { checkWorkbook, type CheckReport, type Finding } from '../../../addon/workbook/check/checkWorkbook';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../../addon/workbook/snapshot';
import { sheetTemplates } from '../../../sheets-templates';
import { address } from '../../../sheets-templates/build';
import type { SheetKey } from '../../../sheets-templates/template';
import { keysShown } from '../../../sheets-templates/keys';
import { tripCells } from '../../../sheets-templates/places';
import { tripRows } from '../../../sheets-templates/trip/rows';
import { workingRows } from '../../../sheets-templates/working/rows';
import { weightAndBalanceSheet } from '../../../sheets-templates/balance/sheet';
import { edited, typedOver } from '../../support/editedWorkbook';
import { headlessSnapshot } from '../../support/headlessSnapshot';
import { asCellValue } from '../../support/writtenSheet';

const today = '2026-11-25';
let demo: WorkbookSnapshot;
beforeAll(async () => {
  const workbook = await openHeadless(sheetTemplates);
  demo = headlessSnapshot(sheetTemplates, workbook, { sheet: 'Start', row: 1, column: 1 });
  workbook.dispose();
});

const check = (book: WorkbookSnapshot, day = today): CheckReport => checkWorkbook(book, sheetTemplates, day);
const found = ({ findings }: CheckReport, kind?: Finding['kind']): string[] =>
  findings.filter((one) => kind === undefined || one.kind === kind).map(({ sheet, cell, sentence }) => `${sheet} ${cell}: ${sentence}`);
/** Cells with what they show, a formula apart from its value. */
const written = (
  book: WorkbookSnapshot,
  sheet: string,
  cells: readonly (readonly [row: number, column: number, content: CellValue, shows?: CellValue])[],
): WorkbookSnapshot => {
  const typed = typedOver(
    book,
    sheet,
    cells.map(([row, column, content]) => ({ row, column, content })),
  );
  const shown = (one: SheetSnapshot): SheetSnapshot => ({
    ...one,
    values: one.values.map((line, row) =>
      line.map((value, column) => cells.find(([r, c, , shows]) => r === row + 1 && c === column + 1 && shows !== undefined)?.[3] ?? value),
    ),
  });
  return { ...typed, sheets: typed.sheets.map((one) => (one.name === sheet ? shown(one) : one)) };
};
const own = (name: string): SheetSnapshot => ({ name, values: [['']], formulas: [] });
const beside = (...sheets: readonly SheetSnapshot[]): WorkbookSnapshot => ({ ...demo, sheets: [...demo.sheets, ...sheets] });

const ownFormula = (key: SheetKey, row: number, column: number): string =>
  sheetTemplates.find((one) => one.key === key)?.cells.find((cell) => cell.row === row && cell.column === column)?.formula ?? '';
const fixed = (cell: string): string => cell.replace(/([A-Z]+)(\d+)/, '$$$1$$$2');

const computedFormulas = sheetTemplates.reduce(
  (sum, { cells }) => sum + cells.filter(({ formula, style }) => formula?.includes(keysShown) === false && !style.startsWith('input')).length,
  0,
);

describe('the demo', () => {
  it('has only its own UNKNOWN verdicts, each with its item and its reason', () => {
    const report = check(demo);
    expect(found(report)).toEqual([
      'Data ledger J19: Merle Tug, panel, navigation: UNKNOWN, no date of this series: look at the card.',
      'Data ledger B79: Merle Tug, all: UNKNOWN.',
      'Data ledger D79: Merle Tug, 28-day: UNKNOWN.',
      'Currency log J91: annual inspection, Sable Twin: UNKNOWN, no date written down; 14 CFR 91.409(a)(1).',
    ]);
    expect(report).toMatchObject({ compared: computedFormulas, callsInAll: 35, said: [] });
    expect(report.calls.map(({ sheet, calls }) => [sheet, calls])).toEqual([
      ['Trip working', 16],
      ['Route', 3],
      ['Descent and hold card', 4],
      ['Weight and balance', 2],
      ['Data ledger', 4],
      ['Load list', 1],
      ['Dues', 1],
      ['Currency log', 2],
      ['Fields', 1],
      ['Manual tables', 1],
    ]);
    expect(report.calls.every(({ advice }) => advice === undefined)).toBe(true);
  });

  it('is the same under other names, with semicolons, blanks and small letters', () => {
    const spelt = (text: string): string =>
      text
        .split('"')
        .map((part, index) =>
          index % 2 === 1
            ? part
            : part
                .replace(/'([^']+)'!/g, "'$1 2'!")
                .replace(/'Start 2'!/g, "'start 2'!")
                .replace(/\bas_of\b/g, 'AS_OF_2')
                .replace(/,/g, ' ; ')
                .replace(/IFERROR/g, 'iferror'),
        )
        .join('"');
    const renamed: WorkbookSnapshot = {
      ...demo,
      sheets: demo.sheets.map((sheet) => ({
        ...sheet,
        name: `${sheet.name} 2`,
        ...(sheet.mark?.key === 'start' && { mark: { ...sheet.mark, names: { ...sheet.mark.names, as_of: 'as_of_2' } } }),
        formulas: sheet.formulas.map((cell) => ({ ...cell, text: spelt(cell.text) })),
      })),
      names: demo.names.map((name) => ({ ...name, name: name.name === 'as_of' ? 'as_of_2' : name.name, sheet: `${name.sheet} 2` })),
    };
    expect(check(renamed).compared).toBe(computedFormulas);
    expect(found(check(renamed)).map((line) => line.replace(/ 2 /, ' '))).toEqual(found(check(demo)));
  });

  it('is not disturbed by the data that a host lays beside a sheet for its chart', () => {
    const cells = chartBlocks(weightAndBalanceSheet)
      .flatMap((block) => block.cells)
      .map(
        ({ row, column, value, formula }) =>
          [row, column, formula ?? (value === undefined ? '' : asCellValue(value)), formula === undefined ? undefined : '#N/A'] as const,
      );
    expect(found(check(written(demo, 'Weight and balance', cells as never)))).toEqual(found(check(demo)));
  });
});

describe('formulas that are not the own ones any more', () => {
  const formulas = (book: WorkbookSnapshot): string[] => found(check(book), 'formula');

  it('are found: typed over, changed, gone', () => {
    const [row, column] = [tripRows.timeEnRoute, 2];
    const own = ownFormula('trip', row, column);
    const said = own.length > 160 ? `${own.slice(0, 160)} ...` : own;
    const where = `Trip sheet ${address(row, column)}`;
    expect(formulas(written(demo, 'Trip sheet', [[row, column, 31]]))).toEqual([
      `${where}: Holds "31", typed over its formula: it is not computed any more. The sheet's own is ${said}`,
    ]);
    expect(formulas(written(demo, 'Trip sheet', [[row, column, '']]))).toEqual([
      `${where}: The formula of this cell is gone. The sheet's own is ${said}`,
    ]);
    const others = [
      own.replace('*60', '*50'),
      own.replace(`B${tripRows.groundspeed}>0`, `B${tripRows.minutesTyped}>0`),
      own.replace(`B${tripRows.groundspeed}>0`, `$B${tripRows.groundspeed}>0`),
      own.replace('"")', '" ")'),
    ];
    expect(new Set([own, ...others]).size).toBe(5);
    for (const text of others)
      expect(formulas(written(demo, 'Trip sheet', [[row, column, text]]))).toEqual([
        expect.stringContaining(`${where}: The formula was changed. The sheet's own is =IF(B`),
      ]);
  });

  it('are found where they read a sheet of another kind, and not where an entry was typed over', () => {
    expect(formulas(written(demo, 'Weight and balance', [[36, 3, "='Data ledger'!$B$44"]]))).toEqual([
      `Weight and balance C36: The formula was changed. The sheet's own is ='TRIP SHEET'!${fixed(tripCells.tripFuel)}`,
    ]);
    expect(
      formulas(
        written(demo, 'Trip sheet', [
          [tripRows.altimeter, 2, 1013],
          [tripRows.temperature, 2, `=C${tripRows.temperature}`],
          [tripRows.groundspeed, 2, ''],
        ]),
      ),
    ).toEqual([]);
  });

  it('are not made out of rows and columns that were inserted anywhere', () => {
    const rows = fc.record({
      sheet: fc.constantFrom(...sheetTemplates.map(({ name }) => name)),
      at: fc.integer({ min: 1, max: 120 }),
      inserted: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(rows, { minLength: 1, maxLength: 3 }), (insertions) => {
        const report = check(insertions.reduce<WorkbookSnapshot>((book, one) => edited(book, { lines: 'row', ...one }), demo));
        expect(found(report, 'formula')).toEqual([]);
        const all = found(report, 'moved').reduce((sum, line) => sum + Number(/(\d+) of its \d+ formulas/.exec(line)?.[1]), report.compared);
        expect(all).toBe(computedFormulas);
        expect(report.compared).toBeGreaterThan(computedFormulas / 2);
      }),
      { numRuns: 40 },
    );
    const column = check(edited(demo, { sheet: 'Trip sheet', lines: 'column', at: 5, inserted: 1 }));
    expect(found(column, 'formula')).toEqual([]);
  }, 120_000);

  it('are found behind inserted rows too', () => {
    const moved = edited(edited(demo, { sheet: 'Trip sheet', lines: 'row', at: 12, inserted: 2 }), {
      sheet: 'Weight and balance',
      lines: 'row',
      at: 12,
      inserted: 1,
    });
    expect(found(check(moved), 'moved')).toEqual([]);
    expect(formulas(written(moved, 'Trip sheet', [[tripRows.timeEnRoute + 2, 2, 31]]))).toEqual([
      expect.stringContaining(`Trip sheet B${tripRows.timeEnRoute + 2}: Holds "31", typed over its formula`),
    ]);
    expect(formulas(written(moved, 'Weight and balance', [[37, 3, "='Trip sheet'!$B$45"]]))).toEqual([
      `Weight and balance C37: The formula was changed. The sheet's own is ='TRIP SHEET'!$H$${tripRows.tripFuel + 2}`,
    ]);
  });

  it('that cannot be compared are told, and so are sheets of another version', () => {
    const removed = check(edited(demo, { sheet: 'Descent and hold card', lines: 'row', at: 7, removed: 1 }));
    expect(found(removed, 'moved').join()).toMatch(
      /Descent and hold card A1: .* formulas could not be compared with its own \(.+\)\. Look at them yourself\./,
    );
    const marks = (version: number): WorkbookSnapshot => ({
      ...demo,
      sheets: demo.sheets.map((sheet) => (sheet.mark?.key === 'card' ? { ...sheet, mark: { ...sheet.mark, version } } : sheet)),
    });
    const version = sheetTemplates.find(({ key }) => key === 'card')?.version ?? 0;
    expect(found(check(marks(0)), 'moved')).toEqual([
      expect.stringMatching(
        /^Trip sheet A1: Rows, columns or cells of this sheet, or of one that it reads, were taken out, or that one is of another version: \d+ of its \d+ formulas could not be compared with its own \(.*\bDescent\b.*\)\. Look at them yourself\.$/,
      ),
      expect.stringMatching(/^Route A1: .* 1 of its \d+ formulas could not be compared with its own \(leg\)\. Look at them yourself\.$/),
      `Descent and hold card A1: This sheet is of version 0, today's is ${version}: its formulas were not compared. Bring it up to date to have them compared.`,
    ]);
    expect(found(check(marks(version + 1)), 'moved').join()).toContain('Reload the add-on: it is older than the sheet.');
  });

  it('that read a sheet which is gone are told', () => {
    const report = check({
      ...demo,
      sheets: demo.sheets.filter(({ name }) => name !== 'Start'),
      names: demo.names.filter(({ sheet }) => sheet !== 'Start'),
    });
    expect(found(report, 'formula')).toContain(
      'Trip sheet A1: This sheet reads the sheet "Start", which is not in this document any more. Insert it, and set the formulas to it, or insert both anew.',
    );
  });
});

describe('the day', () => {
  const day = (content: CellValue, shows?: CellValue, on = today): string[] =>
    found(check(written(demo, 'Start', [shows === undefined ? [6, 1, content] : [6, 1, content, shows]]), on), 'day');

  it.each([
    ['', undefined, 'as_of is blank, so nothing can be judged.'],
    ['25.11.2026', undefined, 'as_of holds "25.11.2026", which is no date.'],
    [7, undefined, 'as_of holds "7", which is no date.'],
    [46350, undefined, 'as_of is 2026-11-24, earlier than today, 2026-11-25'],
    [46352.5, undefined, 'as_of is 2026-11-26, later than today, 2026-11-25'],
    ['=TODAY()-1', 46351, 'as_of is a formula other than =TODAY()'],
    ['=NOW()', 46351.4, 'as_of is a formula other than =TODAY()'],
  ] as const)('%s is told', (content, shows, sentence) => expect(day(content, shows)).toEqual([expect.stringContaining(`Start A6: ${sentence}`)]));

  it('of today, and =TODAY(), are passed over', () => {
    expect(day(46351)).toEqual([]);
    expect(day('= today( )', 46351)).toEqual([]);
    // The spreadsheet's clock may be a zone ahead.
    expect(day('=TODAY()', 46351, '2026-11-24')).toEqual([]);
  });

  it('is found after rows were inserted, and missed where its name is gone', () => {
    const moved = edited(demo, { sheet: 'Start', lines: 'row', at: 6, inserted: 2 });
    expect(found(check(moved, '2026-11-27'), 'day')).toEqual([expect.stringContaining('Start A8: as_of is 2026-11-25, earlier than today')]);
    expect(found(check({ ...demo, names: demo.names.filter(({ name }) => name !== 'as_of') }), 'day')).toEqual([
      expect.stringContaining('Start A6: The name as_of no longer means a cell of this sheet'),
    ]);
  });
});

describe('volatile cells', () => {
  const volatile = (book: WorkbookSnapshot): string[] => found(check(book), 'volatile');
  const mine = (cells: Parameters<typeof written>[2]): WorkbookSnapshot => written(beside(own('Mine')), 'Mine', cells);

  it('that feed a call are told with the call and their own place, through cells, ranges, names and sheets', () => {
    expect(volatile(mine([[1, 1, '=ISA_TEMPERATURE(NOW())']]))).toEqual([
      'Mine A1: ISA_TEMPERATURE is fed by NOW() in its own formula. Google Sheets refuses that. Type the value in its place; for a day =TODAY() is allowed.',
    ]);
    expect(
      volatile(
        mine([
          [1, 1, '=RAND()'],
          [2, 1, '=A1*2'],
          [3, 1, '=ISA_TEMPERATURE(A2)'],
        ]),
      ),
    ).toEqual([expect.stringContaining('Mine A3: ISA_TEMPERATURE is fed by RAND() in A1, through A2.')]);
    expect(
      volatile(
        mine([
          [5, 3, '=randbetween(1,6)'],
          [1, 1, '=BALANCE_TOTAL(B1:C9,B1:C9)'],
        ]),
      ),
    ).toEqual([expect.stringContaining('Mine A1: BALANCE_TOTAL is fed by RANDBETWEEN() in C5.')]);
    expect(volatile(written(mine([[1, 1, '=NOW()', 46351.4]]), 'Trip sheet', [[tripRows.gradient, 2, '=Mine!A1']]))).toEqual([
      expect.stringContaining(
        `Trip working A${workingRows.climbBrief.first}: CLIMB_BRIEF is fed by NOW() in A1 of "Mine", through B${tripRows.gradient} of "Trip sheet".`,
      ),
    ]);
    const asOf = volatile(written(demo, 'Start', [[6, 1, '=NOW()', 46351.4]]));
    expect(asOf).toContainEqual(expect.stringContaining('Data ledger G10: LEDGER_CARDS is fed by NOW() in A6 of "Start".'));
    expect(asOf.length).toBeGreaterThan(3);
  });

  it('that spill are told for every cell that they fill', () => {
    expect(
      volatile(
        mine([
          [1, 1, '=RANDARRAY(3)', 0.1],
          [2, 1, 0.2],
          [3, 1, 0.3],
          [1, 3, '=ISA_TEMPERATURE(A3)'],
        ]),
      ),
    ).toHaveLength(1);
    expect(
      volatile(
        mine([
          [1, 1, '=QUERY(E1:E9,IF(NOW()>0,"select E"))', 1],
          [2, 1, 2],
          [1, 3, '=ISA_TEMPERATURE(A2)'],
        ]),
      ),
    ).toHaveLength(1);
    expect(
      volatile(
        mine([
          [1, 1, '=RAND()', 0.1],
          [2, 1, 0.2],
          [3, 1, 0.3],
          [1, 3, '=ISA_TEMPERATURE(A3)'],
        ]),
      ),
    ).toEqual([]);
  });

  it('are passed over where they feed nothing of ours, in strings, and TODAY always', () => {
    expect(
      volatile(
        mine([
          [1, 1, '=NOW()'],
          [2, 1, '=A1+1'],
          [3, 1, '=ISA_TEMPERATURE(B1)&A1'],
          [4, 1, '=ISA_TEMPERATURE("NOW()")'],
        ]),
      ),
    ).toEqual([]);
    expect(volatile(written(demo, 'Start', [[6, 1, '=TODAY()']]))).toEqual([]);
  });

  it('that read themselves in a circle end', () =>
    expect(
      volatile(
        mine([
          [1, 1, '=B1+NOW()'],
          [1, 2, '=A1'],
          [1, 3, '=ISA_TEMPERATURE(B1)'],
        ]),
      ),
    ).toHaveLength(1));
});

describe('errors', () => {
  const errors = (book: WorkbookSnapshot): string[] => found(check(book), 'error');
  const mine = (cells: Parameters<typeof written>[2]): WorkbookSnapshot => written(beside(own('Mine')), 'Mine', cells);

  it.each([
    ['=ISA_TEMPERATURE("x")', '#ERROR!', 'the function refuses what it is given. Select the cell to see why.'],
    ['=A9/B9', '#DIV/0!', 'the formula divides by a blank or by 0.'],
    ['=#REF!+1', '#REF!', 'the formula reads cells that are gone.'],
    ['=HOLD_BRIEF(A9)', '#REF!', 'its answer finds no room: empty the cells below it and to its right.'],
    ['=ISA_TEMPERATURE(A9)', '#NAME?', 'a function or a name in the formula is not known here. Open the menu of Rampwright once'],
    ['=MATCH(1,A9:B9,0)', '#N/A', 'what the formula looks for is not there.'],
    ['=A9+"x"', '#VALUE!', 'a value that the formula reads is of the wrong kind.'],
  ])('%s that shows %s is told', (formula, shows, sentence) =>
    expect(errors(mine([[1, 1, formula, shows]]))).toEqual([expect.stringContaining(`Mine A1: Shows ${shows}: ${sentence}`)]),
  );

  it('are told where they come from, and not where the formula asks for them', () => {
    expect(
      errors(
        mine([
          [1, 1, '=A9/B9', '#DIV/0!'],
          [2, 1, '=A1+1', '#DIV/0!'],
          [3, 1, '=NA()', '#N/A'],
          [4, 1, 'see #N/A'],
        ]),
      )[1],
    ).toBe('Mine A2: Shows #DIV/0!, because it reads A1, which shows #DIV/0!.');
    expect(
      errors(
        mine([
          [3, 1, '=IF(A9,1,NA())', '#N/A'],
          [4, 1, 'see #N/A'],
          [5, 1, '#NOTE'],
        ]),
      ),
    ).toEqual([]);
  });

  it('are sentences of our functions too, in a row of their answers, once', () => {
    const sentence = 'HOLD_ENTRY: inbound_course must be 0 to 360 degrees magnetic; got "N/A" (row 3).';
    expect(
      errors(
        mine([
          [3, 1, sentence],
          [9, 1, '=A3', sentence],
          [10, 1, 'NOTE: mine'],
        ]),
      ),
    ).toEqual([`Mine A3: ${sentence}`]);
  });

  it('are told as a few where there are many', () => {
    const many = Array.from({ length: 57 }, (_, index) => [index + 1, 1, '#N/A'] as const);
    const lines = errors(mine(many));
    expect(lines).toHaveLength(21);
    expect(lines[20]).toBe('Mine A21: Shows #N/A. And 36 more like it.');
    expect(errors(mine(many.slice(0, 21)))[20]).toBe('Mine A21: Shows #N/A.');
  });
});

describe('UNKNOWN', () => {
  it('on top of a sheet is told only where no row says it, and in the legend never', () => {
    const shown = (cells: readonly (readonly [number, number])[]): WorkbookSnapshot => ({
      ...demo,
      sheets: demo.sheets.map((sheet) =>
        sheet.name === 'Trip sheet'
          ? {
              ...sheet,
              values: sheet.values.map((line, row) =>
                line.map((value, column) => (cells.some(([r, c]) => r === row + 1 && c === column + 1) ? 'UNKNOWN' : value)),
              ),
            }
          : sheet,
      ),
    });
    const ofTrip = (book: WorkbookSnapshot): string[] =>
      check(book)
        .findings.filter(({ kind, sheet }) => kind === 'unknown' && sheet === 'Trip sheet')
        .map(({ cell }) => cell);
    expect(
      ofTrip(
        shown([
          [3, 2],
          [8, 7],
        ]),
      ),
    ).toEqual(['G8']);
    expect(ofTrip(shown([[3, 2]]))).toEqual(['B3']);
    expect(check(demo).findings.filter(({ sheet }) => sheet === 'Start')).toEqual([]);
  });

  it('on a sheet of the user is told with the words of its row', () => {
    const book = written(beside(own('Mine')), 'Mine', [
      [2, 1, 'wing'],
      [2, 2, 12],
      [2, 3, 'UNKNOWN'],
      [2, 4, 'not weighed'],
    ]);
    expect(found(check(book), 'unknown')).toContain('Mine C2: wing: UNKNOWN, not weighed.');
  });
});

describe('calls', () => {
  it('are counted on every sheet, and one in each row is told', () => {
    const column = Array.from({ length: 40 }, (_, index) => [index + 2, 3, `=ISA_TEMPERATURE(A${index + 2})+PRESSURE_ALTITUDE(1,1013)`] as const);
    const { calls, callsInAll } = check(written(beside(own('Mine')), 'Mine', column));
    expect(callsInAll).toBe(35 + 80);
    expect(calls.find(({ sheet }) => sheet === 'Mine')).toMatchObject({
      calls: 80,
      advice: expect.stringContaining('C2 to C41 hold 40 calls of ISA_TEMPERATURE, one in each row. One call over the whole range, in C2') as string,
    });
  });
});

it('says plainly that a document has no sheets of ours, and looks at its own all the same', () => {
  const report = check({ sheets: [{ name: 'Mine', values: [['#REF!']], formulas: [] }], names: [], selected: { sheet: 'Mine', row: 1, column: 1 } });
  expect(report.said).toEqual([
    'This document has no sheets of Rampwright. Its own sheets were looked through for errors, for UNKNOWN and for volatile cells that feed our functions.',
  ]);
  expect(report).toMatchObject({ compared: 0, calls: [], callsInAll: 0, findings: [{ kind: 'error', cell: 'A1' }] });
});
