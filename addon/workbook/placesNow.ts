// Where the cells of a template stand now in a sheet in which the user may have put in, taken out or moved rows, columns and
// cells: the sheet's keys tell. What they do not tell for certain has no answer.
import { address } from '../../sheets-templates/addresses';
import type { SheetTemplate } from '../../sheets-templates/template';
import { areaText, readArea, type Area } from './areas';
import { keysIn, keysOf, type Keys } from './keys';
import type { CellPlace, SheetSnapshot } from './snapshot';

export interface PlacesNow {
  /** A range of the template (A1, or A1:C9) as it stands now: a list in which rows were inserted has grown. Undefined where it cannot be known. */
  readonly range: (text: string) => string | undefined;
}

/** Lines of the template by lines of today; between two known lines that keep their distance, the others keep theirs. */
function linesNow(before: readonly (number | undefined)[], now: readonly (number | undefined)[]): (line: number) => number | undefined {
  const known = new Map(before.flatMap((line, index) => (line === undefined ? [] : [[line, now[index]] as const])));
  const lines = [...known.keys()].sort((one, other) => one - other);
  return (line) => {
    if (known.has(line)) return known.get(line);
    const above = lines.filter((one) => one < line).pop() ?? 0;
    const below = lines.find((one) => one > line);
    const [aboveNow, belowNow] = [above === 0 ? 0 : known.get(above), below === undefined ? undefined : known.get(below)];
    if (aboveNow === undefined) return undefined;
    if (below === undefined) return aboveNow + line - above;
    return belowNow !== undefined && belowNow - aboveNow === below - above ? aboveNow + line - above : undefined;
  };
}

/** Ranges of the template that the keys name, and where they are; those without a key only between sheets of one version. */
function namedRanges(before: Keys, now: Keys): Map<string, Area | undefined> {
  const alike = before.answers.length === now.answers.length;
  const answers = alike ? before.answers.map((area, index) => [area, now.answers[index]] as const) : [];
  const keyed = [...before.ranges].map(([key, area]) => [area, now.ranges.get(key)] as const);
  return new Map([...answers, ...keyed].flatMap(([from, to]) => (from === undefined ? [] : [[areaText(from), to] as const])));
}

/** Undefined where the sheet has no keys. */
export function placesNow(template: SheetTemplate, sheet: SheetSnapshot): PlacesNow | undefined {
  const [before, now] = [keysOf(template), keysIn(sheet)];
  if (before === undefined || now === undefined) return undefined;
  const named = namedRanges(before, now);
  const alike = before.rows.length === now.rows.length && before.columns.length === now.columns.length && sheet.mark?.version === template.version;
  const [rowNow, columnNow] = alike ? [linesNow(before.rows, now.rows), linesNow(before.columns, now.columns)] : [];
  const cellNow = ({ row, column }: CellPlace): CellPlace | undefined => {
    const single = address(row, column);
    if (named.has(single)) return named.get(single);
    const [toRow, toColumn] = [rowNow?.(row), columnNow?.(column)];
    return toRow === undefined || toColumn === undefined ? undefined : { row: toRow, column: toColumn };
  };
  return {
    range: (text) => {
      const area = readArea(text);
      const whole = areaText(area);
      const found = named.get(whole);
      if (named.has(whole)) return found === undefined ? undefined : areaText(found);
      const first = cellNow(area);
      const last = cellNow({ row: area.lastRow, column: area.lastColumn });
      return first === undefined || last === undefined ? undefined : areaText({ ...first, lastRow: last.row, lastColumn: last.column });
    },
  };
}
