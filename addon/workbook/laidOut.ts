// Where the cells of a template stand now in a sheet in which the user may have inserted or removed rows and columns. The
// fixed texts of the template, in their order, tell, and the ranges that its formulas read; where they do not tell for certain,
// there is no answer.
import { address } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { alignLines } from './alignLines';
import { areaText, readArea } from './areas';
import { formulaVotes, mostVoted, pairedSheet, type PairedSheet, type Votes } from './formulaVotes';
import type { SheetSnapshot } from './snapshot';
import { labelOf, labelsOf, textAt, type Label } from './templateLabels';

export interface LaidOut {
  /** A range of the template (A1, or A1:C9) as it stands now: a list in which rows were inserted has grown. Undefined where it cannot be known. */
  readonly range: (text: string) => string | undefined;
  /** Likewise for a whole column. */
  readonly column: (column: number) => number | undefined;
}

/** Template line to line of today, both counted from 1. */
type Lines = ReadonlyMap<number, number>;

const grouped = (labels: readonly Label[], line: 'row' | 'column'): Map<number, Label[]> => {
  const groups = new Map<number, Label[]>();
  for (const label of labels) groups.set(label[line], [...(groups.get(label[line]) ?? []), label]);
  return groups;
};

function mappedColumns(labels: readonly Label[], sheet: SheetSnapshot): Lines {
  const byColumn = [...grouped(labels, 'column')].sort(([one], [other]) => one - other);
  const width = Math.max(0, ...sheet.values.map((line) => line.length));
  const texts = Array.from({ length: width }, (_, column) => new Set(sheet.values.map((_line, row) => textAt(sheet, row + 1, column + 1))));
  const score = (before: number, now: number): number => new Set(byColumn[before]?.[1].filter(({ text }) => texts[now]?.has(text)).map(({ text }) => text)).size;
  return new Map([...alignLines(byColumn.length, width, score)].map(([before, now]) => [byColumn[before]?.[0] ?? 0, now + 1]));
}

function mappedRows(labels: readonly Label[], columns: Lines, sheet: SheetSnapshot): Lines {
  const byRow = [...grouped(labels, 'row')].sort(([one], [other]) => one - other);
  const known = new Set(labels.map(({ text }) => text));
  const filled = sheet.values.flatMap((line, index) => (line.some((_, column) => known.has(textAt(sheet, index + 1, column + 1))) ? [index + 1] : []));
  const score = (before: number, now: number): number =>
    (byRow[before]?.[1] ?? []).filter(({ column, text }) => textAt(sheet, filled[now] ?? 0, columns.get(column) ?? 0) === text).length;
  return new Map([...alignLines(byRow.length, filled.length, score)].map(([before, now]) => [byRow[before]?.[0] ?? 0, filled[now] ?? 0]));
}

interface Gap {
  /** The nearest known lines on both sides, before and now; undefined: the end of the sheet. */
  readonly above: number;
  readonly aboveNow: number;
  readonly below: number | undefined;
  readonly belowNow: number;
}

function gapAround(lines: Lines, line: number): Gap {
  const known = [...lines.keys()].sort((one, other) => one - other);
  const above = known.filter((one) => one < line).pop() ?? 0;
  const below = known.find((one) => one > line);
  return { above, aboveNow: lines.get(above) ?? 0, below, belowNow: below === undefined ? Infinity : lines.get(below) ?? 0 };
}

/** In a gap with more or fewer lines than before: the ends of its list keep their distance to the known lines. */
function endOfList({ above, aboveNow, below, belowNow }: Gap, line: number, ends: Ends | undefined): number | undefined {
  if (below === undefined) return aboveNow + line - above;
  if (ends === undefined) return undefined;
  const [firstNow, lastNow] = [aboveNow + ends[0] - above, belowNow + ends[1] - below];
  if (lastNow < firstNow) return undefined;
  return line === ends[0] ? firstNow : line === ends[1] ? lastNow : undefined;
}

/**
 * A line without a text of its own. With as many lines around it as before, it is where it was. Else formulas that read
 * it tell; one formula alone might have been typed over, so it is believed only where nothing speaks against it.
 */
