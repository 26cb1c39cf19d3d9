// The day on which everything is judged, held against the day of today.
import { asOfName } from '../../../sheets-templates/asOf';
import type { SheetTemplate } from '../../../sheets-templates/template';
import { formulaSense } from '../formulaSense';
import type { PlacesNow } from '../placesNow';
import { placeOf } from '../readPlace';
import { readArea } from '../areas';
import { isoFromSerial } from '../serialDates';
import type { CellPlace, CellValue, SheetSnapshot } from '../snapshot';
import { valueAt } from '../templateLabels';
import type { CheckedBook } from './checkedBook';
import { findingAt, type Finding } from './finding';

/** 1954 to 2119: a number outside is no day that anybody means. */
const [firstSerial, lastSerial] = [20_000, 80_000];
const advice = 'Type the day of today there, or =TODAY().';

/** The cell of the name, or where the template put it. */
function placeOfDay({ workbook }: CheckedBook, sheet: SheetSnapshot, template: SheetTemplate, places: PlacesNow | undefined): CellPlace | undefined {
  const named = placeOf(workbook, sheet.name, sheet.mark?.names[asOfName] ?? asOfName);
  if (named !== undefined && named.sheet === sheet) return named.area;
  const range = places?.range(template.names.find(({ name }) => name === asOfName)?.range ?? '');
  return range === undefined ? undefined : readArea(range);
}

const dayOf = (value: CellValue): string | undefined =>
  typeof value === 'number' && value >= firstSerial && value <= lastSerial ? isoFromSerial(Math.floor(value)) : undefined;

function sentenceFor(value: CellValue, formula: string | undefined, today: string): string | undefined {
  const sense = formula === undefined ? undefined : formulaSense(formula, { word: (word) => word, reference: ({ range }) => range });
  if (sense !== undefined && sense !== 'TODAY()')
    return `as_of is a formula other than =TODAY(), so nobody has chosen the day on which everything is judged. ${advice}`;
  const day = dayOf(value);
  if (day === undefined)
    return value === '' ? `as_of is blank, so nothing can be judged. ${advice}` : `as_of holds "${String(value)}", which is no date. ${advice}`;
  // The clock of the spreadsheet may be in another zone than that of the person before it.
  if (sense !== undefined || day === today) return undefined;
  return `as_of is ${day}, ${day < today ? 'earlier' : 'later'} than today, ${today}: validity and currency are judged on that day. ${advice}`;
}

export function findDay(book: CheckedBook, sheet: SheetSnapshot, template: SheetTemplate, places: PlacesNow | undefined, today: string): Finding[] {
  if (!template.names.some(({ name }) => name === asOfName)) return [];
  const named = book.workbook.names.some(
    ({ name, sheet: of }) => of === sheet.name && name.toLowerCase() === (sheet.mark?.names[asOfName] ?? asOfName).toLowerCase(),
  );
  const place = placeOfDay(book, sheet, template, places);
  if (place === undefined || !named)
    return [
      findingAt(
        'day',
        sheet,
        place ?? { row: 1, column: 1 },
        `The name ${asOfName} no longer means a cell of this sheet, so nothing can be judged. Give the cell with the day that name again.`,
      ),
    ];
  const sentence = sentenceFor(valueAt(sheet, place.row, place.column), book.cellAt(sheet, place)?.text, today);
  return sentence === undefined ? [] : [findingAt('day', sheet, place, sentence)];
}
