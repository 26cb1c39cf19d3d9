// A sheet's description read as a page of sections instead of a grid: under each heading lines of a label with its values, and lists whose
// rows become cards. All places are those of the template; placesNow tells where they stand in a user's sheet.
import { keysOf } from '../keys';
import { eachCell } from '../areas';
import { address } from '../../../sheets-templates/addresses';
import type { SheetTemplate, TemplateCell } from '../../../sheets-templates/template';
import { holds, listPart, listsIn } from './lists';
import { isHead, isValue, linesOf, valueOf, wordIn, type IsEntry, type Lines, type PocketPart, type PocketValue } from './parts';

export type { PocketPart, PocketValue } from './parts';

export interface PocketSection {
  readonly title: string;
  readonly parts: readonly PocketPart[];
}

export interface PocketSheet {
  /** What stands above the first heading. */
  readonly top: readonly PocketPart[];
  readonly sections: readonly PocketSection[];
}

const isNamed = (cell: TemplateCell): boolean => cell.style === 'heading' && wordIn(cell) !== '';

interface Heading {
  readonly cell: TemplateCell;
  readonly lastColumn: number;
}

/** A heading goes on to the right over blank headings and heads of columns. */
function headingsOf(lines: Lines): Heading[] {
  return [...lines.values()].flatMap((line) =>
    line.filter(isNamed).map((cell) => {
      let lastColumn = cell.column;
      for (const next of line)
        if (next.column === lastColumn + 1 && !isNamed(next) && (next.style === 'heading' || next.style === 'columnHead')) lastColumn = next.column;
      return { cell, lastColumn };
    }),
  );
}

/** A heading ends where another one begins below it over some of the same columns. */
const endsAbove = (one: Heading, row: number, headings: readonly Heading[]): boolean =>
  headings.some(
    ({ cell, lastColumn }) => cell.row > one.cell.row && cell.row <= row && cell.column <= one.lastColumn && lastColumn >= one.cell.column,
  );

/** The heading above, of those over the cell's own column; else the nearest at the left. */
function headingOf(headings: readonly Heading[], { row, column }: TemplateCell): Heading | undefined {
  const above = headings.filter((one) => one.cell.row <= row && one.cell.column <= column && !endsAbove(one, row, headings));
  const lowest = [...above].sort((one, other) => other.cell.row - one.cell.row);
  const rightmost = [...above].sort((one, other) => other.cell.column - one.cell.column || other.cell.row - one.cell.row);
  return lowest.find(({ lastColumn }) => lastColumn >= column) ?? rightmost[0];
}

/** The cells of one row, in their order. */
function linesIn(line: readonly TemplateCell[], headOf: (cell: TemplateCell) => TemplateCell | undefined, isEntry: IsEntry): PocketPart[] {
  const parts: PocketPart[] = [];
  let label = '';
  let values: PocketValue[] = [];
  const close = (unit?: TemplateCell): void => {
    if (values.length > 0) parts.push({ kind: 'line', label, values, ...(unit !== undefined && { unit }) });
    [label, values] = ['', []];
  };
  for (const cell of line) {
    if (cell.style === 'label') {
      close();
      label = wordIn(cell);
    } else if (cell.style === 'unit') close(cell);
    else if (isValue(cell) || (cell.style === 'reason' && (label !== '' || values.length > 0))) values.push(valueOf(cell, headOf(cell), isEntry));
    else if (!isHead(cell) && cell.style !== 'heading') {
      // Words at the right of a value without a label say what it is.
      if (label === '' && values.length === 1 && cell.style === 'text' && wordIn(cell) !== '') label = wordIn(cell);
      else if ((label !== '' && values.length === 0) || (label === '' && values.length > 0)) values.push({ cell, head: '', isEntry: false });
      else parts.push({ kind: 'said', cell });
    }
  }
  close();
  return parts;
}

/**
 * Columns in which labels stand one below another, or what a call lays out as label, value and unit: where there are several, the section has
 * halves side by side.
 */
