// Times that a user typed into cells of no date format: the cell got a format by that, by which functions know a time from a
// number, and it must go with the entry to its new cell.
import { areaOfCell, areaText } from './areas';
import type { CarriedCell } from './carriedInputs';
import type { CellPlace } from './snapshot';

/** A number on the sheet as it was. */
export interface OldNumber {
  /** A1 text. */
  readonly place: string;
  /** Only of a date, a time or a duration. */
  readonly format?: string;
}

export const placeText = (place: CellPlace): string => areaText(areaOfCell(place));

/**
 * The format of an entry that is a time. Where the same number is a time in one cell and none in another, its place tells, or
 * nothing does, and a sentence is thrown. `numbers` are those of the sheet as it was, by value; `name` is what it is called.
 */
export function timeFormatOf(cell: CarriedCell, numbers: ReadonlyMap<number, readonly OldNumber[]>, name: string): string | undefined {
  const same = (typeof cell.content === 'number' ? numbers.get(cell.content) : undefined) ?? [];
  const time = same.find(({ format }) => format !== undefined);
  const plain = same.find(({ format }) => format === undefined);
  if (time === undefined || plain === undefined) return time?.format;
  const here = same.find(({ place }) => place === placeText(cell));
  if (here !== undefined || cell.content === 0) return here?.format;
  throw new Error(
    `On "${name}" the same value is a time in ${time.place} and a plain number in ${plain.place}, and it cannot be told which is which. Change one of them, then ask again. Nothing was changed.`,
  );
}
