// Finds the columns of a table by the words of its header row, so that they may stand in any order, with others between them.
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, type CellValue } from './cellValues';
import { plainWords } from './readText';

/** For each column the headings by which it is found, in lower case with single spaces; the first is the usual one. */
export type Headings<Column extends string> = Readonly<Record<Column, readonly string[]>>;

export function columnPlaces<Column extends string>(header: readonly CellValue[], headings: Headings<Column>, needed: readonly NoInfer<Column>[], mustBe: string): ReadonlyMap<Column, number> {
  const given = header.map((cell) => (isBlank(cell) || isErrorText(cell) ? '' : plainWords(String(cell))));
  const places = new Map<Column, number>();
  for (const [column, words] of Object.entries(headings) as [Column, readonly string[]][]) {
    const [first, second] = given.flatMap((heading, index) => (words.includes(heading) ? [index] : []));
    if (second !== undefined) throw new ArgumentError(`${mustBe} (one column of "${words[0] ?? column}")`, `a second one, ${inWords(header[second])}`, 1, second + 1);
    if (first !== undefined) places.set(column, first);
  }
  const missing = needed.find((column) => !places.has(column));
  if (missing !== undefined) throw new ArgumentError(`${mustBe} (with a column "${headings[missing][0] ?? missing}")`, `the headings ${header.map(inWords).join(', ')}`, 1);
  return places;
}
