// The sections of a sheet: everything below a heading and to its right, up to the next heading.
import type { SheetTemplate } from '../../../sheets-templates/template';
import type { CellPlace, SheetSnapshot } from '../snapshot';
import { textAt } from '../templateLabels';

export interface Heading extends CellPlace {
  readonly text: string;
  /** Without the number before it, which changes when a section comes or goes. */
  readonly words: string;
}

const wordsOf = (heading: string): string => heading.replace(/^\d+\s+/, '').trim();

export const headingsOf = ({ cells }: SheetTemplate): Heading[] =>
  cells.flatMap(({ row, column, style, value }) => (style === 'heading' && typeof value === 'string' && value !== '' ? [{ row, column, text: value.trim(), words: wordsOf(value) }] : []));

/** Where the headings of the template stand in a sheet: the same text, else the same words after another number; one that stands there twice is not known. */
export function headingsIn(sheet: SheetSnapshot, wanted: readonly Heading[]): Heading[] {
  const words = new Set(wanted.map((heading) => heading.words));
  const texts = sheet.values.flatMap((line, row) => line.flatMap((_, column): Heading[] => {
    const text = textAt(sheet, row + 1, column + 1);
    return words.has(wordsOf(text)) ? [{ row: row + 1, column: column + 1, text, words: wordsOf(text) }] : [];
  }));
  return wanted.flatMap((heading) => {
    const same = texts.filter(({ text }) => text === heading.text);
    const alike = same.length > 0 ? same : texts.filter((one) => one.words === heading.words);
    return alike.length === 1 ? alike : [];
  });
}

/** The heading that a cell stands under; "" above the first. */
export function sectionOf(headings: readonly Heading[], { row, column }: CellPlace): string {
  const above = headings.filter((heading) => heading.row <= row && heading.column <= column);
  const nearest = above.reduce<Heading | undefined>((best, one) => (best === undefined || one.row > best.row || (one.row === best.row && one.column > best.column) ? one : best), undefined);
  return nearest?.words ?? '';
}
