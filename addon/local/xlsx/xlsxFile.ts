// The whole workbook as an Excel file of values: bytes to save, and what to tell the user. The one place that calls the library.
import type { IWorkbookData } from '@univerjs/core';
import { writeXlsx } from 'hucre/xlsx';
import { fontFamily, styles } from '../../../sheets-templates/look';
import { judgedDays } from '../../workbook/judgedDays';
import type { WorkbookSnapshot } from '../../workbook/snapshot';
import { tintedWord, type TintRule } from '../engine/tintRules';
import { resourceIn } from '../engine/workbookData';
import { resourceNames } from '../engine/workbookResources';
import { nameRecords } from '../engine/workbookSnapshot';
import { aboutName, aboutSheet } from './aboutSheet';
import { chartsInFile, drawingsOn } from './charts';
import { maxTextLength } from './fileText';
import { patchPackage } from './patchPackage';
import { oneSheet } from './oneSheet';
import { sheetContents, type SheetInFile } from './sheetContents';
import { permittedNames } from './sheetNames';

export interface XlsxFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** For the user, in sentences. */
  readonly said: string;
}

const quoted = (name: string): string => `"${name}"`;

const days = (snapshot: WorkbookSnapshot): string[] => [...new Set(judgedDays(snapshot).map(({ day }) => day))].sort();

function asOfSentence(found: readonly string[]): string {
  if (found.length === 0) return 'Values as of: not known, since the workbook has no day under the name "as_of".';
  return `Values as of ${found.join(' and ')}: the day "as_of" on which ${found.length === 1 ? 'everything' : 'each set of sheets'} is judged.`;
}

/** What is not as it was in the workbook. */
function differences({ sheets }: WorkbookSnapshot, names: readonly string[]): string[] {
  const renamed = sheets.flatMap(({ name }, index) =>
    names[index] === name ? [] : [`The sheet ${quoted(name)} is called ${quoted(names[index] ?? '')} here, since Excel does not take that name.`],
  );
  const long = sheets.flatMap(({ name, values }) => (values.some((row) => row.some((value) => String(value).length > maxTextLength)) ? [name] : []));
  return [
    ...renamed,
    ...(long.length === 0
      ? []
      : [`A text was cut after ${maxTextLength} characters, the most that a cell of Excel holds, in: ${long.map(quoted).join(', ')}.`]),
  ];
}

const chartsLeftOut = (titles: readonly string[]): string[] =>
  titles.map((title) => `The chart ${quoted(title)} is not in this file: its columns are not all numbers, or belong to another sheet.`);

/** Every printed page says what it is; & begins a code there. */
const footOf = (found: readonly string[]): string =>
  `&L&8Planning aid only. Rampwright${found.length === 0 ? '' : `, values as of ${found.join(' and ')}`}&R&8&A, page &P of &N`;

interface Made {
  /** What the workbook is called in the file's own description. */
  readonly title: string;
  /** Days on which the workbook is judged. */
  readonly found: readonly string[];
  /** For whoever reads the file. */
  readonly more: readonly string[];
}

/** `snapshot` holds every sheet of `data`, in the same order. */
async function made(
  data: IWorkbookData,
  snapshot: WorkbookSnapshot,
  { title, found, more }: Made,
): Promise<Omit<XlsxFile, 'said'> & { readonly about: readonly string[] }> {
  const ids = data.sheetOrder.filter((id) => data.sheets[id] !== undefined);
  const permitted = permittedNames([...snapshot.sheets.map(({ name }) => name), aboutName]);
  const names = new Map(ids.map((id, index) => [id, permitted[index] ?? '']));
  const tints = resourceIn<readonly TintRule[]>(data, resourceNames.tints);
  const notes = resourceIn<SheetInFile['notes']>(data, resourceNames.notes);
  const drawings = resourceIn<Parameters<typeof drawingsOn>[0][string]>(data, resourceNames.drawings);
  const records = nameRecords(data);
  const charts = snapshot.sheets.map((sheet, index) => chartsInFile(drawingsOn(drawings, ids[index] ?? ''), records, sheet, permitted[index] ?? ''));
  const foot = footOf(found);
  const sheets = snapshot.sheets.map((sheet, index) => {
    const id = ids[index] ?? '';
    const tinted = (tints[id] ?? []).filter((rule) => tintedWord(rule) !== undefined).flatMap(({ ranges }) => ranges);
    return sheetContents({
      data,
      sheet: data.sheets[id] ?? {},
      snapshot: sheet,
      names,
      tinted,
      notes: notes[id] ?? {},
      charts: charts[index]?.charts ?? [],
      foot,
    });
  });
  const about = [...more, ...differences(snapshot, permitted), ...chartsLeftOut(charts.flatMap(({ leftOut }) => leftOut))];
  const bytes = await writeXlsx({
    sheets: [aboutSheet(permitted[permitted.length - 1] ?? aboutName, asOfSentence(found), about, foot), ...sheets],
    defaultFont: { name: fontFamily, size: styles.plain.size },
    properties: { title, creator: 'Rampwright' },
  });
  return { bytes: patchPackage(bytes), about };
}

/** Every sheet. `snapshot` holds those of `data`, in the same order. */
export async function xlsxFile(data: IWorkbookData, snapshot: WorkbookSnapshot): Promise<XlsxFile> {
  const found = days(snapshot);
  const { bytes, about } = await made(data, snapshot, { title: 'Rampwright workbook, values only', found, more: [] });
  const said = [`Excel file rampwright.xlsx: ${snapshot.sheets.length} sheets, values only, no live formulas. ${asOfSentence(found)}`, ...about].join(
    ' ',
  );
  return { bytes, said };
}

const hiddenWords = (hidden: number): string[] =>
  hidden === 0 ? [] : [`What ${hidden} hidden ${hidden === 1 ? 'row or column holds' : 'rows or columns hold'} is left out.`];

/** One sheet, as it can be handed on: nothing of the others is in the file, nor what is hidden. `fileName`: for what is said. */
export async function xlsxOfSheet(data: IWorkbookData, snapshot: WorkbookSnapshot, sheetId: string, fileName: string): Promise<XlsxFile> {
  const { hidden, ...one } = oneSheet(data, snapshot, sheetId);
  const found = days(snapshot);
  const more = ['This file holds one sheet of the workbook and nothing of the others.', ...hiddenWords(hidden)];
  const { bytes, about } = await made(one.data, one.snapshot, { title: 'Rampwright sheet, values only', found, more });
  return {
    bytes,
    said: [`Excel file ${fileName}: the sheet in sight alone, values only, no live formulas. ${asOfSentence(found)}`, ...about].join(' '),
  };
}
