// What a sheet function is: one object. Everything else (wrappers, help, tests, autocomplete) is made from it.
import type { CivilDate, Instant } from '../../core/basics/civilDate';
import type { SourceId } from '../../core/basics/sources';
import type { CellValue } from './cellValues';
import type { DateHost } from './dateHost';

/** What an implementation may put in a cell. A CivilDate becomes a date in the spreadsheet's zone, an Instant a date and time there. */
export type ResultCell = number | string | CivilDate | Instant;

/**
 * How an argument meets ranges.
 * cell: one value; a range of them maps, row by row. column: a whole column that folds into one answer, rows matched
 * with the other columns. table: a whole range, read once.
 */
export type ParameterShape = 'cell' | 'column' | 'table';

export interface Parameter<Value> {
  readonly shape: ParameterShape;
  /** Unit in full words, or '' where there is none. Leads the help text. */
  readonly unit: string;
  /** Ends the sentence "<argument> must be ...": what, unit and range. */
  readonly mustBe: string;
  readonly help: string;
  /** Left out or blank: this value, told to people in these words. Where a blank cell is a mistake it must be left out altogether. */
  readonly optional: { readonly value: Value; readonly words: string; readonly blankIsMistake?: true } | undefined;
  /** For a cell or a column, one cell; for a table, the whole range. Throws ArgumentError. */
  readonly read: (raw: CellValue, dates: DateHost) => Value;
}

export interface ResultColumn {
  readonly unit: string;
  readonly help: string;
}

export interface Example {
  readonly arguments: readonly unknown[];
  /** The whole answer: a cell, or rows of cells. Dates are written as ISO text. */
  readonly gives: number | string | readonly (readonly (number | string)[])[];
  /** Largest allowed difference of a number; exact when left out. */
  readonly tolerance?: number;
  /** Where the answer was published, or how it was worked by hand. */
  readonly source: string;
  /** The formula to show, where the arguments are ranges. */
  readonly formula?: string;
}

export type FunctionForm = 'map' | 'fold' | 'block';

/** What a fold or block is told about the rows of its column arguments. */
export interface RowPlaces {
  /** Place, from 1, of each row that is not blank; the columns hold just these rows. */
  readonly rows: readonly number[];
  /** Rows of the range as given, blank ones too. */
  readonly height: number;
}

interface Description {
  readonly name: string;
  /** Heading under which people find it. */
  readonly subject: string;
  readonly summary: string;
  readonly sources: readonly SourceId[];
  /** Limits, accuracy and rules that a user must know; plain sentences. */
  readonly notes: string;
  readonly examples: readonly Example[];
}

/** A function as the registry holds it, its types erased. */
export interface FunctionDeclaration extends Description {
  readonly form: FunctionForm;
  readonly parameters: Readonly<Record<string, Parameter<unknown>>>;
  readonly results: Readonly<Record<string, ResultColumn>>;
  readonly compute: (values: Readonly<Record<string, unknown>>, places: RowPlaces) => unknown;
}

type Parameters = Readonly<Record<string, Parameter<unknown>>>;
type Results = Readonly<Record<string, ResultColumn>>;
type ValueOf<P> = P extends Parameter<infer Value> ? Value : never;
/** A column argument reaches the implementation as an array, everything else as its value. */
export type Values<P extends Parameters> = {
  readonly [Name in keyof P]: P[Name] extends { readonly shape: 'column' } ? readonly ValueOf<P[Name]>[] : ValueOf<P[Name]>;
};
type Row<R extends Results> = { readonly [Name in keyof R]: ResultCell };

interface RowDeclaration<P extends Parameters, R extends Results> extends Description {
  readonly parameters: P;
  readonly results: R;
  readonly compute: (values: Values<P>, places: RowPlaces) => Row<R>;
}

interface BlockDeclaration<P extends Parameters> extends Description {
  readonly parameters: P;
  readonly results: Results;
  readonly compute: (values: Values<P>, places: RowPlaces) => readonly (readonly ResultCell[])[];
}

const erase = (form: FunctionForm, declaration: object): FunctionDeclaration => ({ ...declaration, form }) as FunctionDeclaration;

/** A function of single values; ranges map row by row. */
export const mapping = <P extends Parameters, R extends Results>(declaration: RowDeclaration<P, R>): FunctionDeclaration => erase('map', declaration);

/** A function that folds whole columns into one row of results. */
export const folding = <P extends Parameters, R extends Results>(declaration: RowDeclaration<P, R>): FunctionDeclaration =>
  erase('fold', declaration);

/** A function that lays out a block of rows of its own. */
export const laying = <P extends Parameters>(declaration: BlockDeclaration<P>): FunctionDeclaration => erase('block', declaration);

export const result = (unit: string, help: string): ResultColumn => ({ unit, help });
