// The sheet in sight on paper. The grid is drawn on a canvas no larger than the window, which prints blank, so a table of its cells as
// they look goes to the printer in its place, with the drawings below it, made to fit the width of the page.
import { BorderStyleTypes, BooleanNumber, HorizontalAlign, VerticalAlign, WrapStrategy, type IRange, type IStyleData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { element, escaped } from '../../pictures/svg';
import { localToday } from '../../panel/localToday';
import { sheetTemplates } from '../../../sheets-templates';
import { markOf } from '../engine/sheetMark';
import { rangeNamesIn } from '../engine/workbookSnapshot';
import type { Worksheet } from './cells';
import { markupOf } from './drawnBox';
import { elementNamed } from './elements';
import type { Workbook } from './grid';
import type { LiveWorkbook } from './liveWorkbook';
import { sayFailure } from './toldStrip';

type Skeleton = ReturnType<Worksheet['getSheet']>;

/** CSS pixels between the margins of A4 and of letter paper. */
const page = { short: 700, long: 970 } as const;
const margin = '10mm';
/** A sheet a little longer than its page is made to fit it. */
const squeezed = 0.7;

const lookedAt: Readonly<Record<number, string>> = { [HorizontalAlign.CENTER]: 'center', [HorizontalAlign.RIGHT]: 'right' };
const standing: Readonly<Record<number, string>> = { [VerticalAlign.TOP]: 'top', [VerticalAlign.BOTTOM]: 'bottom' };

function borderText(border: IStyleData['bd']): string {
  const sides = [['top', border?.t], ['right', border?.r], ['bottom', border?.b], ['left', border?.l]] as const;
  return sides.map(([side, line]) => (line && line.s !== BorderStyleTypes.NONE ? `border-${side}:1px solid ${line.cl.rgb ?? '#000'};` : '')).join('');
}

function styleText(style: IStyleData, isNumber: boolean, overflows: boolean): string {
  const wraps = style.tb === WrapStrategy.WRAP;
  return [
    `font-size:${style.fs ?? 10}pt;text-align:${lookedAt[style.ht ?? 0] ?? (isNumber && !style.ht ? 'right' : 'left')};vertical-align:${standing[style.vt ?? 0] ?? 'middle'};`,
    style.bl === BooleanNumber.TRUE ? 'font-weight:bold;' : '',
    style.it === BooleanNumber.TRUE ? 'font-style:italic;' : '',
    style.cl?.rgb ? `color:${style.cl.rgb};` : '',
    style.bg?.rgb ? `background:${style.bg.rgb};` : '',
    borderText(style.bd),
    `white-space:${wraps ? 'normal' : 'nowrap'};overflow:${overflows ? 'visible' : 'hidden'};`,
  ].join('');
}

interface Extent {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}

const shownAt = (sheet: Skeleton, row: number, column: number): string => String(sheet.getCell(row, column)?.v ?? '');

/** From the first cell to the last that shows anything, without what is hidden. */
function extentOf(sheet: Skeleton): Extent {
  let [lastRow, lastColumn] = [0, 0];
  for (let row = 0; row < sheet.getRowCount(); row += 1) {
    for (let column = 0; column < sheet.getColumnCount(); column += 1) {
      if (shownAt(sheet, row, column) !== '') [lastRow, lastColumn] = [row, Math.max(lastColumn, column)];
    }
  }
  const upTo = (last: number, isShown: (index: number) => boolean): number[] => Array.from({ length: last + 1 }, (_, index) => index).filter(isShown);
  return { rows: upTo(lastRow, (row) => sheet.getRowVisible(row)), columns: upTo(lastColumn, (column) => sheet.getColVisible(column)) };
}

const spanIn = (shown: readonly number[], first: number, last: number): number => shown.filter((index) => index >= first && index <= last).length;

function cellMarkup(sheet: Skeleton, { rows, columns }: Extent, merges: readonly IRange[], row: number, column: number): string {
  const merge = merges.find(({ startRow, endRow, startColumn, endColumn }) => row >= startRow && row <= endRow && column >= startColumn && column <= endColumn);
  if (merge !== undefined && (merge.startRow !== row || merge.startColumn !== column)) return '';
  const span = merge === undefined ? {} : { rowspan: spanIn(rows, merge.startRow, merge.endRow), colspan: spanIn(columns, merge.startColumn, merge.endColumn) };
  const cell = sheet.getCell(row, column);
  const overflows = merge === undefined && shownAt(sheet, row, column + 1) === '';
  return element('td', { ...span, style: styleText(sheet.getComposedCellStyle(row, column), cell?.t === 2, overflows) }, escaped(shownAt(sheet, row, column)) || ' ');
}

function tableMarkup(sheet: Skeleton, extent: Extent, width: number): string {
  const merges = sheet.getMergeData();
  const widths = extent.columns.map((column) => element('col', { style: `width:${sheet.getColumnWidth(column)}px` })).join('');
  const rows = extent.rows.map((row) => element('tr', { style: `height:${sheet.getRowHeight(row)}px` }, extent.columns.map((column) => cellMarkup(sheet, extent, merges, row, column)).join('') || ' '));
  return element('table', { style: `width:${width}px` }, element('colgroup', {}, widths) + element('tbody', {}, rows.join('')));
}

/** Below the cells: over them, page breaks would part the drawings from where they stand. */
const drawingsMarkup = (workbook: Workbook, sheet: Worksheet): string =>
  sheet.getAllFloatDoms().map((one) => element('div', { class: 'picture', style: `width:${one.position.width ?? 0}px;height:${one.position.height ?? 0}px` }, markupOf(workbook, one))).join('');

const isLandscape = (workbook: Workbook, sheet: Worksheet): boolean => {
  const data = workbook.save();
  const mark = markOf(data.sheets[sheet.getSheetId()] ?? {}, rangeNamesIn(data));
  return sheetTemplates.find(({ key }) => key === mark?.key)?.print.landscape === true;
};

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);

