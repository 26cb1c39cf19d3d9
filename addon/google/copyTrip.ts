// The sheets of a trip copied together, each under a name of its own and with the names of its ranges; their formulas still name the first ones.
import { sheetsOfOneTrip } from '../../sheets-templates/places';
import { namesOfCopies } from '../workbook/copyNames';
import type { NewNames } from '../workbook/formulaText';
import { markedSheets, rangeOfName, removeMark, type MarkedSheet } from './documentState';
import type { Did } from './transaction';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

export interface CopyPlan {
  readonly trip: readonly MarkedSheet[];
  readonly names: NewNames;
  /** The ranges of the trip that have a name, by it. */
  readonly ranges: ReadonlyMap<string, Range>;
  /** Place of the first copy among all sheets, counted from 1. */
  readonly place: number;
}

export function planCopies(document: Document, name: string): CopyPlan {
  const marked = markedSheets(document);
  const chosen = marked.find((one) => one.name === name && one.mark.key === 'trip');
  if (chosen === undefined) throw new Error(`There is no sheet "${name}" in this document any more. Nothing was changed.`);
  const trip = marked.filter(({ mark }) => mark.set === chosen.mark.set && sheetsOfOneTrip.has(mark.key));
  const order = document.getSheets().map((sheet) => sheet.getName());
  const named = document.getNamedRanges().map((one) => ({ one, name: one.getName() }));
  const given = trip.flatMap(({ mark }) => Object.values(mark.names));
  const ranges = named.flatMap((one): [string, Range][] => {
    const range = given.includes(one.name) ? rangeOfName(one.one) : undefined;
    return range === undefined ? [] : [[one.name, range]];
  });
  if (ranges.length < given.length) throw new Error(`A named range of "${name}" is gone. Bring the sheets up to date first. Nothing was changed.`);
  return {
    trip,
    ranges: new Map(ranges),
    names: namesOfCopies(trip, given, { sheets: order, ranges: named.map((one) => one.name) }),
    place: 2 + Math.max(...trip.map((one) => order.indexOf(one.name))),
  };
}

export interface Copied {
  readonly from: MarkedSheet;
  readonly copy: Sheet;
}

/** One after another behind the trip, each under its name and with the names of its ranges, before any formula speaks of them. */
export function makeCopies(document: Document, { trip, names, ranges, place }: CopyPlan, did: Did): Copied[] {
  const copied = trip.map((from, index) => {
    const copy = from.sheet.copyTo(document);
    did(`the copy of ${from.name}`, () => document.deleteSheet(copy));
    copy.setName(names.sheets.get(from.name) ?? from.name);
    removeMark(copy);
    document.setActiveSheet(copy);
    document.moveActiveSheet(place + index);
    return { from, copy };
  });
  for (const { from, copy } of copied)
    for (const before of Object.values(from.mark.names)) {
      const [range, name] = [ranges.get(before), names.ranges.get(before)];
      if (range === undefined || name === undefined) continue;
      document.setNamedRange(name, copy.getRange(range.getA1Notation()));
      did(`the name ${name}`, () => document.removeNamedRange(name));
    }
  return copied;
}
