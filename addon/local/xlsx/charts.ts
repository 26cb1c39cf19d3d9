// The charts of a sheet as charts of the Excel file, drawn by the program that opens it from the cells of the file.
import { scaleLinear } from 'd3-scale';
import type { ChartMarkerSymbol, SheetChart, WriteSheet } from 'hucre';
import type { SheetSnapshot } from '../../workbook/snapshot';
import { a1FromRange, quoteSheetName, rangeFromA1, readSheetReference, type CellRange } from '../engine/a1';
import { chartComponent, plainRowHeight } from '../engine/workbookIds';
import type { ChartRecord, NameRecord } from '../engine/workbookResources';

/** A chart or a picture over the grid, as the engine keeps it. */
export interface KeptDrawing {
  readonly componentKey: string;
  readonly sheetTransform: { readonly from: KeptCorner; readonly to: KeptCorner };
  readonly data: unknown;
}

/** Offsets in pixels into the cell. */
interface KeptCorner {
  readonly row: number;
  readonly rowOffset: number;
  readonly column: number;
  readonly columnOffset: number;
}

/** The file has corners of whole cells only: the nearer one, as far as usual cells go. */
const nearest = ({ row, rowOffset, column, columnOffset }: KeptCorner): { row: number; col: number } => ({
  row: row + (rowOffset > plainRowHeight / 2 ? 1 : 0),
  col: column + (columnOffset > 40 ? 1 : 0),
});

type Series = SheetChart['series'][number];

/** A series, and the ranges that its numbers stand in. */
interface Charted {
  readonly series: Series;
  readonly x: CellRange;
  readonly y: CellRange;
}

/** Okabe and Ito's set, and a shape each, so that it reads in grey print. */
const looks: readonly { readonly colour: string; readonly shape: ChartMarkerSymbol; readonly dash?: 'dash' }[] = [
  { colour: '000000', shape: 'none' },
  { colour: '0072B2', shape: 'none', dash: 'dash' },
  { colour: 'D55E00', shape: 'circle' },
  { colour: '009E73', shape: 'square' },
  { colour: 'CC79A7', shape: 'triangle' },
];

/** The cells of a one-column range that hold numbers, blanks before and after left off; undefined where they are not one run of numbers. */
function numbersIn({ values }: SheetSnapshot, range: CellRange): CellRange | undefined {
  const { startRow, endRow, startColumn } = range;
  const filled = Array.from({ length: endRow - startRow + 1 }, (_, index) => startRow + index).filter(
    (row) => (values[row]?.[startColumn] ?? '') !== '',
  );
  const [first = startRow, last = startRow - 1] = [filled[0], filled[filled.length - 1]];
  const whole = last - first + 1 === filled.length && filled.every((row) => typeof values[row]?.[startColumn] === 'number');
  return whole ? { ...range, startRow: first, endRow: last } : undefined;
}

/** A program that finds a text among the numbers counts 1, 2, 3 in their place, so a chart with such a series is not made. */
function seriesInFile(snapshot: SheetSnapshot, nameInFile: string, names: readonly NameRecord[], record: ChartRecord): Charted[] | undefined {
  const columnOf = (name: string): CellRange | undefined => {
    const reference = readSheetReference(names.find((one) => one.name === name)?.formulaOrRefString ?? '');
    // A copy of a sheet has the drawing of the sheet it was copied from.
    return reference?.sheet === snapshot.name ? rangeFromA1(reference.range) : undefined;
  };
  const found: Charted[] = [];
  for (const [index, { title, drawn, x, y }] of record.series.entries()) {
    const [acrossColumn, upColumn] = [columnOf(x), columnOf(y)];
    const across = acrossColumn && numbersIn(snapshot, acrossColumn);
    const up = upColumn && numbersIn(snapshot, upColumn);
    if (across === undefined || up === undefined || across.startRow !== up.startRow || across.endRow !== up.endRow) return undefined;
    if (across.endRow < across.startRow) continue;
    const place = (range: CellRange): string => `${quoteSheetName(nameInFile)}!${a1FromRange(range, '$')}`;
    const { colour, shape, dash } = looks[index % looks.length] ?? { colour: '000000', shape: 'circle' as const };
    const series: Series = {
      name: title,
      categories: place(across),
      values: place(up),
      color: colour,
      smooth: false,
      stroke: { width: 1.5, ...(dash !== undefined && { dash }) },
      marker: drawn === 'points' ? { symbol: shape === 'none' ? 'circle' : shape, size: 9, fill: colour, line: 'FFFFFF' } : { symbol: 'none' },
    };
    found.push({ series, x: across, y: up });
  }
  return found;
}

