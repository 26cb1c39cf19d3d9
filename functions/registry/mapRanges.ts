// Maps a function of single values over ranges: cells broadcast, sizes must agree, a bad row spoils only itself.
import { readValue, writeCell } from './cells';
import { isBlank, type CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { FunctionDeclaration, ResultCell } from './declaration';
import { commonSize, mustBeOneColumn, type Argument } from './rangeShape';
import { SheetError, wordError } from './wordError';

type Named = readonly [name: string, value: unknown];

/** Reads the arguments that are the same for every row, once and only when some row needs them. */
function sharedReader(fixed: readonly Argument[], dates: DateHost): () => readonly Named[] {
  let values: readonly Named[] | undefined;
  return () =>
    (values ??= fixed.map(({ name, parameter, cell, range }) => [
      name,
      readValue(name, parameter, parameter.shape === 'table' ? range : cell, dates),
    ]));
}

export function mapRows(declaration: FunctionDeclaration, given: readonly Argument[], dates: DateHost): CellValue[][] {
  const varies = ({ parameter, range }: Argument): boolean => parameter.shape === 'cell' && range !== undefined;
  const ranged = given.filter(varies);
  const names = Object.keys(declaration.results);
  const size = commonSize(declaration.name, ranged) ?? { rows: 0, columns: 0 };
  if (names.length > 1) ranged.forEach(mustBeOneColumn);
  const shared = sharedReader(
    given.filter((argument) => !varies(argument)),
    dates,
  );
  const blanks = (): CellValue[] => Array<CellValue>(names.length).fill('');

  const answer = (row: number, column: number): CellValue[] => {
    if (ranged.every(({ range }) => isBlank(range?.[row]?.[column]))) return blanks();
    // Filled name by name: a spread copy of one object takes far more memory, row for row.
    const values: Record<string, unknown> = {};
    for (const [name, value] of shared()) values[name] = value;
    try {
      for (const { name, parameter, range } of ranged) values[name] = readValue(name, parameter, range?.[row]?.[column], dates);
      const cells = declaration.compute(values, { rows: [row + 1], height: size.rows }) as Record<string, ResultCell>;
      return names.map((name) => writeCell(declaration.name, cells[name] ?? '', dates));
    } catch (thrown) {
      const place = size.columns === 1 ? { row: row + 1 } : { row: row + 1, column: column + 1 };
      return [thrown instanceof SheetError ? thrown.message : wordError(declaration.name, thrown, place), ...blanks().slice(1)];
    }
  };

  const rows = Array.from({ length: size.rows }, (_, row) => row);
  if (size.columns === 1) return rows.map((row) => answer(row, 0));
  const columns = Array.from({ length: size.columns }, (_, column) => column);
  return rows.map((row) => columns.flatMap((column) => answer(row, column)));
}
