// The host's few functions in the bundle: the menu in every authorisation mode, the sheets, the panel's door.
import { beforeAll, describe, expect, it } from 'vitest';
import { hostFunctions } from '../../addon/build/hostFunctions';
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

function script(mode: AuthMode = 'FULL'): Script {
  const double = new Double('America/New_York', { panel });
  double.recorder.mode = mode;
  const bare = bareContext(code, double.globals());
  const ask = (question: string, given: unknown): Promise<unknown> => runOnServer({ answerPanel: bare.run('answerPanel') }, 'answerPanel', [question, given]);
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
    expect(items.map(([caption]) => caption)).toEqual(['Open the panel', 'Insert every sheet', ...sheetTemplates.map(({ name }) => `Insert ${name}`)]);
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

  it('tell a failure in a dialog, and leave nothing behind', () => {
    const { double, bare } = script();
    double.recorder.failAt = 30;
    bare.call('insertEverySheet');
    expect(double.app.ui.alerts).toEqual([expect.stringMatching(/^Rampwright: No sheet was inserted, .* It said: Service Spreadsheets failed/)]);
    expect(double.document.sheets.map(({ name }) => name)).toEqual(['Sheet1']);
    expect(double.document.names).toEqual([]);
  });

  it.each(hostFunctions.map(({ name }) => name).filter((name) => name !== 'answerPanel'))('%s does nothing as a formula', (name) => {
    const { double, bare } = script('CUSTOM_FUNCTION');
    expect(() => bare.call(name)).toThrow('You do not have permission');
    expect(double.document.sheets).toHaveLength(1);
  });
});

describe('the panel\'s door', () => {
  it('inserts sheets and answers in plain data', async () => {
    const { double, ask } = script();
    const key = sheetTemplates[0]?.key;
    expect(await ask('insertSheets', { keys: [key] })).toEqual({ answer: { inserted: double.document.sheets.slice(1).map(({ name }) => name), reads: [] } });
  });

  it('refuses in sentences', async () => {
    const { ask } = script();
    expect(await ask('insertSheets', { keys: ['nonsense'] })).toEqual({ refusal: 'There is no sheet "nonsense".' });
    expect(await ask('constructor', {})).toEqual({ refusal: 'The panel asked for "constructor", which this version cannot do. Close the panel and open it again.' });
    expect(await ask('putFormula', { formula: '=A1' })).toEqual({ refusal: 'Select a cell in the sheet first.' });
  });

  it('puts a formula into an empty cell only, with semicolons', async () => {
    const { double, ask } = script();
    const sheet = double.sheet('Sheet1');
    double.app.selected = new FakeRange(sheet, { row: 2, column: 3, lastRow: 2, lastColumn: 3 });
    expect(await ask('putFormula', { formula: '=PRESSURE_ALTITUDE(5883, 30.1)' })).toEqual({ answer: { cell: 'C2' } });
    expect(sheet.cell(2, 3).formula).toBe('=PRESSURE_ALTITUDE(5883; 30.1)');
    expect(await ask('putFormula', { formula: '=ISA_TEMPERATURE(0)' })).toEqual({ refusal: 'Cell C2 is not empty, and nothing is overwritten. Select an empty cell.' });
    double.app.selected = new FakeRange(sheet, { row: 9, column: 1, lastRow: 9, lastColumn: 1 });
    expect(await ask('putFormula', { formula: 'plain' })).toEqual({ refusal: 'A formula starts with an equals sign.' });
  });
});
