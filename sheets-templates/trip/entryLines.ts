// The lines of the Trip sheet's left half: a heading, an entry alone or for each place, a result that is shown beside them.
import { cell, line, type Content, type Field } from '../build';
import type { FormatName } from '../look';
import type { TemplateCell } from '../template';
import { placeColumns, placeNames, type PlaceColumn } from './rows';

export const across = (title: string): Field[] => [[title, 'heading'], ...Array.from({ length: 4 }, (): Field => ['', 'heading'])];
export const places = (title: string): Field[] => [
  [title, 'heading'],
  ...placeColumns.map((column): Field => [placeNames[column], 'columnHead']),
  ['unit', 'columnHead'],
];

/** An entry with its unit beside the alternate's column. */
export const single = (row: number, label: string, value: Content, unit: string, format: FormatName, note?: string): TemplateCell[] => [
  ...line(row, 1, [label, 'label'], [value, typeof value === 'string' ? 'inputText' : 'input', { format, ...(note !== undefined && { note }) }]),
  cell(row, 5, unit, 'unit'),
];
/** An entry for each place; a place left out has none. */
export const forPlaces = (
  row: number,
  label: string,
  values: Partial<Record<PlaceColumn, Content>>,
  unit: string,
  format: FormatName,
  note?: string,
): TemplateCell[] => [
  cell(row, 1, label, 'label'),
  ...placeColumns.flatMap((column, index) =>
    column in values
      ? [
          cell(row, 2 + index, values[column], format === 'text' ? 'inputText' : 'input', {
            format,
            ...(index === 0 && note !== undefined && { note }),
          }),
        ]
      : [],
  ),
  cell(row, 5, unit, 'unit'),
];
export const shown = (
  row: number,
  label: string,
  formulas: Partial<Record<PlaceColumn, string>>,
  unit: string,
  format: FormatName,
  note: string,
): TemplateCell[] => [
  cell(row, 1, label, 'label'),
  ...placeColumns.flatMap((column, index) => {
    const formula = formulas[column];
    return formula === undefined
      ? []
      : [cell(row, 2 + index, formula, format === 'text' ? 'computedText' : 'computed', { format, ...(index === 0 && { note }) })];
  }),
  cell(row, 5, unit, 'unit'),
];
