// The host's few functions in the bundle: the menu in every authorisation mode, the sheets, the panel's door.
import { beforeAll, describe, expect, it } from 'vitest';
import { hostFunctions } from '../../addon/build/hostFunctions';
import { demoOn } from '../../addon/workbook/demoOn';
import { serialFromIso } from '../../addon/workbook/serialDates';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { FakeRange } from '../google/double/range';
import type { AuthMode } from '../google/double/recorder';
import { Double } from '../google/double/services';
import { runOnServer } from '../google/double/scriptRun';
import { bareContext, type BareContext } from './bareContext';
import { builtFiles } from './built';

let code = '';
let panel = '';

beforeAll(async () => {
  const files = await builtFiles();
  code = files['Code.js'];
  panel = files['panel.html'];
});

interface Script {
  readonly double: Double;
  readonly bare: BareContext;
  readonly ask: (question: string, given: unknown) => Promise<unknown>;
}

function script(mode: AuthMode = 'FULL', zone = 'America/New_York'): Script {
  const double = new Double(zone, { panel });
  double.recorder.mode = mode;
  const bare = bareContext(code, double.globals());
  const ask = (question: string, given: unknown): Promise<unknown> =>
    runOnServer({ answerPanel: bare.run('answerPanel') }, 'answerPanel', [question, given]);
  return { double, bare, ask };
}

describe('the menu', () => {
  it.each(['NONE', 'LIMITED', 'FULL'] as const)('is built in AuthMode.%s, with nothing but the user interface', (mode) => {
    for (const start of ['onOpen', 'onInstall']) {
      const { double, bare } = script(mode);
      bare.call(start, { authMode: mode });
      expect(double.app.ui.menus).toHaveLength(1);
      expect(double.app.ui.menus[0]?.shown).toBe(true);
      expect(double.recorder.calls.filter(({ name }) => !/^(SpreadsheetApp\.getUi|Ui\.createAddonMenu|Menu\.\w+)$/.test(name))).toEqual([]);
    }
  });

  it('offers the panel, every sheet and each sheet, by functions that exist', () => {
    const { double, bare } = script();
    bare.call('onOpen', {});
    const items = double.app.ui.menus[0]?.items ?? [];
    expect(items.map(([caption]) => caption)).toEqual([
      'Open the panel',
      'Insert every sheet',
      ...sheetTemplates.map(({ name }) => `Insert ${name}`),
    ]);
    for (const [, command] of items) expect(hostFunctions.map(({ name }) => name)).toContain(command);
    for (const [, command] of items) expect(bare.functions).toContain(command);
  });

  it('loading the script calls no service', () => expect(script('NONE').double.recorder.calls).toEqual([]));
});

describe('menu commands', () => {
  it('open the panel', () => {
    const { double, bare } = script();
    bare.call('openPanel');
    expect(double.app.ui.sidebar).toMatchObject({ title: 'Rampwright' });
    expect(double.app.ui.sidebar?.getContent()).toContain('<div id="panel">');
  });

  it('insert every sheet and say so', () => {
    const { double, bare } = script();
    bare.call('insertEverySheet');
    expect(double.document.sheets.map(({ name }) => name)).toEqual(['Sheet1', ...sheetTemplates.map(({ name }) => name)]);
    expect(double.document.toasts).toEqual([`Rampwright: Inserted: ${sheetTemplates.map(({ name }) => name).join(', ')}.`]);
  });

  it('insert one sheet with what it reads', () => {
    for (const { key, name } of sheetTemplates) {
      const { double, bare } = script();
      bare.call(`insert${key.charAt(0).toUpperCase()}${key.slice(1)}Sheet`);
      expect(double.document.sheets.map((sheet) => sheet.name)).toContain(name);
    }
  });

  // The two zones never have the same day.
  it.each(['Pacific/Kiritimati', 'Pacific/Pago_Pago'])(
    'write the demonstration for the day of today in the zone of the spreadsheet, %s',
    async (zone) => {
      const today = new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format();
      const written = demoOn(sheetTemplates, today).find(({ key }) => key === 'trip');
      for (const insert of [
        ({ bare }: Script) => Promise.resolve(bare.call('insertEverySheet')),
        ({ ask }: Script) => ask('insertSheets', { keys: ['trip'] }),
      ]) {
        const made = script('FULL', zone);
        await insert(made);
        const sheet = made.double.sheet('Trip sheet');
        expect(made.double.sheet('Start').cell(6, 1).value).toBe(serialFromIso(today));
        for (const { row, column, value, reportOf } of written?.cells ?? []) {
          if (typeof value === 'object') expect(sheet.cell(row, column).value).toBe(serialFromIso(value.date));
          if (reportOf !== undefined) expect(sheet.cell(row, column).value).toBe(value);
        }
      }
    },
  );

  it('tell a failure in a dialog, and leave nothing behind', () => {
    const { double, bare } = script();
    double.recorder.failAt = 30;
    bare.call('insertEverySheet');
    expect(double.app.ui.alerts).toEqual([expect.stringMatching(/^Rampwright: No sheet was inserted, .* It said: Service Spreadsheets failed/)]);
    expect(double.document.sheets.map(({ name }) => name)).toEqual(['Sheet1']);
    expect(double.document.names).toEqual([]);
  });

  it.each(hostFunctions.map(({ name }) => name).filter((name) => name !== 'answerPanel' && name !== 'attendRun'))(
    '%s does nothing as a formula',
    (name) => {
      const { double, bare } = script('CUSTOM_FUNCTION');
      expect(() => bare.call(name)).toThrow('You do not have permission');
      expect(double.document.sheets).toHaveLength(1);
    },
  );
});

