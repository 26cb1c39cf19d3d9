// Reads the weighing record beside a loading: a line that cannot be read is told, and the record then leads to no weight.
import { dayNumber } from '../../core/basics/civilDate';
import type { WeighingRow } from '../../core/loading/emptyWeight';
import { ArgumentError } from '../registry/argumentError';
import { isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { numberFromCell } from '../registry/readNumber';
import { choice } from '../registry/readText';

/** What a line is. */
export const weighingKind = choice<'weighing' | 'change'>({
  words: ['weighing', 'change'],
  also: { weighed: 'weighing', equipment: 'change', 'equipment change': 'change' },
  help: 'A weighing gives the whole empty aircraft, a change what was put in or taken out.',
});

export interface WeighingLine {
  readonly day: number | undefined;
  readonly kind: WeighingRow['kind'] | undefined;
  readonly weight: number | undefined;
  readonly arm: number | undefined;
  readonly moment: number | undefined;
}

export type WeighingRecord = readonly WeighingLine[];

const rowsOf = 'rows of day, weighing or change, weight, arm, moment';
const columns = 5;

function kindOf(cell: CellValue, dates: DateHost): WeighingRow['kind'] | undefined {
  try {
    return weighingKind.read(cell, dates);
  } catch (thrown) {
    if (!(thrown instanceof ArgumentError)) throw thrown;
    return undefined;
  }
}

function lineOf([day, kind, ...numbers]: readonly CellValue[], dates: DateHost): WeighingLine {
  const date = civilDateFromCell(day, dates);
  const [weight, arm, moment] = numbers.map(numberFromCell);
  return { day: date === undefined ? undefined : dayNumber(date), kind: kindOf(kind, dates), weight, arm, moment };
}

/** Blank rows are no lines. */
export function weighingRows(help: string): Parameter<WeighingRecord> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): WeighingRecord => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const used = range.filter((row) => !row.every(isBlank));
    const width = range[0]?.length ?? 0;
    if (used.length > 0 && width < columns) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(range.length, width)}`);
    return used.map((row) => lineOf(row, dates));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read };
}

/** What keeps a line from being read, in words. */
export function lackOf({ day, kind, weight, arm, moment }: WeighingLine): string | undefined {
  if (day === undefined) return 'no day';
  if (kind === undefined) return 'neither weighing nor change';
  if (weight === undefined) return 'no weight';
  return arm === undefined && moment === undefined ? 'neither arm nor moment' : undefined;
}
