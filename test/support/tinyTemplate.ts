// A sheet of a few cells that shows each trait of the engine's adapter; invented, and used by tests only.
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';

const cell = (
  row: number,
  column: number,
  content: Omit<TemplateCell, 'row' | 'column' | 'style'>,
  style: TemplateCell['style'] = 'computed',
): TemplateCell => ({ row, column, style, ...content });

export const tinyTemplate: SheetTemplate = {
  key: 'trip',
  name: 'Tiny sheet',
  version: 1,
  rows: 60,
  columns: 8,
  columnWidths: [160, 90, 90, 90, 90, 90, 90, 90],
  rowHeights: { 1: 32 },
  frozenRows: 1,
  cells: [
    cell(1, 1, { value: 'A tiny sheet, invented' }, 'title'),
    cell(2, 1, { value: 'pressure altitude' }, 'label'),
    cell(2, 2, { value: 5000, format: 'whole' }, 'input'),
    cell(3, 2, { value: 15 }, 'input'),
    cell(4, 2, { formula: '=DENSITY_ALTITUDE(B2,B3)', format: 'whole', note: 'Exact relation.' }),
    cell(5, 2, { formula: '=IF(B4>B2,"CHECK","OK")' }, 'verdict'),
    cell(6, 2, { value: { date: '2026-01-22' }, format: 'date' }, 'input'),
    cell(7, 2, { value: '0101' }, 'inputText'),
    cell(8, 2, { value: true }, 'input'),
    cell(10, 1, { value: 0 }, 'input'),
    cell(11, 1, { value: 10000 }, 'input'),
    cell(13, 1, { value: 'warm' }, 'inputText'),
    cell(10, 2, { formula: '=ISA_TEMPERATURE(A10:A13)' }),
    cell(15, 2, { formula: '=ISA_TEMPERATURE(A13)' }),
    cell(16, 2, { formula: '=IFERROR(ISA_TEMPERATURE(A13),"caught")' }),
    cell(17, 2, { formula: '=ISA_TEMPERATURE(A14)' }),
    cell(18, 2, { formula: '=DENSITY_ALTITUDE(B2,B3,)-B4' }),
    cell(19, 2, { formula: '=ISA_TEMPERATURE(1,2)' }),
    cell(20, 2, { formula: '=ARRAYFORMULA(A10:A11*2)' }),
    cell(23, 2, { formula: '=ISA_TEMPERATURE(level)' }),
    cell(24, 2, { formula: '=ISA_TEMPERATURE(1/0)' }),
    cell(25, 2, { formula: '=ISA_TEMPERATURE(A13)+ISA_TEMPERATURE(A10)' }),
  ],
  merges: ['A1:C1'],
  validations: [
    { range: 'B2', kind: 'number', minimum: -2000, maximum: 30000, help: 'Feet.' },
    { range: 'B7', kind: 'list', choices: ['0101', '0102'], help: 'A cycle.' },
    { range: 'D19', kind: 'list', choices: ['at', 'at or below'], help: 'How to cross.' },
  ],
  verdictRanges: ['B5'],
  names: [
    { name: 'level', range: 'B2' },
    { name: 'temperatures', range: 'B10:B13' },
  ],
  charts: [
    {
      title: 'Tiny chart',
      description: 'Temperatures.',
      xTitle: 'C',
      yTitle: 'ft',
      row: 2,
      column: 4,
      width: 320,
      height: 240,
      series: [{ title: 'standard', x: 'B10:B12', y: 'A10:A12', drawn: 'line' }],
    },
  ],
  print: { landscape: false },
};