describe("the panel's door", () => {
  it('inserts sheets and answers in plain data', async () => {
    const { double, ask } = script();
    const key = sheetTemplates[0]?.key;
    expect(await ask('insertSheets', { keys: [key] })).toEqual({
      answer: { inserted: double.document.sheets.slice(1).map(({ name }) => name), reads: [] },
    });
  });

  it('refuses in sentences', async () => {
    const { ask } = script();
    expect(await ask('insertSheets', { keys: ['nonsense'] })).toEqual({ refusal: 'There is no sheet "nonsense".' });
    expect(await ask('constructor', {})).toEqual({
      refusal: 'The panel asked for "constructor", which this version cannot do. Close the panel and open it again.',
    });
    expect(await ask('putFormula', { formula: '=A1' })).toEqual({ refusal: 'Select a cell in the sheet first.' });
  });

  it('puts a formula into an empty cell only, with semicolons', async () => {
    const { double, ask } = script();
    const sheet = double.sheet('Sheet1');
    double.app.selected = new FakeRange(sheet, { row: 2, column: 3, lastRow: 2, lastColumn: 3 });
    expect(await ask('putFormula', { formula: '=PRESSURE_ALTITUDE(5883, 30.1)' })).toEqual({ answer: { cell: 'C2' } });
    expect(sheet.cell(2, 3).formula).toBe('=PRESSURE_ALTITUDE(5883; 30.1)');
    expect(await ask('putFormula', { formula: '=ISA_TEMPERATURE(0)' })).toEqual({
      refusal: 'Cell C2 is not empty, and nothing is overwritten. Select an empty cell.',
    });
    double.app.selected = new FakeRange(sheet, { row: 9, column: 1, lastRow: 9, lastColumn: 1 });
    expect(await ask('putFormula', { formula: 'plain' })).toEqual({ refusal: 'A formula starts with an equals sign.' });
  });
});

