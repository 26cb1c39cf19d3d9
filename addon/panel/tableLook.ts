// Everything that is seen of a pasted table before it is written, worked out anew from what was pasted and answered so far.
import type { CellValue, SheetSnapshot } from '../workbook/snapshot';
import { headingsOf, listNow } from '../workbook/aircraft/aircraftLists';
import { ownRows, tablePlan, type TablePlan } from '../workbook/aircraft/tablePlan';
import { readPasted, type PasteAnswers, type Pasted } from '../workbook/pasted/readPasted';
import { ownTable } from '../workbook/pasted/tableFile';
import { shapeOf, type ShapeFound, type Split } from '../workbook/pasted/tableShape';
import { understoodTable, type UnderstoodTable } from '../workbook/pasted/understoodTable';
import type { TableAnswers } from '../workbook/pasted/tableQuestions';
import type { TableKind } from '../workbook/pasted/tableKinds';

export interface TablePasted {
  readonly aircraft: CellValue;
  readonly kind: TableKind;
  readonly text: string;
  readonly paste: PasteAnswers;
  readonly split: Split | undefined;
  readonly answers: TableAnswers;
  /** What becomes of the rows that the aircraft has in this table; undefined until that is answered. */
  readonly existing: 'replace' | 'keep' | undefined;
}

export interface TableLook {
  readonly pasted: Pasted;
  /** The same by other answers. */
  readonly readBy: (paste: PasteAnswers) => Pasted;
  readonly found: ShapeFound;
  readonly understood: UnderstoodTable | undefined;
  /** Rows of the aircraft that are in the table already. */
  readonly existing: number;
  readonly plan: TablePlan | undefined;
  /** Why there is no plan though nothing is open. */
  readonly problem: string | undefined;
}

function planned(sheet: SheetSnapshot, given: TablePasted, rows: NonNullable<UnderstoodTable['rows']>): Pick<TableLook, 'plan' | 'problem'> {
  try {
    return { plan: tablePlan(sheet, { kind: given.kind, aircraft: given.aircraft, rows, keep: given.existing === 'keep' }), problem: undefined };
  } catch (thrown) {
    if (thrown instanceof Error && thrown.name === 'Error') return { plan: undefined, problem: thrown.message };
    throw thrown;
  }
}

const nothingFound: ShapeFound = { shape: undefined, splits: [], problems: [], leftOut: [] };

export function tableLook(sheet: SheetSnapshot, given: TablePasted): TableLook {
  const headings = headingsOf(listNow(sheet, given.kind.list));
  const ownBy = (paste: PasteAnswers) => ownTable(given.text, given.kind, headings, paste);
  const readBy = (paste: PasteAnswers): Pasted => ownBy(paste)?.pasted ?? readPasted(given.text, paste);
  const own = ownBy(given.paste);
  const pasted = readBy(given.paste);
  const found = own === undefined ? shapeOf(pasted, given.text, given.split) : { ...nothingFound, problems: own.problems };
  const shaped = found.shape === undefined ? undefined : understoodTable(found.shape, given.kind, given.answers, given.paste);
  const understood = own === undefined ? shaped : { questions: [], problems: [], rows: own.rows };
  const existing = ownRows(sheet, given.kind, given.aircraft);
  const ready = understood?.rows !== undefined && (existing === 0 || given.existing !== undefined);
  const plan = ready && understood.rows !== undefined ? planned(sheet, given, understood.rows) : { plan: undefined, problem: undefined };
  return { pasted, readBy, found, understood, existing, ...plan };
}
