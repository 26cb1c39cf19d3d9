// A rule that refuses what it does not allow refuses it from a script too: "The data you entered in cell M2 violates the
// data validation rules set on this cell", as scripts in public repositories report of setValue and setValues.
import type { FakeDataValidation } from './builders';
import type { FakeRange } from './range';
import { isDateFormat } from './readCells';

interface Written {
  readonly value: unknown;
  readonly formula: string;
  readonly numberFormat: string;
  readonly validation: FakeDataValidation | null;
}

const choicesOf = (range: FakeRange): string[] =>
  range
    .getDisplayValues()
    .flat()
    .filter((text) => text !== '');

function allows({ facts: { criteria, values } }: FakeDataValidation, { value, numberFormat }: Written): boolean {
  const [low, high] = values.map(Number);
  switch (criteria) {
    case 'list':
      return values.slice(0, -1).includes(String(value));
    case 'range':
      return choicesOf(values[0] as FakeRange).includes(String(value));
    case 'number':
      return typeof value === 'number' && low !== undefined && high !== undefined && value >= low && value <= high;
    default:
      return value instanceof Date || (typeof value === 'number' && isDateFormat(numberFormat));
  }
}

/** Blanks always pass. What a formula comes to is not known here, so a cell with a rule takes none: write it before the rule. */
export function checkAllowed(cell: Written, place: string): void {
  const { validation, value, formula } = cell;
  if (validation === null || validation.facts.allowInvalid || (value === '' && formula === '')) return;
  if (formula !== '' || !allows(validation, cell))
    throw new Error(`The data you entered in cell ${place} violates the data validation rules set on this cell.`);
}