describe("the workbook through the panel's door", () => {
  /** Every sheet inserted, the Trip sheet in sight, and what was typed into its entry cells of whole numbers. */
  function filled(): Script {
    const made = script();
    made.bare.call('insertEverySheet');
    const { double } = made;
    const start = double.sheet('Start');
    start.cell(6, 1).value = 46150;
    for (const { row, column } of numberEntries) double.sheet('Trip sheet').cell(row, column).value = 17;
    double.document.setActiveSheet(double.sheet('Trip sheet'));
    return made;
  }

  const trip = sheetTemplates.find(({ key }) => key === 'trip');
  const numberEntries = trip?.cells.filter(({ style, value, format }) => style === 'input' && typeof value === 'number' && format === 'whole') ?? [];
  const answerOf = (reply: unknown): unknown => (reply as { readonly answer?: unknown }).answer;

  it("is read as plain data, its days as numbers, by Dates of another realm than the script's", async () => {
    const { ask, double } = filled();
    double.sheet('Trip sheet').getRange('B3').activate();
    const snapshot = answerOf(await ask('readWorkbook', { sheets: 'all' })) as WorkbookSnapshot;
    expect(snapshot.sheets.map(({ name }) => name)).toEqual(double.document.sheets.map(({ name }) => name));
    expect(snapshot.sheets.map(({ mark }) => mark?.key)).toEqual([undefined, ...sheetTemplates.map(({ key }) => key)]);
    expect(snapshot.sheets[1]?.values[5]?.[0]).toBe(46150);
    expect(snapshot.names.find(({ name }) => name === 'as_of')).toEqual({ name: 'as_of', sheet: 'Start', range: 'A6' });
    expect(snapshot.selected).toEqual({ sheet: 'Trip sheet', row: 3, column: 2 });
    const shown = answerOf(await ask('readWorkbook', { sheets: 'shown' })) as WorkbookSnapshot;
    expect(shown.sheets.map(({ name }) => name)).toEqual(['Trip sheet', 'Start']);
  });

  it('is refused while a formula is being worked out', async () => {
    const { ask, double } = filled();
    double.sheet('Trip sheet').cell(3, 3).value = 'Loading...';
    const refusal = 'Some formulas are still being worked out. Wait until no cell shows Loading, then ask again.';
    expect(await ask('readWorkbook', { sheets: 'shown' })).toEqual({ refusal });
    expect(await ask('freezeSheet', {})).toEqual({ refusal });
  });

  it('shows a cell, or says that it is gone', async () => {
    const { ask } = filled();
    expect(await ask('goTo', { sheet: 'Data ledger', row: 12, column: 3 })).toEqual({ answer: { cell: 'C12' } });
    expect(await ask('goTo', { sheet: 'Elsewhere', row: 12, column: 3 })).toEqual({
      refusal: 'There is no sheet "Elsewhere" in this document any more.',
    });
  });

  it('is frozen sheet by sheet', async () => {
    const { ask, double } = filled();
    const formulas = [...double.sheet('Trip sheet').cells.values()].filter(({ formula }) => formula !== '').length;
    // That of the keys, which nobody sees, is not counted.
    expect(await ask('freezeSheet', {})).toEqual({ answer: { sheet: 'Trip sheet (values)', formulas: formulas - 1 } });
    expect([...double.sheet('Trip sheet (values)').cells.values()].filter(({ formula }) => formula !== '')).toEqual([]);
    expect([...double.sheet('Trip sheet').cells.values()].filter(({ formula }) => formula !== '')).toHaveLength(formulas);
  });

  it('is brought up to date with the entries that it is given', async () => {
    const { ask, double } = filled();
    const { sheets } = answerOf(await ask('readWorkbook', { sheets: 'all' })) as WorkbookSnapshot;
    const entries = sheets.flatMap(({ mark, values }) =>
      mark === undefined
        ? []
        : [
            {
              key: mark.key,
              cells:
                mark.key === 'trip' ? numberEntries.map(({ row, column }) => ({ row, column, content: values[row - 1]?.[column - 1] ?? '' })) : [],
            },
          ],
    );
    const names = sheetTemplates.map(({ name }) => name);
    expect(await ask('updateSheets', { set: sheets[1]?.mark?.set, entries })).toEqual({
      answer: { updated: names, kept: names.map((name) => `${name} (before)`) },
    });
    expect(numberEntries.length).toBeGreaterThan(0);
    for (const { row, column } of numberEntries) expect(double.sheet('Trip sheet').cell(row, column).value).toBe(17);
    // No invented number is left among the user's.
    expect(double.sheet('Start').cell(6, 1).value).toBe('');
    expect(await ask('updateSheets', { set: 'none', entries })).toEqual({
      refusal: expect.stringContaining('not in this document any more') as string,
    });
  });

  it.each(['NONE', 'CUSTOM_FUNCTION'] as const)('is closed in AuthMode.%s, with a sentence and nothing changed', async (mode) => {
    const { ask, double } = filled();
    double.recorder.mode = mode;
    for (const [question, given] of [
      ['readWorkbook', { sheets: 'all' }],
      ['goTo', { sheet: 'Start', row: 1, column: 1 }],
      ['freezeSheet', {}],
      ['updateSheets', { set: 'none', entries: [] }],
    ] as const) {
      expect(await ask(question, given)).toEqual({ refusal: expect.stringContaining('You do not have permission to call ') as string });
    }
    expect(double.document.sheets).toHaveLength(1 + sheetTemplates.length);
  });
});
