// Readers of words: free text, one of a list, yes or no, a verdict.
import type { Named } from '../../core/basics/named';
import { verdicts, type Verdict } from '../../core/basics/verdict';
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, shortened, type CellValue } from './cellValues';
import type { Parameter } from './declaration';

/** Lower case, one space between words: how choices are compared. */
export const plainWords = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');

export function text(options: { readonly help: string; readonly mustBe: string }): Parameter<string> & { readonly shape: 'cell' } {
  const read = (raw: CellValue): string => {
    const isText = typeof raw === 'string' || (typeof raw === 'number' && Number.isFinite(raw));
    if (!isText || isBlank(raw) || isErrorText(raw)) throw new ArgumentError(options.mustBe, inWords(raw));
    return String(raw).trim();
  };
  return { shape: 'cell', unit: '', mustBe: options.mustBe, help: options.help, optional: undefined, read };
}

/** A name, with the key by which capitals, spaces and hyphens do not tell it apart from another spelling. */
export function namedFromCell(raw: CellValue): Named | undefined {
  const isText = typeof raw === 'string' || (typeof raw === 'number' && Number.isFinite(raw));
  return !isText || isBlank(raw) || isErrorText(raw) ? undefined : { name: shortened(String(raw)), key: plainWords(String(raw)) };
}

/** A name that is shown and compared with no other. */
export function shownName(options: { readonly help: string; readonly mustBe: string }): Parameter<string> & { readonly shape: 'cell' } {
  const base = text(options);
  return { ...base, optional: undefined, read: (raw, dates) => shortened(base.read(raw, dates)) };
}

export function namedText(options: { readonly help: string; readonly mustBe: string }): Parameter<Named> & { readonly shape: 'cell' } {
  const read = (raw: CellValue): Named => {
    const named = namedFromCell(raw);
    if (named === undefined) throw new ArgumentError(options.mustBe, inWords(raw));
    return named;
  };
  return { shape: 'cell', unit: '', mustBe: options.mustBe, help: options.help, optional: undefined, read };
}

/** One of a list of words; `also` gives other spellings of the same choice. */
export function choice<Word extends string>(options: {
  readonly help: string;
  readonly words: readonly Word[];
  readonly also?: Readonly<Record<string, Word>>;
}): Parameter<Word> & { readonly shape: 'cell'; readonly read: (raw: CellValue) => Word } {
  const mustBe = `one of ${options.words.join(', ')}`;
  /** Every spelling, plain; made at the first call, since most loads of the code never read this choice. */
  let known: ReadonlyMap<string, Word> | undefined;
  const spellings = (): ReadonlyMap<string, Word> =>
    new Map(
      [...Object.entries(options.also ?? {}), ...options.words.map((word) => [word, word] as const)].map(([spelling, word]) => [
        plainWords(spelling),
        word,
      ]),
    );
  const read = (raw: CellValue): Word => {
    known ??= spellings();
    const found = known.get(plainWords(typeof raw === 'string' || typeof raw === 'number' ? String(raw) : ''));
    if (found === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return found;
  };
  return { shape: 'cell', unit: '', mustBe, help: options.help, optional: undefined, read };
}

/** A tick box, or the word. */
export function yesNo(help: string): Parameter<boolean> & { readonly shape: 'cell' } {
  const mustBe = 'yes or no (or a tick box)';
  const read = (raw: CellValue): boolean => {
    if (typeof raw === 'boolean') return raw;
    const word = typeof raw === 'string' ? plainWords(raw) : '';
    if (word === 'yes' || word === 'true') return true;
    if (word === 'no' || word === 'false') return false;
    throw new ArgumentError(mustBe, inWords(raw));
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}

/** A verdict cell. Whatever is not one of the four words (a blank, an error) was not proved: UNKNOWN. */
export function verdict(help: string): Parameter<Verdict> & { readonly shape: 'cell' } {
  const read = (raw: CellValue): Verdict => {
    const given = typeof raw === 'string' ? raw.trim().toUpperCase() : '';
    return verdicts.find((word) => word === given) ?? 'UNKNOWN';
  };
  return { shape: 'cell', unit: '', mustBe: verdicts.join(', '), help, optional: undefined, read };
}
