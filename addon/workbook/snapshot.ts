// A workbook as plain data, the same from whichever host: what the panel draws, checks and sends is worked out from this.
import type { SheetKey } from '../../sheets-templates/template';

/** As the cell holds it: "" for a blank, a serial number for a date or a time, an error's own text ("#N/A") for an error. */
export type CellValue = string | number | boolean;

/** Rows and columns counted from 1. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

export interface FormulaCell extends CellPlace {
  /** Starts with =; commas or semicolons between arguments, as the host writes them. */
  readonly text: string;
}

/** What each sheet of ours carries, to be known again whatever the user calls it. */
export interface SheetMark {
  readonly key: SheetKey;
  readonly version: number;
  /** Sheets that were inserted together, and read one another, have this in common. */
  readonly set: string;
  /** Range names of the template, and what they were called in this document. */
  readonly names: Readonly<Record<string, string>>;
}

/** A rule that gives cells a background by what they hold. */
export interface TintSnapshot {
  /** A1 or A1:C9. */
  readonly ranges: readonly string[];
  /** Where the cell holds exactly this word of a verdict. */
  readonly word?: string;
  /** Where this formula, written for the first cell, holds. */
  readonly formula?: string;
  readonly colour?: string;
}

export interface SheetSnapshot {
  readonly name: string;
  /** Only on sheets of ours. */
  readonly mark?: SheetMark;
  /** Every row down to the last filled one, all of one length; spilled answers included. */
  readonly values: readonly (readonly CellValue[])[];
  readonly formulas: readonly FormulaCell[];
  /** In the order in which they hold; undefined where the host does not read them. */
  readonly tints?: readonly TintSnapshot[];
}

export interface NameSnapshot {
  readonly name: string;
  /** Name of the sheet, and range on it without dollar signs: A1 or A1:C9. */
  readonly sheet: string;
  readonly range: string;
}

export interface WorkbookSnapshot {
  readonly sheets: readonly SheetSnapshot[];
  readonly names: readonly NameSnapshot[];
  readonly selected: CellPlace & { readonly sheet: string };
}
