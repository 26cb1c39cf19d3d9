// The mark that a sheet of ours carries in the workbook file, so that it is known again whatever the user calls it. The grid
// keeps what stands under `custom`; a copy that somebody makes of a sheet has another identifier, and is not ours.
import type { IWorksheetData } from '@univerjs/core';
import { sheetTemplates } from '../../../sheets-templates';
import { sheetNames } from '../../../sheets-templates/places';
import type { SheetMark } from '../../workbook/snapshot';
import { sheetIdOf } from './workbookIds';

type Custom = NonNullable<IWorksheetData['custom']>;
type KeptMark = SheetMark & { readonly sheet: string };

const field = 'rampwright';

/** The set that a workbook begins with. */
export const firstSet = 'rampwright';

export const carrying = (mark: SheetMark, sheetId: string): Custom => ({ [field]: { ...mark, sheet: sheetId } satisfies KeptMark });

/** The sheet stays, as the user's own. */
export const noLongerOurs = (custom: IWorksheetData['custom']): Custom => ({ ...custom, [field]: null });

function isKept(kept: unknown): kept is KeptMark {
  if (typeof kept !== 'object' || kept === null) return false;
  const { key, version, set, names, sheet } = kept as Partial<Record<keyof KeptMark, unknown>>;
  const words = [key, set, sheet].every((one) => typeof one === 'string');
  return words && typeof version === 'number' && typeof names === 'object' && names !== null;
}

/** Workbooks saved before sheets carried a mark have one set, under the identifiers and names of the templates. */
function markBefore(id: string | undefined, rangeNames: ReadonlySet<string>): SheetMark | undefined {
  const template = sheetTemplates.find(({ key }) => sheetIdOf(key) === id);
  if (template === undefined) return undefined;
  const names = template.names.flatMap(({ name }) => (rangeNames.has(name) ? [[name, name]] : []));
  return { key: template.key, version: 1, set: firstSet, names: Object.fromEntries(names) as Record<string, string> };
}

/** `rangeNames` are those of the workbook. */
export function markOf({ id, custom }: Partial<IWorksheetData>, rangeNames: ReadonlySet<string>): SheetMark | undefined {
  const kept: unknown = custom?.[field];
  if (kept === undefined) return markBefore(id, rangeNames);
  if (!isKept(kept) || kept.sheet !== id || !(kept.key in sheetNames)) return undefined;
  const { key, version, set, names } = kept;
  return { key, version, set, names };
}
