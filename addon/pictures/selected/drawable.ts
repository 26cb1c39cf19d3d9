// One picture that a sheet can give, and the cells to which it belongs.
export interface Span {
  readonly first: number;
  readonly last: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Drawing {
  readonly svg: string;
  /** In a few words. */
  readonly what: string;
  readonly row: number;
}

export interface Drawable {
  readonly rows: Span;
  readonly columns: Span;
  /** For the sentence that says what to select. */
  readonly name: string;
  /** `selectedRow` may lie outside the rows where the picture is the nearest one. Throws NotDrawn. */
  readonly draw: (selectedRow: number, size: Size) => Drawing;
}

export const distance = ({ first, last }: Span, place: number): number => Math.max(0, first - place, place - last);

/** So many rows and columns from a call on. */
export const from = (
  { row, column }: { readonly row: number; readonly column: number },
  rows: number,
  columns: number,
): Pick<Drawable, 'rows' | 'columns'> => ({
  rows: { first: row, last: row + Math.max(1, rows) - 1 },
  columns: { first: column, last: column + columns - 1 },
});
