// Tabs copied by the menu of the spreadsheet. Their formulas go on naming the sheets that the first one reads, so that a second trip would be
// judged with the loading of the first. Google keeps the mark of a sheet in its copy or does not; both are found.
import { sheetsOfOneTrip } from '../../../sheets-templates/places';
import type { SheetTemplate } from '../../../sheets-templates/template';
import { placesRead } from '../readPlace';
import type { SheetSnapshot } from '../snapshot';
import { ourCalls, type CheckedBook, type ReadCell } from './checkedBook';
import { findingAt, type Finding } from './finding';

const titleOf = ({ cells }: SheetTemplate): unknown => cells.find(({ row, column }) => row === 1 && column === 1)?.value;

/** A sheet without a mark that begins with the title of one of ours and calls our functions. */
function unmarkedCopy(sheet: SheetSnapshot, cells: readonly ReadCell[], templates: readonly SheetTemplate[]): boolean {
  if (sheet.mark !== undefined || !cells.some((cell) => ourCalls(cell).length > 0)) return false;
  return templates.some((template) => sheetsOfOneTrip.has(template.key) && sheet.values[0]?.[0] === titleOf(template));
}

/** Whether one stands after another of its kind in the same set: its own set is read by that one. */
function secondOfSet({ sheets }: CheckedBook['workbook'], sheet: SheetSnapshot): boolean {
  const { mark } = sheet;
  if (mark === undefined || !sheetsOfOneTrip.has(mark.key)) return false;
  const first = sheets.find((one) => one.mark?.key === mark.key && one.mark.set === mark.set);
  return first !== sheet;
}

export function findCopied(book: CheckedBook, templates: readonly SheetTemplate[]): Finding[] {
  const { workbook, cells } = book;
  return workbook.sheets.flatMap((sheet) => {
    const own = cells.filter((cell) => cell.sheet === sheet);
    if (!secondOfSet(workbook, sheet) && !unmarkedCopy(sheet, own, templates)) return [];
    const read = new Set(own.flatMap((cell) => placesRead(workbook, sheet, cell.reading).map((place) => place.sheet)));
    const names = [...read]
      .filter((one) => one !== sheet && (one.mark === undefined || sheetsOfOneTrip.has(one.mark.key)))
      .map(({ name }) => `"${name}"`);
    const reads =
      names.length === 0
        ? 'is read by no other sheet'
        : `goes on reading ${names.join(' and ')}, which ${names.length === 1 ? 'belongs' : 'belong'} to the first trip`;
    const sentence = `"${sheet.name}" looks like a copied tab: it ${reads}. For a second trip insert the Trip sheet once more ("Sheets"), which brings its own Trip working, Weight and balance and card.`;
    return [findingAt('copied', sheet, { row: 1, column: 1 }, sentence)];
  });
}
