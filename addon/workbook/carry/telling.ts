// Tells what of the older sheets is not carried, and what goes on reading them.
import { address } from '../../../sheets-templates/addresses';
import { cellText, leftOver } from './leftOver';
import type { OldEntries } from './oldEntries';
import { retired } from '../formerKeys';
import { readFormula } from '../formulaReading';
import { keysIn } from '../keys';
import { sameName } from '../readPlace';
import type { CellPlace } from '../snapshot';
import { valueAt } from '../templateLabels';
import type { MarkedSheet, Carrying } from './finding';
import type { Part } from './carrying';

const maxNamed = 12;

export const some = (texts: readonly string[]): string =>
  `${texts.slice(0, maxNamed).join(', ')}${texts.length > maxNamed ? ` and ${texts.length - maxNamed} more` : ''}`;

interface Untaken {
  readonly told: string;
  readonly cells: readonly CellPlace[];
}

/** A cell of a list is found by the key of its column too. */
function placesByKey(cells: OldEntries['cells']): ReadonlyMap<string, readonly CellPlace[]> {
  const places = new Map<string, CellPlace[]>();
  const add = (key: string, place: CellPlace): void => {
    const known = places.get(key);
    if (known === undefined) places.set(key, [place]);
    else known.push(place);
  };
  for (const [key, place] of cells) {
    add(key, place);
    const column = key.replace(/\.\d+$/, '');
    if (column !== key) add(column, place);
  }
  return places;
}

/** Filled cells of entries that no sheet asks for any more; and of those whose place of today the set has filled already. */
function untakenIn(sheet: MarkedSheet, { cells }: OldEntries, placed: readonly CellPlace[], former: Carrying['former']): Untaken[] {
  const isFree = (place: CellPlace): boolean =>
    valueAt(sheet, place.row, place.column) !== '' && !placed.some(({ row, column }) => row === place.row && column === place.column);
  const places = placesByKey(cells);
  const ofKey = (key: string): readonly CellPlace[] => {
    const [, kind, name = ''] = /^([^.]+)\.(.*)$/.exec(key) ?? [];
    return kind === sheet.mark.key ? (places.get(name) ?? []) : [];
  };
  const groups = [...retired, { keys: [...new Set(Object.values(former))], told: "Today's sheets hold other entries in the place of this" }];
  return groups.map(({ told, keys }) => ({ told, cells: keys.flatMap(ofKey).filter(isFree) })).filter((one) => one.cells.length > 0);
}

/** What of a sheet was not carried; what lies in a list that is too long is told with the list. */
export function leftIn(
  sheet: MarkedSheet,
  old: OldEntries,
  placed: readonly CellPlace[],
  former: Carrying['former'],
): Pick<Part, 'notes' | 'refusals'> {
  const untaken = untakenIn(sheet, old, placed, former);
  const { data, texts, formulas } = leftOver(sheet, old, [...placed, ...untaken.flatMap(({ cells }) => cells)], keysIn(sheet)?.cell);
  return {
    notes: [
      // Each of them: they are to be typed where they are asked for now.
      ...untaken.map(
        ({ told, cells }) =>
          `${told}. These entries of "${sheet.name}" stay in the older sheet: ${cells.map((place) => cellText(sheet, place)).join(', ')}.`,
      ),
      ...(texts.length === 0
        ? []
        : [
            `These texts of "${sheet.name}" have no place in today's sheet and stay in the older one: ${some(texts.map((place) => cellText(sheet, place)))}.`,
          ]),
      ...(formulas.length === 0
        ? []
        : [
            `These formulas of "${sheet.name}" are not in today's sheet and stay in the older one: ${some(formulas.map(({ row, column, text }) => `${address(row, column)} ${text}`))}.`,
          ]),
    ],
    refusals:
      data.length === 0
        ? []
        : [
            `"${sheet.name}" holds what has no place in today's sheet: ${some(data.map((place) => cellText(sheet, place)))}. Note it down and empty the ${data.length === 1 ? 'cell' : 'cells'}, then ask again.`,
          ],
  };
}

/** Formulas outside the set that read its sheets by their names; after the update they go on reading the older ones. */
export function readersOutside({ workbook, ofSet }: Carrying): string[] {
  const readers = workbook.sheets
    .filter((sheet) => !ofSet.some(({ name }) => name === sheet.name))
    .flatMap((sheet) =>
      sheet.formulas.flatMap(({ row, column, text }) =>
        readFormula(text).references.some(({ sheet: read }) => read !== undefined && ofSet.some(({ name }) => sameName(name, read)))
          ? [`${address(row, column)} of "${sheet.name}"`]
          : [],
      ),
    );
  return readers.length === 0
    ? []
    : [
        `These formulas of yours read the sheets as they were, and will go on reading the older ones: ${some(readers)}. Set them to the new sheets afterwards.`,
      ];
}
