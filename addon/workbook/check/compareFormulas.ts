// The formulas of our sheets held against those that the templates put there. A number typed over a formula is the most
// dangerous thing in a workbook: it looks computed, and never changes again.
import { address } from '../../../sheets-templates/build';
import { isEntry, type SheetTemplate, type TemplateCell } from '../../../sheets-templates/template';
import { readArea } from '../areas';
import type { Reference } from '../formulaReading';
import { formulaSense } from '../formulaSense';
import { keysOf } from '../keys';
import type { PlacesNow } from '../placesNow';
import { sheetNamed } from '../readPlace';
import type { CellPlace, SheetSnapshot } from '../snapshot';
import { labelOf, labelsOf, valueAt } from '../templateLabels';
import type { CheckedBook } from './checkedBook';
import { findingAt, type Finding } from './finding';
import type { LinkedSheets } from './linkedSheets';

export interface Comparison {
  readonly findings: readonly Finding[];
  readonly compared: number;
}

export interface Comparing {
  readonly book: CheckedBook;
  readonly templates: readonly SheetTemplate[];
  /** Undefined where a sheet has no keys. */
  readonly placesNow: (template: SheetTemplate, sheet: SheetSnapshot) => PlacesNow | undefined;
}

/** A range of the template whose cells cannot be found again. */
class NotKnown extends Error {}

const maxLength = 160;
const shortened = (text: string): string => (text.length > maxLength ? `${text.slice(0, maxLength)} ...` : text);

/** A12:A12 is A12. */
const rangeSense = (range: string): string => range.replace(/^([^:]+):\1$/, '$1');
const onSheet = (sheet: SheetSnapshot | undefined, home: SheetSnapshot, name: string): string =>
  sheet === home ? '' : `'${(sheet?.name ?? name).toUpperCase().replace(/'/g, "''")}'!`;

/** The range as it stands now, fixed where the template fixed it. */
function movedRange(range: string, moved: string): string {
  const fixed = range.split(':').map((corner) => [corner.startsWith('$') ? '$' : '', /[A-Z]\$/.test(corner) ? '$' : ''] as const);
  return moved
    .split(':')
    .map((corner, index) => {
      const [column = '', row = ''] = fixed[index] ?? [];
      return corner.replace(/([A-Z]+)(\d+)/, (_, letters: string, digits: string) => `${column}${letters}${row}${digits}`);
    })
    .join(':');
}

function wantedSense(
  { templates, placesNow }: Comparing,
  template: SheetTemplate,
  home: SheetSnapshot,
  links: LinkedSheets,
  formula: string,
): string {
  const reference = ({ sheet: named, range }: Reference): string => {
    const of = named === undefined ? template : templates.find(({ name }) => name === named);
    const sheet = of === undefined ? undefined : links.sheetOf(of.key);
    if (of === undefined || sheet === undefined) throw new NotKnown();
    const now = placesNow(of, sheet)?.range(range.replace(/\$/g, ''));
    if (now === undefined) throw new NotKnown();
    return `${onSheet(sheet, home, sheet.name)}${rangeSense(movedRange(range, now))}`;
  };
  return formulaSense(formula, { word: (word) => links.rangeName(word) ?? word, reference });
}

function senseNow({ workbook }: CheckedBook, home: SheetSnapshot, formula: string): string {
  const reference = ({ sheet: named, range }: Reference): string => {
    const sheet = named === undefined ? home : sheetNamed(workbook, named);
    return `${onSheet(sheet, home, named ?? '')}${rangeSense(range)}`;
  };
  return formulaSense(formula, { word: (word) => word, reference });
}

type Verdict = 'same' | 'not known' | { readonly place: CellPlace; readonly sentence: string };

