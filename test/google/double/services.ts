// The globals of the double: SpreadsheetApp, HtmlService, Utilities, and the user interface behind them.
import { FakeConditionalFormatRuleBuilder, FakeDataValidationBuilder, FakeTextStyleBuilder } from './builders';
import { FakeCache, FakeCacheService } from './cache';
import { FakeLock, FakeLockService } from './lock';
import { visibilities } from './metadata';
import { cutPage, type PageCutter } from './pageCutter';
import { copyPasteTypes, wrapStrategies, type FakeRange } from './range';
import { Doubled, Recorder } from './recorder';
import { sheetTypes, type FakeSheet } from './sheet';
import { FakeSpreadsheet } from './spreadsheet';
import { standardClockIn, wallClockIn } from './zoneClock';

export class FakeMenu extends Doubled {
  readonly service = 'Menu';
  override readonly kind = 'other';
  readonly items: (readonly [caption: string, command: string])[] = [];
  shown = false;

  addItem(caption: string, command: string): this {
    this.items.push([caption, command]);
    return this;
  }

  addSeparator(): this {
    return this;
  }

  addToUi(): void {
    this.shown = true;
  }
}

export class FakeHtmlOutput extends Doubled {
  readonly service = 'HtmlOutput';
  override readonly kind = 'other';
  private readonly content: string;
  title = '';

  constructor(content: string) {
    super();
    this.content = content;
  }

  getContent = (): string => this.content;

  setTitle(title: string): this {
    this.title = title;
    return this;
  }
}

export class FakeUi extends Doubled {
  readonly service = 'Ui';
  override readonly kind = 'other';
  readonly ButtonSet = { OK: {} };
  readonly menus: FakeMenu[] = [];
  readonly alerts: string[] = [];
  sidebar: FakeHtmlOutput | undefined;

  createAddonMenu(): FakeMenu {
    const menu = new FakeMenu();
    this.menus.push(menu);
    return menu;
  }

  showSidebar(page: FakeHtmlOutput | object): void {
    if (!(page instanceof FakeHtmlOutput)) throw new Error('showSidebar takes an HtmlOutput');
    this.sidebar = page;
  }

  alert(title: string, prompt: string, buttons: unknown): unknown {
    this.alerts.push(`${title}: ${prompt}`);
    return buttons;
  }
}

export class FakeSpreadsheetApp extends Doubled {
  readonly service = 'SpreadsheetApp';
  override readonly handles = new Set(['getUi', 'newTextStyle', 'newDataValidation', 'newConditionalFormatRule']);
  readonly BorderStyle = { SOLID: {} };
  readonly DeveloperMetadataVisibility = visibilities;
  readonly document: FakeSpreadsheet;
  readonly ui = new FakeUi();
  readonly CopyPasteType = copyPasteTypes;
  readonly SheetType = sheetTypes;
  readonly WrapStrategy = wrapStrategies;

  constructor(document: FakeSpreadsheet) {
    super();
    this.document = document;
  }

  /** Not part of the service: where the tests put the cursor. */
  set selected(range: FakeRange | null) {
    this.document.selected = range;
  }

  getActive = (): FakeSpreadsheet => this.document;
  getActiveSheet = (): FakeSheet => this.document.active;
  getCurrentCell = (): FakeRange | null => this.document.selected;
  getUi = (): FakeUi => this.ui;
  newTextStyle = (): FakeTextStyleBuilder => new FakeTextStyleBuilder();
  newDataValidation = (): FakeDataValidationBuilder => new FakeDataValidationBuilder();
  newConditionalFormatRule = (): FakeConditionalFormatRuleBuilder => new FakeConditionalFormatRuleBuilder();
  flush = (): void => undefined;
}

export class FakeHtmlService extends Doubled {
  readonly service = 'HtmlService';
  override readonly kind = 'other';
  /** The harsher of the two, as long as nobody has seen which. */
  cutter: PageCutter = 'knows no quotes';
  private readonly files: Readonly<Record<string, string>>;

  constructor(files: Readonly<Record<string, string>>) {
    super();
    this.files = files;
  }

  createHtmlOutputFromFile(file: string): FakeHtmlOutput {
    const content = this.files[file];
    if (content === undefined) throw new Error(`No HTML file named ${file} was found.`);
    return new FakeHtmlOutput(cutPage(content, this.cutter));
  }
}

export class FakeUtilities extends Doubled {
  readonly service = 'Utilities';
  override readonly kind = 'other';
  /** Whether it knows the local mean time of before 1900; the time zones of Java, for one, begin there. */
  knowsMeanTime = true;

  formatDate(date: { getTime(): number }, zone: string, format: string): string {
    if (Object.prototype.toString.call(date) !== '[object Date]' || Number.isNaN(date.getTime())) throw new Error('formatDate takes a date');
    const known = ['yyyy-MM-dd HH:mm:ss', 'yyyy-MM-dd'];
    if (!known.includes(format)) throw new Error(`the double does not know the format ${format}`);
    const at = date.getTime();
    const clock = this.knowsMeanTime || at >= Date.UTC(1900, 0, 1) ? wallClockIn(zone, at) : standardClockIn(zone, at);
    return clock.slice(0, format.length);
  }
}

/** One document, its services, and what was called. */
export class Double {
  readonly recorder = new Recorder();
  readonly document: FakeSpreadsheet;
  readonly app: FakeSpreadsheetApp;
  readonly lock = new FakeLock();
  readonly cache = new FakeCache();
  readonly utilities = new FakeUtilities();
  readonly html: FakeHtmlService;

  /** `files` are the HTML files of the script project, by name without ending. */
  constructor(zone = 'Etc/UTC', files: Readonly<Record<string, string>> = {}) {
    this.document = new FakeSpreadsheet(zone);
    this.html = new FakeHtmlService(files);
    this.app = new FakeSpreadsheetApp(this.document);
  }

  /** What the script sees. */
  globals(): Readonly<Record<'SpreadsheetApp' | 'HtmlService' | 'LockService' | 'CacheService' | 'Utilities', unknown>> {
    const { recorder } = this;
    return {
      SpreadsheetApp: recorder.wrap(this.app),
      HtmlService: recorder.wrap(this.html),
      LockService: recorder.wrap(new FakeLockService(this.lock)),
      CacheService: recorder.wrap(new FakeCacheService(this.cache)),
      Utilities: recorder.wrap(this.utilities),
    };
  }

  sheet(name: string): FakeSheet {
    const found = this.document.sheets.find((sheet) => sheet.name === name);
    if (found === undefined) throw new Error(`no sheet ${name}`);
    return found;
  }
}
