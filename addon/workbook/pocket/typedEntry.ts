// What somebody typed into an entry of a form: read by the number format of its cell, and refused where the cell's own rule refuses it.
import { isDatePattern } from '../datePattern';
import { isoFromSerial, serialFromIso } from '../serialDates';
import type { CellValue } from '../snapshot';

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

/** A number pad may have no point: 6,5 is meant as 6.5, but 1,500 could be two numbers. */
const comma = /^[-+]?\d+,\d+$/;

/** The number with a point in it; a sentence where the text can be two numbers. */
export function withPoint(text: string): { readonly text: string } | { readonly refusal: string } {
  if (!comma.test(text)) return { text };
  const [together, parted] = [text.replace(',', ''), text.replace(',', '.')];
  if (!/,\d{3}$/.test(text)) return { text: parted };
  return { refusal: `"${text}" can be two numbers. Type it without a comma: ${together} or ${parted}. Nothing was changed.` };
}

export const isoDay = /^\d{4}-\d\d-\d\d$/;
const plainNumber = /^[-+]?(?:\d+\.?\d*|\.\d+)$/;

export type Typed = { readonly content: CellValue } | { readonly refusal: string };

export const notTaken = (text: string, help: string): string => `"${text}" is not taken here. ${help}`.trim();

/** 2026-02-30 has the form of a day, and is none. */
const isDay = (text: string): boolean => isoDay.test(text) && !Number.isNaN(serialFromIso(text)) && isoFromSerial(serialFromIso(text)) === text;

function readNumber(text: string, { rule, help }: EntryLook): Typed {
  const pointed = withPoint(text);
  if ('refusal' in pointed) return pointed;
  const value = plainNumber.test(pointed.text) ? Number(pointed.text) : undefined;
  if (rule?.kind !== 'number') return { content: value ?? text };
  return value === undefined || value < rule.minimum || value > rule.maximum ? { refusal: notTaken(text, help) } : { content: value };
}

/** `given` without blanks at its ends; "" empties the cell, which every rule allows. */
export function readTyped(given: string, look: EntryLook): Typed {
  const { rule, help, pattern } = look;
  if (given === '') return { content: '' };
  // One spreadsheet would make a formula of it, another a text.
  if (given.startsWith('=')) return { refusal: `"${given}" begins as a formula. Type formulas into the sheet itself. Nothing was changed.` };
  if (rule?.kind === 'choices')
    return rule.choices.includes(given) ? { content: rule.values?.get(given) ?? given } : { refusal: notTaken(given, help) };
  if (rule?.kind === 'date' || (rule === undefined && isDatePattern(pattern)))
    return isDay(given) ? { content: serialFromIso(given) } : { refusal: notTaken(given, help === '' ? 'A date, such as 2026-11-28.' : help) };
  return rule === undefined && pattern === '@' ? { content: given } : readNumber(given, look);
}
