// Three small sheets of the tests' own, invented: one that owns a name, two that read each other.
import { withKeys, type TemplateKeys } from '../../sheets-templates/keys';
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';

const bare = {
  version: 1,
  rows: 8,
  columns: 3,
  columnWidths: [120, 80, 80],
  rowHeights: { 1: 32, 2: 40 },
  frozenRows: 0,
  merges: [],
  validations: [],
  verdictRanges: [],
  names: [],
  charts: [],
  print: { landscape: false },
};

const head = (text: string): TemplateCell => ({ row: 1, column: 1, value: text, style: 'title' });

/** Reads nothing. */
export const yard: SheetTemplate = {
  ...bare,
  key: 'start',
  name: 'Yard',
  cells: [
    head('Yard'),
    { row: 2, column: 1, value: 'Invented, for the tests.', style: 'caution' },
    { row: 3, column: 1, value: 'day', style: 'label' },
    { row: 3, column: 2, value: { date: '2026-01-22' }, style: 'input', format: 'date', note: 'Named yard_day.' },
    { row: 4, column: 1, value: 'gate', style: 'label' },
    { row: 4, column: 2, value: '09', style: 'inputText' },
    { row: 5, column: 1, value: 'to the hold', style: 'link', goesTo: 'balance' },
    { row: 6, column: 1, value: '2026-03-04', style: 'label' },
    { row: 6, column: 2, value: 'TRUE', style: 'label' },
  ],
  merges: ['A1:C1', 'A2:C2'],
  validations: [{ kind: 'date', range: 'B3', help: 'A day.' }],
  names: [{ name: 'yard_day', range: 'B3' }],
};

/** Reads Yard and Hold. */
export const dock: SheetTemplate = {
  ...bare,
  key: 'trip',
  name: 'Dock side',
  frozenRows: 1,
  cells: [
    head('Dock side'),
    { row: 2, column: 1, value: 'crates', style: 'label' },
    { row: 2, column: 2, value: 12, style: 'input', format: 'whole' },
    { row: 3, column: 1, value: 'judged', style: 'label' },
    { row: 3, column: 2, formula: `=IF('Hold'!B2>=B2,"OK, all in","NO")`, style: 'verdict' },
    { row: 4, column: 2, formula: '=yard_day+B2', style: 'computed', format: 'date' },
    { row: 5, column: 2, style: 'computed', format: 'one' },
  ],
  verdictRanges: ['B3', 'B5:B6'],
  names: [{ name: 'dock_verdict', range: 'B3' }],
};

/** Reads Dock side, has a chart and a list from Yard. */
export const hold: SheetTemplate = {
  ...bare,
  key: 'balance',
  name: 'Hold',
  cells: [
    head('Hold'),
    { row: 2, column: 1, value: 'room', style: 'label' },
    { row: 2, column: 2, formula: `='Dock side'!$B$2*2`, style: 'computed', format: 'whole' },
    { row: 3, column: 1, value: 4, style: 'input' },
    { row: 3, column: 2, value: 5, style: 'input' },
    { row: 4, column: 1, value: 6, style: 'input' },
    { row: 4, column: 2, value: 7, style: 'input' },
  ],
  validations: [
    { kind: 'listFrom', range: 'C2', source: `'Yard'!$B$4:$B$4`, help: 'A gate.' },
    { kind: 'number', range: 'A3:B4', minimum: 0, maximum: 9, help: 'A number, 0 to 9.' },
    { kind: 'list', range: 'C3', choices: ['left', 'right'], help: 'A side.' },
  ],
  charts: [
    {
      title: 'Room',
      description: 'Room, invented.',
      xTitle: 'x',
      yTitle: 'y',
      row: 2,
      column: 4,
      width: 200,
      height: 150,
      series: [
        { title: 'line', x: 'A3:A4', y: 'B3:B4', drawn: 'line' },
        { title: 'point', x: 'A3:A3', y: 'B4:B4', drawn: 'points' },
      ],
    },
  ],
};

const noKeys: TemplateKeys = { entries: {}, lists: {} };
/** With the formula that tells where their cells stand. */
export const keyed = (templates: readonly SheetTemplate[]): readonly SheetTemplate[] => withKeys(templates.map((one) => ({ ...one, keys: noKeys })));

export const smallTemplates = keyed([yard, dock, hold]);
