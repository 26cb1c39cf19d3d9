// A sheet of a workbook snapshot as a form: what each of its cells shows, whether it is typed into, and by which rule. The snapshot holds neither
// looks nor rules, so these are the template's; places are those of now.
import { address } from '../../../sheets-templates/addresses';
import { formats } from '../../../sheets-templates/look';
import { isEntry, type SheetTemplate, type TemplateCell } from '../../../sheets-templates/template';
import { readArea } from '../areas';
import { holds } from '../readPlace';
import type { CellPlace, CellValue, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { placedSheet } from './placedSheet';
import { pocketSheet, type PocketSheet } from './sections';
import { shownText } from './shownText';
import type { EntryLook, EntryRule } from './typedEntry';

/** A cell as a form shows it, wherever the form stands. */
export interface FormCell extends CellPlace, EntryLook {
  readonly shown: string;
  /** Without its number format. */
  readonly content: CellValue;
  readonly hasFormula: boolean;
  /** Typed into: no answer. */
  readonly isEntry: boolean;
  /** The sheet that its text leads to, as its host calls it. */
  readonly goesTo: string | undefined;
}

export interface FormCells {
  readonly pocket: PocketSheet;
  /** Of a cell of the template; undefined where it cannot be known any more. */
  readonly cellOf: (cell: TemplateCell) => FormCell | undefined;
  /** A list's column as it is now, by a cell of it and the list's first and last row in the template. */
  readonly rowsOf: (first: number, last: number, cell: TemplateCell) => readonly FormCell[];
}

interface Home {
  readonly workbook: WorkbookSnapshot;
  readonly templates: readonly SheetTemplate[];
  readonly sheet: SheetSnapshot;
}

const ofSet = ({ workbook, sheet }: Home, key: string | undefined): SheetSnapshot | undefined =>
  workbook.sheets.find(({ mark }) => mark?.key === key && mark?.set === sheet.mark?.set);

/** What a list of choices on a sheet holds now. */
function choicesFrom(home: Home, source: string): EntryRule {
  const [, name, range = source] = /^'(.*)'!(.*)$/.exec(source) ?? [];
  const sheet = name === undefined ? home.sheet : ofSet(home, home.templates.find((one) => one.name === name)?.key);
  const area = sheet === undefined ? undefined : placedSheet(home.templates, sheet)?.areaNow(range.replace(/\$/g, ''));
  const lines = area === undefined ? [] : (sheet?.values.slice(area.row - 1, area.lastRow) ?? []);
  const values = lines.map((line): CellValue => line[(area?.column ?? 1) - 1] ?? '').filter((one) => one !== '');
  const byText = new Map(values.map((one) => [shownText(one), one]));
  return { kind: 'choices', choices: [...byText.keys()], values: byText };
}

/** The rule and the words of each cell of the template. */
function looksIn(home: Home, { validations }: SheetTemplate): (cell: TemplateCell) => EntryLook {
  const rules = validations.map((validation) => ({ validation, area: readArea(validation.range) }));
  const lists = new Map<string, EntryRule>();
  const listed = (source: string): EntryRule => {
    const known = lists.get(source) ?? choicesFrom(home, source);
    lists.set(source, known);
    return known;
  };
  return (cell) => {
    const found = rules.find(({ area }) => holds(area, cell))?.validation;
    const help = found?.help ?? '';
    const plain = cell.style === 'inputText' ? formats.text : '';
    const pattern = cell.format === undefined ? plain : formats[cell.format];
    if (found?.kind === 'list') return { rule: { kind: 'choices', choices: found.choices }, help, pattern };
    return { rule: found?.kind === 'listFrom' ? listed(found.source) : found, help, pattern };
  };
}

/** Undefined for a sheet that is not one of this version's: where its entries stand cannot be told. */
export function snapshotForm(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], sheet: SheetSnapshot): FormCells | undefined {
  const placed = placedSheet(templates, sheet);
  if (placed === undefined) return undefined;
  const home = { workbook, templates, sheet };
  const [lookOf, formulas] = [looksIn(home, placed.template), new Set(sheet.formulas.map(({ row, column }) => address(row, column)))];
  const drawn = new Map(placed.template.cells.map((cell) => [address(cell.row, cell.column), cell]));
  const at = ({ row, column }: CellPlace, cell: TemplateCell, takesEntry = isEntry(cell)): FormCell => {
    const content = sheet.values[row - 1]?.[column - 1] ?? '';
    return {
      ...{ row, column, content, shown: shownText(content, cell.format), hasFormula: formulas.has(address(row, column)) },
      ...{ ...lookOf(cell), isEntry: takesEntry, goesTo: cell.goesTo && ofSet(home, cell.goesTo)?.name },
    };
  };
  return {
    pocket: pocketSheet(placed.template),
    cellOf: (cell) => {
      const now = placed.cellNow(cell);
      return now === undefined ? undefined : at(now, cell);
    },
    rowsOf: (first, last, cell) => {
      const now = placed.columnNow(first, last, cell.column);
      const written = Array.from({ length: last - first + 1 }, (_, index) => drawn.get(address(first + index, cell.column)));
      if (now.length === written.length)
        return now.map((place, index) => at(place, written[index] ?? cell, isEntry(written[index] ?? cell) && written[index] !== undefined));
      // Which of the rows was put in or taken out is not known: typed into is only a column that is so in every row.
      const takesEntries = written.every((one) => one !== undefined && isEntry(one));
      return now.map((place) => at(place, cell, takesEntries && !formulas.has(address(place.row, place.column))));
    },
  };
}
