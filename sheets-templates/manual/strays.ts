// What stands in the lists of Manual tables and is read for no aircraft: a slip in a name takes a row away from its aircraft unseen.
import { area } from '../build';

interface Lists {
  /** Each with its first column, which holds the names of the aircraft. */
  readonly lists: readonly { readonly title: string; readonly column: number }[];
  readonly rows: { readonly first: number; readonly last: number };
  /** The names in the aircraft list. */
  readonly aircraft: string;
  /** First column of the corrections, and what they can be for. */
  readonly corrections: number;
  readonly operations: readonly string[];
}

/** Formula text: the rows for which a mask holds, each as "row 23 (Quilon Four)". */
const namedRows = (names: string, mask: string): string => `IFERROR(TEXTJOIN(", ",TRUE,FILTER("row "&ROW(${names})&" ("&${names}&")",${mask})),"")`;

/** Formula text: the rows whose aircraft is not in the aircraft list, and the corrections that are for neither take-off nor landing. */
export function strays({ lists, rows, aircraft, corrections, operations }: Lists): string {
  const columns = (column: number): readonly [string, string] => [
    area(rows.first, column, rows.last, column),
    area(rows.first, column + 1, rows.last, column + 1),
  ];
  const ofList = ({ title, column }: Lists['lists'][number]): string => {
    const [names, beside] = columns(column);
    const stray = `((${names}<>"")+(${beside}<>"")>0)*ISNA(MATCH(${names},${aircraft},0))`;
    return `IF(SUMPRODUCT(${stray})>0,"${title}: "&${namedRows(names, stray)},"")`;
  };
  const [names, operation] = columns(corrections);
  const forNothing = `(${names}<>"")*${operations.map((one) => `(${operation}<>"${one}")`).join('*')}`;
  const noAircraft = `TEXTJOIN("; ",TRUE,${lists.map(ofList).join(',')})`;
  return (
    `=IFERROR(IF(${noAircraft}="","","of no aircraft in the list, and so not read: "&${noAircraft}&". ")` +
    `&IF(SUMPRODUCT(${forNothing})=0,"","for neither ${operations.join(' nor ')}, and so not read: "&${namedRows(names, forNothing)}),"an error stands in a list of tables")`
  );
}
