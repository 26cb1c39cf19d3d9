// The workbook without a screen: the sheets in the engine, every function registered, inputs set and results read.
// Tests and the terminal use it; dispose() lets the process end.
import { createRequire } from 'node:module';
import { setTimeout as pause } from 'node:timers/promises';
import type * as Core from '@univerjs/core';
import type * as CoreFacade from '@univerjs/core/facade';
import type {} from '@univerjs/engine-formula/facade';
import type * as Sheets from '@univerjs/sheets';
import type {} from '@univerjs/sheets/facade';
import type * as SheetsFormula from '@univerjs/sheets-formula';
import { registry } from '../../../functions/registry/index.generated';
import { demoDay } from '../../../sheets-templates/demo/day';
import type { SheetTemplate, TemplateValue } from '../../../sheets-templates/template';
import type { WorkbookSnapshot } from '../../workbook/snapshot';
import { withReadableNames } from '../saved/readableNames';
import { a1FromRange, rangeFromA1, splitSheetReference } from './a1';
import { engineFunctions } from './adapter';
import { engineParts } from './engineParts';
import { patchEngine } from './patchEngine';
import { patchWait, waitMilliseconds } from './patchWait';
import { quickEngine } from './quickEngine';
import type { EngineModule } from './engineValues';
import { CellErrors } from './cellErrors';
import { guardLists, type FullList } from './fullLists';
import { keepNamesReadable, sheetNamesBut } from './sheetNaming';
import { valuesStep } from './valuesStep';
import { cellContent, workbookData } from './workbookData';
import { workbookSnapshot } from './workbookSnapshot';

// The engine's ESM build does not load in Node (a dependency has no named exports there), its CommonJS build does.
const require = createRequire(import.meta.url);
const core = require('@univerjs/core') as typeof Core;
const { FUniver } = require('@univerjs/core/facade') as typeof CoreFacade;
const engine = quickEngine(require) as EngineModule;
const { SetRangeValuesCommand, UniverSheetsPlugin } = require('@univerjs/sheets') as typeof Sheets;
const formulas = require('@univerjs/sheets-formula') as typeof SheetsFormula;
patchEngine(engine);
patchWait(formulas, engine);
for (const part of ['sheets', 'engine-formula', 'sheets-formula']) require(`@univerjs/${part}/facade`);

/** A cell as it stands: "" where it is empty, serial numbers for dates, the error's text for an error. */
export type CellResult = string | number | boolean;

/** Values by the references of their cells. */
type Cells = Readonly<Record<string, TemplateValue>>;

export interface HeadlessWorkbook {
  /** Types values into cells of one sheet and waits for the answers; a text that starts with = is a formula. */
  set(sheet: string, cells: Cells): Promise<void>;
  /** The same for cells of several sheets, calculated once. */
  setSheets(sheets: Readonly<Record<string, Cells>>): Promise<void>;
  /** Puts empty rows in above this one, counted from 1, as a user does. */
  insertRows(sheet: string, above: number, count: number): Promise<void>;
  removeRows(sheet: string, first: number, count: number): Promise<void>;
  /** From now on, lists are guarded as they are in the page; gives what is told of them. */
  guardLists(): readonly FullList[];
  /** Takes the last of these changes back. */
  undo(): Promise<void>;
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
  /** Renames a sheet as a user does, and gives the name that it has then; calculated with the next change. */
  rename(sheet: string, name: string): string;
  /** Closes the engine. Nothing can be read afterwards. */
  dispose(): void;
}

type GridWorkbook = ReturnType<CoreFacade.FUniver['createWorkbook']>;

/** Off until somebody asks for it; listening from the beginning, since the engine forgets a formula as soon as it hears of a change. */
interface Guard {
  workbook: GridWorkbook | undefined;
  told: FullList[] | undefined;
}

