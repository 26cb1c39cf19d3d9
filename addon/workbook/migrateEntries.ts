// What the user typed into a set of sheets, laid into the entry cells of the sheets of today. Entries are known by their keys,
// whatever words are beside them. Whatever has no place is told, and stops the update if it is data.
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import type { CarriedSheet } from './carriedInputs';
import { formerKeys } from './formerKeys';
import { readingOnce } from './formulaReading';
import type { WorkbookSnapshot } from './snapshot';
import { type Carrying, entriesOf, isMarked, keysLost, type MarkedSheet, oldDocument, refusedSheets } from './carry/finding';
import { leftIn, readersOutside } from './carry/telling';
import { carrySheet } from './carry/carrying';

export interface SheetSet {
  readonly set: string;
  readonly sheets: readonly {
    readonly name: string;
    readonly key: SheetKey;
    readonly version: number;
    /** Today's version. */ readonly current: number;
  }[];
  readonly outOfDate: boolean;
}

export interface MigratedEntries {
  /** One for each sheet of the set; none where anything is refused. */
  readonly entries: readonly CarriedSheet[];
  /** Told before the update, which may go on. */
  readonly notes: readonly string[];
  /** Reasons for which nothing can be brought up to date yet. */
  readonly refusals: readonly string[];
}

/** The sets of the workbook, in the order in which their first sheets stand. */
export function setsOf({ sheets }: WorkbookSnapshot, templates: readonly SheetTemplate[]): SheetSet[] {
  const sets = new Map<string, SheetSet['sheets'][number][]>();
  for (const {
    name,
    mark: { key, version, set },
  } of sheets.filter(isMarked)) {
    const current = templates.find((template) => template.key === key)?.version ?? version;
    sets.set(set, [...(sets.get(set) ?? []), { name, key, version, current }]);
  }
  return [...sets].map(([set, ofSet]) => ({ set, sheets: ofSet, outOfDate: ofSet.some(({ version, current }) => version < current) }));
}

/** `former` is given by tests only. */
export const migrateEntries = (
  workbook: WorkbookSnapshot,
  set: string,
  templates: readonly SheetTemplate[],
  former: Readonly<Record<string, string>> = formerKeys,
): MigratedEntries => readingOnce(() => migrated(workbook, set, templates, former));

function migrated(
  workbook: WorkbookSnapshot,
  set: string,
  templates: readonly SheetTemplate[],
  former: Readonly<Record<string, string>>,
): MigratedEntries {
  const ofSet = workbook.sheets.filter(isMarked).filter(({ mark }) => mark.set === set);
  const refused = refusedSheets(ofSet, templates);
  if (refused.length > 0) return { entries: [], notes: [], refusals: refused };
  const templateOf = (sheet: MarkedSheet): SheetTemplate | undefined => templates.find(({ key }) => key === sheet.mark.key);
  const found = ofSet.map((sheet) => {
    const template = templateOf(sheet);
    return [sheet, template === undefined ? undefined : entriesOf(workbook, sheet, template)] as const;
  });
  const lost = found.flatMap(([{ name }, entries]) => (entries === undefined ? [name] : []));
  if (lost.length > 0) return { entries: [], notes: [], refusals: lost.map(keysLost) };
  const old = new Map(found.flatMap(([sheet, entries]) => (entries === undefined ? [] : [[sheet, entries] as const])));
  const carrying: Carrying = { workbook, ofSet, old, former, document: oldDocument(workbook, ofSet, templates) };
  const parts = templates.map((template) =>
    carrySheet(carrying, template, ofSet.find(({ mark }) => mark.key === template.key)?.name ?? template.name),
  );
  const wanted = parts.filter(({ carried: { key, cells } }) => cells.length > 0 || ofSet.some(({ mark }) => mark.key === key));
  const left = [...old].map(([sheet, entries]) =>
    leftIn(
      sheet,
      entries,
      parts.flatMap(({ from }) => from.filter((one) => one.sheet === sheet).map(({ place }) => place)),
      former,
    ),
  );
  const refusals = [...parts, ...left].flatMap((part) => part.refusals);
  return {
    entries: refusals.length > 0 ? [] : wanted.map(({ carried }) => carried),
    notes: [...parts.flatMap(({ notes }) => notes), ...left.flatMap(({ notes }) => notes), ...readersOutside(carrying)],
    refusals,
  };
}
