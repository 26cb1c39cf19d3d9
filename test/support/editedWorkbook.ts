// What a user does to the lines of a sheet, and what a spreadsheet then does to cells, formulas and names everywhere.
import { areaOf, tokensOf, type Reference } from '../../addon/workbook/formulaReading';
import { columnLetter } from '../../sheets-templates/build';
import type { CellValue, FormulaCell, SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';

export interface LineEdit {
  readonly sheet: string;
  readonly lines: 'row' | 'column';
  /** Inserts so many empty lines before this one, or removes so many from it on. */
  readonly at: number;
  readonly inserted?: number;
  readonly removed?: number;
}

const lineNow = ({ at, inserted = 0, removed = 0 }: LineEdit, line: number): number | undefined =>
  line < at ? line : line < at + removed ? undefined : line - removed + inserted;

/** A range keeps what is left of it; nothing left is #REF!. */
function rangeNow(edit: LineEdit, range: string): string {
  const area = areaOf(range);
  if (area === undefined) return range;
  const [from, to] = edit.lines === 'row' ? [area.row, area.lastRow] : [area.column, area.lastColumn];
  const kept = Array.from({ length: Math.min(to, 5000) - from + 1 }, (_, index) => lineNow(edit, from + index)).filter(
    (line): line is number => line !== undefined,
  );
  const [first, last] = [kept[0], kept[kept.length - 1]];
  if (first === undefined || last === undefined) return '#REF!';
  const ends = [first, last];
  return range
    .split(':')
    .map((corner, index) =>
      corner.replace(/(\$?)([A-Z]+)(\$?)(\d+)/, (_whole, fixedColumn: string, letters: string, fixedRow: string, digits: string) => {
        const line = ends[index] ?? first;
        return edit.lines === 'row' ? `${fixedColumn}${letters}${fixedRow}${line}` : `${fixedColumn}${columnLetter(line)}${fixedRow}${digits}`;
      }),
    )
    .join(':');
}

function formulaNow(edit: LineEdit, home: string, text: string): string {
  const written = ({ sheet, range }: Reference, whole: string): string => {
    if ((sheet ?? home) !== edit.sheet) return whole;
    return whole.slice(0, whole.length - range.length) + rangeNow(edit, range);
  };
  return `=${tokensOf(text)
    .map((token) => (token.kind === 'reference' ? written(token.reference, token.text) : token.text))
    .join('')}`;
}

function valuesNow({ values }: SheetSnapshot, { lines, at, inserted = 0, removed = 0 }: LineEdit): CellValue[][] {
  const edited = <Item>(items: readonly Item[], blank: () => Item): Item[] => [
    ...items.slice(0, at - 1),
    ...Array.from({ length: inserted }, blank),
    ...items.slice(at - 1 + removed),
  ];
  const width = values[0]?.length ?? 0;
  return lines === 'row'
    ? edited(
        values.map((line) => [...line]),
        () => Array<CellValue>(width).fill(''),
      )
    : values.map((line) => edited(line, () => ''));
}

export function edited(workbook: WorkbookSnapshot, edit: LineEdit): WorkbookSnapshot {
  const sheets = workbook.sheets.map((sheet) => {
    const formulas = sheet.formulas.map((cell): FormulaCell => ({ ...cell, text: formulaNow(edit, sheet.name, cell.text) }));
    if (sheet.name !== edit.sheet) return { ...sheet, formulas };
    const places = formulas.flatMap((cell): FormulaCell[] => {
      const line = lineNow(edit, cell[edit.lines]);
      return line === undefined ? [] : [{ ...cell, [edit.lines]: line }];
    });
    return { ...sheet, values: valuesNow(sheet, edit), formulas: places };
  });
  const names = workbook.names.flatMap((name) => {
    const range = name.sheet === edit.sheet ? rangeNow(edit, name.range) : name.range;
    return range === '#REF!' ? [] : [{ ...name, range }];
  });
  return { ...workbook, sheets, names };
}

/** Types values over cells of a sheet; a text that starts with = becomes a formula that shows nothing. */
export function typedOver(
  workbook: WorkbookSnapshot,
  sheetName: string,
  cells: readonly { readonly row: number; readonly column: number; readonly content: CellValue }[],
): WorkbookSnapshot {
  const isFormula = (content: CellValue): content is string => typeof content === 'string' && content.startsWith('=');
  const sheets = workbook.sheets.map((sheet) => {
    if (sheet.name !== sheetName) return sheet;
    const [height, width] = [
      Math.max(sheet.values.length, ...cells.map(({ row }) => row)),
      Math.max(sheet.values[0]?.length ?? 0, ...cells.map(({ column }) => column)),
    ];
    const values = Array.from({ length: height }, (_, row) =>
      Array.from({ length: width }, (__, column): CellValue => sheet.values[row]?.[column] ?? ''),
    );
    for (const { row, column, content } of cells) {
      const line = values[row - 1];
      if (line !== undefined) line[column - 1] = isFormula(content) ? '' : content;
    }
    const kept = sheet.formulas.filter((one) => !cells.some(({ row, column }) => one.row === row && one.column === column));
    return {
      ...sheet,
      values,
      formulas: [...kept, ...cells.flatMap(({ row, column, content }) => (isFormula(content) ? [{ row, column, text: content }] : []))],
    };
  });
  return { ...workbook, sheets };
}
