// Remembers the sentence of each call that threw, by the cell it happened in: the cell itself can only show #ERROR!.

export interface CellPlace {
  readonly workbook: string;
  readonly sheet: string;
  /** Counted from 0, as the engine does. */
  readonly row: number;
  readonly column: number;
}

interface Entry {
  readonly sentence: string;
  readonly calculation: number;
}

const keyOf = ({ workbook, sheet, row, column }: CellPlace): string => JSON.stringify([workbook, sheet, row, column]);

export class CellErrors {
  private readonly cells = new Map<string, Map<string, Entry>>();
  private calculation = 0;

  /** A cell may call one function twice; what one call of this calculation wrote, the other must not strike out. */
  beginCalculation(): void {
    this.calculation += 1;
  }

  failed(place: CellPlace, functionName: string, sentence: string): void {
    const key = keyOf(place);
    const entries = this.cells.get(key) ?? new Map<string, Entry>();
    if (entries.get(functionName)?.calculation !== this.calculation) entries.set(functionName, { sentence, calculation: this.calculation });
    this.cells.set(key, entries);
  }

  succeeded(place: CellPlace, functionName: string): void {
    const key = keyOf(place);
    const entries = this.cells.get(key);
    const entry = entries?.get(functionName);
    if (entries === undefined || entry === undefined || entry.calculation === this.calculation) return;
    entries.delete(functionName);
    if (entries.size === 0) this.cells.delete(key);
  }

  /** Sentences of the functions that this formula calls; the formula may have changed since they were written. */
  sentencesOf(place: CellPlace, formula: string): string[] {
    const called = formula.toUpperCase();
    const entries = [...(this.cells.get(keyOf(place)) ?? [])];
    return entries.filter(([name]) => called.includes(`${name}(`)).map(([, { sentence }]) => sentence);
  }
}
