// A patch of what the grid's rules of colour look at. As it comes, they read the cells that hold something of their own, so that a rule about
// a text, a number or a date sees nothing in a cell into which a formula elsewhere spills; and an answer that is kept lasts a tenth of a
// second longer than the value it is about. Here they read the cell as it is shown, and a rule about a word is asked each time. It can go once
// a rule "text is exactly" tints spilled cells by itself: test/browser/tints.test.ts tells.
// Rows put in take the look of the row beside them, which for the grid includes the tint of that row's verdict: a tint without a word, for
// ever. Here they take the look that the cells themselves have.
import { Worksheet, type ICellData, type Injector, type Nullable } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { ConditionalFormattingViewModel } from '@univerjs/preset-sheets-conditional-formatting';

interface Unit {
  _context: { readonly worksheet: Worksheet; getCellValue(row: number, column: number): Nullable<ICellData> };
  getCell(row: number, column: number): unknown;
  getCellResult(row: number, column: number, prepared: unknown, context: unknown): unknown;
  _getContext(): unknown;
}

interface Rule {
  readonly rule: { readonly type: string; readonly subType?: string };
}

/** What the library's class has of its own, as far as it is used here. */
interface Model {
  readonly _injector: Injector;
  getCellCfs: unknown;
  _getCellCfs(unitId: string, sheetId: string, row: number, column: number): unknown;
  _createRuleCalculateUnitInstance(unitId: string, sheetId: string, rule: Rule): Unit | undefined;
}

/** The engine asks under this key for nothing but the look of a row or column to copy. */
const lookToCopy = 'sheet.interceptor.ignore-range-theme';

function copyOwnLooks(): void {
  const sheets = Worksheet.prototype;
  const { getCellWithFilteredInterceptors: read } = sheets;
  sheets.getCellWithFilteredInterceptors = function withoutTints(row, column, key, filter) {
    return key === lookToCopy ? this.getCellRaw(row, column) : read.call(this, row, column, key, filter);
  };
}

export function patchTints(): void {
  copyOwnLooks();
  const models = ConditionalFormattingViewModel.prototype as unknown as Model;
  const { _createRuleCalculateUnitInstance: create } = models;
  models._createRuleCalculateUnitInstance = function createSeeing(this: Model, unitId, sheetId, rule): Unit | undefined {
    const unit = create.call(this, unitId, sheetId, rule);
    if (unit === undefined) return undefined;
    const formulas = this._injector.get(FormulaDataModel);
    const context = unit._context;
    const getCellValue = (row: number, column: number): Nullable<ICellData> =>
      formulas.getArrayFormulaCellData()[unitId]?.[sheetId]?.[row]?.[column] ?? context.worksheet.getCellRaw(row, column);
    unit._context = { ...context, getCellValue };
    if (rule.rule.subType === 'text') unit.getCell = (row, column) => unit.getCellResult(row, column, undefined, unit._getContext());
    return unit;
  };
  models.getCellCfs = function withoutKept(this: Model, unitId: string, sheetId: string, row: number, column: number): unknown {
    return this._getCellCfs(unitId, sheetId, row, column);
  };
}
