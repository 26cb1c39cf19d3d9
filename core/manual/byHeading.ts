// Which columns of a table of plain numbers a brief reads it by: those whose headings say so, else the first three in their order.
import { isInput, type InputColumn, type InputRole, type TableBlock, type TableColumn } from './columns';
import { plainHeader } from './grid';

const inOrder: readonly InputRole[] = ['weight', 'pressure altitude', 'temperature'];

/** Headings that can only be answers, wherever they stand. */
const answers = /roll|run|over|distance|rate|climb|50|15 ?m|speed|flow|fuel|time/i;

/** The places of a role that are one: the one altitude and the one temperature of the air. */
const placeOf: Readonly<Record<InputRole, number>> = {
  weight: 0,
  'pressure altitude': 1,
  'density altitude': 1,
  temperature: 2,
  'isa deviation': 2,
  headwind: -1,
  power: -1,
  other: -1,
};

/**
 * A first column without a known heading is the input of its place, unless its heading is that of an answer, or its place is taken. Where no
 * heading at all is known, the first three are weight, pressure altitude and temperature whatever they are called.
 */
export function byHeading(block: TableBlock, wanted: string): TableBlock {
  const known = block.columns.filter(isInput);
  const taken = known.map(({ role }) => placeOf[role]);
  const columns = block.columns.map((column, index): TableColumn => {
    const role = inOrder[index];
    if (column.kind !== 'answer' || column.at !== undefined || role === undefined || taken.includes(index)) return column;
    const isAnswer = plainHeader(column.header) === plainHeader(wanted) || answers.test(column.header);
    if (known.length > 0 && isAnswer) return column;
    return { kind: 'input', header: column.header, role, unit: column.unit, upTo: false, constant: undefined } satisfies InputColumn;
  });
  return { ...block, columns };
}
