// Two answers of one kind in the same rows, the second at the right of the first.
import type { ResultCell } from '../registry/declaration';

export function sideBySide(first: readonly ResultCell[][], second: readonly ResultCell[][]): ResultCell[][] {
  const widthOf = (rows: readonly ResultCell[][]): number => Math.max(...rows.map(({ length }) => length), 0);
  const width = Math.max(widthOf(first), widthOf(second));
  const filled = (row: readonly ResultCell[] = []): ResultCell[] => [...row, ...Array<ResultCell>(width - row.length).fill('')];
  return Array.from({ length: Math.max(first.length, second.length) }, (_, index) => [...filled(first[index]), ...filled(second[index])]);
}
