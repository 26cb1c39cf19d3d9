// The document of the double.
import { readArea } from '../../../addon/workbook/areas';
import { namesIn, sheetsIn } from './cells';
import { FakeRange } from './range';
import { followRename } from './readCells';
import type { FakeMetadata } from './metadata';
import { Doubled } from './recorder';
import { FakeSheet } from './sheet';

export class FakeNamedRange extends Doubled {
  readonly service = 'NamedRange';
  name: string;
  range: FakeRange;

  constructor(name: string, range: FakeRange) {
    super();
    this.name = name;
    this.range = range;
  }

  getName = (): string => this.name;
  getRange = (): FakeRange => this.range;

  setRange(range: FakeRange): this {
    // A name of the user's own must never be pointed elsewhere: only names of sheets that carry a mark may be.
    if (this.range.sheet.metadata.length === 0) throw new Error(`the name ${this.name} is the user's own`);
    this.range = range;
    return this;
  }
}

export class FakeMetadataFinder extends Doubled {
  readonly service = 'DeveloperMetadataFinder';
  private readonly document: FakeSpreadsheet;
  private key = '';

  constructor(document: FakeSpreadsheet) {
    super();
    this.document = document;
  }

  withKey(key: string): this {
    this.key = key;
    return this;
  }

  find = (): FakeMetadata[] => this.document.sheets.flatMap((sheet) => sheet.getDeveloperMetadata()).filter(({ key }) => key === this.key);
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
  selected: FakeRange | null = null;
  /** The script project that asks; a copy of the document has another one. */
  project = 1;
  /** Whether a paste carries notes and conditional formats too, which nobody promises. */
  pastesAll = false;
  private nextId = 0;

  constructor(zone: string) {
    super();
    this.zone = zone;
    this.active = this.addSheet('Sheet1', 0);
  }

  /** Not part of the service. */
  addSheet(name: string, index: number): FakeSheet {
    const sheet = new FakeSheet(this, name, this.nextId);
    this.nextId += 1 + this.nextId * 7;
    this.sheets.splice(index, 0, sheet);
    return sheet;
  }

  /** Not part of the service: a formula that names what is not there shows #REF! or #NAME?, and may stay so. */
  checkReferences(formula: string): void {
    for (const name of sheetsIn(formula))
      if (!this.sheets.some((sheet) => same(sheet.name, name))) throw new Error(`#REF!: no sheet '${name}' for ${formula}`);
    for (const name of namesIn(formula))
      if (!this.names.some((range) => same(range.name, name))) throw new Error(`#NAME?: no range ${name} for ${formula}`);
  }

  /** Not part of the service: metadata of one project is hidden from every other. */
  sees = ({ project }: FakeMetadata): boolean => project === undefined || project === this.project;

  /** Not part of the service: every formula follows a sheet that gets another name, and so do the names of its own. */
  renamed(before: string, now: string): void {
    for (const sheet of this.sheets) for (const cell of sheet.cells.values()) cell.formula = followRename(cell.formula, before, now);
    for (const named of this.names) named.name = followRename(named.name, before, now);
  }

  /** Not part of the service: a copied sheet has the names of its own again, for itself only. */
  copyNames(from: FakeSheet, copy: FakeSheet): void {
    const own = this.names.filter(({ name, range }) => range.sheet === from && !name.includes('!'));
    this.names.push(...own.map(({ name, range }) => new FakeNamedRange(`'${copy.name}'!${name}`, new FakeRange(copy, range.area))));
  }

  getSpreadsheetTimeZone = (): string => this.zone;
  getSheets = (): FakeSheet[] => [...this.sheets];
  getSheetByName = (name: string): FakeSheet | null => this.sheets.find((sheet) => same(sheet.name, name)) ?? null;
  getActiveSheet = (): FakeSheet => this.active;
  getNamedRanges = (): FakeNamedRange[] => [...this.names];

  /** Not part of the service: no other sheet than this one may have the name. */
  checkSheetName(name: string, own?: FakeSheet): void {
    if (this.sheets.some((sheet) => sheet !== own && same(sheet.name, name)))
      throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
    if (name === '' || name.length > 100) throw new Error('a sheet name has 1 to 100 characters');
  }

  insertSheet(name: string, index: number | object): FakeSheet {
    if (typeof index !== 'number' || index < 0 || index > this.sheets.length) throw new Error(`the sheet index must be 0 to ${this.sheets.length}`);
    this.checkSheetName(name);
    this.active = this.addSheet(name, index);
    return this.active;
  }

  deleteSheet(sheet: FakeSheet): void {
    if (!this.sheets.includes(sheet)) throw new Error('the sheet is not in this document');
    if (this.sheets.length === 1) throw new Error("You can't remove all the sheets in a document.");
    this.sheets = this.sheets.filter((other) => other !== sheet);
    this.names = this.names.filter(({ name, range }) => !(range.sheet === sheet && name.includes('!')));
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

  createDeveloperMetadataFinder = (): FakeMetadataFinder => new FakeMetadataFinder(this);

  setActiveSheet(sheet: FakeSheet): FakeSheet {
    if (!this.sheets.includes(sheet)) throw new Error('the sheet is not in this document');
    this.active = sheet;
    return sheet;
  }

  moveActiveSheet(place: number): void {
    if (!Number.isInteger(place) || place < 1 || place > this.sheets.length) throw new Error(`a sheet stands at 1 to ${this.sheets.length}`);
    const others = this.sheets.filter((sheet) => sheet !== this.active);
    this.sheets = [...others.slice(0, place - 1), this.active, ...others.slice(place - 1)];
  }

  toast(message: string, title: string, seconds: number | null): void {
    if (seconds === null) throw new Error('a toast takes seconds');
    this.toasts.push(`${title}: ${message}`);
  }
}
