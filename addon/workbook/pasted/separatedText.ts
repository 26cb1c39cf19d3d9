// A file of separated values as lines parted by tabs, to be read as a pasted table. Which sign parts its columns is taken from the file only where one
// alone can: a comma may be a decimal one.
import Papa from 'papaparse';

export const separators = { ';': 'semicolons', ',': 'commas', '\t': 'tabs' } as const;
export type Separator = keyof typeof separators;

export type SeparatedText =
  | { readonly text: string }
  /** Several signs part every line alike. */
  | { readonly choices: readonly Separator[] }
  | { readonly problem: string };

const mostCharacters = 1_000_000;

interface Parted {
  readonly separator: Separator;
  readonly lines: readonly (readonly string[])[];
  readonly isWhole: boolean;
}

function parted(text: string, separator: Separator): Parted {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: separator, skipEmptyLines: 'greedy' });
  const width = data[0]?.length ?? 0;
  return { separator, lines: data, isWhole: errors.length === 0 && width > 1 && data.every((line) => line.length === width) };
}

function joined({ lines }: Parted): SeparatedText {
  const row = lines.findIndex((line) => line.some((cell) => /[\t\r\n]/.test(cell.trim())));
  if (row >= 0)
    return {
      problem: `Row ${row + 1} of the file has a cell of several lines, or one with a tab in it. Take those out of it, then choose the file again.`,
    };
  return { text: lines.map((line) => line.map((cell) => cell.trim()).join('\t')).join('\n') };
}

/** `chosen` answers what parts the columns. */
export function separatedText(file: string, chosen?: Separator): SeparatedText {
  const text = file.replace(/^\ufeff/, '');
  if (text.trim() === '') return { problem: 'The file is empty.' };
  if (text.length > mostCharacters) return { problem: 'The file is larger than any table of a manual. Is it another one?' };
  if (/[\u0000\ufffd]/.test(text))
    return { problem: 'The file is no text in UTF-8, so its signs cannot be read for certain. Save it as CSV in UTF-8, then choose it again.' };
  const ways = (Object.keys(separators) as Separator[]).map((separator) => parted(text, separator)).filter(({ isWhole }) => isWhole);
  const way = ways.length === 1 ? ways[0] : ways.find(({ separator }) => separator === chosen);
  if (way !== undefined) return joined(way);
  if (ways.length > 1) return { choices: ways.map(({ separator }) => separator) };
  return {
    problem:
      'No sign parts every line of this file into the same number of columns: neither semicolons nor commas nor tabs. Copy the table itself out of it, and paste it here.',
  };
}
