// A sheet of today's version with the sections of its description, and where their cells stand in it now.
import { address, columnLetter } from '../../../sheets-templates/addresses';
import type { SheetTemplate } from '../../../sheets-templates/template';
import { readArea, type Area } from '../areas';
import { placesNow } from '../placesNow';
import type { CellPlace, SheetSnapshot } from '../snapshot';

export interface PlacedSheet {
  readonly template: SheetTemplate;
  /** A range of the template as it stands now: a list in which rows were inserted has grown. Undefined where it cannot be known any more. */
  readonly areaNow: (range: string) => Area | undefined;
  readonly cellNow: (cell: CellPlace) => CellPlace | undefined;
  /** The cells that a column of a list has now, from its first row to its last. */
  readonly columnNow: (first: number, last: number, column: number) => readonly CellPlace[];
}

/** Undefined for a sheet that is not one of this version's, or whose keys are gone: where its cells stand cannot be told. */
export function placedSheet(templates: readonly SheetTemplate[], sheet: SheetSnapshot): PlacedSheet | undefined {
  const template = templates.find(({ key, version }) => key === sheet.mark?.key && version === sheet.mark.version);
  const places = template === undefined ? undefined : placesNow(template, sheet);
  if (template === undefined || places === undefined) return undefined;
  const known = new Map<string, Area | undefined>();
  const areaNow = (range: string): Area | undefined => {
    if (!known.has(range)) {
      const now = places.range(range);
      known.set(range, now === undefined ? undefined : readArea(now));
    }
    return known.get(range);
  };
  return {
    template,
    areaNow,
    cellNow: ({ row, column }) => {
      const now = areaNow(address(row, column));
      return now === undefined ? undefined : { row: now.row, column: now.column };
    },
    columnNow: (first, last, column) => {
      const letter = columnLetter(column);
      const now = areaNow(`${letter}${first}:${letter}${last}`);
      if (now === undefined || now.lastRow < now.row) return [];
      return Array.from({ length: now.lastRow - now.row + 1 }, (_, index) => ({ row: now.row + index, column: now.column }));
    },
  };
}
