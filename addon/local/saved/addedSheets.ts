// Puts placed templates into a saved workbook, after the sheets that it has. What is there stays as it is: identifiers, names
// and styles of the new sheets have been, or are here, chosen so that none of them is taken.
import type { ICellData, IStyleData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import { usedStyles } from '../engine/cellStyles';
import type { PlacedTemplate } from '../engine/placedTemplate';
import { resourceIn, withResource, worksheetData } from '../engine/workbookData';
import { workbookResources } from '../engine/workbookResources';

type Styles = IWorkbookData['styles'];

/** The same text for two styles that look alike, whatever the order of their parts. */
function styleText(style: unknown): string {
  if (typeof style !== 'object' || style === null) return JSON.stringify(style) ?? '';
  const parts = Object.entries(style)
    .filter(([, part]) => part !== undefined)
    .sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${parts.map(([name, part]) => `${name}:${styleText(part)}`).join(',')}}`;
}

/** Where a style of an older version looks otherwise, the new one gets a number. */
function keyFor(styles: Styles, key: string, style: IStyleData): string {
  const serves = (one: string): boolean => styles[one] === undefined || styleText(styles[one]) === styleText(style);
  let found = key;
  for (let next = 2; !serves(found); next += 1) found = `${key} ${next}`;
  return found;
}

function withStyles(sheet: Partial<IWorksheetData>, keys: ReadonlyMap<string, string>): Partial<IWorksheetData> {
  const styled = (cell: Nullable<ICellData>): Nullable<ICellData> =>
    cell && typeof cell.s === 'string' ? { ...cell, s: keys.get(cell.s) ?? cell.s } : cell;
  const rows = Object.entries(sheet.cellData ?? {}).map(([row, cells]) => [
    row,
    Object.fromEntries(Object.entries(cells as Record<string, ICellData>).map(([column, cell]) => [column, styled(cell)])),
  ]);
  return { ...sheet, cellData: Object.fromEntries(rows) as IWorksheetData['cellData'] };
}

export function withSheetsAdded(data: IWorkbookData, placed: readonly PlacedTemplate[]): IWorkbookData {
  const styles = { ...data.styles };
  const keys = new Map<string, string>();
  for (const [key, style] of Object.entries(usedStyles(placed.map(({ template }) => template)))) {
    const found = keyFor(styles, key, style);
    keys.set(key, found);
    styles[found] = style;
  }
  const sheets = Object.fromEntries(placed.map((one) => [one.sheetId, withStyles(worksheetData(one), keys)]));
  const order = [...data.sheetOrder, ...placed.map(({ sheetId }) => sheetId)];
  const added = workbookResources(placed, data.id);
  return added.reduce<IWorkbookData>(
    (grown, { name, data: text }) => withResource(grown, name, { ...resourceIn(grown, name), ...(JSON.parse(text) as object) }),
    { ...data, styles, sheets: { ...data.sheets, ...sheets }, sheetOrder: order },
  );
}
