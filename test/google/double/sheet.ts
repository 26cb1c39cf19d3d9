// Sheets of the double.
import { areaText, readArea, type Area } from '../../../addon/workbook/areas';
import type { FakeConditionalFormatRule } from './builders';
import { freshCell, type Cell } from './cells';
import { FakeChart, FakeChartBuilder } from './charts';
import type { FakeSpreadsheet } from './spreadsheet';
import { FakeMetadata, visibilities } from './metadata';
import { putRowsIn, removeRows } from './moveCells';
import { FakeProtection } from './protection';
import { FakeRange, FakeRangeList, isFormatRule } from './range';
import { Doubled } from './recorder';
import type { FakeFilter } from './filter';

export const sheetTypes = { GRID: 0, OBJECT: 1 };

const overlap = (one: Area, other: Area): boolean =>
  one.row <= other.lastRow && other.row <= one.lastRow && one.column <= other.lastColumn && other.column <= one.lastColumn;

export class FakeSheet extends Doubled {
  readonly service = 'Sheet';
  override readonly handles = new Set(['getRange', 'getRangeList', 'getParent', 'newChart']);
  readonly document: FakeSpreadsheet;
  readonly sheetId: number;
  name: string;
  rows = 1000;
  columns = 26;
  frozen = 0;
  readonly cells = new Map<string, Cell>();
  readonly merges: Area[] = [];
  readonly widths = new Map<number, number>();
  readonly hidden = new Set<number>();
  readonly heights = new Map<number, number>();
  readonly charts: FakeChart[] = [];
  type: number = sheetTypes.GRID;
  readonly metadata: FakeMetadata[] = [];
  readonly protections: FakeProtection[] = [];
  rules: readonly FakeConditionalFormatRule[] = [];
  filter: FakeFilter | null = null;

  constructor(document: FakeSpreadsheet, name: string, sheetId: number) {
    super();
    this.document = document;
    this.name = name;
    this.sheetId = sheetId;
  }

  /** Not part of the service: the cell itself. */
  cell(row: number, column: number): Cell {
    const key = `${row}-${column}`;
    const cell = this.cells.get(key) ?? freshCell();
    this.cells.set(key, cell);
    return cell;
  }

  /** Not part of the service: what the cell shows. Only links are computed; another formula shows itself. */
  shown({ formula, value }: Cell): string {
    const link = /^=HYPERLINK\("[^"]*";"(.*)"\)$/.exec(formula);
    if (link !== null) return (link[1] ?? '').replace(/""/g, '"');
    return formula === '' ? String(value) : formula;
  }

  addMerge(area: Area): void {
    if (this.merges.some((other) => overlap(area, other))) throw new Error(`${areaText(area)} overlaps a merged range`);
    this.merges.push(area);
  }

  getName = (): string => this.name;
  getSheetId = (): number => this.sheetId;
  getType = (): number => this.type;
  getParent = (): FakeSpreadsheet => this.document;
  getMaxRows = (): number => this.rows;
  getMaxColumns = (): number => this.columns;

  getRange(first: string | number, column?: number, rows = 1, columns = 1): FakeRange {
    if (typeof first === 'string') return new FakeRange(this, readArea(first));
    if (column === undefined) throw new Error('getRange takes a row and a column');
    return new FakeRange(this, { row: first, column, lastRow: first + rows - 1, lastColumn: column + columns - 1 });
  }

  getRangeList = (texts: string[]): FakeRangeList => new FakeRangeList(this, texts);

  setName(name: string): this {
    this.document.checkSheetName(name, this);
    this.document.renamed(this.name, name);
    this.name = name;
    return this;
  }

  getDataRange(): FakeRange {
    if (this.type !== sheetTypes.GRID) throw new Error('a sheet of this kind has no cells');
    const filled = [...this.cells].filter(([, { value, formula }]) => value !== '' || formula !== '').map(([place]) => place.split('-').map(Number));
    const last = (index: number): number => filled.reduce((most, place) => Math.max(most, place[index] ?? 1), 1);
    return new FakeRange(this, { row: 1, column: 1, lastRow: last(0), lastColumn: last(1) });
  }

