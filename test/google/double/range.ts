// Ranges of the double.
import { areaText, eachCell, readArea, type Area } from '../../../addon/workbook/areas';
import { checkAllowed } from './allowed';
import { writeValue, type Cell } from './cells';
import { FakeConditionalFormatRule, FakeDataValidation, FakeTextStyle } from './builders';
import { pasteAll } from './moveCells';
import { FakeProtection } from './protection';
import { readValue, shownFormat } from './readCells';
import { Doubled } from './recorder';
import type { FakeSheet } from './sheet';

export const copyPasteTypes = { PASTE_VALUES: {}, PASTE_FORMAT: {}, PASTE_DATA_VALIDATION: {} };
export const wrapStrategies = { WRAP: 'wrap', OVERFLOW: 'overflow', CLIP: 'clip' } as const;

export class FakeRange extends Doubled {
  readonly service = 'Range';
  override readonly handles = new Set(['getA1Notation', 'getNumRows', 'getNumColumns', 'getRow', 'getColumn', 'getSheet']);
  readonly sheet: FakeSheet;
  readonly area: Area;

  constructor(sheet: FakeSheet, area: Area) {
    super();
    this.sheet = sheet;
    this.area = area;
    const { row, column, lastRow, lastColumn } = area;
    if (row < 1 || column < 1 || lastRow < row || lastColumn < column || lastRow > sheet.rows || lastColumn > sheet.columns) {
      throw new Error(
        `The coordinates of the range are outside the dimensions of the sheet (${areaText(area)} of ${sheet.rows} x ${sheet.columns}).`,
      );
    }
  }

  getA1Notation = (): string => areaText(this.area);
  getSheet = (): FakeSheet => this.sheet;
  getGridId = (): number => this.sheet.sheetId;
  getRow = (): number => this.area.row;
  getColumn = (): number => this.area.column;
  getNumRows = (): number => this.area.lastRow - this.area.row + 1;
  getNumColumns = (): number => this.area.lastColumn - this.area.column + 1;

  private single(): Cell {
    return this.sheet.cell(this.area.row, this.area.column);
  }

  private read<Value>(of: (cell: Cell) => Value): Value[][] {
    const { row, lastRow, column, lastColumn } = this.area;
    return Array.from({ length: lastRow - row + 1 }, (_, down) =>
      Array.from({ length: lastColumn - column + 1 }, (__, across) => of(this.sheet.cell(row + down, column + across))),
    );
  }

  private each(visit: (cell: Cell) => void): this {
    eachCell(this.area, (row, column) => visit(this.sheet.cell(row, column)));
    return this;
  }

  /** One entry for each cell, of exactly this size. */
  private fill<Value>(what: string, values: readonly (readonly Value[])[], write: (cell: Cell, value: Value) => void): this {
    const [rows, columns] = [this.getNumRows(), this.getNumColumns()];
    if (values.length !== rows)
      throw new Error(
        `${what}: the number of rows in the data does not match the number of rows in the range. The data has ${values.length} but the range has ${rows}.`,
      );
    for (const line of values)
      if (line.length !== columns)
        throw new Error(
          `${what}: the number of columns in the data does not match the number of columns in the range. The data has ${line.length} but the range has ${columns}.`,
        );
    values.forEach((line, row) => line.forEach((value, column) => write(this.sheet.cell(this.area.row + row, this.area.column + column), value)));
    return this;
  }

  /** What was written into each cell, against the rule of the cell. */
  private checkRules(): void {
    eachCell(this.area, (row, column) => checkAllowed(this.sheet.cell(row, column), areaText({ row, column, lastRow: row, lastColumn: column })));
  }

  setValues(values: unknown[][]): this {
    this.fill('setValues', values, writeValue);
    this.checkRules();
    values.forEach((line) =>
      line.forEach((value) => typeof value === 'string' && value.startsWith('=') && this.sheet.document.checkReferences(value)),
    );
    return this;
  }

  setFormula(formula: string): this {
    this.each((cell) => writeValue(cell, formula));
    this.checkRules();
    this.sheet.document.checkReferences(formula);
    return this;
  }

  getFormula = (): string => this.single().formula;

  getDisplayValue = (): string => this.sheet.shown(this.single());

  getDisplayValues = (): string[][] => this.read((cell) => this.sheet.shown(cell));

  getValues = (): unknown[][] => this.read((cell) => readValue(cell, this.sheet.shown(cell), this.sheet.document.zone));

  getFormulas = (): string[][] => this.read(({ formula }) => formula);

  getNumberFormats = (): string[][] => this.read(({ numberFormat }) => shownFormat(numberFormat));

  setFormulas(formulas: string[][]): this {
    this.fill('setFormulas', formulas, writeValue);
    this.checkRules();
    formulas.forEach((line) => line.forEach((formula) => this.sheet.document.checkReferences(formula)));
    return this;
  }

