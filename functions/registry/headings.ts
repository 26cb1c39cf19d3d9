// The last argument of functions that lay out a list: words above the columns of the answer. So the one call of a list can stand in the row of
// its heads, where nobody deletes it with a row of the list.
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, shortened, type CellValue } from './cellValues';
import type { Parameter } from './declaration';
import { optional } from './modifiers';

const mustBe = 'words for the columns of the answer, with semicolons between, such as "verdict; days left"';

function read(raw: CellValue): readonly string[] {
  if (typeof raw !== 'string' || isBlank(raw) || isErrorText(raw)) throw new ArgumentError(mustBe, inWords(raw));
  return raw.split(';').map(shortened);
}

const headingsWith = (help: string) => {
  const parameter: Parameter<readonly string[]> & { readonly shape: 'cell' } = { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
  return optional(parameter, undefined, 'no row of headings');
};

/** The answer begins with a row of headings. */
export const headingsAbove = headingsWith('Words for the columns, with semicolons between: the answer then begins with a row of them.');

/** The columns given begin with their heads as well, so that each answer still stands beside its row. */
export const headingsOfRows = headingsWith(
  'Words for the columns, with semicolons between: the answer then begins with a row of them, and so must the columns given, whose first row is not read. Rows are counted below it.',
);
