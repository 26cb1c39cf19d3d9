// Cells that hold an error, and sentences of our functions that stand in a row of their answers.
import type { CellPlace, SheetSnapshot } from '../snapshot';
import { address } from '../../../sheets-templates/build';
import { isOurs } from '../formulaReading';
import { holds, placesRead } from '../readPlace';
import { cellOf, ourCalls, type CheckedBook, type ReadCell } from './checkedBook';
import { findingAt, type Finding } from './finding';

const errorText = /^#(?:REF!|DIV\/0!|N\/A|NAME\?|NULL!|NUM!|VALUE!|ERROR!|SPILL!|CALC!)$/;
/** "NAME: what must be otherwise." */
const refusal = /^([A-Z][A-Z0-9_]*): ./;

interface Shown extends CellPlace {
  readonly sheet: SheetSnapshot;
  readonly text: string;
}

/** Only what may be an error or a sentence of a function. */
function textsShown({ workbook }: CheckedBook): Shown[] {
  const shown: Shown[] = [];
  for (const sheet of workbook.sheets)
    sheet.values.forEach((line, row) =>
      line.forEach((value, column) => {
        if (typeof value === 'string' && (value.startsWith('#') || refusal.test(value)))
          shown.push({ sheet, row: row + 1, column: column + 1, text: value });
      }),
    );
  return shown;
}

const noRoom = 'its answer finds no room: empty the cells below it and to its right.';

function meaning(error: string, cell: ReadCell): string {
  const callsOurs = ourCalls(cell).length > 0;
  if (error === '#REF!')
    return cell.reading.references.some(({ area }) => area === undefined)
      ? 'the formula reads cells that are gone. Put the formula right, or insert the sheet anew.'
      : noRoom;
  if (error === '#SPILL!') return noRoom;
  if (error === '#NAME?')
    return `a function or a name in the formula is not known here.${callsOurs ? ' Open the menu of Rampwright once in this document, then look again.' : ''}`;
  if (error === '#N/A') return 'what the formula looks for is not there.';
  if (error === '#DIV/0!') return 'the formula divides by a blank or by 0.';
  if (callsOurs) return 'the function refuses what it is given. Select the cell to see why.';
  return error === '#VALUE!' ? 'a value that the formula reads is of the wrong kind.' : 'the formula cannot be worked out.';
}

/** #N/A that the formula itself asks for, so that a chart passes over a point. */
const isAskedFor = (error: string, cell: ReadCell): boolean => error === '#N/A' && cell.reading.calls.some(({ name }) => name === 'NA');

function errorFindings(book: CheckedBook, texts: readonly Shown[]): Finding[] {
  const errors = texts.filter(({ text }) => errorText.test(text));
  return errors.flatMap((shown) => {
    const { sheet, text } = shown;
    const cell = book.cellAt(sheet, shown);
    if (cell === undefined) return [findingAt('error', sheet, shown, `Shows ${text}.`)];
    if (isAskedFor(text, cell)) return [];
    const places = placesRead(book.workbook, sheet, cell.reading);
    const from = errors.find((other) => other !== shown && places.some((place) => place.sheet === other.sheet && holds(place.area, other)));
    return [
      findingAt(
        'error',
        sheet,
        shown,
        from === undefined
          ? `Shows ${text}: ${meaning(text, cell)}`
          : `Shows ${text}, because it reads ${cellOf(from.sheet, address(from.row, from.column), sheet)}, which shows ${from.text}.`,
      ),
    ];
  });
}

/** A formula without a call of ours only passes on what stands elsewhere. */
const passesOn = (book: CheckedBook, { sheet, row, column }: Shown): boolean => {
  const cell = book.cellAt(sheet, { row, column });
  return cell !== undefined && ourCalls(cell).length === 0;
};

const refusalFindings = (book: CheckedBook, texts: readonly Shown[]): Finding[] =>
  texts.flatMap((shown) =>
    isOurs(refusal.exec(shown.text)?.[1] ?? '') && !passesOn(book, shown) ? [findingAt('error', shown.sheet, shown, shown.text)] : [],
  );

export function findErrors(book: CheckedBook): Finding[] {
  const texts = textsShown(book);
  return [...errorFindings(book, texts), ...refusalFindings(book, texts)];
}
