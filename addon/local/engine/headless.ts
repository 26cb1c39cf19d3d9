// The workbook without a screen: the sheets in the engine, every function registered, inputs set and results read.
// Tests and the terminal use it; dispose() lets the process end.
import { createRequire } from 'node:module';
import type * as Core from '@univerjs/core';
import type * as CoreFacade from '@univerjs/core/facade';
import type {} from '@univerjs/engine-formula/facade';
import type * as Sheets from '@univerjs/sheets';
import type {} from '@univerjs/sheets/facade';
import type * as SheetsFormula from '@univerjs/sheets-formula';
import { registry } from '../../../functions/registry/index.generated';
import type { SheetTemplate, TemplateValue } from '../../../sheets-templates/template';
import type { WorkbookSnapshot } from '../../workbook/snapshot';
import { a1FromRange, rangeFromA1, splitSheetReference } from './a1';
import { engineFunctions } from './adapter';
import { engineParts } from './engineParts';
import { mendEngine } from './mendEngine';
import { mendWait } from './mendWait';
import type { EngineModule } from './engineValues';
import { SentenceBook } from './sentenceBook';
import { cellContent, workbookData } from './workbookData';
import { workbookSnapshot } from './workbookSnapshot';

// The engine's ESM build does not load in Node (a dependency has no named exports there), its CommonJS build does.
const require = createRequire(import.meta.url);
const core = require('@univerjs/core') as typeof Core;
const { FUniver } = require('@univerjs/core/facade') as typeof CoreFacade;
const engine = require('@univerjs/engine-formula') as EngineModule;
const { UniverSheetsPlugin } = require('@univerjs/sheets') as typeof Sheets;
const formulas = require('@univerjs/sheets-formula') as typeof SheetsFormula;
mendEngine(engine);
mendWait(formulas, engine);
for (const part of ['sheets', 'engine-formula', 'sheets-formula']) require(`@univerjs/${part}/facade`);

/** A cell as it stands: "" where it is empty, serial numbers for dates, the error's text for an error. */
export type CellResult = string | number | boolean;

export interface HeadlessWorkbook {
  /** Types values into cells of one sheet and waits for the answers; a text that starts with = is a formula. */
  set(sheet: string, cells: Readonly<Record<string, TemplateValue>>): Promise<void>;
  value(sheet: string, cell: string): CellResult;
  values(sheet: string, range: string): CellResult[][];
  /** The cells behind a name of the workbook. */
  named(name: string): CellResult[][];
  /** The range that the formula in a cell fills: more than its own cell where the answer spills. */
  filled(sheet: string, cell: string): string;
  /** What the page would save. */
  saved(): Core.IWorkbookData;
  /** The workbook as any host reads it. */
  snapshot(): WorkbookSnapshot;
  /** Why the cell is an error: the sentences of the calls in it. */
  sentences(sheet: string, cell: string): string[];
  /** Closes the engine. Nothing can be read afterwards. */
  dispose(): void;
}

function startEngine(book: SentenceBook): Core.Univer {
  const univer = new core.Univer({ locale: core.LocaleType.EN_US, locales: { [core.LocaleType.EN_US]: {} }, logLevel: core.LogLevel.ERROR });
  univer.registerPlugin(engine.UniverFormulaEnginePlugin, { function: engineFunctions(engine, registry, book) });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(formulas.UniverSheetsFormulaPlugin, { initialFormulaComputing: formulas.CalculationMode.NO_CALCULATION });
  return univer;
}

const resultOfCell = ({ v, t }: Core.ICellData): CellResult => (t === core.CellValueType.BOOLEAN ? Boolean(v) : (v ?? ''));

function snapshotOf(univer: Core.Univer, workbook: ReturnType<CoreFacade.FUniver['createWorkbook']>): WorkbookSnapshot {
  const data = workbook.save();
  const selected = { sheet: workbook.getActiveSheet().getSheetName(), row: 1, column: 1 };
  return workbookSnapshot(data, data.sheetOrder, engineParts(univer.__getInjector(), engine, workbook.getId()), selected);
}

let opened = 0;

export const openHeadless = (templates: readonly SheetTemplate[]): Promise<HeadlessWorkbook> => openSaved(workbookData(templates));

/** Opens what was saved, under an identifier of its own: the engine keeps read formulas for all its workbooks together. */
export async function openSaved(data: Core.IWorkbookData): Promise<HeadlessWorkbook> {
  const book = new SentenceBook();
  const univer = startEngine(book);
  const api = FUniver.newAPI(univer);
  const workbook = api.createWorkbook({ ...data, id: `headless-${(opened += 1)}` });
  const formula = api.getFormula();

  const calculated = async (change: () => void): Promise<void> => {
    book.beginCalculation();
    await new Promise<void>((resolve) => {
      const listening = formula.calculationEnd(() => {
        listening.dispose();
        resolve();
      });
      change();
    });
  };
  const sheetNamed = (name: string) => {
    const sheet = workbook.getSheetByName(name);
    if (sheet === null) throw new Error(`no sheet "${name}"`);
    return sheet;
  };
  const values = (sheet: string, reference: string): CellResult[][] => {
    const worksheet = sheetNamed(sheet).getSheet();
    const { startRow, startColumn, endRow, endColumn } = rangeFromA1(reference);
    const cell = (row: number, column: number): CellResult => resultOfCell(worksheet.getCell(row, column) ?? {});
    return Array.from({ length: endRow - startRow + 1 }, (_, r) => Array.from({ length: endColumn - startColumn + 1 }, (__, c) => cell(startRow + r, startColumn + c)));
  };
  const first = (rows: CellResult[][]): CellResult => rows[0]?.[0] ?? '';

  await calculated(() => formula.executeCalculation());
  return {
    set: (sheet, cells) =>
      calculated(() => {
        for (const [reference, value] of Object.entries(cells)) sheetNamed(sheet).getRange(reference).setValue(cellContent(value));
      }),
    value: (sheet, cell) => first(values(sheet, cell)),
    values,
    named: (name) => {
      const found = workbook.getDefinedName(name);
      if (found === null) throw new Error(`no name "${name}"`);
      const { sheet, range } = splitSheetReference(found.getFormulaOrRefString());
      return values(sheet, range);
    },
    filled: (sheet, cell) => {
      const { startRow, startColumn } = rangeFromA1(cell);
      const spilled = univer.__getInjector().get(engine.FormulaDataModel).getArrayFormulaRange();
      const range = spilled[workbook.getId()]?.[sheetNamed(sheet).getSheetId()]?.[startRow]?.[startColumn];
      return range ? a1FromRange(range) : cell;
    },
    saved: () => workbook.save(),
    snapshot: () => snapshotOf(univer, workbook),
    sentences: (sheet, reference) => {
      const worksheet = sheetNamed(sheet);
      const { startRow: row, startColumn: column } = rangeFromA1(reference);
      const place = { workbook: workbook.getId(), sheet: worksheet.getSheetId(), row, column };
      return book.sentencesOf(place, worksheet.getRange(a1FromRange(rangeFromA1(reference))).getFormula());
    },
    dispose: () => univer.dispose(),
  };
}
