// Everything that is seen of a pasted table before it is written, worked out anew from what was pasted and answered so far.
import type { CellValue, SheetSnapshot } from '../workbook/snapshot';
import { ownRows, tablePlan, type TablePlan } from '../workbook/aircraft/tablePlan';
import { readPasted, type PasteAnswers, type Pasted } from '../workbook/pasted/readPasted';
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

export function tableLook(sheet: SheetSnapshot, given: TablePasted): TableLook {
  const pasted = readPasted(given.text, given.paste);
  const found = shapeOf(pasted, given.text, given.split);
  const understood = found.shape === undefined ? undefined : understoodTable(found.shape, given.kind, given.answers, given.paste);
  const existing = ownRows(sheet, given.kind, given.aircraft);
  const ready = understood?.rows !== undefined && (existing === 0 || given.existing !== undefined);
  const plan = ready && understood.rows !== undefined ? planned(sheet, given, understood.rows) : { plan: undefined, problem: undefined };
  return { pasted, found, understood, existing, ...plan };
}
