// The document of the double.
import { readArea } from '../../../addon/workbook/areas';
import { namesIn, sheetsIn } from './cells';
import { FakeRange } from './range';
import { Doubled } from './recorder';
import type { FakeMetadata} from './sheet';
import { FakeSheet } from './sheet';

export class FakeNamedRange extends Doubled {
  readonly service = 'NamedRange';
  readonly name: string;
  readonly range: FakeRange;

  constructor(name: string, range: FakeRange) {
    super();
    this.name = name;
    this.range = range;
  }

  getName = (): string => this.name;
}

export class FakeMetadataFinder extends Doubled {
  readonly service = 'DeveloperMetadataFinder';
  private readonly sheets: readonly FakeSheet[];
  private key = '';

  constructor(sheets: readonly FakeSheet[]) {
    super();
    this.sheets = sheets;
  }

  withKey(key: string): this {
    this.key = key;
    return this;
  }

  find = (): FakeMetadata[] => this.sheets.flatMap(({ metadata }) => metadata).filter(({ key }) => key === this.key);
}

const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

export class FakeSpreadsheet extends Doubled {
  readonly service = 'Spreadsheet';
  override readonly handles = new Set(['getRange']);
  readonly zone: string;
  sheets: FakeSheet[] = [];
  names: FakeNamedRange[] = [];
  toasts: string[] = [];
  active: FakeSheet;
  private nextId = 0;

  constructor(zone: string) {
    super();
    this.zone = zone;
    this.active = this.addSheet('Sheet1', 0);
  }

  private addSheet(name: string, index: number): FakeSheet {
    const sheet = new FakeSheet(this, name, this.nextId);
    this.nextId += 1 + this.nextId * 7;
    this.sheets.splice(index, 0, sheet);
    return sheet;
  }

  /** Not part of the service: a formula that names what is not there shows #REF! or #NAME?, and may stay so. */
  checkReferences(formula: string): void {
    for (const name of sheetsIn(formula)) if (!this.sheets.some((sheet) => same(sheet.name, name))) throw new Error(`#REF!: no sheet '${name}' for ${formula}`);
    for (const name of namesIn(formula)) if (!this.names.some((range) => same(range.name, name))) throw new Error(`#NAME?: no range ${name} for ${formula}`);
  }

  getSpreadsheetTimeZone = (): string => this.zone;
  getSheets = (): FakeSheet[] => [...this.sheets];
  getNamedRanges = (): FakeNamedRange[] => [...this.names];

  insertSheet(name: string, index: number | object): FakeSheet {
    if (typeof index !== 'number' || index < 0 || index > this.sheets.length) throw new Error(`the sheet index must be 0 to ${this.sheets.length}`);
    if (this.sheets.some((sheet) => same(sheet.name, name))) throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
    if (name === '' || name.length > 100) throw new Error('a sheet name has 1 to 100 characters');
    this.active = this.addSheet(name, index);
    return this.active;
  }

  deleteSheet(sheet: FakeSheet): void {
    if (!this.sheets.includes(sheet)) throw new Error('the sheet is not in this document');
    if (this.sheets.length === 1) throw new Error('You can\'t remove all the sheets in a document.');
    this.sheets = this.sheets.filter((other) => other !== sheet);
    if (this.active === sheet) this.active = this.sheets[0] ?? this.active;
  }

  getRange(text: string): FakeRange {
    const parts = /^'((?:[^']|'')*)'!(.+)$/.exec(text);
    const found = this.sheets.find(({ name }) => same(name, (parts?.[1] ?? '').replace(/''/g, "'")));
    if (parts === null || found === undefined) throw new Error(`Range not found: ${text}`);
    return new FakeRange(found, readArea(parts[2] ?? ''));
  }

  setNamedRange(name: string, range: FakeRange): void {
    if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name) || /^[A-Z]{1,3}\d+$/i.test(name)) throw new Error(`"${name}" is no name for a range`);
    // Live, the name would silently move to the new range: a user's own name must never be taken.
    if (this.names.some((other) => same(other.name, name))) throw new Error(`the name ${name} is taken`);
    this.names.push(new FakeNamedRange(name, range));
  }

  removeNamedRange(name: string): void {
    if (!this.names.some((other) => same(other.name, name))) throw new Error(`there is no name ${name}`);
    this.names = this.names.filter((other) => !same(other.name, name));
  }

  createDeveloperMetadataFinder = (): FakeMetadataFinder => new FakeMetadataFinder(this.sheets);

  setActiveSheet(sheet: FakeSheet): FakeSheet {
    if (!this.sheets.includes(sheet)) throw new Error('the sheet is not in this document');
    this.active = sheet;
    return sheet;
  }

  toast(message: string, title: string, seconds: number | null): void {
    if (seconds === null) throw new Error('a toast takes seconds');
    this.toasts.push(`${title}: ${message}`);
  }
}
