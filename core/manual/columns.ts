// What the columns of an aircraft's table are: what its owner reads it by, in which unit, and what it answers.
import type { NumberTable } from './grid';
import type { TableUnit } from './tableUnits';

/** What a table is read by. 'power' is whatever the manual sets it by: percent, turns of the engine, a number of a setting. 'other' is known by its heading alone, so a brief, which has no number for it, cannot read it. */
export type InputRole = 'weight' | 'pressure altitude' | 'density altitude' | 'temperature' | 'isa deviation' | 'headwind' | 'power' | 'other';

export interface InputColumn {
  readonly kind: 'input';
  readonly header: string;
  readonly role: InputRole;
  readonly unit: TableUnit | undefined;
  /** The figures at a weight hold below it too: they are those of the heavier aircraft. */
  readonly upTo: boolean;
  /** One value for the whole block, which stands in its heading ("up to 2,300 lb"). */
  readonly constant: number | undefined;
}

export interface AnswerColumnHead {
  readonly kind: 'answer';
  readonly header: string;
  /** The heading as it was typed, with its unit. */
  readonly typed: string;
  readonly unit: TableUnit | undefined;
  /** In a two-way block: the value of the input across at which the column stands. */
  readonly at: { readonly input: InputColumn; readonly value: number } | undefined;
}

/** What a further curve of a chain is entered with: the answer of the one before. */
export interface FromColumn {
  readonly kind: 'from';
  readonly header: string;
}

/** Nothing that is read: a heading in brackets, or no heading. */
export interface IdleColumn {
  readonly kind: 'idle';
  readonly header: string;
}

export type TableColumn = InputColumn | AnswerColumnHead | FromColumn | IdleColumn;

/** Rows under one set of headings. A table is one block, or several under each other. */
export interface TableBlock {
  readonly columns: readonly TableColumn[];
  /** Each curve has points of its own, so that the inputs make no grid. */
  readonly curves: boolean;
  readonly rows: readonly (readonly (number | undefined)[])[];
  readonly places: readonly number[];
  /** The manual's note beside each row, '' where there is none. */
  readonly notes: readonly string[];
}

export interface TypedTable {
  readonly blocks: readonly TableBlock[];
  /** The same where it is nothing but one block of numbers under headings: then any first columns can be its inputs. */
  readonly plain: NumberTable | undefined;
}

/** By which one input is known among all blocks of a table. */
export const keyOfInput = ({ role, header }: InputColumn): string => (role === 'other' ? `other ${header.replace(/\s+/g, '').toLowerCase()}` : role);

export const isInput = (column: TableColumn): column is InputColumn => column.kind === 'input';
