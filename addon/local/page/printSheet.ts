// The sheet in sight on paper. The grid is drawn on a canvas no larger than the window, which prints blank, so a table of its cells as
// they look goes to the printer in its place, with the drawings below it, made to fit the width of the page.
import { BorderStyleTypes, BooleanNumber, HorizontalAlign, VerticalAlign, type IStyleData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { element, escaped } from '../../pictures/svg';
import { localToday } from '../../panel/localToday';
import { sheetTemplates } from '../../../sheets-templates';
import { placedSheet, type PlacedSheet } from '../../workbook/pocket/placedSheet';
import type { SheetSnapshot } from '../../workbook/snapshot';
import type { Worksheet } from './cells';
import { markupOf } from './drawnBox';
import { elementNamed } from './elements';
import type { Workbook } from './grid';
import type { LiveWorkbook } from './liveWorkbook';
import { fitTrip, tripOnPaper } from './printTrip';
import { extentOf, fontOf, printedRow, shownAt, sizeOf, type Extent, type PrintedCell, type Skeleton } from './printLayout';
import { notifyFailure } from './notices';
import { sharedName } from './sharedName';

/** CSS pixels between the margins of A4 and of letter paper. */
const page = { short: 700, long: 970 } as const;
const margin = '10mm';
/** The page of the trip: narrower margins, and what they leave of the narrower and of the shorter of the two papers. */
const tripPage = { margin: '8mm', across: 725, down: 985 } as const;
/** A sheet a little longer, or wider, than its page is made to fit it. */
const squeezed = 0.7;

const lookedAt: Readonly<Record<number, string>> = { [HorizontalAlign.CENTER]: 'center', [HorizontalAlign.RIGHT]: 'right' };
const standing: Readonly<Record<number, string>> = { [VerticalAlign.TOP]: 'top', [VerticalAlign.BOTTOM]: 'bottom' };

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);

function borderText(border: IStyleData['bd']): string {
  const sides = [
    ['top', border?.t],
    ['right', border?.r],
    ['bottom', border?.b],
    ['left', border?.l],
  ] as const;
  return sides.map(([side, line]) => (line && line.s !== BorderStyleTypes.NONE ? `border-${side}:1px solid ${line.cl.rgb ?? '#000'};` : '')).join('');
}

function styleText(style: IStyleData, isNumber: boolean, { wraps, shrunk }: PrintedCell): string {
  return [
    `font-family:${fontOf(style)};font-size:${(sizeOf(style) * shrunk).toFixed(2)}pt;`,
    `text-align:${lookedAt[style.ht ?? 0] ?? (isNumber && !style.ht ? 'right' : 'left')};vertical-align:${standing[style.vt ?? 0] ?? 'middle'};`,
    style.bl === BooleanNumber.TRUE ? 'font-weight:bold;' : '',
    style.it === BooleanNumber.TRUE ? 'font-style:italic;' : '',
    style.cl?.rgb ? `color:${style.cl.rgb};` : '',
    style.bg?.rgb ? `background:${style.bg.rgb};` : '',
    borderText(style.bd),
    wraps ? 'white-space:pre-line;overflow-wrap:anywhere;' : 'white-space:pre;',
  ].join('');
}

const spanIn = (shown: readonly number[], first: number, last: number): number => shown.filter((index) => index >= first && index <= last).length;

function cellMarkup(sheet: Skeleton, { rows, columns }: Extent, row: number, printed: PrintedCell): string {
  const { column, lastRow, lastColumn } = printed;
  const cell = sheet.getCell(row, column);
  return element(
    'td',
    {
      rowspan: spanIn(rows, row, lastRow),
      colspan: spanIn(columns, column, lastColumn),
      style: styleText(sheet.getComposedCellStyle(row, column), cell?.t === 2, printed),
    },
    escaped(shownAt(sheet, row, column)) || ' ',
  );
}

interface PrintedTable {
  readonly markup: string;
  readonly width: number;
  /** As high as its text is expected to be. */
  readonly height: number;
}

