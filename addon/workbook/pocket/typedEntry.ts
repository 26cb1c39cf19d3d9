// What somebody typed into an entry of a form: read by the number format of its cell, and refused where the cell's own rule refuses it.
import { isDatePattern } from '../datePattern';
import { serialFromIso } from '../serialDates';
import type { CellValue } from '../snapshot';
import { readEntry } from '../typed/readEntry';

/** What may be entered into a cell. */
export type EntryRule =
  /** `values`: what a choice writes, where that is no text. */
  | { readonly kind: 'choices'; readonly choices: readonly string[]; readonly values?: ReadonlyMap<string, CellValue> }
  | { readonly kind: 'number'; readonly minimum: number; readonly maximum: number }
  | { readonly kind: 'date' }
  | undefined;

export interface EntryLook {
  readonly rule: EntryRule;
  /** What the rule says where it refuses; "" where there is none. */
  readonly help: string;
  /** The cell's number format; "" for none, @ for text. */
  readonly pattern: string;
}

const plainNumber = /^[-+]?(?:\d+\.?\d*|\.\d+)$/;

export type Typed = { readonly content: CellValue } | { readonly refusal: string };

export const notTaken = (text: string, help: string): string => `"${text}" is not taken here. ${help}`.trim();

function readNumber(given: string, { rule, help }: EntryLook): Typed {
  const read = readEntry(given, 'number') ?? { text: given };
  if ('said' in read) return { refusal: read.said };
  const value = plainNumber.test(read.text) ? Number(read.text) : undefined;
  if (rule?.kind !== 'number') return { content: value ?? given };
  return value === undefined || value < rule.minimum || value > rule.maximum ? { refusal: notTaken(given, help) } : { content: value };
}

function readDay(given: string, { help }: EntryLook): Typed {
  const read = readEntry(given, 'date');
  if (read === undefined) return { refusal: notTaken(given, help === '' ? 'A date, such as 2026-11-28.' : help) };
  return 'said' in read ? { refusal: read.said } : { content: serialFromIso(read.text) };
}

/** `given` without blanks at its ends; "" empties the cell, which every rule allows. */
export function readTyped(given: string, look: EntryLook): Typed {
  const { rule, help, pattern } = look;
  if (given === '') return { content: '' };
  // One spreadsheet would make a formula of it, another a text.
  if (given.startsWith('=')) return { refusal: `"${given}" begins as a formula. Type formulas into the sheet itself. Nothing was changed.` };
  if (rule?.kind === 'choices')
    return rule.choices.includes(given) ? { content: rule.values?.get(given) ?? given } : { refusal: notTaken(given, help) };
  if (rule?.kind === 'date' || (rule === undefined && isDatePattern(pattern))) return readDay(given, look);
  return rule === undefined && pattern === '@' ? { content: given } : readNumber(given, look);
}
