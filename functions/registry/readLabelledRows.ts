// Reads rows of a name followed by numbers, such as tanks with their quantities.
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, isRange, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { Parameter } from './declaration';
import { limitInWords, numberFromCell, numberInWords } from './readNumber';

export interface NumberColumn {
  readonly name: string;
  readonly minimum: number;
  readonly maximum: number;
  /** A blank cell is undefined instead of an error. */
  readonly mayBeBlank?: boolean;
}

export interface LabelledRow {
  readonly name: string;
  readonly numbers: readonly (number | undefined)[];
}

function readNumber(
  cell: CellValue,
  { name, minimum, maximum, mayBeBlank }: NumberColumn,
  mustBe: string,
  row: number,
  column: number,
): number | undefined {
  if (mayBeBlank === true && isBlank(cell)) return undefined;
  const value = numberFromCell(cell);
  if (value === undefined || value < minimum || value > maximum) {
    throw new ArgumentError(`${mustBe} (${name} ${limitInWords(minimum)} to ${limitInWords(maximum)})`, numberInWords(cell), row, column);
  }
  return value;
}

/** Blank rows are passed over; a partly blank row is an error. */
export function labelledRows(options: {
  readonly help: string;
  readonly label: string;
  readonly columns: readonly NumberColumn[];
}): Parameter<readonly LabelledRow[]> & { readonly shape: 'table' } {
  const mustBe = `rows of ${[options.label, ...options.columns.map(({ name }) => name)].join(', ')}`;
  const read = (raw: CellValue): readonly LabelledRow[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const width = range[0]?.length ?? 0;
    if (width !== options.columns.length + 1) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, width)}`);
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
    return used.map(({ row: [label, ...cells], place }) => {
      const isName = (typeof label === 'string' || typeof label === 'number') && !isBlank(label) && !isErrorText(label);
      if (!isName) throw new ArgumentError(`${mustBe} (${options.label} in words)`, inWords(label), place, 1);
      return {
        name: String(label).trim(),
        numbers: options.columns.map((column, index) => readNumber(cells[index], column, mustBe, place, index + 2)),
      };
    });
  };
  return { shape: 'table', unit: 'rows', mustBe, help: options.help, optional: undefined, read };
}