function between(lines: Lines, line: number, ends: (from: number, to: number) => Ends | undefined, votes: Votes<number> | undefined): number | undefined {
  const gap = gapAround(lines, line);
  const { above, aboveNow, below, belowNow } = gap;
  if (below !== undefined && belowNow - aboveNow === below - above) return aboveNow + line - above;
  const guessed = endOfList(gap, line, below === undefined ? undefined : ends(above + 1, below - 1));
  const said = mostVoted(votes);
  if (said === undefined || said.where <= aboveNow || said.where >= belowNow) return guessed;
  return said.votes > 1 || guessed === undefined || guessed === said.where ? said.where : undefined;
}

type Ends = readonly [first: number, last: number];

/** The rows from one to another that hold cells of the template, where they are one block without a gap. */
function listBetween({ cells }: SheetTemplate): (from: number, to: number) => Ends | undefined {
  const used = new Set(cells.map(({ row }) => row));
  return (from, to) => {
    const rows = Array.from({ length: to - from + 1 }, (_, index) => from + index).filter((row) => used.has(row));
    const [first = 0, last = 0] = [rows[0], rows[rows.length - 1]];
    return rows.length > 0 && last - first + 1 === rows.length ? [first, last] : undefined;
  };
}

const unmoved = (labels: readonly Label[], line: 'row' | 'column'): Lines => new Map(labels.map((label) => [label[line], label[line]]));

/** Works each line out once. */
function once(lineNow: (line: number) => number | undefined): (line: number) => number | undefined {
  const known = new Map<number, number | undefined>();
  return (line) => {
    if (!known.has(line)) known.set(line, lineNow(line));
    return known.get(line);
  };
}

/** `readers`: other sheets of ours, whose formulas may read this one. */
export function laidOut(template: SheetTemplate, sheet: SheetSnapshot, readers: readonly PairedSheet[] = []): LaidOut {
  const labels = labelsOf(template);
  const asWritten = labels.every(({ row, column, text }) => textAt(sheet, row, column) === text);
  // Below its last text a list may have grown all the same.
  const columns = asWritten ? unmoved(labels, 'column') : mappedColumns(labels, sheet);
  const rows = asWritten ? unmoved(labels, 'row') : mappedRows(labels, columns, sheet);
  const own = readers.find((one) => one.sheet === sheet) ?? pairedSheet(template, sheet);
  const votes = formulaVotes(own, [own, ...readers.filter((one) => one !== own)]);
  const ends = listBetween(template);
  const labelled = { row: new Set(labels.map(({ row }) => row)), column: new Set(labels.map(({ column }) => column)) };
  const rowNow = once((row) => rows.get(row) ?? between(rows, row, ends, votes.row.get(row)));
  const columnNow = once((column) => columns.get(column) ?? between(columns, column, () => undefined, votes.column.get(column)));
  /** The text that says what a cell is must stand there now too. */
  const isSaid = (row: number, column: number): boolean => {
    const label = labelOf(labels, row, column);
    const known = (rows.has(row) || !labelled.row.has(row)) && (columns.has(column) || !labelled.column.has(column));
    return known && (label === undefined || textAt(sheet, rowNow(label.row) ?? 0, columnNow(label.column) ?? 0) === label.text);
  };
  /** Where the text beside a cell was changed, formulas that read the very cell may still tell. */
  const cellNow = (row: number, column: number): readonly [row: number, column: number] | undefined => {
    const [toRow, toColumn] = [rowNow(row), columnNow(column)];
    if (toRow === undefined || toColumn === undefined) return undefined;
    if (isSaid(row, column)) return [toRow, toColumn];
    const said = mostVoted(votes.cell.get(address(row, column)));
    return said?.where === address(toRow, toColumn) ? [toRow, toColumn] : undefined;
  };
  return {
    column: columnNow,
    range: (text) => {
      const { row, column, lastRow, lastColumn } = readArea(text);
      const [first, last] = [cellNow(row, column), cellNow(lastRow, lastColumn)];
      return first === undefined || last === undefined ? undefined : areaText({ row: first[0], column: first[1], lastRow: last[0], lastColumn: last[1] });
    },
  };
}
