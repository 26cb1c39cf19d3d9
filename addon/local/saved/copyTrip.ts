// Puts a copy of a trip into a saved workbook: its Trip sheet with Trip working, Weight and balance and card together, so that the copies read one
// another and not the sheets of the first trip. What the sheets share with other trips (Start, the tables, the ledger, the log) they go on sharing. Pure.
import type { IWorkbookData, IWorksheetData } from '@univerjs/core';
import { sheetsOfOneTrip } from '../../../sheets-templates/places';
import { namesOfCopies } from '../../workbook/copyNames';
import { rewriteFormula, type NewNames } from '../../workbook/formulaText';
import { carrying } from '../engine/sheetMark';
import { resourceIn, withResource } from '../engine/workbookData';
import { stemOf } from '../engine/workbookIds';
import { isDrawnName, nameIds, resourceNames, type NameRecord } from '../engine/workbookResources';
import { nameRecords, rangeNamesIn } from '../engine/workbookSnapshot';
import { freeSheetId, freshSet, markedSheets, sheetNamesIn, type MarkedSheet } from './documentState';
import { withFormulasChanged } from './formulas';
import { ownNames } from './setAside';

export interface TripCopied {
  readonly data: IWorkbookData;
  /** Names of the copies; the first is that of the sheet asked for. */
  readonly copies: readonly string[];
  /** What the copied sheets and ranges are called, by the names of those that they were copied from. */
  readonly names: NewNames;
}

/** The sheets of the trip to which a sheet belongs; none where it belongs to no trip. */
export function sheetsOfTrip(data: IWorkbookData, sheetId: string): MarkedSheet[] {
  const marked = markedSheets(data);
  const chosen = marked.find((one) => one.sheetId === sheetId);
  if (chosen === undefined || !sheetsOfOneTrip.has(chosen.mark.key)) return [];
  return marked.filter(({ mark }) => mark.set === chosen.mark.set && sheetsOfOneTrip.has(mark.key));
}

interface Copy {
  readonly from: MarkedSheet;
  readonly id: string;
  readonly name: string;
}

/** What the parts of a sheet that a plugin keeps are called by, under the identifiers of its copy. */
function renamedText(text: string, { from: { sheetId }, id }: Copy): string {
  const [stem, fresh] = [stemOf(sheetId), stemOf(id)];
  return text
    .replaceAll(`"${sheetId}"`, `"${id}"`)
    .replace(new RegExp(`"(chart|picture)([-_])${stem}([-_]\\d)`, 'g'), `"$1$2${fresh}$3`)
    .replaceAll(`"${stem}-input-`, `"${fresh}-input-`);
}

/** The copies of names: those of the sheets' own ranges, and those behind charts and pictures. */
function copiedRecords(data: IWorkbookData, copies: readonly Copy[], names: NewNames): NameRecord[] {
  return copies.flatMap((copy) => {
    const { from, id } = copy;
    return nameRecords(data).flatMap((record) => {
      const drawn = isDrawnName(from.sheetId, record.name);
      const own = ownNames(data, from).some(([, given]) => given === record.name);
      if (!drawn && !own) return [];
      const name = drawn ? (JSON.parse(renamedText(JSON.stringify(record.name), copy)) as string) : (names.ranges.get(record.name) ?? record.name);
      return [{ ...record, id: `${nameIds(id)}${name}`, name, formulaOrRefString: rewriteFormula(record.formulaOrRefString, names, ',') }];
    });
  });
}

function copiedSheet({ from: { sheet, mark }, id, name }: Copy, set: string, { ranges }: NewNames): Partial<IWorksheetData> {
  const given = Object.entries(mark.names).map(([ofTemplate, one]) => [ofTemplate, ranges.get(one) ?? one]);
  const names = Object.fromEntries(given) as Record<string, string>;
  return { ...structuredClone(sheet), id, name, custom: { ...sheet.custom, ...carrying({ ...mark, set, names }, id) } };
}

function withKept(data: IWorkbookData, copies: readonly Copy[]): IWorkbookData {
  const perSheet = Object.values(resourceNames).filter((resource) => resource !== resourceNames.names);
  return perSheet.reduce((grown, resource) => {
    const kept = resourceIn<unknown>(grown, resource);
    const added = copies.flatMap((copy): [string, unknown][] => {
      const ofSheet = kept[copy.from.sheetId];
      return ofSheet === undefined ? [] : [[copy.id, JSON.parse(renamedText(JSON.stringify(ofSheet), copy))]];
    });
    return added.length === 0 ? grown : withResource(grown, resource, { ...kept, ...Object.fromEntries(added) });
  }, data);
}

export function withTripCopied(data: IWorkbookData, sheetId: string): TripCopied {
  const sheets = sheetsOfTrip(data, sheetId);
  if (sheets.length === 0) throw new Error('That sheet belongs to no trip.');
  const ranges = sheets.flatMap((from) => ownNames(data, from).map(([, given]) => given));
  const names = namesOfCopies(sheets, ranges, { sheets: sheetNamesIn(data), ranges: rangeNamesIn(data) });
  const copies = sheets.map((from): Copy => ({ from, id: freeSheetId(data, from.mark.key), name: names.sheets.get(from.name) ?? from.name }));
  const set = freshSet(markedSheets(data).map(({ mark }) => mark));
  const last = Math.max(...sheets.map((one) => data.sheetOrder.indexOf(one.sheetId)));
  const sheetOrder = [...data.sheetOrder.slice(0, last + 1), ...copies.map(({ id }) => id), ...data.sheetOrder.slice(last + 1)];
  const added = Object.fromEntries(copies.map((copy) => [copy.id, copiedSheet(copy, set, names)]));
  const ids = new Set(copies.map(({ id }) => id));
  const withSheets = withKept({ ...data, sheets: { ...data.sheets, ...added }, sheetOrder }, copies);
  const rewritten = withFormulasChanged(withSheets, (formula, on) =>
    on !== undefined && ids.has(on) ? rewriteFormula(formula, names, ',') : formula,
  );
  const records = Object.fromEntries(copiedRecords(data, copies, names).map((record) => [record.id, record]));
  return {
    data: withResource(rewritten, resourceNames.names, { ...resourceIn(rewritten, resourceNames.names), ...records }),
    copies: [...copies].sort((one) => (one.from.sheetId === sheetId ? -1 : 0)).map(({ name }) => name),
    names,
  };
}
