// Which columns of version 2 are which columns of a sheet today, by the fixed texts in them.
import type { SheetSnapshot } from '../snapshot';
import { textAt } from '../templateLabels';
import { alignLines } from './alignLines';
import type { Label } from './version2';

function byColumnOf(labels: readonly Label[]): (readonly [column: number, texts: ReadonlySet<string>])[] {
  const groups = new Map<number, Set<string>>();
  for (const { column, text } of labels) groups.set(column, (groups.get(column) ?? new Set<string>()).add(text));
  return [...groups].sort(([one], [other]) => one - other);
}

function mappedColumns(labels: readonly Label[], sheet: SheetSnapshot): Map<number, number> {
  if (labels.every(({ row, column, text }) => textAt(sheet, row, column) === text)) return new Map(labels.map(({ column }) => [column, column]));
  const before = byColumnOf(labels);
  const width = Math.max(0, ...sheet.values.map((line) => line.length));
  const texts = Array.from({ length: width }, (_, column) => new Set(sheet.values.map((_line, row) => textAt(sheet, row + 1, column + 1))));
  const score = (one: number, other: number): number => [...(before[one]?.[1] ?? [])].filter((text) => texts[other]?.has(text)).length;
  return new Map([...alignLines(before.length, width, score)].map(([one, other]) => [before[one]?.[0] ?? 0, other + 1]));
}

/** A column without a text of its own is where it was if the known ones beside it keep their distance. */
export function columnsNow(labels: readonly Label[], sheet: SheetSnapshot): (column: number) => number | undefined {
  const columns = mappedColumns(labels, sheet);
  const known = [...columns.keys()].sort((one, other) => one - other);
  return (column) => {
    if (columns.has(column)) return columns.get(column);
    const above = known.filter((one) => one < column).pop() ?? 0;
    const below = known.find((one) => one > column);
    const aboveNow = columns.get(above) ?? 0;
    if (below === undefined || (columns.get(below) ?? 0) - aboveNow === below - above) return aboveNow + column - above;
    return undefined;
  };
}
