// A section of the report: a heading, a table, and what has to be said about it.

export interface Section {
  readonly title: string;
  readonly heads: readonly string[];
  /** As many cells as heads; the first is what was measured. */
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

export const met = (isMet: boolean): string => (isMet ? 'met' : 'MISSED');
export const milliseconds = (value: number): string => value.toFixed(value < 100 ? 1 : 0);
export const times = (ratio: number): string => `${ratio.toFixed(ratio < 10 ? 2 : 1)} x`;

export function printed({ title, heads, rows, notes }: Section): string {
  const widths = heads.map((head, column) => Math.max(head.length, ...rows.map((row) => (row[column] ?? '').length)));
  const line = (cells: readonly string[]): string =>
    `  ${widths.map((width, column) => (column === 0 ? (cells[column] ?? '').padEnd(width) : (cells[column] ?? '').padStart(width))).join('  ')}`.trimEnd();
  return [title, line(heads), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line), ...notes.map((note) => `  ${note}`), ''].join('\n');
}
