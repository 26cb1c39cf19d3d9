// The demo trip in the terminal: the verdict of the Trip sheet and every reason, computed by the workbook itself.
import { sheetTemplates } from '../../sheets-templates';
import { demoOn } from '../workbook/demoOn';
import { openHeadless } from './engine/headless';

/** The verdict and the reasons on a day, one text for each row of the sheet that has one. */
export async function demoTripLines(today: string): Promise<string[]> {
  const workbook = await openHeadless(demoOn(sheetTemplates, today), today);
  try {
    const verdict = workbook.named('trip_verdict').flat().map(String).join('');
    const reasons = workbook.named('trip_reasons').map((row) => row.map(String));
    const widest = (column: number): number => Math.max(...reasons.map((row) => row[column]?.length ?? 0));
    const widths = [widest(0), widest(1)];
    const lines = reasons
      .filter((row) => row.some((cell) => cell !== ''))
      .map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  '));
    return [`The demo trip (invented): ${verdict}`, ...lines.map((line) => `  ${line.trimEnd()}`)];
  } finally {
    workbook.dispose();
  }
}
