// A second witness for the double's surface: the lists of methods that an emulator's authors took from Google's own reference. Whatever the host
// calls must be there, with that many arguments of those kinds, and nothing is listed that the host does not call.
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import { bareContext } from '../bundle/bareContext';
import type { RecordedCall } from './double/recorder';
import { runOnServer } from './double/scriptRun';
import { Double } from './double/services';
import { FakeRange } from './double/range';
import { sheetTypes } from './double/sheet';
import { carriedEntries, typed, update } from './smallUpdate';
import { withoutPlatform } from './support';

interface Row {
  readonly name: string;
  readonly given: readonly string[];
}

const rows: readonly Row[] = readFileSync(new URL('reference/methods.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .map((line) => {
    const [, name = '', given = ''] = /^([\w.]+)\(([^)]*)\) -> /.exec(line) ?? [];
    return { name, given: given === '' ? [] : given.split(',') };
  });

/** An argument that the reference takes for this one. */
const numbers: readonly string[] = ['Integer', 'Number'];
const takes = (wanted: string, kind: string): boolean =>
  wanted === kind ||
  wanted === 'Object' ||
  kind === 'null' ||
  (kind === 'Integer' && numbers.includes(wanted)) ||
  // Enumerations are plain objects or texts in the double.
  (kind === 'Object' && /^(BorderStyle|ButtonSet|CopyPasteType|DeveloperMetadataVisibility)$/.test(wanted)) ||
  (kind === 'String' && wanted === 'WrapStrategy');

const fits = ({ name, given }: Pick<RecordedCall, 'name' | 'given'>, row: Row): boolean =>
  row.name === name && row.given.length === given.length && row.given.every((wanted, index) => takes(wanted, given[index] ?? ''));

const textOf = ({ name, given }: Row): string => `${name}(${given.join(',')})`;

/** Everything that the panel and the menu can do, in the built script, with a step that fails at the end. */
async function everything(): Promise<readonly RecordedCall[]> {
  const files = await googleFiles();
  const double = new Double('Europe/Paris', { panel: files['panel.html'] });
  const script = bareContext(files['Code.js'], double.globals());
  const ask = (question: string, given: unknown, run: string | null = null): Promise<unknown> =>
    runOnServer({ answerPanel: script.run('answerPanel') }, 'answerPanel', [question, given, run]);
  for (const command of ['onOpen', 'openPanel', 'insertEverySheet', 'insertCurrencySheet']) script.call(command);
  await ask('insertSheets', { keys: ['trip'] }, 'run 1');
  script.call('attendRun', { run: 'run 1', stop: true });
  await ask('insertSheets', { keys: ['trip'] }, 'run 1');
  double.document.insertSheet('Chart 1', 0).type = sheetTypes.OBJECT;
  // A copy made by hand has the mark of the other, which is then asked where it is.
  double.sheet('Fields').copyTo(double.document);
  const sheet = double.sheet('Sheet1');
  double.app.selected = new FakeRange(sheet, { row: 2, column: 3, lastRow: 2, lastColumn: 3 });
  for (const sheets of ['all', 'shown']) {
    await ask('readWorkbook', { sheets });
    double.document.active = double.sheet('Currency log');
  }
  for (const formula of ['=PRESSURE_ALTITUDE(5883, 30.1)', 'no formula']) await ask('putFormula', { formula });
  await ask('goTo', { sheet: 'Start', row: 2, column: 2 });
  await ask('freezeSheet', {});
  await ask('writeEntries', {
    entries: [{ sheet: 'Sheet1', row: 5, column: 1, content: 3, numberFormat: '0' }],
    copyFirst: { sheet: 'Trip sheet', suffix: ' old' },
  });
  await ask('addFlight', {
    sheet: 'Trip sheet',
    entries: [{ sheet: 'Trip sheet', row: 20, column: 2, content: '=IF(TRUE,1,2)', formula: true }],
    listed: [{ sheet: 'Flights of the day', row: 11, column: 3, content: '=IF(TRUE,1,2)', formula: true }],
  });
  await ask('changeCells', { changes: [{ sheet: 'Sheet1', row: 5, column: 1, before: [[3]], after: [[4]] }] });
  double.recorder.failAt = double.recorder.count('document') + 200;
  script.call('insertEverySheet');
  return double.recorder.calls;
}

/** An update of the small sheets, one that is taken back at its end among it. */
function updates(): readonly RecordedCall[] {
  const done = typed();
  // A formula where the template has a text: its cell needs another format.
  const entries = carriedEntries().map((one) => (one.key === 'start' ? { ...one, cells: [{ row: 6, column: 2, content: '=1+1' }] } : one));
  update(done, entries);
  const failed = typed();
  failed.recorder.failAt = done.recorder.count('document');
  expect(() => update(failed, entries)).toThrow('everything is as it was');
  return [...done.recorder.calls, ...failed.recorder.calls];
}

afterEach(withoutPlatform);

describe("Google's reference, as the emulator's authors took it down", () => {
  it('has every call of the host, and no other is listed', async () => {
    const made = new Map<string, RecordedCall>();
    for (const call of [...(await everything()), ...updates()]) made.set(textOf(call), call);
    const calls = [...made.values()];
    expect(calls.length).toBeGreaterThan(100);
    expect(calls.filter((call) => !rows.some((row) => fits(call, row))).map(textOf)).toEqual([]);
    expect(rows.filter((row) => !calls.some((call) => fits(call, row))).map(textOf)).toEqual([]);
  });
});
