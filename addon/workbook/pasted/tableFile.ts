// A table of Manual tables as a file of comma-separated values, taken out just as it stands in the sheet, and read again cell by cell: what was
// taken out comes back to the very same cells. Numbers that another program wrote so that they can be read in two ways are asked about.
import Papa from 'papaparse';
import { meaningOf, plainSigns } from './numberText';
import type { PasteAnswers, Pasted, PastedCell, PasteQuestion } from './readPasted';
import type { TableKind } from './tableKinds';
import type { TableRow } from './tableRows';
import type { CellValue } from '../snapshot';

/** The first column, which names the table in every row. */
const tableColumn = 'table';

/** The keys of a list's columns with their headings in the sheet; the names of the aircraft are none of them. */
export type Headings = ReadonlyMap<string, string>;

/** A figure with three decimals gets a fourth, so that no program can take its point for one between thousands. */
function printed(value: CellValue): string {
  if (typeof value !== 'number') return String(value);
  const text = String(value).includes('e') ? value.toFixed(20).replace(/0+$/, '').replace(/\.$/, '') : String(value);
  return /\.\d{3}$/.test(text) ? `${text}0` : text;
}

/** As RFC 4180 has it, with the mark by which spreadsheets know UTF-8. */
export function tableFile({ title }: TableKind, headings: Headings, rows: readonly Readonly<Record<string, CellValue>>[]): string {
  const keys = [...headings.keys()];
  const lines = rows.map((row) => [title, ...keys.map((key) => (row[key] === undefined ? '' : printed(row[key])))]);
  return `\ufeff${Papa.unparse([[tableColumn, ...headings.values()], ...lines], { newline: '\r\n' })}\r\n`;
}

export interface OwnTable {
  readonly pasted: Pasted;
  /** Sentences: why nothing is taken. */
  readonly problems: readonly string[];
  /** Undefined while anything is open. */
  readonly rows: readonly TableRow[] | undefined;
}

/** A spreadsheet would make a formula, a number or a date of these. A dash alone says that a column is none. */
const readOtherwise = /^[=+\-@']|^[\d.,:/\s-]+$|^[\d.,]+ ?%$|^[\d.,]+e[+-]?\d+$|^(true|false)$/i;
const longestText = 300;

function cellRead(text: string, { commas, points }: PasteAnswers): PastedCell {
  if (text === '') return { kind: 'hole' };
  const meaning = meaningOf(text);
  const isBare = (meaning.kind === 'number' || meaning.kind === 'open') && meaning.unit === '' && meaning.marks === '';
  if (!isBare) return { kind: 'words', text };
  const answer = meaning.kind === 'open' ? (meaning.sign === ',' ? commas : points) : undefined;
  return meaning.kind === 'open' && answer !== undefined ? { kind: 'number', value: meaning[answer], unit: '', marks: '' } : meaning;
}

function headProblems(given: readonly string[], headings: Headings): string[] {
  const wanted = [...headings.values()];
  const strange = given.slice(1).filter((head) => !wanted.includes(head));
  const missing = wanted.filter((head) => !given.includes(head));
  return [
    ...strange.map((head) => `The column "${head}" is none of this table in Manual tables.`),
    ...missing.map((head) => `The column "${head}" is missing.`),
    ...[...new Set(given.filter((head, index) => given.indexOf(head) !== index))].map((head) => `The column "${head}" stands there twice.`),
  ];
}

interface Line {
  readonly line: number;
  readonly texts: readonly string[];
  readonly cells: readonly PastedCell[];
}

function lineProblems({ line, texts, cells }: Line, columns: number, { title }: TableKind): string[] {
  if (texts.length !== columns) return [`Line ${line} has ${texts.length} columns, and the headings ${columns}.`];
  if (texts[0] !== title) return [`Line ${line} is of "${texts[0] ?? ''}", and "${title}" is chosen above.`];
  return cells.flatMap((cell, index) =>
    cell.kind === 'words' &&
    cell.text !== '-' &&
    (readOtherwise.test(cell.text) || cell.text.length > longestText || /[\u0000-\u001f\u007f]/.test(cell.text))
      ? [`Line ${line}, column ${index + 1}: "${cell.text.slice(0, 60)}" is neither a number nor words that a cell can hold.`]
      : [],
  );
}

function signQuestions(lines: readonly Line[]): PasteQuestion[] {
  const all = lines.flatMap(({ texts, cells }) => cells.flatMap((cell, index) => (cell.kind === 'open' ? [{ cell, text: texts[index] ?? '' }] : [])));
  return ([',', '.'] as const).flatMap((sign): PasteQuestion[] => {
    const open = all.filter(({ cell }) => cell.sign === sign);
    const [first] = open;
    if (first === undefined) return [];
    return [{ kind: 'sign', sign, text: first.text, thousands: first.cell.thousands, decimals: first.cell.decimals, cells: open.length }];
  });
}

function rowOf({ cells }: Line, keys: readonly (string | undefined)[]): TableRow {
  return Object.fromEntries(
    cells.flatMap((cell, index): (readonly [string, number | string])[] => {
      const key = keys[index];
      if (key === undefined) return [];
      return cell.kind === 'number' ? [[key, cell.value]] : cell.kind === 'words' ? [[key, cell.text]] : [];
    }),
  );
}

/** Text whose first line has the headings of a table taken out, its columns parted by tabs. Undefined: it is none, and is read as a pasted table. */
export function ownTable(text: string, kind: TableKind, headings: Headings, answers: PasteAnswers): OwnTable | undefined {
  const [head, ...lines] = text.split(/\r\n|\r|\n/).map((whole, index): Line => {
    const texts = whole.split('\t').map((cell) => cell.trim());
    return { line: index + 1, texts, cells: texts.map((cell) => cellRead(plainSigns(cell) === '-' ? '-' : cell, answers)) };
  });
  if (head?.texts[0] !== tableColumn || head.texts.length < 2) return undefined;
  const body = lines.filter(({ texts }) => texts.some((cell) => cell !== ''));
  const questions = signQuestions(body);
  const problems = [
    ...headProblems(head.texts, headings),
    ...(body.length === 0 ? ['There are no rows below the headings.'] : []),
    ...body.flatMap((line) => lineProblems(line, head.texts.length, kind)).slice(0, 5),
  ];
  const keys = head.texts.map((heading) => [...headings].find(([, one]) => one === heading)?.[0]);
  const heads = head.texts.map((one): PastedCell => ({ kind: 'words', text: one }));
  return {
    pasted: { rows: [{ line: 1, cells: heads }, ...body.map(({ line, cells }) => ({ line, cells }))], questions },
    problems,
    rows: questions.length > 0 || problems.length > 0 ? undefined : body.map((line) => rowOf(line, keys)),
  };
}
