// The landing at the alternate, laid out beside that at the destination in the same call: what of it differs, read from one row.
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import { readValue } from '../registry/cells';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { optional, orUnread, Unread } from '../registry/modifiers';
import { NamedArgumentError } from '../registry/wordError';
import { briefParameters, correctionsParameter, furtherParameters, type BriefArguments } from './brief';
import { unreadCorrections } from './corrections';

/** In the order of the row, each with its word for a pilot. */
const labels = {
  weight: 'weight',
  runway_deg: 'runway direction',
  available: 'length available',
  elevation_ft: 'elevation',
  altimeter_setting: 'altimeter setting',
  temperature_c: 'temperature',
  wind_from_deg: 'wind from',
  wind_kt: 'wind',
  gust_kt: 'gust',
  variable_from_deg: 'variable from',
  variable_to_deg: 'variable to',
} as const;
type Name = keyof typeof labels;
export type AlternateCase = Pick<BriefArguments, Name>;

const names = Object.keys(labels) as Name[];
const parameters = { ...briefParameters, ...furtherParameters };
const mustBe = `a row of ${names.length} cells: ${Object.values(labels).join(', ')}`;

/** Each as the brief reads it; what is missing or cannot be is told by its word. */
function readRow(cells: readonly CellValue[], dates: DateHost): AlternateCase | Unread {
  const bad: string[] = [];
  const values = names.map((name, index) => {
    try {
      return [name, readValue(name, parameters[name], cells[index], dates)] as const;
    } catch (thrown) {
      if (!(thrown instanceof NamedArgumentError)) throw thrown;
      const { mustBe: must, got } = thrown.error;
      bad.push(got === inWords('') ? labels[name] : `${labels[name]} must be ${must}; got ${got}`);
      return [name, undefined] as const;
    }
  });
  return bad.length > 0 ? new Unread(`not computed: missing or not to be read: ${bad.join(', ')}`) : (Object.fromEntries(values) as AlternateCase);
}

function alternateRow(help: string): Parameter<AlternateCase | Unread> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): AlternateCase | Unread => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const cells = range.flat();
    if (cells.length !== names.length) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, range[0]?.length ?? 0)}`);
    return readRow(
      cells.map((cell) => (isBlank(cell) ? '' : cell)),
      dates,
    );
  };
  return { shape: 'table', unit: '', mustBe, help, optional: undefined, read };
}

export const alternateParameters = {
  alternate: optional(
    alternateRow(`The landing at the alternate with the same table and factor: ${mustBe}; the last three blank for a steady wind.`),
    undefined,
    'no alternate is laid out',
  ),
  alternate_corrections: optional(
    orUnread({ ...correctionsParameter, optional: undefined }, unreadCorrections),
    [],
    'the distance at the alternate is taken as the book gives it, whatever the wind',
  ),
};
