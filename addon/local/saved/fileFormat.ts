// What the file of a workbook says about the program that wrote it. A program that does not know all that stands in a file must not
// write it: what it does not know would be dropped.
import type { IWorkbookData } from '@univerjs/core';
import { sheetTemplates } from '../../../sheets-templates';

/** Raised when a version begins to keep something that the versions before it would drop. */
const format = 1;
const engineVersion = '0.25.1';
/** Under which what is ours stands. */
export const field = 'rampwright';

/** As much of a workbook as is looked at, read from a file of anybody's. */
export interface KeptWorkbook {
  readonly appVersion?: unknown;
  readonly custom?: unknown;
  readonly sheetOrder?: unknown;
  readonly sheets?: Readonly<Record<string, unknown>>;
}

export const partOf = (kept: unknown, name: string): unknown =>
  typeof kept === 'object' && kept !== null ? (kept as Readonly<Record<string, unknown>>)[name] : undefined;

/** The workbook with a word about who wrote it. */
export const withFormat = (data: IWorkbookData): IWorkbookData => ({
  ...data,
  appVersion: engineVersion,
  custom: { ...data.custom, [field]: { ...(partOf(data.custom, field) as object | undefined), format } },
});

function isLaterNumber(version: string, known: string): boolean {
  const [parts, knownParts] = [version, known].map((text) => text.split('.').map(Number));
  const differs = (parts ?? []).findIndex((part, index) => part !== (knownParts?.[index] ?? 0));
  return differs >= 0 && (parts?.[differs] ?? 0) > (knownParts?.[differs] ?? 0);
}

/** A sheet of ours, of a kind or a version that this program does not have. */
function isLaterSheet(sheet: unknown): boolean {
  const mark = partOf(partOf(sheet, 'custom'), field);
  const [key, version] = [partOf(mark, 'key'), partOf(mark, 'version')];
  if (typeof key !== 'string' || typeof version !== 'number') return false;
  return version > (sheetTemplates.find((template) => template.key === key)?.version ?? 0);
}

export function isLater({ appVersion, custom, sheets }: KeptWorkbook): boolean {
  const written = partOf(partOf(custom, field), 'format');
  if (typeof written === 'number' && written > format) return true;
  if (typeof appVersion === 'string' && isLaterNumber(appVersion, engineVersion)) return true;
  return Object.values(sheets ?? {}).some(isLaterSheet);
}

export const laterSentence =
  'This workbook was written by a later version of Rampwright. It is shown as far as this version knows it and is not saved, since what this version does not know would be lost. Update Rampwright to change it.';
