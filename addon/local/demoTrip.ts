// The demo trip in the terminal: the verdict of the Trip sheet and every reason, computed by the workbook itself.
import { sheetTemplates } from '../../sheets-templates';
import { openHeadless } from './engine/headless';

/** The verdict and the reasons, one text for each row of the sheet that has one. */
export async function demoTripLines(): Promise<string[]> {
  const workbook = await openHeadless(sheetTemplates);
  try {
    const verdict = workbook.named('trip_verdict').flat().map(String).join('');
    const reasons = workbook.named('trip_reasons').map((row) => row.map(String).filter((cell) => cell !== ''));
    return [`The demo trip (invented): ${verdict}`, ...reasons.filter((row) => row.length > 0).map((row) => `  ${row.join('  ')}`)];
  } finally {
    workbook.dispose();
  }
}
