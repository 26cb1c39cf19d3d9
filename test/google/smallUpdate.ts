// The small sheets of a later version, and what a user has typed into the earlier ones, carried to where it belongs now.
import { updateSheets } from '../../addon/google/updateSheets';
import type { PanelAnswer } from '../../addon/panel/host';
import type { CarriedSheet } from '../../addon/workbook/carriedInputs';
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';
import type { Double } from './double/services';
import { insertSmall } from './smallDocument';
import { dock, hold, keyed, yard } from './smallTemplates';
import { withDouble } from './support';

const movedDown = (cells: readonly TemplateCell[], from: number): TemplateCell[] =>
  cells.map((cell) => (cell.row < from ? cell : { ...cell, row: cell.row + 2 }));

/** Two rows more above the day, one of them with a label and an entry of its own. */
export const yard2: SheetTemplate = {
  ...yard,
  version: 2,
  rows: 10,
  cells: [
    ...movedDown(yard.cells, 3),
    { row: 3, column: 1, value: 'keeper', style: 'label' },
    { row: 3, column: 2, value: 'N. Invented', style: 'inputText' },
  ],
  validations: [{ kind: 'date', range: 'B5', help: 'A day.' }],
  names: [
    { name: 'yard_day', range: 'B5' },
    { name: 'yard_keeper', range: 'B3' },
  ],
};

/** Crates are called boxes, and what is judged stands two rows further down. */
export const dock2: SheetTemplate = {
  ...dock,
  version: 2,
  cells: movedDown(dock.cells, 3).map((cell) => (cell.value === 'crates' ? { ...cell, value: 'boxes' } : cell)),
  verdictRanges: ['B5', 'B7:B8'],
  names: [{ name: 'dock_verdict', range: 'B5' }],
};

export const hold2: SheetTemplate = {
  ...hold,
  version: 2,
  validations: hold.validations.map((one) => (one.kind === 'listFrom' ? { ...one, source: `'Yard'!$B$6:$B$6` } : one)),
};

export const laterTemplates = keyed([yard2, dock2, hold2]);

/** Types into the sheets as they were first inserted, whatever they are called now. */
export function typeEntries(double: Double, [yardName, dockName, holdName]: readonly [string, string, string] = ['Yard', 'Dock side', 'Hold']): void {
  double
    .sheet(yardName)
    .getRange('B3')
    .setValues([[46100]]);
  double
    .sheet(yardName)
    .getRange('B4')
    .setValues([['07']]);
  double
    .sheet(dockName)
    .getRange('B2')
    .setValues([[31]]);
  double
    .sheet(holdName)
    .getRange('A3:B4')
    .setValues([
      [1, 2],
      [3, 8],
    ]);
}

/** Those entries where they belong in the later version; `formula` is one of the user's own in a cell of Hold. */
export const carriedEntries = (formula = "='Dock side'!B2+yard_day"): CarriedSheet[] => [
  {
    key: 'start',
    cells: [
      { row: 5, column: 2, content: 46100 },
      { row: 6, column: 2, content: '07' },
    ],
  },
  { key: 'trip', cells: [{ row: 2, column: 2, content: 31 }] },
  {
    key: 'balance',
    cells: [
      { row: 3, column: 1, content: 1 },
      { row: 3, column: 2, content: 2 },
      { row: 4, column: 1, content: 3 },
      { row: 4, column: 2, content: formula },
    ],
  },
];

/** The small sheets in their first version, typed into. */
export function typed(zone?: string): Double {
  const double = withDouble(zone);
  insertSmall();
  typeEntries(double);
  return double;
}

export const setOf = (double: Double, name: string): string =>
  (JSON.parse(double.sheet(name).metadata[0]?.getValue() ?? '{}') as { set: string }).set;

/** Brings the set to which the sheet `name` belongs up to date. */
export const update = (
  double: Double,
  entries: readonly CarriedSheet[] = carriedEntries(),
  name = 'Yard',
  templates: readonly SheetTemplate[] = laterTemplates,
): PanelAnswer<'updateSheets'> => updateSheets({ set: setOf(double, name), entries }, templates);
