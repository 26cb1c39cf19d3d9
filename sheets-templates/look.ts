// The one look of every sheet: styles, number formats and verdict tints, for whichever writer draws them.
// Tints are lightened from the colour-blind-safe palette of Okabe and Ito (Color Universal Design, 2008).

export interface CellLook {
  readonly background?: string;
  readonly color: string;
  readonly size: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly align?: 'left' | 'center' | 'right';
  readonly wrap?: boolean;
  readonly border?: 'bottom' | 'box';
}

export const fontFamily = 'Arial';
const ink = '#1b1f24';
const faint = '#57606a';
/** Inputs: a light tint of sky blue (Okabe and Ito 3). */
const inputTint = '#e3f1fb';

export const styles = {
  plain: { color: ink, size: 10 },
  title: { color: ink, size: 16, bold: true },
  subtitle: { color: faint, size: 10, italic: true },
  heading: { color: ink, size: 11, bold: true, border: 'bottom' },
  columnHead: { color: faint, size: 9, bold: true, wrap: true, border: 'bottom' },
  label: { color: ink, size: 10 },
  unit: { color: faint, size: 9 },
  text: { color: ink, size: 10, wrap: true },
  caution: { color: ink, size: 10, bold: true, wrap: true, border: 'box' },
  input: { background: inputTint, color: ink, size: 10, align: 'right', border: 'box' },
  inputText: { background: inputTint, color: ink, size: 10, align: 'left', border: 'box' },
  computed: { color: ink, size: 10, align: 'right' },
  computedText: { color: ink, size: 10, align: 'left' },
  reason: { color: ink, size: 10, wrap: true },
  verdict: { color: ink, size: 10, bold: true, align: 'center', border: 'box' },
  bigVerdict: { color: ink, size: 16, bold: true, align: 'center', border: 'box' },
  link: { color: '#0a5a8a', size: 10 },
} as const satisfies Record<string, CellLook>;

export type StyleName = keyof typeof styles;

export const formats = {
  whole: '#,##0',
  one: '#,##0.0',
  two: '#,##0.00',
  three: '#,##0.000',
  date: 'yyyy-mm-dd',
  dateTime: 'yyyy-mm-dd hh:mm',
  month: 'yyyy-mm',
  degrees: '000',
  clock: '0000',
  /** To a tenth where there is one: for a column of values of many kinds. */
  shown: '#,##0.0#',
  general: 'General',
  text: '@',
} as const;

export type FormatName = keyof typeof formats;

/** Series of a chart, in their order: Okabe and Ito's black, blue, vermilion, bluish green, reddish purple, told apart by any eye. */
export const chartColours: readonly string[] = ['#000000', '#0072b2', '#d55e00', '#009e73', '#cc79a7'];

/** Background behind each verdict word; the word itself always stands in the cell. */
export const verdictTints = {
  OK: '#bfe6d8',
  CHECK: '#f8eeb0',
  NO: '#f4c3a6',
  UNKNOWN: '#dcdcdc',
} as const;
