// Writes the look of a sheet: one call for each property of all its cells, one for each stroke of widths or heights.
import { fontFamily, styles, type CellLook, type StyleName } from '../../sheets-templates/look';
import type { SheetTemplate } from '../../sheets-templates/template';
import { areasOf, areaText, eachCell, equalRuns, fewestStrokes, readArea, type Area } from '../workbook/areas';
import { layer, type SheetGrid } from './sheetGrid';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type TextStyle = GoogleAppsScript.Spreadsheet.TextStyle;

const borderColor = '#c3c9cf';

function textStyle({ color, size, bold, italic }: CellLook): TextStyle {
  return SpreadsheetApp.newTextStyle()
    .setFontFamily(fontFamily)
    .setFontSize(size)
    .setForegroundColor(color)
    .setBold(bold === true)
    .setItalic(italic === true)
    .build();
}

/** Each style made once, whatever number of cells and sheets wear it. */
export function textStyles(): (style: StyleName) => TextStyle {
  const made = new Map<StyleName, TextStyle>();
  return (name) => {
    const style = made.get(name) ?? textStyle(styles[name]);
    made.set(name, style);
    return style;
  };
}

const areasWith = (grid: SheetGrid, wanted: (look: CellLook) => boolean): string[] => areasOf(layer(grid, wanted)).map(areaText);

function writeBorders(sheet: Sheet, grid: SheetGrid): void {
  const { SOLID } = SpreadsheetApp.BorderStyle;
  const underlined = areasWith(grid, ({ border }) => border === 'bottom');
  const boxed = areasWith(grid, ({ border }) => border === 'box');
  if (underlined.length > 0) sheet.getRangeList(underlined).setBorder(null, null, true, null, null, true, borderColor, SOLID);
  if (boxed.length > 0) sheet.getRangeList(boxed).setBorder(true, true, true, true, true, true, borderColor, SOLID);
}

/** Merges of single rows under one another, and of the same columns, go in one call. */
function joinedMerges(merges: readonly string[]): Area[] {
  const sorted = merges.map(readArea).sort((one, other) => one.column - other.column || one.row - other.row);
  return sorted.reduce<Area[]>((joined, merge) => {
    const above = joined[joined.length - 1];
    const joins = above !== undefined && merge.row === merge.lastRow && above.lastRow === merge.row - 1 && above.column === merge.column && above.lastColumn === merge.lastColumn;
    return joins ? [...joined.slice(0, -1), { ...above, lastRow: merge.lastRow }] : [...joined, merge];
  }, []);
}

/** Rows grow by themselves to hold wrapped text, but not where it wraps in a merged cell: those get their height. */
function writeHeights(sheet: Sheet, { merges, rowHeights }: SheetTemplate, wraps: readonly (readonly boolean[])[]): void {
  const wrapped = new Set<number>();
  for (const merge of merges.map(readArea)) eachCell(merge, (row, column) => wraps[row - 1]?.[column - 1] === true && wrapped.add(row));
  const heights = wraps.map((_, index) => (wrapped.has(index + 1) ? rowHeights[index + 1] : undefined));
  for (const { start, count, value } of equalRuns(heights)) sheet.setRowHeights(start, count, value);
}

export function writeLook(sheet: Sheet, template: SheetTemplate, grid: SheetGrid, styleOf: (style: StyleName) => TextStyle): void {
  const whole = sheet.getRange(1, 1, grid.rows, grid.columns);
  const wraps = layer(grid, ({ wrap }) => wrap === true);
  whole.setBackgrounds(layer(grid, ({ background }) => background ?? null));
  whole.setTextStyles(grid.looks.map((line) => line.map(styleOf)));
  whole.setHorizontalAlignments(layer(grid, ({ align }) => align ?? null));
  if (wraps.some((line) => line.includes(true))) whole.setWraps(wraps);
  writeBorders(sheet, grid);
  for (const { start, count, value } of fewestStrokes(template.columnWidths)) sheet.setColumnWidths(start, count, value);
  for (const merge of joinedMerges(template.merges)) {
    const range = sheet.getRange(areaText(merge));
    if (merge.row === merge.lastRow || template.merges.includes(areaText(merge))) range.merge();
    else range.mergeAcross();
  }
  writeHeights(sheet, template, wraps);
  if (template.frozenRows > 0) sheet.setFrozenRows(template.frozenRows);
}
