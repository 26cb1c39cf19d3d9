// What each column of a pasted table is, and in which unit: as far as its own words and units tell, else as the user answers.
import type { TableUnit } from '../../../core/manual/tableUnits';
import { columnOfHeading, unitNamed } from '../../../functions/manual/columnWords';
import { meaningOf, unitOfSeaLevel, unitOfStandard } from './numberText';
import type { PasteAnswers } from './readPasted';
import type { PrintedNumber, ShapedBlock, TableShape } from './tableShape';
import { sideRoles, unitChoices, unitOfRole, type SideRole, type TableKind, type UnitOf } from './tableKinds';

/** 'nothing': a column that is left out. */
export type ColumnRole = SideRole | 'nothing' | { readonly figure: string };

/** One column as it was pasted: its heads, and all its numbers. */
export interface PastedColumn {
  readonly id: string;
  readonly heads: readonly string[];
  readonly numbers: readonly PrintedNumber[];
}

const distinct = <Item>(items: readonly Item[]): Item[] => [...new Set(items)];

/** The columns at the side, or all columns of a list; then what stands across. */
export function columnsOf({ blocks, side, columns }: TableShape): {
  readonly sides: readonly PastedColumn[];
  readonly across: PastedColumn | undefined;
} {
  const isList = side === 0;
  const sides = Array.from({ length: isList ? columns : side }, (_, index): PastedColumn => ({
    id: `column.${index + 1}`,
    heads: distinct(blocks.map(({ heads }) => heads[index] ?? '').filter((head) => head !== '')),
    numbers: blocks.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells[index] ?? [])),
  }));
  const across = isList ? undefined : { id: 'across', heads: [], numbers: blocks.flatMap((block) => block.across) };
  return { sides, across };
}

const unitsPrinted = (numbers: readonly PrintedNumber[]): string[] => distinct(numbers.map(({ unit }) => unit).filter((unit) => unit !== ''));

/** Words that stand for a number of one input only. */
const onlyFor: Readonly<Record<string, readonly string[]>> = {
  [unitOfStandard]: ['isa deviation'],
  [unitOfSeaLevel]: ['pressure altitude', 'density altitude'],
};

/** The unit that cells or heads name; several make a problem, and so does one that is not known. */
export interface UnitFound {
  readonly unit: TableUnit | undefined;
  readonly problem: string | undefined;
}

export function unitFound({ numbers, heads }: PastedColumn, role: ColumnRole, where: string): UnitFound {
  const all = unitsPrinted(numbers);
  const misplaced = all.find((unit) => onlyFor[unit]?.includes(String(role)) === false);
  if (misplaced !== undefined) return { unit: undefined, problem: `${where} cannot be "${misplaced}".` };
  const printed = all.filter((unit) => onlyFor[unit] === undefined);
  const named = printed.map((unit) => unitNamed(unit));
  const unknown = printed.find((_, index) => named[index] === undefined);
  if (unknown !== undefined) return { unit: undefined, problem: `${where} has the unit "${unknown}", which is none of a manual's table.` };
  const inHeads = heads.flatMap((head) => {
    const column = columnOfHeading(head);
    return 'unit' in column && column.unit !== undefined ? [column.unit] : [];
  });
  const units = distinct([...named, ...inHeads]);
  return units.length > 1
    ? { unit: undefined, problem: `${where} has numbers in several units: ${units.join(', ')}.` }
    : { unit: units[0], problem: undefined };
}

/** A number and a unit of weight among words: "Weight 2300 lb". One that can be read in two ways is not taken. */
export interface WeightInWords {
  readonly value: number | undefined;
  readonly unit: TableUnit;
}

const weightWords = /(?:^|\s)(\d[\d.,'\u2019\u00a0 ]*?)\s?(lbs?|kgs?|pounds|kilograms)\b/i;

export function weightsIn(words: string, { commas, points }: PasteAnswers): WeightInWords[] {
  const found: WeightInWords[] = [];
  for (
    let left = words, match = weightWords.exec(left);
    match !== null;
    left = left.slice(match.index + match[0].length), match = weightWords.exec(left)
  ) {
    const [, digits = '', name = ''] = match;
    const unit = unitNamed(name);
    const read = meaningOf(digits);
    const answer = read.kind === 'open' ? (read.sign === ',' ? commas : points) : undefined;
    const value = read.kind === 'number' ? read.value : read.kind === 'open' && answer !== undefined ? read[answer] : undefined;
    if (unit !== undefined) found.push({ value, unit });
  }
  return found;
}

const figureNamed = (kind: TableKind, words: string): string | undefined => {
  const named = kind.figures.filter(({ printed }) => printed.test(words));
  return named.length === 1 ? named[0]?.name : undefined;
};

/** What the words above a column say that it is. */
export function roleInHeads({ heads, numbers }: PastedColumn, kind: TableKind): ColumnRole | undefined {
  if (numbers.length > 0 && numbers.every(({ unit }) => unit === unitOfStandard)) return 'isa deviation';
  if (heads.length === 0 && numbers.some(({ unit }) => unit === unitOfSeaLevel)) return 'pressure altitude';
  const told = distinct(
    heads.map((head): ColumnRole | undefined => {
      const column = columnOfHeading(head);
      if (column.kind === 'input') return column.role === 'other' || column.role === 'power' ? undefined : column.role;
      const figure = figureNamed(kind, head);
      return figure === undefined ? undefined : { figure };
    }),
  );
  return told.length === 1 ? told[0] : undefined;
}

/** Words by which degrees may be a difference from standard. */
const differs = /\bisa\b|standard|deviation|difference/i;

/** A unit of degrees or of weight tells the input too; feet and metres may be heights or distances. `words` stand above the table. */
export function roleInUnits({ numbers }: PastedColumn, words: string): SideRole | undefined {
  const [unit, ...others] = unitsPrinted(numbers);
  const named = unit === undefined || others.length > 0 ? undefined : unitNamed(unit);
  const isTemperature = (named === '°C' || named === '°F') && !differs.test(words);
  return isTemperature ? 'temperature' : named === 'lb' || named === 'kg' ? 'weight' : undefined;
}

/** Which figure a block gives, by the words above it. */
export const figureInHeading = ({ heading }: ShapedBlock, kind: TableKind): string | undefined =>
  kind.figures.length === 1 ? kind.figures[0]?.name : figureNamed(kind, heading.join(' '));

export const unitsFor = (of: UnitOf, kind: TableKind): readonly TableUnit[] => (of === 'figure' ? kind.figureUnits : unitChoices[of]);
export const isSide = (role: ColumnRole | undefined): role is SideRole => sideRoles.some((one) => one === role);
export const unitOf = (role: ColumnRole): UnitOf | undefined => (isSide(role) ? unitOfRole[role] : role === 'nothing' ? undefined : 'figure');
