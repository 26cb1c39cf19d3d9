// Checked by the compiler, never run: every method of the double exists on the real service under that name, takes what
// the real one takes, and gives what the real one gives (in the double's own classes).
import type * as builders from './builders';
import type * as cache from './cache';
import type * as charts from './charts';
import type * as filter from './filter';
import type * as lock from './lock';
import type * as metadata from './metadata';
import type * as protection from './protection';
import type * as range from './range';
import type { Doubled } from './recorder';
import type * as services from './services';
import type * as sheet from './sheet';
import type * as spreadsheet from './spreadsheet';

type Real = {
  SpreadsheetApp: GoogleAppsScript.Spreadsheet.SpreadsheetApp;
  Spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet;
  Sheet: GoogleAppsScript.Spreadsheet.Sheet;
  Range: GoogleAppsScript.Spreadsheet.Range;
  RangeList: GoogleAppsScript.Spreadsheet.RangeList;
  Filter: GoogleAppsScript.Spreadsheet.Filter;
  NamedRange: GoogleAppsScript.Spreadsheet.NamedRange;
  Protection: GoogleAppsScript.Spreadsheet.Protection;
  TextStyle: GoogleAppsScript.Spreadsheet.TextStyle;
  TextStyleBuilder: GoogleAppsScript.Spreadsheet.TextStyleBuilder;
  DataValidation: GoogleAppsScript.Spreadsheet.DataValidation;
  DataValidationBuilder: GoogleAppsScript.Spreadsheet.DataValidationBuilder;
  Rule: GoogleAppsScript.Spreadsheet.ConditionalFormatRule;
  RuleBuilder: GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder;
  Chart: GoogleAppsScript.Spreadsheet.EmbeddedChart;
  ChartBuilder: GoogleAppsScript.Spreadsheet.EmbeddedChartBuilder;
  ScatterBuilder: GoogleAppsScript.Spreadsheet.EmbeddedScatterChartBuilder;
  Metadata: GoogleAppsScript.Spreadsheet.DeveloperMetadata;
  MetadataLocation: GoogleAppsScript.Spreadsheet.DeveloperMetadataLocation;
  MetadataFinder: GoogleAppsScript.Spreadsheet.DeveloperMetadataFinder;
  Ui: GoogleAppsScript.Base.Ui;
  Menu: GoogleAppsScript.Base.Menu;
  HtmlService: GoogleAppsScript.HTML.HtmlService;
  HtmlOutput: GoogleAppsScript.HTML.HtmlOutput;
  CacheService: GoogleAppsScript.Cache.CacheService;
  Cache: GoogleAppsScript.Cache.Cache;
  LockService: GoogleAppsScript.Lock.LockService;
  Lock: GoogleAppsScript.Lock.Lock;
  Utilities: GoogleAppsScript.Utilities.Utilities;
};

interface Fake {
  SpreadsheetApp: services.FakeSpreadsheetApp;
  Spreadsheet: spreadsheet.FakeSpreadsheet;
  Sheet: sheet.FakeSheet;
  Range: range.FakeRange;
  RangeList: range.FakeRangeList;
  Filter: filter.FakeFilter;
  NamedRange: spreadsheet.FakeNamedRange;
  Protection: protection.FakeProtection;
  TextStyle: builders.FakeTextStyle;
  TextStyleBuilder: builders.FakeTextStyleBuilder;
  DataValidation: builders.FakeDataValidation;
  DataValidationBuilder: builders.FakeDataValidationBuilder;
  Rule: builders.FakeConditionalFormatRule;
  RuleBuilder: builders.FakeConditionalFormatRuleBuilder;
  Chart: charts.FakeChart;
  ChartBuilder: charts.FakeChartBuilder;
  ScatterBuilder: charts.FakeScatterChartBuilder;
  Metadata: metadata.FakeMetadata;
  MetadataLocation: metadata.FakeMetadataLocation;
  MetadataFinder: spreadsheet.FakeMetadataFinder;
  Ui: services.FakeUi;
  Menu: services.FakeMenu;
  HtmlService: services.FakeHtmlService;
  HtmlOutput: services.FakeHtmlOutput;
  CacheService: cache.FakeCacheService;
  Cache: cache.FakeCache;
  LockService: lock.FakeLockService;
  Lock: lock.FakeLock;
  Utilities: services.FakeUtilities;
}

/** Methods that are not compared: what a fake keeps for the tests, and two that the types describe otherwise. */
type OwnNames = {
  Range: 'setBorders';
  Sheet: 'cell' | 'shown' | 'addMerge';
  Spreadsheet: 'checkReferences' | 'sees' | 'addSheet' | 'checkSheetName' | 'renamed' | 'copyNames';
  Metadata: 'copyOn';
  // The types leave out what the reference says: null where no cell is selected.
  SpreadsheetApp: 'getCurrentCell';
  // Gives back which button was pressed, an enumeration that nobody here reads.
  Ui: 'alert';
};

type Methods<T> = { [Key in keyof T]: T[Key] extends (...given: never[]) => unknown ? Key : never }[keyof T];
type OwnOf<Name> = Name extends keyof OwnNames ? OwnNames[Name] : never;
type Mimicked<Name extends keyof Fake> = Exclude<Methods<Fake[Name]>, OwnOf<Name> | keyof Doubled>;

/** The double's class for a class of the service. */
type Key<T> = { [Name in keyof Real]: [T, Real[Name]] extends [Real[Name], T] ? Name : never }[keyof Real];
type Stand<T> = T extends null | undefined | string | number | boolean | Date
  ? T
  : T extends (infer Element)[]
    ? Stand<Element>[]
    : [Key<T>] extends [never]
      ? T
      : Fake[Key<T> & keyof Fake];
type Given<F> = F extends (...given: infer All) => unknown ? { [Index in keyof All]: Stand<All[Index]> } : never;
type Gives<F> = F extends (...given: never[]) => infer Result ? Stand<Result> : never;

/** Of an overloaded method the compiler looks at the last form. */
type Wanted<F> = Given<F> extends infer All extends unknown[] ? (...given: All) => Gives<F> : never;
type Misfit<Name extends keyof Fake, Method extends keyof Fake[Name]> = Method extends keyof Real[Name]
  ? Fake[Name][Method] extends Wanted<Real[Name][Method]>
    ? never
    : { readonly differs: [Name, Method, Wanted<Real[Name][Method]>] }
  : { readonly unknown: [Name, Method] };
type Misfits<Name extends keyof Fake> = { [Method in Mimicked<Name>]: Misfit<Name, Method> }[Mimicked<Name>];

type AllMisfits = { [Name in keyof Fake]: Misfits<Name> }[keyof Fake];

/** Fails to compile, naming the class and the method, when the double strays from the service. */
export const surfaceFits: [AllMisfits] extends [never] ? true : AllMisfits = true;