function startEngine(book: CellErrors, today: string, guard: Guard): Core.Univer {
  const univer = new core.Univer({ locale: core.LocaleType.EN_US, locales: { [core.LocaleType.EN_US]: {} }, logLevel: core.LogLevel.ERROR });
  guardLists(
    univer.__getInjector().get(core.ICommandService),
    (id) => (guard.told === undefined ? undefined : (guard.workbook?.getSheetBySheetId(id) ?? undefined)),
    (full) => guard.told?.push(full),
  );
  univer.registerPlugin(engine.UniverFormulaEnginePlugin, { function: engineFunctions(engine, registry, book, () => today) });
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

interface Waiting {
  /** Makes a change and waits for the answers. */
  calculated(change: () => void): Promise<void>;
  /** The same for a change after which there may be nothing to calculate. */
  settled(change: () => void): Promise<void>;
}

function waiting(formula: ReturnType<CoreFacade.FUniver['getFormula']>, book: CellErrors): Waiting {
  let calculating = false;
  formula.calculationStart(() => (calculating = true));
  formula.calculationEnd(() => (calculating = false));
  return {
    calculated: async (change) => {
      book.beginCalculation();
      await new Promise<void>((resolve) => {
        const listening = formula.calculationEnd(() => {
          listening.dispose();
          resolve();
        });
        change();
      });
    },
    settled: async (change) => {
      book.beginCalculation();
      change();
      // Quiet twice: after a calculation was stopped, the next one begins a moment later.
      for (let quiet = 0; quiet < 2; quiet = calculating ? 0 : quiet + 1) await pause(3 * waitMilliseconds);
    },
  };
}

function stepOf(workbook: string, sheet: string, cells: Cells): Sheets.ISetRangeValuesCommandParams {
  const entered = Object.entries(cells).map(([reference, value]) => {
    const { startRow: row, startColumn: column } = rangeFromA1(reference);
    return { row, column, content: cellContent(value) };
  });
  return valuesStep(workbook, sheet, entered);
}

let opened = 0;

/** Under an identifier of its own: the engine keeps read formulas for all its workbooks together. */
function openIn(univer: Core.Univer, data: Core.IWorkbookData, guard: Guard) {
  const api = FUniver.newAPI(univer);
  const workbook = api.createWorkbook({ ...withReadableNames(data), id: `headless-${(opened += 1)}` });
  guard.workbook = workbook;
  keepNamesReadable(univer.__getInjector().get(core.ICommandService), (sheetId) => sheetNamesBut(workbook, sheetId));
  return { workbook, formula: api.getFormula() };
}

/** `today` is the day that the sheets take for today: that of the demonstration, where nothing else is said. */
export const openHeadless = (templates: readonly SheetTemplate[], today = demoDay): Promise<HeadlessWorkbook> =>
  openSaved(workbookData(templates), today);

/** Opens what was saved. */
export async function openSaved(data: Core.IWorkbookData, today = demoDay): Promise<HeadlessWorkbook> {
  const [book, guard]: [CellErrors, Guard] = [new CellErrors(), { workbook: undefined, told: undefined }];
  const univer = startEngine(book, today, guard);
  const { workbook, formula } = openIn(univer, data, guard);

  const { calculated, settled } = waiting(formula, book);
  const sheetNamed = (name: string) => {
    const sheet = workbook.getSheetByName(name);
    if (sheet === null) throw new Error(`no sheet "${name}"`);
    return sheet;
  };
  /** Formulas follow only the rows of the sheet in sight, since nobody can change another's. */
  const inSight = (name: string) => workbook.setActiveSheet(sheetNamed(name));
  const values = (sheet: string, reference: string): CellResult[][] => {
    const worksheet = sheetNamed(sheet).getSheet();
    const { startRow, startColumn, endRow, endColumn } = rangeFromA1(reference);
    const cell = (row: number, column: number): CellResult => resultOfCell(worksheet.getCell(row, column) ?? {});
    return Array.from({ length: endRow - startRow + 1 }, (_, r) =>
      Array.from({ length: endColumn - startColumn + 1 }, (__, c) => cell(startRow + r, startColumn + c)),
    );
  };

  const typeInto = (name: string, cells: Cells): void => {
    const step = stepOf(workbook.getId(), sheetNamed(name).getSheetId(), cells);
    univer.__getInjector().get(core.ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, step);
  };

  await calculated(() => formula.executeCalculation());
  return {
    set: (sheet, cells) => calculated(() => typeInto(sheet, cells)),
    setSheets: (sheets) =>
      calculated(() => {
        for (const [sheet, cells] of Object.entries(sheets)) typeInto(sheet, cells);
      }),
    insertRows: (sheet, above, count) => settled(() => void inSight(sheet).insertRowsBefore(above - 1, count)),
    removeRows: (sheet, first, count) => settled(() => void inSight(sheet).deleteRows(first - 1, count)),
    guardLists: () => (guard.told = []),
    undo: () => settled(() => void workbook.undo()),
    value: (sheet, cell) => values(sheet, cell)[0]?.[0] ?? '',
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
      const place = spilled[workbook.getId()]?.[sheetNamed(sheet).getSheetId()]?.[startRow]?.[startColumn];
      return place ? a1FromRange(place) : cell;
    },
    saved: () => workbook.save(),
    snapshot: () => snapshotOf(univer, workbook),
    sentences: (sheet, reference) => {
      const worksheet = sheetNamed(sheet);
      const { startRow: row, startColumn: column } = rangeFromA1(reference);
      const place = { workbook: workbook.getId(), sheet: worksheet.getSheetId(), row, column };
      return book.sentencesOf(place, worksheet.getRange(a1FromRange(rangeFromA1(reference))).getFormula());
    },
    rename: (sheet, name) => sheetNamed(sheet).setName(name).getSheetName(),
    dispose: () => univer.dispose(),
  };
}
