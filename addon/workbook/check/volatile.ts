// NOW, RAND and their like may not feed a function of an add-on in Google Sheets, not even through other cells: the call
// then shows an error. TODAY may.
import { address } from '../../../sheets-templates/build';
import { maySpill, readFormula } from '../formulaReading';
import { placesRead, type Place } from '../readPlace';
import { cellOf, ourCalls, type CheckedBook, type ReadCell } from './checkedBook';
import { findingAt, type Finding } from './finding';

const volatileNames = new Set(['NOW', 'RAND', 'RANDBETWEEN', 'RANDARRAY']);

const volatileIn = ({ calls }: ReadCell['reading']): string | undefined => calls.find(({ name }) => volatileNames.has(name))?.name;

/** The cells that an answer may fill: its own, or the filled ones below and beside it. */
function filledBy({ sheet, row, column, reading }: ReadCell): Place {
  const spills = maySpill(reading);
  let [lastRow, lastColumn] = [row, column];
  while (spills && (sheet.values[lastRow]?.[column - 1] ?? '') !== '') lastRow += 1;
  while (spills && (sheet.values[row - 1]?.[lastColumn] ?? '') !== '') lastColumn += 1;
  return { sheet, area: { row, column, lastRow, lastColumn } };
}

const meet = (one: Place, other: Place): boolean =>
  one.sheet === other.sheet &&
  one.area.row <= other.area.lastRow &&
  other.area.row <= one.area.lastRow &&
  one.area.column <= other.area.lastColumn &&
  other.area.column <= one.area.lastColumn;

interface Changing {
  readonly cell: ReadCell;
  readonly fills: Place;
  /** The cell in which the volatile function itself stands. */
  readonly source: ReadCell;
}

/** Every cell that changes at each calculation, by itself or because of what it reads. */
function changingCells({ workbook, cells }: CheckedBook): Changing[] {
  const changing = cells
    .filter(({ reading }) => volatileIn(reading) !== undefined)
    .map((cell): Changing => ({ cell, fills: filledBy(cell), source: cell }));
  if (changing.length === 0) return [];
  const others = new Map(
    cells.filter((cell) => !changing.some((one) => one.cell === cell)).map((cell) => [cell, placesRead(workbook, cell.sheet, cell.reading)]),
  );
  for (let next = 0; next < changing.length; next += 1) {
    const by = changing[next];
    if (by === undefined) continue;
    for (const [cell, places] of others) {
      if (!places.some((place) => meet(place, by.fills))) continue;
      changing.push({ cell, fills: filledBy(cell), source: by.source });
      others.delete(cell);
    }
  }
  return changing;
}

export function findVolatile(book: CheckedBook): Finding[] {
  const changing = changingCells(book);
  if (changing.length === 0) return [];
  return book.cells.flatMap((cell) =>
    ourCalls(cell).flatMap(({ name, args }): Finding[] => {
      const reading = readFormula(`=${args.join(',')}`);
      const tell = (volatile: string, where: string): Finding[] => [
        findingAt(
          'volatile',
          cell.sheet,
          cell,
          `${name} is fed by ${volatile}() ${where}. Google Sheets refuses that. Type the value in its place; for a day =TODAY() is allowed.`,
        ),
      ];
      const direct = volatileIn(reading);
      if (direct !== undefined) return tell(direct, 'in its own formula');
      const places = placesRead(book.workbook, cell.sheet, reading);
      const by = changing.find((one) => one.cell !== cell && places.some((place) => meet(place, one.fills)));
      if (by === undefined) return [];
      const through = by.cell === by.source ? '' : `, through ${cellOf(by.cell.sheet, address(by.cell.row, by.cell.column), cell.sheet)}`;
      return tell(
        volatileIn(by.source.reading) ?? '',
        `in ${cellOf(by.source.sheet, address(by.source.row, by.source.column), cell.sheet)}${through}`,
      );
    }),
  );
}
