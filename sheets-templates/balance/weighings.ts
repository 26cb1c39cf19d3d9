// The weighing record: the last weighing and the changes of equipment since, against which the empty aircraft of section 1 is held.
import { area, cell, line, type Field } from '../build';
import { demoWeighings } from '../demo/weighings';
import type { TemplateCell, Validation } from '../template';
import { momentHelp } from './entries';
import { weighingRows as rows } from './rows';

const heads: readonly Field[] = [
  ['aircraft', 'columnHead'],
  ['day', 'columnHead'],
  ['what', 'columnHead', { note: 'weighing: the whole empty aircraft. change: what was put in, or taken out with a negative weight.' }],
  ['weight', 'columnHead'],
  ['arm', 'columnHead'],
  ['or its moment', 'columnHead', { note: momentHelp }],
  ['remark', 'columnHead'],
];

const said =
  'The last weighing and the changes since must lead to the empty aircraft of section 1: its reason says so, or what they lead to. Lines in any order.';

/** Cells of one line, from left to right. */
const entryCells = (row: number, values: (typeof demoWeighings)[number] | undefined): TemplateCell[] =>
  line(
    row,
    1,
    [values?.aircraft, 'inputText'],
    [values === undefined ? undefined : { date: values.day }, 'input', { format: 'date' }],
    [values?.what, 'inputText'],
    [values?.weight, 'input', { format: 'one' }],
    [values?.arm, 'input', { format: 'two' }],
    [undefined, 'input', { format: 'one' }],
    [values?.remark, 'inputText'],
  );

export const weighingCells: readonly TemplateCell[] = [
  ...line(rows.first - 3, 1, ['5  Weighing record', 'heading'], ...Array.from({ length: 6 }, (): Field => ['', 'heading'])),
  cell(rows.first - 2, 1, said, 'subtitle'),
  ...line(rows.first - 1, 1, ...heads),
  ...Array.from({ length: rows.last - rows.first + 1 }, (_, index) => entryCells(rows.first + index, demoWeighings[index])).flat(),
];

const inColumn = (column: number): string => area(rows.first, column, rows.last, column);

export const weighingValidations: readonly Validation[] = [
  { kind: 'date', range: inColumn(2), help: 'The day of the weighing or of the change, such as 2026-03-14.' },
  { kind: 'list', range: inColumn(3), choices: ['weighing', 'change'], help: 'weighing or change.' },
  {
    kind: 'number',
    range: inColumn(4),
    minimum: -100000,
    maximum: 100000,
    help: 'Weight, in the unit of the aircraft list; negative for what was taken out.',
  },
  { kind: 'number', range: inColumn(5), minimum: -100000, maximum: 100000, help: 'Arm from the datum, in the unit of the aircraft list.' },
  { kind: 'number', range: inColumn(6), minimum: -1e9, maximum: 1e9, help: momentHelp },
];
