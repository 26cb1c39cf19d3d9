// Finds the columns of a table by the words of its header row, so that they may stand in any order. A heading that nobody knows
// would drop its column without a word, and an interval or a class with it: so it is refused, unless it says that it is one's own.
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, type CellValue, type RangeValue } from './cellValues';
import { nearestWord } from './nearestWord';
import { plainWords } from './readText';
import { firstFew } from './sharedWords';

/** For each column the headings by which it is found, in lower case with single spaces; the first is the usual one. */
export type Headings<Column extends string> = Readonly<Record<Column, readonly string[]>>;

/** For the help of a table read by its headings. */
export const ownColumnHelp =
  'A column of your own is passed over where its heading stands in brackets or begins with "note"; any other heading is refused.';

const isOwn = (heading: string): boolean => /^[([{]|^notes?\b|^remarks?\b/.test(heading);
const maxHeadings = 20;

export interface HeadingsOptions<Column extends string> {
  readonly headings: Headings<Column>;
  readonly needed: readonly NoInfer<Column>[];
  readonly mustBe: string;
  /** Other headings that are known, with nothing in them that is read. */
  readonly passedOver?: readonly string[];
}

/** Where each column stands that is there. Every heading with values below it must be known. */
export function columnPlaces<Column extends string>(
  [header = [], ...rows]: RangeValue,
  { headings, needed, mustBe, passedOver = [] }: HeadingsOptions<Column>,
): ReadonlyMap<Column, number> {
  const given = header.map((cell) => (isBlank(cell) || isErrorText(cell) ? '' : plainWords(String(cell))));
  const places = new Map<Column, number>();
  for (const [column, words] of Object.entries(headings) as [Column, readonly string[]][]) {
    const [first, second] = given.flatMap((heading, index) => (words.includes(heading) ? [index] : []));
    if (second !== undefined)
      throw new ArgumentError(`${mustBe} (one column of "${words[0] ?? column}")`, `a second one, ${inWords(header[second])}`, 1, second + 1);
    if (first !== undefined) places.set(column, first);
  }
  const free = (Object.entries(headings) as [Column, readonly string[]][]).flatMap(([column, words]) => (places.has(column) ? [] : words));
  const missing = needed.find((column) => !places.has(column));
  if (missing !== undefined)
    throw new ArgumentError(
      `${mustBe} (with a column "${headings[missing][0] ?? missing}")`,
      `the headings ${firstFew(header.map(inWords), maxHeadings)}`,
      1,
    );
  const known = new Set([...Object.values<readonly string[]>(headings).flat(), ...passedOver]);
  refuseUnknown(header, given, rows, (heading) => known.has(heading) || isOwn(heading), free, mustBe);
  return places;
}

function refuseUnknown(
  header: readonly CellValue[],
  given: readonly string[],
  rows: RangeValue,
  isKnown: (heading: string) => boolean,
  free: readonly string[],
  mustBe: string,
): void {
  const lost = given.findIndex((heading, index) => !isKnown(heading) && rows.some((row) => !isBlank(row[index])));
  if (lost < 0) return;
  const heading = given[lost] ?? '';
  const meant = heading === '' ? undefined : nearestWord(heading, free);
  const got = heading === '' ? `values under ${inWords(header[lost])}` : inWords(header[lost]);
  throw new ArgumentError(
    `${mustBe} (values only under headings that are known; one of your own in brackets)`,
    meant === undefined ? got : `${got}, perhaps for "${meant}"`,
    1,
    lost + 1,
  );
}
