// What the columns of a file of flights are, where a person has said so: headings of any language, and files that name nothing as we do.
import Papa from 'papaparse';
import { logHeadings, passedOverHeadings, type LogColumn } from '../../core/currency/flightLog';
import { saidHeadings } from '../../core/currency/logColumns';
import { plainWords } from '../../functions/registry/readText';

export type Column = LogColumn | 'date' | 'aircraft';

/** '' is a column that nothing is taken from; pilot is whose flight it is. */
export type Meaning = Column | 'pilot' | '';

export interface NamedColumns {
  /** Of the whole line, in plain words: a file with the same ones is read in the same way. */
  readonly headings: readonly string[];
  /** One for each of them. */
  readonly meanings: readonly Meaning[];
}

/** The line of a file that seems to hold the headings, with a little of what stands below. */
export interface FileColumns {
  readonly headings: readonly string[];
  /** For each column, up to three different contents. */
  readonly samples: readonly (readonly string[])[];
}

/** Headings stand in the first line, or under a few lines of title. */
export const linesOfTitle = 15;

const maxSamples = 3;
const rowsLooked = 200;

export const columnMeanings = Object.keys(logHeadings) as Column[];

export const plainHeadings = (cells: readonly string[]): string[] => cells.map(plainWords);

export const isHeadedBy = (cells: readonly string[], { headings }: NamedColumns): boolean =>
  cells.length === headings.length && plainHeadings(cells).every((heading, index) => heading === headings[index]);

const filled = (cells: readonly string[]): number => cells.filter((cell) => cell.trim() !== '').length;

/** The first line that is as full as any: titles above it have fewer cells. Undefined where no line has two. */
export function fileColumns(text: string): FileColumns | undefined {
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: true, preview: rowsLooked });
  const top = data.slice(0, linesOfTitle);
  const most = Math.max(0, ...top.map(filled));
  const at = top.findIndex((cells) => filled(cells) === most);
  const headings = top[at];
  if (headings === undefined || most < 2) return undefined;
  const samples = headings.map((_, column) => {
    const contents = data.slice(at + 1).map((cells) => (cells[column] ?? '').trim());
    return [...new Set(contents.filter((content) => content !== ''))].slice(0, maxSamples);
  });
  return { headings: headings.map((heading) => heading.trim()), samples };
}

/** By their places in the line: what a person named goes before what the headings say. */
export function placesNamed({ meanings }: NamedColumns): Map<Column, number> {
  const places = new Map<Column, number>();
  for (const column of columnMeanings) {
    const at = meanings.indexOf(column);
    if (at >= 0) places.set(column, at);
  }
  return places;
}

/** The column of people, where a person has named one. */
export function pilotNamed(named: NamedColumns | undefined): number | undefined {
  const at = named?.meanings.indexOf('pilot') ?? -1;
  return at < 0 ? undefined : at;
}

/** Why the columns cannot be taken so, or undefined. */
export function wrongNaming({ meanings }: Pick<NamedColumns, 'meanings'>, inWords: (meaning: Meaning) => string): string | undefined {
  const twice = meanings.find((one, index) => one !== '' && meanings.indexOf(one) !== index);
  if (twice !== undefined) return `Two columns are given as "${inWords(twice)}". One of them is another, or not used.`;
  const missing = (['date', 'aircraft'] as const).filter((needed) => !meanings.includes(needed));
  if (missing.length > 0) return `Say which column is the ${missing.join(', and which the ')}: a flight cannot be read without.`;
  return meanings.every((one) => one === '' || one === 'date' || one === 'aircraft' || one === 'pilot')
    ? 'Say at least one column that counts something: landings, take-offs or hours.'
    : undefined;
}

const remarks = ['remark', 'remarks', 'note', 'notes'];
const neverCounted: ReadonlySet<string> = new Set([...passedOverHeadings, ...Object.values(saidHeadings).flat(), ...remarks, '']);

/** Headings that nobody knows: what stands below them could be landings. */
export const strange = (passedOver: readonly string[]): string[] => passedOver.filter((heading) => !neverCounted.has(plainWords(heading)));
