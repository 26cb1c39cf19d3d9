// What a sheet is, as data. Three writers read it (Google, the local grid, xlsx), and the tests evaluate it.
import type { FunctionName } from '../functions/registry/names.generated';
import type { TemplateKeys } from './keys';
import type { FormatName, StyleName } from './look';

export type SheetKey =
  'start' | 'trip' | 'working' | 'route' | 'card' | 'balance' | 'day' | 'ledger' | 'due' | 'dues' | 'statement' | 'currency' | 'fields' | 'tables';

/**
 * How a date of the demonstration moves when its sheet is written on another day than `demoDay`. trip: with the days of the trip. A series: with
 * the dates of a series, as many of them as the one in force on the day, or on the first day of the trip; what was loaded on a day never moves
 * beyond the day itself.
 */
export type Moves = 'never' | 'trip' | { readonly series: string; readonly inForceOn: 'day' | 'trip'; readonly loaded?: true };

/** A calendar day in ISO form; where nothing is said, it moves by as many days as the day of the demonstration. */
export interface TemplateDate {
  readonly date: string;
  readonly moves?: Moves;
}

/** A value as a user would type it. */
export type TemplateValue = number | string | boolean | TemplateDate;

export interface TemplateCell {
  /** Counted from 1. */
  readonly row: number;
  readonly column: number;
  readonly value?: TemplateValue;
  /** Starts with =, arguments separated by commas; no decimal and no array literals; other sheets as 'Sheet name'!A1. */
  readonly formula?: string;
  /** The fixed word that an answer puts here: a head of the columns that it fills. Known again as a typed head is. */
  readonly shows?: string;
  readonly style: StyleName;
  readonly format?: FormatName;
  /** Where a number comes from, or why a verdict is what it is. */
  readonly note?: string;
  /** The text is an invented report of this day of the trip, in ISO form; its group of day and time moves with the trip. */
  readonly reportOf?: string;
  /** Clicking the cell goes to this sheet. */
  readonly goesTo?: SheetKey;
}

/** A cell for the user to type into. */
export const isEntry = ({ style }: Pick<TemplateCell, 'style'>): boolean => style.startsWith('input');

export type Validation = { readonly range: string; readonly help: string } & (
  | { readonly kind: 'list'; readonly choices: readonly string[] }
  | { readonly kind: 'listFrom'; readonly source: string }
  | { readonly kind: 'number'; readonly minimum: number; readonly maximum: number }
  | { readonly kind: 'date' }
);

export interface ChartSeries {
  readonly title: string;
  /** One-column ranges of equal length, on the chart's own sheet. */
  readonly x: string;
  readonly y: string;
  readonly drawn: 'line' | 'points';
}

export interface ScatterChart {
  readonly title: string;
  readonly description: string;
  readonly xTitle: string;
  readonly yTitle: string;
  /** Top left cell, and size in pixels. */
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  readonly series: readonly ChartSeries[];
}

/** A picture drawn from results in cells, on the picture's own sheet. */
export interface SheetPicture {
  readonly title: string;
  /** Top left cell, and size in pixels. */
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  readonly drawn: HoldDrawn | DescentDrawn | RouteDrawn | RouteProfileDrawn;
}

/** Ranges: single entries, and the rows of item, value and unit that HOLD_BRIEF lays out. */
export interface HoldDrawn {
  readonly kind: 'hold';
  readonly up: 'north' | 'inbound course';
  readonly from: Readonly<Record<'heading' | 'inbound' | 'turns' | 'windFrom' | 'wind' | 'brief', string>>;
}

/** Ranges: the rows that DESCENT_PLAN lays out, the cell with where they end (NM from here), rows of fix, distance, miles before it, altitude, kind. */
export interface DescentDrawn {
  readonly kind: 'descent';
  readonly from: Readonly<Record<'plan' | 'endsAt' | 'crossings', string>>;
}

/** A range: the rows that ROUTE_LEGS lays out. */
export interface RouteDrawn {
  readonly kind: 'route';
  readonly from: Readonly<Record<'parts', string>>;
}

/** Ranges: the rows that ROUTE_LEGS lays out, the legs with ROUTE_LEVELS beside them, the cell with the elevation of the departure. */
export interface RouteProfileDrawn {
  readonly kind: 'routeProfile';
  readonly from: Readonly<Record<'parts' | 'levels' | 'departure', string>>;
}

export interface SheetTemplate {
  readonly key: SheetKey;
  readonly name: string;
  readonly version: number;
  /** Size of the grid. */
  readonly rows: number;
  readonly columns: number;
  /** Pixels, one for each column. */
  readonly columnWidths: readonly number[];
  /** Columns that nobody sees. */
  readonly hiddenColumns?: readonly number[];
  /** Rows higher than the usual 21 pixels, by row number. */
  readonly rowHeights: Readonly<Record<number, number>>;
  readonly frozenRows: number;
  readonly cells: readonly TemplateCell[];
  /** Ranges such as A1:F1, each shown as one cell. */
  readonly merges: readonly string[];
  readonly validations: readonly Validation[];
  /** Ranges whose verdict words are tinted. */
  readonly verdictRanges: readonly string[];
  /** Names for the whole workbook. */
  readonly names: readonly { readonly name: string; readonly range: string }[];
  readonly charts: readonly ScatterChart[];
  readonly pictures?: readonly SheetPicture[];
  readonly print: { readonly landscape: boolean };
}

/** A sheet as it is written down, before its keys become cells of it. */
export interface DeclaredSheet extends SheetTemplate {
  keys: TemplateKeys;
}

/** The text of a call in a formula; the name is checked against the registry by the compiler. */
export const formulaCall = (name: FunctionName, ...given: readonly string[]): string => `${name}(${given.join(',')})`;