  /** Into the same document, its own mark and names carried along as the platform may do. */
  copyTo(document: FakeSpreadsheet): FakeSheet {
    const copy = document.addSheet(`Copy of ${this.name}`, document.sheets.length);
    Object.assign(copy, { rows: this.rows, columns: this.columns, frozen: this.frozen, rules: this.rules });
    for (const [place, cell] of this.cells) copy.cells.set(place, { ...cell });
    for (const [column, width] of this.widths) copy.widths.set(column, width);
    for (const column of this.hidden) copy.hidden.add(column);
    for (const [row, height] of this.heights) copy.heights.set(row, height);
    copy.merges.push(...this.merges);
    copy.charts.push(...this.charts);
    copy.metadata.push(...this.metadata.map((metadata) => metadata.copyOn(copy)));
    document.copyNames(this, copy);
    return copy;
  }

  insertRowsAfter(after: number, count: number): this {
    putRowsIn(this, after, count);
    return this;
  }

  deleteRows(start: number, count: number): void {
    removeRows(this, start, count);
  }

  insertColumnsAfter(after: number, count: number): this {
    if (after > this.columns || count < 1) throw new Error('those columns cannot be inserted');
    this.columns += count;
    return this;
  }

  setColumnWidths(start: number, count: number, width: number): this {
    if (start < 1 || count < 1 || start + count - 1 > this.columns || !(width > 0)) throw new Error('those columns are out of bounds');
    for (let column = start; column < start + count; column += 1) this.widths.set(column, width);
    return this;
  }

  hideColumns(column: number): void {
    if (column < 1 || column > this.columns) throw new Error('that column is out of bounds');
    this.hidden.add(column);
  }

  setRowHeights(start: number, count: number, height: number): this {
    if (start < 1 || count < 1 || start + count - 1 > this.rows || !(height > 0)) throw new Error('those rows are out of bounds');
    for (let row = start; row < start + count; row += 1) this.heights.set(row, height);
    return this;
  }

  setFrozenRows(rows: number): void {
    if (rows >= this.rows) throw new Error('all rows cannot be frozen');
    if (this.merges.some(({ row, lastRow }) => row <= rows && lastRow > rows))
      throw new Error("You can't freeze rows which contain only part of a merged cell.");
    this.frozen = rows;
  }

  setConditionalFormatRules(rules: FakeConditionalFormatRule[]): void {
    if (!rules.every(isFormatRule)) throw new Error('setConditionalFormatRules takes rules');
    if (rules.some(({ facts }) => facts.ranges.some((range) => range.sheet !== this)))
      throw new Error('a conditional format belongs to the sheet of its ranges');
    this.rules = rules;
  }

  protect(): FakeProtection {
    const protection = new FakeProtection();
    this.protections.push(protection);
    return protection;
  }

  addDeveloperMetadata(key: string, value: string, visibility: unknown): this {
    if (typeof value !== 'string' || typeof visibility !== 'object') throw new Error('developer metadata takes text and a visibility');
    // Google takes 30,000 characters of keys and values for a sheet.
    if (this.metadata.reduce((sum, one) => sum + one.key.length + (one.getValue() ?? '').length, key.length + value.length) > 30_000)
      throw new Error('too much developer metadata');
    this.metadata.push(new FakeMetadata(this, key, value, visibility === visibilities.PROJECT ? this.document.project : undefined));
    return this;
  }

  getFilter = (): FakeFilter | null => this.filter;

  getDeveloperMetadata = (): FakeMetadata[] => this.metadata.filter((one) => this.document.sees(one));

  newChart = (): FakeChartBuilder => new FakeChartBuilder();

  insertChart(chart: FakeChart): void {
    if (!(chart instanceof FakeChart)) throw new Error('insertChart takes a chart');
    this.charts.push(chart);
  }
}