function compareCell(
  comparing: Comparing,
  template: SheetTemplate,
  sheet: SheetSnapshot,
  links: LinkedSheets,
  { row, column }: TemplateCell,
  formula: string,
): Verdict {
  const { book, placesNow } = comparing;
  const now = placesNow(template, sheet)?.range(address(row, column));
  if (now === undefined) return 'not known';
  const place = readArea(now);
  const cell = book.cellAt(sheet, place);
  if (cell === undefined) {
    const value = valueAt(sheet, place.row, place.column);
    const own = shortened(formula);
    return {
      place,
      sentence:
        value === ''
          ? `The formula of this cell is gone. The sheet's own is ${own}`
          : `Holds "${String(value)}", typed over its formula: it is not computed any more. The sheet's own is ${own}`,
    };
  }
  try {
    const wanted = wantedSense(comparing, template, sheet, links, formula);
    return wanted === senseNow(book, sheet, cell.text)
      ? 'same'
      : { place, sentence: `The formula was changed. The sheet's own is ${shortened(`=${wanted}`)}` };
  } catch (thrown) {
    if (thrown instanceof NotKnown) return 'not known';
    throw thrown;
  }
}

/** What the formulas that were not compared work out, in the words beside them. */
function namesOf(template: SheetTemplate, cells: readonly TemplateCell[]): string {
  const labels = labelsOf(template);
  const names = [...new Set(cells.map(({ row, column }) => labelOf(labels, row, column)?.text ?? address(row, column)))];
  return `${names.slice(0, 6).join(', ')}${names.length > 6 ? ' and others' : ''}`;
}

const top: CellPlace = { row: 1, column: 1 };

export function compareFormulas(comparing: Comparing, template: SheetTemplate, sheet: SheetSnapshot, links: LinkedSheets): Comparison {
  const version = sheet.mark?.version ?? template.version;
  if (version !== template.version) {
    const what = version < template.version ? 'Bring it up to date to have them compared.' : 'Reload the add-on: it is older than the sheet.';
    return {
      findings: [
        findingAt(
          'moved',
          sheet,
          top,
          `This sheet is of version ${version}, today's is ${template.version}: its formulas were not compared. ${what}`,
        ),
      ],
      compared: 0,
    };
  }
  const findings: Finding[] = [];
  const unknown: TemplateCell[] = [];
  // Into an entry that comes with a formula anybody may type; the keys are what the others are found by.
  const keys = keysOf(template)?.cell;
  const computed = template.cells.filter((cell) => !isEntry(cell) && !(cell.row === keys?.row && cell.column === keys.column));
  if (comparing.placesNow(template, sheet) === undefined) {
    const sentence =
      'This sheet has lost its keys, the formula in the first row of its hidden last column, or has them twice: its formulas were not compared, its pictures are not drawn, and it cannot be brought up to date. Take back what was done to that column.';
    return { findings: [findingAt('moved', sheet, top, sentence)], compared: 0 };
  }
  for (const cell of computed) {
    if (cell.formula === undefined) continue;
    const verdict = compareCell(comparing, template, sheet, links, cell, cell.formula);
    if (verdict === 'not known') unknown.push(cell);
    else if (verdict !== 'same') findings.push(findingAt('formula', sheet, verdict.place, verdict.sentence));
  }
  const all = computed.filter(({ formula }) => formula !== undefined).length;
  const moved = `Rows, columns or cells of this sheet, or of one that it reads, were taken out, or that one is of another version: ${unknown.length} of its ${all} formulas could not be compared with its own (${namesOf(template, unknown)}). Look at them yourself.`;
  return { findings: unknown.length === 0 ? findings : [...findings, findingAt('moved', sheet, top, moved)], compared: all - unknown.length };
}

/** Sheets that a sheet of ours reads and that are in the document no more. */
export function findMissing({ templates }: Comparing, template: SheetTemplate, sheet: SheetSnapshot, links: LinkedSheets): Finding[] {
  const readsSheet = (other: SheetTemplate): boolean =>
    template.cells.some(
      ({ formula }) =>
        formula !== undefined && (formula.includes(`'${other.name}'!`) || other.names.some(({ name }) => new RegExp(`\\b${name}\\b`).test(formula))),
    );
  const gone = templates.filter((other) => other.key !== template.key && links.sheetOf(other.key) === undefined && readsSheet(other));
  return gone.map(({ name }) =>
    findingAt(
      'formula',
      sheet,
      top,
      `This sheet reads the sheet "${name}", which is not in this document any more. Insert it, and set the formulas to it, or insert both anew.`,
    ),
  );
}
