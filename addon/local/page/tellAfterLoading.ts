// What the page says as soon as it is there: what became of the change for which it was loaded anew, and which sheets are of an
// older version.
import { sheetTemplates } from '../../../sheets-templates';
import { markedSheets } from '../saved/documentState';
import type { Workbook } from './grid';
import { pendingNotice } from './reloading';
import { notify } from './notices';

function olderSheets(workbook: Workbook): string {
  const versions = new Map(sheetTemplates.map(({ key, version }) => [key, version]));
  const older = markedSheets(workbook.save()).filter(({ mark }) => mark.version < (versions.get(mark.key) ?? 0));
  if (older.length === 0) return '';
  const [names, are] = [older.map(({ name }) => `"${name}"`).join(', '), older.length === 1 ? 'is' : 'are'];
  return `${names} ${are} of an older version of Rampwright and ${older.length === 1 ? 'works' : 'work'} as before. To bring them up to date with your entries in them: "Show panel", then "Sheets", then "Look for older sheets".`;
}

/** `opened`: what the keeper of the workbook has to say. */
export function tellAfterLoading(workbook: Workbook, opened = ''): void {
  const left = pendingNotice();
  const sheet = left?.sheet === undefined ? null : workbook.getSheetByName(left.sheet);
  if (sheet !== null) workbook.setActiveSheet(sheet);
  const said = [left?.said ?? '', opened, olderSheets(workbook)].filter((sentence) => sentence !== '').join(' ');
  if (said !== '') notify(said);
}
