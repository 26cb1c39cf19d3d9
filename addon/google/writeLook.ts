// Writes looks: one call for each property of all cells, one for each kind of border, one for each run of merges.
import { fontFamily, styles, type CellLook, type StyleName } from '../../sheets-templates/look';
import { areasOf, areaText, type Area } from '../workbook/areas';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
type TextStyle = GoogleAppsScript.Spreadsheet.TextStyle;
type Looks = readonly (readonly StyleName[])[];

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

/** One property of every cell's look. */
export const lookLayer = <Value>(looks: Looks, of: (look: CellLook) => Value): Value[][] =>
  looks.map((line) => line.map((style) => of(styles[style])));

export function writeCellLooks(whole: Range, looks: Looks, styleOf: (style: StyleName) => TextStyle): void {
  // A line runs over the blank cells beside it: setWraps with false leaves open whether it is cut off instead.
  const { WRAP, OVERFLOW } = SpreadsheetApp.WrapStrategy;
  whole.setBackgrounds(lookLayer(looks, ({ background }) => background ?? null));
  whole.setTextStyles(looks.map((line) => line.map(styleOf)));
  whole.setHorizontalAlignments(lookLayer(looks, ({ align }) => align ?? null));
  whole.setWrapStrategies(lookLayer(looks, ({ wrap }) => (wrap === true ? WRAP : OVERFLOW)));
}

export function writeBorders(sheet: Sheet, looks: Looks): void {
  const { SOLID } = SpreadsheetApp.BorderStyle;
  const areasWith = (wanted: CellLook['border']): string[] => areasOf(lookLayer(looks, ({ border }) => border === wanted)).map(areaText);
  const [underlined, boxed] = [areasWith('bottom'), areasWith('box')];
  if (underlined.length > 0) sheet.getRangeList(underlined).setBorder(null, null, true, null, null, true, borderColor, SOLID);
  if (boxed.length > 0) sheet.getRangeList(boxed).setBorder(true, true, true, true, true, true, borderColor, SOLID);
}

interface MergeRun {
  readonly area: Area;
  /** Each row of the area is merged by itself. */
  readonly across: boolean;
}

/** Merges of single rows under one another, and of the same columns, go in one call. */
function mergeRuns(merges: readonly Area[]): MergeRun[] {
  const sorted = [...merges].sort((one, other) => one.column - other.column || one.row - other.row);
  return sorted.reduce<MergeRun[]>((runs, merge) => {
    const above = runs[runs.length - 1];
    const across = merge.row === merge.lastRow;
    const joins =
      above !== undefined &&
      across &&
      above.across &&
      above.area.lastRow === merge.row - 1 &&
      above.area.column === merge.column &&
      above.area.lastColumn === merge.lastColumn;
    return joins ? [...runs.slice(0, -1), { across, area: { ...above.area, lastRow: merge.lastRow } }] : [...runs, { across, area: merge }];
  }, []);
}

export function writeMerges(sheet: Sheet, merges: readonly Area[]): void {
  for (const { area, across } of mergeRuns(merges)) {
    const range = sheet.getRange(areaText(area));
    if (across) range.mergeAcross();
    else range.merge();
  }
}
