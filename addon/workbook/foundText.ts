// Where a text stands in a workbook: the rows that hold it, each with all that stands in it, so that a list can be looked through without hiding any of it.
import { plainWords } from '../../functions/registry/readText';
import { isKeyFormula } from './keys';
import { isoFromSerial } from './serialDates';
import type { CellPlace, CellValue, SheetSnapshot } from './snapshot';

export interface FoundRow extends CellPlace {
  readonly sheet: string;
  /** What stands in the row, from its first filled cell. */
  readonly words: string;
}

const firstDay = 36_526; // 2000-01-01
const lastDay = 73_415; // 2100-12-31

/** As the cell may be shown: a number that can be a day, by its day too. */
const shownAs = (value: CellValue): string[] => {
  const isDay = typeof value === 'number' && Number.isInteger(value) && value >= firstDay && value <= lastDay;
  return isDay ? [String(value), isoFromSerial(value)] : [String(value)];
};

/** A number that can be a day as its day. */
export const inWords = (value: CellValue): string => shownAs(value).pop() ?? '';
const maxWords = 160;

function wordsOf(line: readonly CellValue[]): string {
  const words = line
    .filter((value) => value !== '')
    .map(inWords)
    .join(', ');
  return words.length > maxWords ? `${words.slice(0, maxWords)}...` : words;
}

/** Rows of these sheets in which a cell holds the text, whatever its capitals; the first such cell of each. */
export function rowsWith(sheets: readonly SheetSnapshot[], text: string): FoundRow[] {
  const wanted = plainWords(text);
  if (wanted === '') return [];
  return sheets.flatMap(({ name, values, formulas }) => {
    const keys = new Set(formulas.filter(isKeyFormula).map(({ row, column }) => `${row} ${column}`));
    return values.flatMap((line, index): FoundRow[] => {
      const at = line.findIndex(
        (value, column) =>
          value !== '' && !keys.has(`${index + 1} ${column + 1}`) && shownAs(value).some((shown) => plainWords(shown).includes(wanted)),
      );
      return at < 0 ? [] : [{ sheet: name, row: index + 1, column: at + 1, words: wordsOf(line) }];
    });
  });
}