function labelColumns(cells: readonly TemplateCell[]): number[] {
  const columns = cells.filter(({ style }) => style === 'label').map(({ column }) => column);
  const labels = [...new Set(columns)].filter((column) => columns.filter((one) => one === column).length > 1);
  const laidOut = cells.filter(isHead).filter(({ row, column }) => {
    const at = (across: number): TemplateCell | undefined => cells.find((cell) => cell.row === row + 1 && cell.column === column + across);
    return at(0)?.style === 'computedText' && at(2)?.style === 'unit';
  });
  return [...new Set([...labels, ...laidOut.map(({ column }) => column)])];
}

interface Placed {
  readonly row: number;
  readonly column: number;
  readonly lastColumn: number;
  readonly part: PocketPart;
}

/** From left to right, each half from top to bottom; but what goes across the halves parts what is above from what is below. */
function inReadingOrder(placed: readonly Placed[], starts: readonly number[]): PocketPart[] {
  const across = placed.filter(
    ({ part, column, lastColumn }) => part.kind === 'list' && starts.some((start) => start > column && start <= lastColumn),
  );
  const keyOf = (one: Placed): readonly number[] => [
    across.filter(({ row }) => row < one.row).length * 2 + (across.includes(one) ? 1 : 0),
    starts.filter((start) => start <= one.column).length,
    one.row,
    one.column,
  ];
  const before = (one: readonly number[], other: readonly number[]): number =>
    one.map((key, index) => key - (other[index] ?? 0)).find((by) => by !== 0) ?? 0;
  return [...placed].sort((one, other) => before(keyOf(one), keyOf(other))).map(({ part }) => part);
}

function partsOf(cells: readonly TemplateCell[], heading: TemplateCell | undefined, isEntry: IsEntry): PocketPart[] {
  const lines = linesOf(cells);
  const lists = listsIn(lines, heading);
  const rest = cells.filter((cell) => !lists.some((block) => holds(block, cell)));
  const starts = labelColumns(rest);
  const halfOf = ({ column }: TemplateCell): number => starts.filter((start) => start <= column).length;
  const heads = rest.filter(isHead);
  const headOf = ({ row, column }: TemplateCell): TemplateCell | undefined =>
    heads.filter((head) => head.column === column && head.row < row).sort((one, other) => other.row - one.row)[0];
  const placed = [...linesOf(rest.filter(({ row }) => row !== heading?.row))].flatMap(([row, line]) =>
    Array.from({ length: starts.length + 1 }, (_, half) => line.filter((cell) => halfOf(cell) === half)).flatMap((half): Placed[] =>
      linesIn(half, headOf, isEntry).map((part) => ({ row, column: half[0]?.column ?? 0, lastColumn: half[half.length - 1]?.column ?? 0, part })),
    ),
  );
  const listed = lists.map((block): Placed => {
    const columns = [...block.columns];
    return { row: block.head, column: Math.min(...columns), lastColumn: Math.max(...columns), part: listPart(lines, block, isEntry) };
  });
  return inReadingOrder([...placed, ...listed], [...new Set([...starts, ...listed.map(({ column }) => column)])]);
}

/** Cells that the keys of the sheet name as entries. */
function entriesOf(template: SheetTemplate): Set<string> {
  const entries = new Set<string>();
  for (const range of keysOf(template)?.ranges.values() ?? [])
    if (range !== undefined) eachCell(range, (row, column) => entries.add(address(row, column)));
  return entries;
}

export function pocketSheet(template: SheetTemplate): PocketSheet {
  const hidden = new Set(template.hiddenColumns ?? []);
  const cells = template.cells.filter(({ column }) => !hidden.has(column));
  const headings = headingsOf(linesOf(cells));
  const entries = entriesOf(template);
  const isEntry: IsEntry = (cell) => cell.style.startsWith('input') && entries.has(address(cell.row, cell.column));
  const under = new Map<Heading | undefined, TemplateCell[]>(headings.map((one) => [one, []]));
  for (const cell of cells) {
    const heading = headingOf(headings, cell);
    under.set(heading, [...(under.get(heading) ?? []), cell]);
  }
  const sections = headings.map((heading) => ({
    title: wordIn(heading.cell).replace(/\s+/g, ' '),
    parts: partsOf(under.get(heading) ?? [], heading.cell, isEntry),
  }));
  return { top: partsOf(under.get(undefined) ?? [], undefined, isEntry), sections };
}
