// Rewrites a formula for the document it stands in: sheets and names under the names they have there, and between the
// arguments the separator that the host takes.

/**
 * Google Sheets takes a semicolon in every locale, as people report who write formulas by script, and is asked before sheets are inserted; the local
 * grid takes the comma of the templates.
 */
export type ArgumentSeparator = ';' | ',';

export interface NewNames {
  /** Sheet name in the template to sheet name in the document. */
  readonly sheets: ReadonlyMap<string, string>;
  /** Likewise for the names of ranges. */
  readonly ranges: ReadonlyMap<string, string>;
  /** What the document takes between arguments, where it was asked. */
  readonly separator?: ArgumentSeparator;
}

/** A sheet's name as hosts write it without quotation marks: none of the characters that mean something else in a formula. */
export const bareSheet = '[^\\s!$%^&*()+\\-=[\\]{};\':"\\\\|,<>/?@#\uff08\uff09]+';

/** "text" or #REF! and its like | 'Sheet name'! or Sheet! | word, with what follows it where that tells what the word is | comma | anything else. */
const part = new RegExp(
  `("(?:[^"]|"")*"|#[A-Z/0]+!)|(?:'((?:[^']|'')*)'|(${bareSheet}))\\s*!|([\\p{L}\\p{N}_.]+)(\\s*\\()?|(,)|[^"'#,\\p{L}\\p{N}_.]+|[\\s\\S]`,
  'gu',
);

export const quotedSheet = (name: string): string => `'${name.replace(/'/g, "''")}'`;

const sheetIn = (quoted: string | undefined, bare: string | undefined): string | undefined => quoted?.replace(/''/g, "'") ?? bare;

export function rewriteFormula(formula: string, { sheets, ranges, separator: asked = ';' }: NewNames, separator = asked): string {
  const renamedSheet = (name: string): string => quotedSheet(sheets.get(name) ?? name);
  return formula.replace(part, (whole: string, text?: string, quoted?: string, bare?: string, word?: string, call?: string, comma?: string) => {
    if (text !== undefined) return whole;
    const sheet = sheetIn(quoted, bare);
    if (sheet !== undefined) return `${renamedSheet(sheet)}!`;
    if (comma !== undefined) return separator;
    return word === undefined || call !== undefined ? whole : (ranges.get(word) ?? word);
  });
}

export interface References {
  readonly sheets: ReadonlySet<string>;
  readonly words: ReadonlySet<string>;
}

/** The sheets that a formula names, and every bare word in it (its range names are among them). */
export function referencesOf(formula: string): References {
  const sheets = new Set<string>();
  const words = new Set<string>();
  formula.replace(part, (whole: string, _text?: string, quoted?: string, bare?: string, word?: string, call?: string) => {
    const sheet = sheetIn(quoted, bare);
    if (sheet !== undefined) sheets.add(sheet);
    else if (word !== undefined && call === undefined) words.add(word);
    return whole;
  });
  return { sheets, words };
}
