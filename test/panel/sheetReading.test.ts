// The form's reading: it asks again while formulas wait, stops for any other refusal, and does not ask for ever.
import { describe, expect, it } from 'vitest';
import type { PanelHost } from '../../addon/panel/host';
import { readAnswers } from '../../addon/panel/sheetReading';
import { contentsOf, withContent } from '../../addon/workbook/cellChanges';
import type { SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { stillWorking } from '../../addon/workbook/waitingFormulas';

const workbook: WorkbookSnapshot = { sheets: [], names: [], selected: { sheet: 'Trip sheet', row: 1, column: 1 } };

function hostThat(refusals: readonly string[]): { readonly host: PanelHost; readonly asked: () => number } {
  let count = 0;
  const ask = (question: string, given: unknown): Promise<unknown> => {
    expect([question, given]).toEqual(['readWorkbook', { sheets: 'all' }]);
    const refusal = refusals[count];
    count += 1;
    return refusal === undefined ? Promise.resolve(workbook) : Promise.reject(new Error(refusal));
  };
  return { host: { ask } as unknown as PanelHost, asked: () => count };
}

describe('readAnswers', () => {
  it('asks again until nothing waits', async () => {
    const { host, asked } = hostThat([stillWorking, stillWorking]);
    expect(await readAnswers(host, 1)).toBe(workbook);
    expect(asked()).toBe(3);
  });

  it('tells any other refusal at once', async () => {
    const { host, asked } = hostThat(['Google Sheets could not run the add-on.']);
    await expect(readAnswers(host, 1)).rejects.toThrow('Google Sheets could not run the add-on.');
    expect(asked()).toBe(1);
  });

  it('gives up after a minute and a half, with the sentence of the host', async () => {
    const { host, asked } = hostThat(Array.from({ length: 50 }, () => stillWorking));
    // Waits that are long on paper only.
    const real = globalThis.setTimeout;
    globalThis.setTimeout = ((done: () => void) => real(done, 0)) as typeof setTimeout;
    await expect(readAnswers(host, 10_000)).rejects.toThrow(stillWorking);
    globalThis.setTimeout = real;
    expect(asked()).toBe(10);
  });
});

describe('withContent', () => {
  const sheet: SheetSnapshot = { name: 'Hold', values: [[1, 'two']], formulas: [{ row: 1, column: 2, text: '=A1' }] };

  it('puts something else into one cell, beyond what is filled too, and leaves the rest', () => {
    const typed = withContent(sheet, { row: 1, column: 2 }, 7);
    expect([typed.values, typed.formulas]).toEqual([[[1, 7]], []]);
    const further = withContent(sheet, { row: 3, column: 3 }, 'x');
    expect(further.values).toEqual([
      [1, 'two', ''],
      ['', '', ''],
      ['', '', 'x'],
    ]);
    expect(contentsOf(withContent(typed, { row: 1, column: 2 }, { formula: '=A1' }), 1, 1, 2)).toEqual([1, { formula: '=A1' }]);
  });
});
