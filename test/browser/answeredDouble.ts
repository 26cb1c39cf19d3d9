// The double with every sheet inserted and every formula showing its answer, as the local engine works it out: the double
// itself works nothing out.
import { openHeadless } from '../../addon/local/engine/headless';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { FakeRange } from '../google/double/range';
import type { Double } from '../google/double/services';

export async function demoSnapshot(): Promise<WorkbookSnapshot> {
  const workbook = await openHeadless(sheetTemplates);
  const snapshot = workbook.snapshot();
  workbook.dispose();
  return snapshot;
}

/** Into cells that are still blank: formulas, and what they spill into. */
export function showAnswers(double: Double, { sheets }: WorkbookSnapshot): void {
  for (const { name, values } of sheets) {
    const sheet = double.sheet(name);
    values.forEach((line, row) =>
      line.forEach((value, column) => {
        const cell = sheet.cell(row + 1, column + 1);
        if (cell.value === '') cell.value = value;
      }),
    );
  }
}

export function select(double: Double, name: string, row: number, column = 1): void {
  const sheet = double.sheet(name);
  double.document.active = sheet;
  new FakeRange(sheet, { row, column, lastRow: row, lastColumn: column }).activate();
}
