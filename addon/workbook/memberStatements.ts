// The statement of every member, each with nobody else's data: the lines of Dues, parted by member, and each as a page of its own.
import { duesSheet } from '../../sheets-templates/dues/sheet';
import { element, escaped } from '../pictures/svg';
import { isoFromSerial } from './serialDates';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';
import { cellsOf, valueAt } from './tripEntries';

type Amount = number | '';

export interface StatementLine {
  readonly what: string;
  readonly how: string;
  readonly charged: Amount;
  readonly paid: Amount;
  readonly balance: Amount;
}

export interface MemberStatement {
  readonly member: string;
  /** Such as "2026-01-01 to 2026-12-31". */
  readonly period: string;
  readonly currency: string;
  readonly lines: readonly StatementLine[];
  /** Said on the page, with no name: something of the dues could not be read, or falls on nobody. */
  readonly notWhole: boolean;
}

/** Of the lines that are no member's. */
const notMembers: ReadonlySet<string> = new Set(['all', 'nobody', 'unknown', '']);
const heads = 'member';

const amount = (value: CellValue): Amount => (typeof value === 'number' ? value : '');
const dayText = (value: CellValue): string => (typeof value === 'number' ? isoFromSerial(value) : '?');

function duesOf({ sheets, selected }: WorkbookSnapshot): SheetSnapshot {
  const found = sheets.filter(({ mark }) => mark?.key === duesSheet.key);
  const sheet = found.find(({ name }) => name === selected.sheet) ?? (found.length === 1 ? found[0] : undefined);
  if (sheet !== undefined) return sheet;
  throw new Error(
    found.length === 0 ? 'There is no Dues sheet in this workbook.' : 'There are several Dues sheets. Show the one that you mean, then ask again.',
  );
}

/** Rows of member, what, how, charged, paid, balance below the call. */
function linesOf(dues: SheetSnapshot): readonly (readonly CellValue[])[] {
  const call = dues.formulas.find(({ text }) => /^=DUES_STATEMENT\(/i.test(text));
  const rows = call === undefined ? [] : dues.values.slice(call.row - 1).map((line) => line.slice(call.column - 1, call.column + 5));
  if (rows[0]?.[0] !== heads)
    throw new Error(`The lines of "${dues.name}" cannot be worked out, so there is no statement. The cell of their formula says why.`);
  const end = rows.findIndex(([member]) => member === '');
  return rows.slice(1, end < 0 ? undefined : end);
}

/** In the order of the list of members. Throws a sentence where the dues cannot be worked out. */
export function memberStatements(workbook: WorkbookSnapshot): MemberStatement[] {
  const dues = duesOf(workbook);
  const rows = linesOf(dues);
  const [first, last, currency] = ['firstDay', 'lastDay', 'currency'].map((key) => {
    const [place] = cellsOf(dues, [key]);
    return place === undefined ? '' : valueAt(dues, place);
  });
  const notWhole = rows.some(([member]) => member === 'nobody' || member === 'unknown');
  const members = [...new Set(rows.map(([member]) => String(member)))].filter((member) => !notMembers.has(member));
  return members.map((member) => ({
    member,
    period: `${dayText(first ?? '')} to ${dayText(last ?? '')}`,
    currency: String(currency ?? ''),
    lines: rows
      .filter(([whose]) => whose === member)
      .map(([, what, how, charged, paid, balance]) => ({
        ...{ what: String(what ?? ''), how: String(how ?? '') },
        ...{ charged: amount(charged ?? ''), paid: amount(paid ?? ''), balance: amount(balance ?? '') },
      })),
    notWhole,
  }));
}

const money = (value: Amount): string =>
  value === '' ? '' : value.toLocaleString('en-GB', { minimumFractionDigits: 2, maximumFractionDigits: 3, useGrouping: true });
const cellOf = (text: string, isNumber: boolean): string => element('td', isNumber ? { class: 'number' } : {}, escaped(text) || ' ');

const notWholeSaid = 'Not every row of the dues could be read or shared when this was made, so this statement may change.';
export const statementCaution = 'What the club has agreed on decides; this is no bill.';

/** One page: a block of its own, for paper and for a file. */
export function statementPage({ member, period, currency, lines, notWhole }: MemberStatement, madeOn: string): string {
  const head = element(
    'tr',
    {},
    ['what', 'how', 'charged', 'paid', 'balance'].map((word, index) => element('th', index > 1 ? { class: 'number' } : {}, word)).join(''),
  );
  const rows = lines.map(({ what, how, charged, paid, balance }) =>
    element(
      'tr',
      what === 'balance' ? { class: 'sum' } : {},
      [cellOf(what, false), cellOf(how, false), ...[charged, paid, balance].map((one) => cellOf(money(one), true))].join(''),
    ),
  );
  return element(
    'section',
    { class: 'statement' },
    [
      element('h1', {}, escaped(`Statement: ${member}`)),
      element('p', {}, escaped(`${period}, in ${currency}. Made on ${madeOn}.${notWhole ? ` ${notWholeSaid}` : ''}`)),
      element('table', {}, head + rows.join('')),
      element('p', {}, statementCaution),
    ].join(''),
  );
}

/** The looks of the pages, on paper and in a file. */
export const statementStyle =
  '.statement{font-family:Arial,sans-serif;font-size:10pt;color:#1b1f24;break-after:page}.statement:last-child{break-after:auto}.statement h1{font-size:15pt;margin:0 0 6pt}.statement table{border-collapse:collapse;width:100%;margin:8pt 0}.statement th,.statement td{text-align:left;padding:2pt 6pt;border-bottom:1px solid #d0d7de}.statement .number{text-align:right;white-space:nowrap}.statement .sum td{font-weight:bold}';

/** A file that any browser shows and prints, with nothing in it but the one statement. */
export const statementFile = (statement: MemberStatement, madeOn: string): string =>
  `<!doctype html>${element('html', { lang: 'en' }, element('head', {}, `<meta charset="utf-8">${element('title', {}, escaped(`Statement: ${statement.member}`))}${element('style', {}, statementStyle)}`) + element('body', {}, statementPage(statement, madeOn)))}`;

/** Letters and digits of every language, and nothing that a file's name cannot hold somewhere. */
const permitted = (text: string): string =>
  text
    .replace(/[^\p{L}\p{M}\p{N} ._-]+/gu, '-')
    .trim()
    .slice(0, 60);

/** One name for each, though two members may differ only in what no file name can hold. */
export function statementFileNames(statements: readonly MemberStatement[]): string[] {
  const taken = new Set<string>();
  return statements.map(({ member, period }) => {
    const base = `Statement ${permitted(member)} ${period}`;
    let name = base;
    for (let more = 2; taken.has(name.toLowerCase()); more += 1) name = `${base} (${more})`;
    taken.add(name.toLowerCase());
    return `${name}.html`;
  });
}
