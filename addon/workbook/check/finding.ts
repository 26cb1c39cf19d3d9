// What a check of a workbook finds, one cell at a time, and how many findings alike are told as one.
import { address } from '../../../sheets-templates/build';
import type { CellPlace, SheetSnapshot } from '../snapshot';

/**
 * day: as_of. formula, tint: not the sheet's own any more. volatile: changes at every calculation. moved: could not be compared. copied: a tab
 * copied by the menu of the spreadsheet, which goes on reading the sheets of the first one.
 */
export type FindingKind = 'error' | 'unknown' | 'day' | 'formula' | 'tint' | 'volatile' | 'moved' | 'copied';

export interface Finding extends CellPlace {
  readonly kind: FindingKind;
  readonly sheet: string;
  /** The cell's address, such as B12. */
  readonly cell: string;
  /** For the user, whole. */
  readonly sentence: string;
}

export const findingAt = (kind: FindingKind, { name }: Pick<SheetSnapshot, 'name'>, { row, column }: CellPlace, sentence: string): Finding => ({
  kind,
  sheet: name,
  row,
  column,
  cell: address(row, column),
  sentence,
});

/** So many of one kind on one sheet are told one by one. */
export const toldOneByOne = 20;

/** Of more than that, the last one told says how many are like it. */
export function fewOfMany(findings: readonly Finding[]): Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = `${finding.kind} ${finding.sheet}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].flatMap((group) => {
    const next = group[toldOneByOne];
    if (next === undefined) return group;
    return [
      ...group.slice(0, toldOneByOne),
      { ...next, sentence: `${next.sentence} And ${group.length - toldOneByOne - 1} more like it.`.replace(' And 0 more like it.', '') },
    ];
  });
}
