// The sections of a sheet: everything below a heading and to its right, up to the next heading.
import type { SheetTemplate } from '../../../sheets-templates/template';
import type { CellPlace } from '../snapshot';

export interface Heading extends CellPlace {
  readonly text: string;
  /** Without the number before it, which changes when a section comes or goes. */
  readonly words: string;
}

export const wordsOf = (heading: string): string => heading.replace(/^\d+\s+/, '').trim();

export const headingsOf = ({ cells }: SheetTemplate): Heading[] =>
  cells.flatMap(({ row, column, style, value }) =>
    style === 'heading' && typeof value === 'string' && value !== '' ? [{ row, column, text: value.trim(), words: wordsOf(value) }] : [],
  );

/** The heading that a cell stands under; "" above the first. */
export function sectionOf(headings: readonly Heading[], { row, column }: CellPlace): string {
  const above = headings.filter((heading) => heading.row <= row && heading.column <= column);
  const nearest = above.reduce<Heading | undefined>(
    (best, one) => (best === undefined || one.row > best.row || (one.row === best.row && one.column > best.column) ? one : best),
    undefined,
  );
  return nearest?.words ?? '';
}