  /** Everything, or values, looks or rules only: that is all that is asked of it here. */
  copyTo(destination: FakeRange, type?: unknown, transposed?: boolean): void {
    if (type === undefined) return pasteAll(this, destination);
    if (type === copyPasteTypes.PASTE_DATA_VALIDATION && transposed === false)
      return this.repeatOn(destination, (from, onto) => (onto.validation = from.validation));
    if (type === copyPasteTypes.PASTE_FORMAT && transposed === false)
      return this.repeatOn(destination, ({ numberFormat, background, textStyle, alignment, wrap, border }, onto) =>
        Object.assign(onto, { numberFormat, background, textStyle, alignment, wrap, border }),
      );
    if (type !== copyPasteTypes.PASTE_VALUES || transposed !== false) throw new Error('the double copies everything, values, looks or rules');
    const all = this.read((cell) => (cell.formula !== '' && cell.value === '' ? this.sheet.shown(cell) : (cell.value ?? '')));
    // Rows that a filter hides are passed over, and what follows moves up, as in a copy by hand.
    const shown = all.filter((_, down) => this.sheet.filter?.hidden.has(this.area.row + down) !== true);
    const values = [...shown, ...all.slice(shown.length)];
    destination.fill('copyTo', values, (cell, value) => Object.assign(cell, { formula: '', value }));
    destination.checkRules();
  }

  /** A smaller source fills the destination by repeating. */
  private repeatOn({ sheet, area }: FakeRange, put: (from: Cell, onto: Cell) => void): void {
    const [rows, columns] = [this.getNumRows(), this.getNumColumns()];
    eachCell(area, (row, column) =>
      put(this.sheet.cell(this.area.row + ((row - area.row) % rows), this.area.column + ((column - area.column) % columns)), sheet.cell(row, column)),
    );
  }

  activate(): this {
    this.sheet.document.setActiveSheet(this.sheet);
    this.sheet.document.selected = this;
    return this;
  }

  setNumberFormats(formats: string[][]): this {
    return this.fill('setNumberFormats', formats, (cell, format) => {
      if (typeof format !== 'string' || format === '') throw new Error('a number format is text');
      if (format === '@' && cell.formula !== '') throw new Error('a formula in a cell of format text');
      cell.numberFormat = format;
    });
  }

  setBackgrounds(colors: (string | null)[][]): this {
    return this.fill('setBackgrounds', colors, (cell, color) => {
      if (color !== null && !/^#[0-9a-f]{6}$/i.test(color)) throw new Error(`"${color}" is not a colour`);
      cell.background = color;
    });
  }

  setTextStyles(styles: FakeTextStyle[][]): this {
    return this.fill('setTextStyles', styles, (cell, style) => {
      if (!(style instanceof FakeTextStyle)) throw new Error('setTextStyles takes text styles');
      cell.textStyle = style;
    });
  }

  setHorizontalAlignments(alignments: ('left' | 'center' | 'normal' | 'right' | null)[][]): this {
    return this.fill('setHorizontalAlignments', alignments, (cell, alignment) => (cell.alignment = alignment));
  }

  setWrapStrategies(strategies: unknown[][]): this {
    return this.fill('setWrapStrategies', strategies, (cell, strategy) => {
      const known = Object.values(wrapStrategies).find((one) => one === strategy);
      if (known === undefined) throw new Error('setWrapStrategies takes strategies');
      cell.wrap = known;
    });
  }

  setNotes(notes: (string | null)[][]): this {
    return this.fill('setNotes', notes, (cell, note) => (cell.note = note ?? ''));
  }

  setDataValidations(rules: (FakeDataValidation | null)[][]): this {
    return this.fill('setDataValidations', rules, (cell, rule) => {
      if (rule !== null && !(rule instanceof FakeDataValidation)) throw new Error('setDataValidations takes rules or null');
      cell.validation = rule;
    });
  }

  clearDataValidations(): this {
    return this.each((cell) => (cell.validation = null));
  }

  protect(): FakeProtection {
    const protection = new FakeProtection(this);
    this.sheet.protections.push(protection);
    return protection;
  }

  setBorders(border: string): this {
    return this.each((cell) => (cell.border = border));
  }

  merge(): this {
    this.sheet.addMerge(this.area);
    return this;
  }

  mergeAcross(): this {
    for (let { row } = this.area; row <= this.area.lastRow; row += 1) this.sheet.addMerge({ ...this.area, row, lastRow: row });
    return this;
  }
}

export class FakeRangeList extends Doubled {
  readonly service = 'RangeList';
  override readonly handles = new Set(['getRanges']);
  readonly ranges: readonly FakeRange[];

  constructor(sheet: FakeSheet, texts: readonly string[]) {
    super();
    if (texts.length === 0) throw new Error('a range list needs a range');
    this.ranges = texts.map((text) => new FakeRange(sheet, readArea(text)));
  }

  getRanges = (): FakeRange[] => [...this.ranges];

  setNumberFormat(format: string): this {
    this.ranges.forEach((range) => eachCell(range.area, (row, column) => (range.sheet.cell(row, column).numberFormat = format)));
    return this;
  }

  setBorder(
    top: boolean | null,
    left: boolean | null,
    bottom: boolean | null,
    right: boolean | null,
    vertical: boolean | null,
    horizontal: boolean | null,
    color: string | null,
    style: unknown,
  ): this {
    if (typeof style !== 'object' || color === null) throw new Error('a border takes a colour and a style');
    const border = [top, left, bottom, right, vertical, horizontal].every((side) => side === true) ? 'box' : bottom === true ? 'bottom' : 'other';
    this.ranges.forEach((range) => range.setBorders(border));
    return this;
  }
}

export const isFormatRule = (value: unknown): value is FakeConditionalFormatRule => value instanceof FakeConditionalFormatRule;