function fill(workbook: Workbook): void {
  const shown = workbook.getActiveSheet();
  const sheet = shown.getSheet();
  const extent = extentOf(sheet);
  const width = sum(extent.columns.map((column) => sheet.getColumnWidth(column)));
  const height = sum(extent.rows.map((row) => sheet.getRowHeight(row)));
  const landscape = isLandscape(workbook, shown);
  const [across, down] = landscape ? [page.long, page.short] : [page.short, page.long];
  const toWidth = Math.min(1, across / width);
  const toPage = Math.min(toWidth, (down - 30) / height);
  const zoom = toPage >= toWidth * squeezed ? toPage : toWidth;
  const foot = `${shown.getSheetName()}, printed on ${localToday()}. ${elementNamed('caution').textContent ?? ''}`;
  elementNamed('paper').innerHTML =
    element('style', {}, `@page { size: ${landscape ? 'landscape' : 'portrait'}; margin: ${margin}; }`) +
    element('p', {}, escaped(foot)) +
    element('div', { style: `zoom:${zoom.toFixed(3)}` }, tableMarkup(sheet, extent, width) + drawingsMarkup(workbook, shown));
}

/** Ctrl+P, the browser's own menu, or the button. The first and the last wait until everything is calculated. */
export function printSheets(api: FUniver, { workbook, settled }: LiveWorkbook): void {
  const print = (): void => void settled().then(() => window.print()).catch(sayFailure);
  elementNamed('print-button').addEventListener('click', print);
  window.addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey || event.key.toLowerCase() !== 'p') return;
    event.preventDefault();
    event.stopPropagation();
    print();
  }, { capture: true });
  window.addEventListener('beforeprint', () => fill(api.getActiveWorkbook() ?? workbook));
  window.addEventListener('afterprint', () => elementNamed('paper').replaceChildren());
}