function tableOf(sheet: Skeleton, extent: Extent): PrintedTable {
  const merges = sheet.getMergeData();
  const width = sum(extent.columns.map((column) => sheet.getColumnWidth(column)));
  const widths = extent.columns.map((column) => element('col', { style: `width:${sheet.getColumnWidth(column)}px` })).join('');
  const rows = extent.rows.map((row) => {
    const cells = printedRow(sheet, extent, merges, row);
    const least = sheet.getRowHeight(row);
    return {
      markup: element('tr', { style: `height:${least}px` }, cells.map((cell) => cellMarkup(sheet, extent, row, cell)).join('') || ' '),
      height: Math.max(least, ...cells.map(({ height }) => height)),
    };
  });
  const body = rows.map(({ markup }) => markup).join('');
  return {
    markup: element('table', { style: `width:${width}px` }, element('colgroup', {}, widths) + element('tbody', {}, body)),
    width,
    height: sum(rows.map(({ height }) => height)),
  };
}

/** Below the cells: over them, page breaks would part the drawings from where they stand. */
const drawingsMarkup = (workbook: Workbook, sheet: Worksheet): string =>
  sheet
    .getAllFloatDoms()
    .map((one) =>
      element('div', { class: 'picture', style: `width:${one.position.width ?? 0}px;height:${one.position.height ?? 0}px` }, markupOf(workbook, one)),
    )
    .join('');

const footOf = (sheet: Worksheet): string => `${sheet.getSheetName()}, printed on ${localToday()}. ${elementNamed('caution').textContent ?? ''}`;
const pageRule = (landscape: boolean, room: string): string =>
  element('style', {}, `@page { size: ${landscape ? 'landscape' : 'portrait'}; margin: ${room}; }`);

/** The Trip sheet has a page of its own. */
function fillWithTrip(shown: Worksheet, placed: PlacedSheet): boolean {
  const markup = tripOnPaper(shown.getSheet(), placed);
  if (markup === undefined) return false;
  const paper = elementNamed('paper');
  paper.innerHTML = pageRule(false, tripPage.margin) + element('p', {}, escaped(footOf(shown))) + markup;
  fitTrip(paper, tripPage.across, tripPage.down);
  return true;
}

function fill(workbook: Workbook, snapshotShown: () => SheetSnapshot): void {
  const shown = workbook.getActiveSheet();
  const sheet = shown.getSheet();
  const snapshot = snapshotShown();
  const placed = placedSheet(sheetTemplates, snapshot);
  if (placed?.template.key === 'trip' && fillWithTrip(shown, placed)) return;
  // A sheet of an older version has the paper of its kind all the same.
  const landscape = sheetTemplates.find(({ key }) => key === snapshot.mark?.key)?.print.landscape === true;
  const [across, down] = landscape ? [page.long, page.short] : [page.short, page.long];
  const table = tableOf(sheet, extentOf(sheet, across / squeezed));
  const toWidth = Math.min(1, across / table.width);
  const toPage = Math.min(toWidth, (down - 30) / table.height);
  const zoom = toPage >= toWidth * squeezed ? toPage : toWidth;
  elementNamed('paper').innerHTML =
    pageRule(landscape, margin) +
    element('p', {}, escaped(footOf(shown))) +
    element('div', { style: `zoom:${Math.floor(zoom * 1000) / 1000}` }, table.markup + drawingsMarkup(workbook, shown));
}

/** What goes to the printer next, in place of the sheet in sight. */
let instead: string | undefined;

/** Prints these pages and not the sheet. */
export function printInstead(markup: string): void {
  instead = markup;
  window.print();
}

/** Ctrl+P, the browser's own menu, or the button. The first and the last wait until everything is calculated. */
export function printSheets(api: FUniver, { workbook, settled, shown }: LiveWorkbook): void {
  const print = (): void =>
    void settled()
      .then(() => window.print())
      .catch(notifyFailure);
  elementNamed('print-button').addEventListener('click', print);
  window.addEventListener(
    'keydown',
    (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey || event.key.toLowerCase() !== 'p') return;
      event.preventDefault();
      event.stopPropagation();
      print();
    },
    { capture: true },
  );
  const { title } = document;
  window.addEventListener('beforeprint', () => {
    if (instead !== undefined) {
      elementNamed('paper').innerHTML = instead;
      return;
    }
    fill(api.getActiveWorkbook() ?? workbook, () => shown().snapshot);
    // Browsers propose it as the name of a PDF.
    document.title = sharedName(shown().snapshot);
  });
  window.addEventListener('afterprint', () => {
    instead = undefined;
    elementNamed('paper').replaceChildren();
    document.title = title;
  });
}
