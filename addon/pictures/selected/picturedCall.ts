// Calls in a sheet whose answer can be drawn, with what their arguments stand for.
import { numberFromCell } from '../../../functions/registry/readNumber';
import { address } from '../../../sheets-templates/build';
import { pictured } from '../../workbook/callParameters';
import { readFormula, tokensOf, type Call } from '../../workbook/formulaReading';
import type { CellPlace, CellValue, FormulaCell, SheetSnapshot, WorkbookSnapshot } from '../../workbook/snapshot';
import { Missing, NotDrawn } from '../missing';
import { valueAt } from '../../workbook/templateLabels';
import { givenBy, type Given } from './workbookCells';

export type PicturedName = keyof typeof pictured;
const isPictured = (name: string): name is PicturedName => Object.prototype.hasOwnProperty.call(pictured, name);

/** What may stand round a call and still show its answer; the answer itself is checked where it is read. */
const wrappers = ['IFERROR', 'IFNA', 'IF', 'ARRAYFORMULA'];

/** The call that a text consists of from its first sign to its last, taken out of its wrappers. */
function wholeCall(text: string): Call | undefined {
  const tokens = tokensOf(text).filter(({ kind }) => kind !== 'space');
  let depth = 0;
  const end = tokens.findIndex(({ kind }) => {
    depth += kind === 'opening' ? 1 : kind === 'closing' ? -1 : 0;
    return depth === 0;
  });
  const outer = readFormula(text).calls[0];
  if (outer === undefined || tokens[0]?.kind !== 'opening' || end !== tokens.length - 1) return undefined;
  if (isPictured(outer.name) || !wrappers.includes(outer.name)) return outer;
  const inside = outer.args.map(wholeCall).filter((call) => call !== undefined && isPictured(call.name));
  return inside.length === 1 ? inside[0] : undefined;
}

/** Braces list values and, like a comma for decimals beside semicolons, blur where an argument ends. */
function isPlain(formula: string): boolean {
  const tokens = tokensOf(formula);
  const separators = new Set(tokens.flatMap(({ kind, text }) => (kind === 'separator' ? [text] : [])));
  return separators.size < 2 && !tokens.some(({ kind, text }) => kind === 'other' && /[{}]/.test(text));
}

export class PicturedCall {
  /** Where its answer begins: below the row of headings, where it is given one. */
  readonly cell: CellPlace;

  constructor(
    readonly workbook: WorkbookSnapshot,
    readonly sheet: SheetSnapshot,
    private readonly callCell: CellPlace,
    readonly name: PicturedName,
    private readonly args: readonly string[],
  ) {
    // The argument after those that are drawn is that of the headings, but where further ones are drawn too.
    const headings = name === 'LOADING_BRIEF' ? pictured[name].indexOf('headings') : pictured[name].length;
    const heads = (args[headings] ?? '').trim() === '' ? 0 : 1;
    this.cell = { row: callCell.row + heads, column: callCell.column };
  }

  get place(): string {
    return `${this.name} in ${address(this.callCell.row, this.callCell.column)}`;
  }

  argument(parameter: string): Given {
    const names: readonly string[] = pictured[this.name];
    return givenBy(this.workbook, this.sheet, this.args[names.indexOf(parameter)] ?? '');
  }

  private refused(parameter: string): NotDrawn {
    return new NotDrawn(
      `${this.place}: its ${parameter} is a formula, which is not worked out here. Put it into a cell of its own, and give that cell.`,
    );
  }

  /** Rows of cells; a value written into the call is one cell. Undefined where it is left out. */
  cells(parameter: string): readonly (readonly CellValue[])[] | undefined {
    const given = this.argument(parameter);
    if (given.kind === 'formula') throw this.refused(parameter);
    if (given.kind === 'left out') return undefined;
    return given.kind === 'cells' ? given.cells : [[given.value]];
  }

  /** One value: of a column, that of the row asked for. */
  value(parameter: string, index = 0): CellValue {
    const cells = this.cells(parameter) ?? [];
    return cells[cells.length > 1 ? index : 0]?.[0] ?? '';
  }

  /** A number, or the usual one where it is left out or blank. */
  number(parameter: string, usual?: number, index = 0): number {
    const value = this.value(parameter, index);
    const found = value === '' ? usual : numberFromCell(value);
    if (found === undefined) throw new Missing(`no ${parameter} yet for ${this.place}`);
    return found;
  }

  /** How many rows its answer has: those of the longest of these arguments. */
  rows(...parameters: readonly string[]): number {
    return Math.max(
      ...parameters.map((parameter) => {
        const given = this.argument(parameter);
        return given.kind === 'cells' ? given.cells.length : 1;
      }),
    );
  }

  /** A cell of the answer, counted from 0 at the call. */
  answer(row: number, column: number): CellValue {
    return valueAt(this.sheet, this.cell.row + row, this.cell.column + column);
  }

  /** For an answer that is not what it should be: an error, a sentence, a blank. */
  unlike(answer: CellValue): Missing {
    const said = valueAt(this.sheet, this.callCell.row, this.callCell.column);
    if (typeof said === 'string' && said.startsWith('#')) return new Missing(`${this.place} shows "${said}"`);
    return new Missing(answer === '' ? `${this.place} shows nothing in this row` : `${this.place} shows "${String(answer)}"`);
  }

  /** The leftmost text of a row of the sheet, which is how people name their rows. */
  rowName(row: number): string {
    const found = this.sheet.values[row - 1]?.slice(0, this.cell.column - 1).find((value) => typeof value === 'string' && value.trim() !== '');
    return typeof found === 'string' ? found.trim() : `${this.name}, row ${row}`;
  }
}

/** The first function with a picture that a formula calls. */
export const picturedNameIn = (formula: string): PicturedName | undefined =>
  readFormula(formula)
    .calls.map(({ name }) => name)
    .find(isPictured);

export interface FoundCall {
  readonly cell: FormulaCell;
  readonly name: PicturedName;
  /** Undefined where the call stands inside another formula, so that its answer is not on the sheet. */
  readonly call: PicturedCall | undefined;
}

/** Every cell of a sheet with a call that has a picture. */
export function picturedCalls(workbook: WorkbookSnapshot, sheet: SheetSnapshot): FoundCall[] {
  return sheet.formulas.flatMap((cell): FoundCall[] => {
    const name = picturedNameIn(cell.text);
    if (name === undefined) return [];
    const call = isPlain(cell.text) ? wholeCall(cell.text) : undefined;
    return [
      { cell, name, call: call !== undefined && isPictured(call.name) ? new PicturedCall(workbook, sheet, cell, call.name, call.args) : undefined },
    ];
  });
}
