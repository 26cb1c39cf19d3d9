// Rewrites a formula for the document it stands in: sheets and names under the names they have there, and between the
// arguments the separator that the host takes.

/** Google Sheets takes a semicolon in every locale; the local grid takes the comma of the templates. */
export type ArgumentSeparator = ';' | ',';

export interface NewNames {
  /** Sheet name in the template to sheet name in the document. */
  readonly sheets: ReadonlyMap<string, string>;
  /** Likewise for the names of ranges. */
  readonly ranges: ReadonlyMap<string, string>;
}

/** "text" or #REF! and its like | 'Sheet name'! | word, with what follows it where that tells what the word is | comma | anything else. */
const part = /("(?:[^"]|"")*"|#[A-Z/0]+!)|'((?:[^']|'')*)'!|([\p{L}\p{N}_.]+)(\s*[!(])?|(,)|[^"'#,\p{L}\p{N}_.]+|[\s\S]/gu;

export const quotedSheet = (name: string): string => `'${name.replace(/'/g, "''")}'`;

export function rewriteFormula(formula: string, { sheets, ranges }: NewNames, separator: ArgumentSeparator = ';'): string {
  const renamedSheet = (name: string): string => quotedSheet(sheets.get(name) ?? name);
  return formula.replace(part, (whole: string, text?: string, quoted?: string, word?: string, after = '', comma?: string) => {
    if (text !== undefined) return whole;
    if (quoted !== undefined) return `${renamedSheet(quoted.replace(/''/g, "'"))}!`;
    if (comma !== undefined) return separator;
    if (word === undefined || after.endsWith('(')) return whole;
    if (after.endsWith('!')) return `${renamedSheet(word)}!`;
    return `${ranges.get(word) ?? word}${after}`;
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
  formula.replace(part, (whole: string, _text?: string, quoted?: string, word?: string, after = '') => {
    if (quoted !== undefined) sheets.add(quoted.replace(/''/g, "'"));
    else if (word !== undefined && after.endsWith('!')) sheets.add(word);
    else if (word !== undefined && !after.endsWith('(')) words.add(word);
    return whole;
  });
  return { sheets, words };
}
