// Looks a whole workbook over: errors, UNKNOWN verdicts, the day, formulas that are not the sheets' own any more, volatile
// cells that feed our functions, and how many calls there are. It changes nothing.
import type { SheetTemplate } from '../../../sheets-templates/template';
import { pairedSheet } from '../formulaVotes';
import { laidOut, type LaidOut } from '../laidOut';
import type { SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { findDay } from './asOf';
import { readBook } from './checkedBook';
import { compareFormulas, findMissing, type Comparing } from './compareFormulas';
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

/** Each sheet is laid out once, however many formulas read it; those of every sheet of ours tell where its lines went. */
function laidOutOnce({ sheets }: WorkbookSnapshot, templates: readonly SheetTemplate[]): Comparing['laidOut'] {
  const readers = sheets.flatMap((sheet) => {
    const template = templates.find(({ key }) => key === sheet.mark?.key);
    return template === undefined ? [] : [pairedSheet(template, sheet)];
  });
  const known = new Map<SheetSnapshot, LaidOut>();
  return (template, sheet) => {
    const found = known.get(sheet) ?? laidOut(template, sheet, readers);
    known.set(sheet, found);
    return found;
  };
}

const gravity = ['formula', 'volatile', 'error', 'day', 'unknown', 'moved'] as const satisfies readonly FindingKind[];

function countsOf(findings: readonly Finding[]): CheckReport['counts'] {
  const counts = { formula: 0, volatile: 0, error: 0, day: 0, unknown: 0, moved: 0 };
  for (const { kind } of findings) counts[kind] += 1;
  return counts;
}

/** `today` as 2026-11-25, by the clock of the user's machine. */
export function checkWorkbook(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], today: string): CheckReport {
  const book = readBook(workbook);
  const comparing: Comparing = { book, templates, laidOut: laidOutOnce(workbook, templates) };
  const findings: Finding[] = [...findErrors(book), ...findVolatile(book)];
  const said: string[] = [];
  let compared = 0;
  for (const sheet of workbook.sheets) {
    const template = templates.find(({ key }) => key === sheet.mark?.key);
    const laid = template === undefined ? undefined : comparing.laidOut(template, sheet);
    findings.push(...findUnknowns(sheet, template, laid));
    if (template === undefined || laid === undefined) continue;
    const links = linkedSheets(book, sheet, templates);
    const comparison = compareFormulas(comparing, template, sheet, links);
    compared += comparison.compared;
    findings.push(...comparison.findings, ...findMissing(comparing, template, sheet, links), ...findDay(book, sheet, template, laid, today));
  }
  if (!workbook.sheets.some(({ mark }) => mark !== undefined)) said.push('This document has no sheets of Rampwright. Its own sheets were looked through for errors, for UNKNOWN and for volatile cells that feed our functions.');
  const place = new Map(workbook.sheets.map(({ name }, index) => [name, index]));
  const order = (one: Finding, other: Finding): number =>
    (place.get(one.sheet) ?? 0) - (place.get(other.sheet) ?? 0) || gravity.indexOf(one.kind) - gravity.indexOf(other.kind) || one.row - other.row || one.column - other.column;
  const calls = countCalls(book);
  return { findings: fewOfMany(findings.sort(order)), counts: countsOf(findings), calls, callsInAll: calls.reduce((sum, one) => sum + one.calls, 0), compared, said };
}
