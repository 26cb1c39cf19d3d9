// The words of version 2 of every sheet, from version2.json: they are what they were, whatever the sheets of today say.
import type { OwnContents } from '../carry/oldEntries';
import { formulaShape } from '../formulaSense';
import type { CellPlace, SheetSnapshot } from '../snapshot';
import { wordsOf, type Heading } from '../carry/sections';
import data from './version2.json';

export interface Label extends CellPlace {
  readonly text: string;
}

export interface Version2Sheet {
  readonly key: string;
  readonly texts: readonly (readonly [row: number, column: number, text: string, kind: 'heading' | 'label' | 'other'])[];
  /** Cells as A1: of the entry, of the text beside it, of the head above it; the name of the workbook that means it. */
  readonly singles: readonly {
    readonly key: string;
    readonly cell: string;
    readonly label: string;
    readonly head?: string;
    readonly name?: string;
  }[];
  readonly lists: readonly {
    readonly key: string;
    readonly first: number;
    readonly columns: readonly { readonly key: string; readonly column: number; readonly head: string }[];
  }[];
  readonly widths: Readonly<Record<string, number>>;
  /** Of its formulas, as short numbers. */
  readonly shapes: readonly string[];
}

/** The last version without keys; those before are found by the same words. */
const lastVersion = 2;
const sheets = data as unknown as readonly Version2Sheet[];

/** Undefined for a sheet that should have keys. */
export const version2Of = ({ mark }: Pick<SheetSnapshot, 'mark'>): Version2Sheet | undefined =>
  mark === undefined || mark.version > lastVersionOf(mark.key) ? undefined : sheets.find(({ key }) => key === mark.key);

/** Two of the sheets were of version 1 still. */
const lastVersionOf = (key: string): number => (key === 'start' || key === 'tables' ? 1 : lastVersion);

export function textsOf({ texts }: Version2Sheet): {
  readonly headings: readonly Heading[];
  readonly labels: readonly Label[];
  readonly fixed: readonly Label[];
} {
  const of = (wanted: readonly string[]): Label[] =>
    texts.flatMap(([row, column, text, kind]) => (wanted.includes(kind) ? [{ row, column, text }] : []));
  const fixed = of(['heading', 'label', 'other']).sort((one, other) => one.row - other.row || one.column - other.column);
  return { headings: of(['heading']).map((one) => ({ ...one, words: wordsOf(one.text) })), labels: of(['heading', 'label']), fixed };
}

/** Thirty-two bits of a text. */
function shortened(text: string): string {
  let sum = 5381;
  for (let index = 0; index < text.length; index += 1) sum = (Math.imul(sum, 33) ^ text.charCodeAt(index)) >>> 0;
  return sum.toString(36);
}

/** What the sheet showed then, beside what it shows today. */
export function ownOfVersion2({ texts, widths, shapes }: Version2Sheet, today: OwnContents): OwnContents {
  const known = new Set(shapes);
  return {
    texts: new Set([...today.texts, ...texts.map(([, , text]) => text)]),
    constants: today.constants,
    widths: new Map([...today.widths, ...Object.entries(widths)]),
    // The rows kept today are not those of then.
    heights: new Map(),
    isFormula: (text) => today.isFormula(text) || known.has(shortened(formulaShape(text))),
  };
}
