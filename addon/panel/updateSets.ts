// The sets of sheets in a workbook, looked through before an update, and what is said of them.
import type { SheetTemplate } from '../../sheets-templates/template';
import { migrateEntries, setsOf, type MigratedEntries, type SheetSet } from '../workbook/migrateEntries';
import type { WorkbookSnapshot } from '../workbook/snapshot';
import type { PanelAnswer } from './host';

export interface LookedSet extends SheetSet {
  /** Only of a set that is out of date. */
  readonly carried?: MigratedEntries;
}

export const lookThrough = (workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): LookedSet[] =>
  setsOf(workbook, templates).map((one) => ({ ...one, ...(one.outOfDate && { carried: migrateEntries(workbook, one.set, templates) }) }));

/** Whether what was read out before an update still holds; the entries themselves may have changed. */
export const isSame = (one: LookedSet, other: LookedSet): boolean => {
  const told = ({ sheets, carried }: LookedSet): string => JSON.stringify([sheets, carried?.notes, carried?.refusals]);
  return told(one) === told(other);
};

export function lookedInWords(sets: readonly LookedSet[]): string {
  const older = sets.filter(({ outOfDate }) => outOfDate).length;
  if (sets.length === 0) return 'This document has no sheets of Rampwright yet.';
  if (older === 0)
    return sets.some(({ sheets }) => sheets.some(({ version, current }) => version > current))
      ? 'No sheet is out of date.'
      : 'Every sheet of ours is up to date.';
  return older === 1 ? '1 set of sheets is out of date.' : `${older} sets of sheets are out of date.`;
}

function versionInWords({ version, current }: SheetSet['sheets'][number]): string {
  if (version === current) return `Version ${version}, today's`;
  return version < current ? `Version ${version}, today's is ${current}` : `Version ${version}, newer than this panel (reload the document)`;
}

/** Sheets of one version in one line. */
export function versionsInWords({ sheets }: SheetSet): string[] {
  const versions = [...new Set(sheets.map(versionInWords))];
  return versions.map(
    (version) =>
      `${version}: ${sheets
        .filter((sheet) => versionInWords(sheet) === version)
        .map(({ name }) => name)
        .join(', ')}.`,
  );
}

const quoted = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');

export function updatedInWords({ updated, kept }: PanelAnswer<'updateSheets'>): string {
  const before = kept.length === 1 ? `The older one is kept as ${quoted(kept)}` : `The older ones are kept as ${quoted(kept)}`;
  return `Up to date, with your entries: ${quoted(updated)}. ${before}. Look the new ones through; then the older ones may be deleted.`;
}
