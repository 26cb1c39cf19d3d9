// Which sheet of the document stands for which template, as one sheet of ours sees it: its own set, and of several of a
// kind the one that its formulas read.
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import { placesRead, sameName } from '../readPlace';
import type { SheetSnapshot } from '../snapshot';
import type { CheckedBook } from './checkedBook';

export interface LinkedSheets {
  readonly sheetOf: (key: SheetKey) => SheetSnapshot | undefined;
  /** Name of a range in the template to its name in the document; undefined where the name is not of a template. */
  readonly rangeName: (name: string) => string | undefined;
}

function mostRead(candidates: readonly SheetSnapshot[], reads: ReadonlyMap<SheetSnapshot, number>): SheetSnapshot | undefined {
  return [...candidates].sort((one, other) => (reads.get(other) ?? 0) - (reads.get(one) ?? 0))[0];
}

export function linkedSheets({ workbook, cells }: CheckedBook, home: SheetSnapshot, templates: readonly SheetTemplate[]): LinkedSheets {
  const reads = new Map<SheetSnapshot, number>();
  for (const cell of cells) {
    if (cell.sheet !== home) continue;
    for (const { sheet } of placesRead(workbook, home, cell.reading)) reads.set(sheet, (reads.get(sheet) ?? 0) + 1);
  }
  const sheetOf = (key: SheetKey): SheetSnapshot | undefined => {
    if (home.mark?.key === key) return home;
    const ofKind = workbook.sheets.filter(({ mark }) => mark?.key === key);
    const ofSet = ofKind.filter(({ mark }) => mark?.set === home.mark?.set);
    return mostRead(ofSet.length > 0 ? ofSet : ofKind, reads);
  };
  return {
    sheetOf,
    rangeName: (word) => {
      const owner = templates.find(({ names }) => names.some(({ name }) => sameName(name, word)));
      const known = owner?.names.find(({ name }) => sameName(name, word))?.name;
      return owner === undefined || known === undefined ? undefined : (sheetOf(owner.key)?.mark?.names[known] ?? known);
    },
  };
}