export interface ChartsInFile {
  readonly charts: NonNullable<WriteSheet['charts']>;
  /** Titles of those that could not be drawn truly. */
  readonly leftOut: readonly string[];
}

export function chartsInFile(
  drawings: readonly KeptDrawing[],
  names: readonly NameRecord[],
  snapshot: SheetSnapshot,
  nameInFile: string,
): ChartsInFile {
  const charts: SheetChart[] = [];
  const leftOut: string[] = [];
  for (const { componentKey, sheetTransform, data } of drawings) {
    if (componentKey !== chartComponent) continue;
    const record = data as ChartRecord;
    const charted = seriesInFile(snapshot, nameInFile, names, record);
    if (charted === undefined || charted.length === 0) leftOut.push(record.title);
    else charts.push(chart(record, charted, snapshot, sheetTransform));
  }
  return { charts, leftOut };
}

/** From a round number below the least to one above the most: left to itself Excel begins at nought, and the outline is a sliver. */
function scale({ values }: SheetSnapshot, ranges: readonly CellRange[]): { readonly min?: number; readonly max?: number } {
  const numbers = ranges.flatMap(({ startRow, endRow, startColumn }) => values.slice(startRow, endRow + 1).map((row) => Number(row[startColumn])));
  const [min = 0, max = 0] = scaleLinear()
    .domain([Math.min(...numbers), Math.max(...numbers)])
    .nice()
    .domain();
  return min < max ? { min, max } : {};
}

function chart(
  { title, description, xTitle, yTitle }: ChartRecord,
  charted: readonly Charted[],
  snapshot: SheetSnapshot,
  { from, to }: KeptDrawing['sheetTransform'],
): SheetChart {
  type Axis = NonNullable<NonNullable<SheetChart['axes']>['x']>;
  const axis = (words: string, ranges: readonly CellRange[], turned: number): Axis => ({
    title: words,
    axisTitleFontSize: 9,
    axisTitleRotation: turned,
    labelFontSize: 8,
    numberFormat: { formatCode: 'General' },
    gridlines: { major: true },
    majorTickMark: 'out',
    minorTickMark: 'none',
    scale: scale(snapshot, ranges),
  });
  return {
    type: 'scatter',
    scatterStyle: 'lineMarker',
    title,
    titleFontSize: 11,
    altText: description,
    series: charted.map(({ series }) => series),
    anchor: { from: nearest(from), to: nearest(to) },
    legend: 'bottom',
    legendFontSize: 8,
    dispBlanksAs: 'gap',
    axes: {
      x: axis(
        xTitle,
        charted.map(({ x }) => x),
        0,
      ),
      y: axis(
        yTitle,
        charted.map(({ y }) => y),
        -90,
      ),
    },
  };
}

/** By sheet identifier, as the resource of drawings keeps them. */
export function drawingsOn(
  kept: Readonly<Record<string, { readonly data: Readonly<Record<string, KeptDrawing>>; readonly order: readonly string[] }>>,
  sheetId: string,
): KeptDrawing[] {
  const { data = {}, order = [] } = kept[sheetId] ?? {};
  return order.flatMap((id) => data[id] ?? []);
}
