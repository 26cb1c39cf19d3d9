// What a check found, and what it did not find, as counts in words.
import { asOfName } from '../../sheets-templates/asOf';
import type { CheckReport, FindingKind } from '../workbook/check/checkWorkbook';
import { judgedDays } from '../workbook/judgedDays';
import type { WorkbookSnapshot } from '../workbook/snapshot';

export interface CountInWords {
  readonly text: string;
  /** Something to look at, rather than nothing found. */
  readonly found: boolean;
}

interface Words {
  readonly one: string;
  readonly many: string;
  /** Undefined where finding nothing says nothing. */
  readonly none?: (report: CheckReport) => string | undefined;
}

const words: Readonly<Record<FindingKind, Words>> = {
  error: { one: 'cell with an error', many: 'cells with errors', none: () => 'No errors.' },
  unknown: { one: 'UNKNOWN verdict', many: 'UNKNOWN verdicts', none: () => 'No UNKNOWN verdicts.' },
  formula: {
    one: 'formula of a sheet of ours was changed',
    many: 'formulas of sheets of ours were changed',
    none: ({ compared }) => (compared === 0 ? undefined : `No changed formulas among the ${compared} that were compared.`),
  },
  tint: { one: "tint of verdicts is not the sheet's own", many: "tints of verdicts are not the sheets' own" },
  // The days themselves are told beside the counts.
  day: { one: 'day (as_of) to look at', many: 'days (as_of) to look at' },
  volatile: {
    one: 'function that depends on NOW or RAND',
    many: 'functions that depend on NOW or RAND',
    none: () => 'No function of ours depends on NOW or RAND.',
  },
  copied: { one: 'copied sheet reads the sheets of another', many: 'copied sheets read the sheets of another' },
  moved: { one: 'sheet could not be compared whole', many: 'sheets could not be compared whole' },
};

const kinds = Object.keys(words) as FindingKind[];

/** What was found comes first. */
export function countsInWords(report: CheckReport): CountInWords[] {
  const found = kinds.filter((kind) => report.counts[kind] > 0);
  const missing = kinds.filter((kind) => report.counts[kind] === 0);
  return [
    ...found.map((kind) => ({ text: `${report.counts[kind]} ${words[kind][report.counts[kind] === 1 ? 'one' : 'many']}`, found: true })),
    ...missing.flatMap((kind) => words[kind].none?.(report) ?? []).map((text) => ({ text, found: false })),
  ];
}

export function totalInWords({ counts }: CheckReport): string {
  const total = kinds.reduce((sum, kind) => sum + counts[kind], 0);
  if (total === 0) return 'No problems found.';
  return total === 1 ? 'Checked. 1 finding.' : `Checked. ${total} findings.`;
}

/** The day on which each Start sheet has everything judged, where there is one; what is wrong with it is a finding. */
export const daysInWords = (workbook: WorkbookSnapshot): string[] =>
  judgedDays(workbook).map(({ sheet, day }) => `Judged on ${day}, ${asOfName} of "${sheet}".`);
