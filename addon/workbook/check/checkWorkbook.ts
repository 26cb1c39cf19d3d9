// Looks a whole workbook over: errors, UNKNOWN verdicts, the day, formulas that are not the sheets' own any more, volatile
// cells that feed our functions, and how many calls there are. It changes nothing.
import type { SheetTemplate } from '../../../sheets-templates/template';
import { readingOnce } from '../formulaReading';
import { placesNow } from '../placesNow';
import type { SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { findDay } from './asOf';
import { readBook } from './checkedBook';
import { compareFormulas, findMissing, type Comparing } from './compareFormulas';
import { compareTints } from './compareTints';
import { findCopied } from './copied';
import { countCalls, type CallsInSheet } from './countCalls';
import { findErrors } from './errors';
import { fewOfMany, type Finding, type FindingKind } from './finding';
import { linkedSheets } from './linkedSheets';
import { findUnknowns } from './unknowns';
import { findVolatile } from './volatile';

export type { CallsInSheet } from './countCalls';
export type { Finding, FindingKind } from './finding';

export interface CheckReport {
  /** By sheet in the order of the workbook, then by kind, the gravest first, then by row. */
  readonly findings: readonly Finding[];
  /** Of every kind, those told together with another one counted too. */
  readonly counts: Readonly<Record<FindingKind, number>>;
  readonly calls: readonly CallsInSheet[];
  readonly callsInAll: number;
  /** Formulas held against those of the templates. */
  readonly compared: number;
  /** What the check could not look at, or did not need to: sentences for the user. */
  readonly said: readonly string[];
}

/** The keys of each sheet are read once, however many formulas read the sheet. */
function placesOnce(): Comparing['placesNow'] {
  const known = new Map<SheetSnapshot, ReturnType<typeof placesNow>>();
  return (template, sheet) => {
    if (!known.has(sheet)) known.set(sheet, placesNow(template, sheet));
    return known.get(sheet);
  };
}

const gravity = ['formula', 'tint', 'volatile', 'error', 'day', 'unknown', 'copied', 'moved'] as const satisfies readonly FindingKind[];

function countsOf(findings: readonly Finding[]): CheckReport['counts'] {
  const counts = { formula: 0, tint: 0, volatile: 0, error: 0, day: 0, unknown: 0, moved: 0, copied: 0 };
  for (const { kind } of findings) counts[kind] += 1;
  return counts;
}

/** `today` as 2026-11-25, by the clock of the user's machine. */
export const checkWorkbook = (workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], today: string): CheckReport =>
  readingOnce(() => checked(workbook, templates, today));

function checked(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], today: string): CheckReport {
  const book = readBook(workbook);
  const comparing: Comparing = { book, templates, placesNow: placesOnce() };
  const findings: Finding[] = [...findErrors(book), ...findVolatile(book), ...findCopied(book, templates)];
  const said: string[] = [];
  let compared = 0;
  for (const sheet of workbook.sheets) {
    const template = templates.find(({ key }) => key === sheet.mark?.key);
    const places = template === undefined ? undefined : comparing.placesNow(template, sheet);
    findings.push(...findUnknowns(sheet, template, places));
    if (template === undefined) continue;
    const links = linkedSheets(book, sheet, templates);
    const comparison = compareFormulas(comparing, template, sheet, links);
    compared += comparison.compared;
    findings.push(
      ...comparison.findings,
      ...(places === undefined ? [] : compareTints(template, sheet, places)),
      ...findMissing(comparing, template, sheet, links),
      ...findDay(book, sheet, template, places, today),
    );
  }
  if (!workbook.sheets.some(({ mark }) => mark !== undefined))
    said.push(
      'This document has no sheets of Rampwright. Its own sheets were looked through for errors, for UNKNOWN and for volatile cells that feed our functions.',
    );
  const place = new Map(workbook.sheets.map(({ name }, index) => [name, index]));
  const order = (one: Finding, other: Finding): number =>
    (place.get(one.sheet) ?? 0) - (place.get(other.sheet) ?? 0) ||
    gravity.indexOf(one.kind) - gravity.indexOf(other.kind) ||
    one.row - other.row ||
    one.column - other.column;
  const calls = countCalls(book);
  return {
    findings: fewOfMany(findings.sort(order)),
    counts: countsOf(findings),
    calls,
    callsInAll: calls.reduce((sum, one) => sum + one.calls, 0),
    compared,
    said,
  };
}
