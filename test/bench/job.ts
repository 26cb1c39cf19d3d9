// A job of the trade to compare: the same result columns by one call of ours that spills, and by built-in formulas filled down.
import type { TemplateValue } from '../../sheets-templates/template';
import { firstRow, type BenchSheet } from './benchSheet';

export type Cells = Readonly<Record<string, TemplateValue>>;

/** Cells to type over; a job whose two sheets hold an input in different cells says both. */
export interface Edit {
  readonly ours: Cells;
  readonly byHand: Cells;
}

export interface Job {
  readonly name: string;
  readonly ours: BenchSheet;
  readonly byHand: BenchSheet;
  /** Where the results stand in both. */
  readonly results: string;
  /** Two states of an input that every row reads; the sheets hold neither. */
  readonly shared: readonly [Edit, Edit];
  /** Two states of an input of one row. */
  readonly oneRow: readonly [Edit, Edit];
}

interface Parts {
  readonly typed: BenchSheet['typed'];
  /** Shared inputs that both sheets hold. */
  readonly cells: Cells;
  /** Our call, which stands in the first result cell. */
  readonly call: string;
  readonly byHand: { readonly cells?: Cells; readonly filled: BenchSheet['filled'] };
}

export const inBoth = (cells: Cells): Edit => ({ ours: cells, byHand: cells });

/** Both sheets from what they have in common. */
export const sheetsOf = ({ typed, cells, call, byHand }: Parts): { readonly ours: BenchSheet; readonly byHand: BenchSheet } => ({
  ours: { typed, cells: { ...cells, [`F${firstRow}`]: call }, filled: {} },
  byHand: { typed, cells: { ...cells, ...byHand.cells }, filled: byHand.filled },
});

/** The range of a column from its first row to the last. */
export const down = (column: string, rows: number, lastColumn = column): string => `${column}${firstRow}:${lastColumn}${firstRow + rows - 1}`;

/** The row in the middle, to edit. */
export const middleRow = (rows: number): number => firstRow + Math.floor(rows / 2);
