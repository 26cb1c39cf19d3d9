// Where the headings of version 2 stand in a sheet.
import { wordsOf, type Heading } from '../carry/sections';
import type { SheetSnapshot } from '../snapshot';
import { textAt } from '../templateLabels';

/** The same text, else the same words after another number; one that stands there twice is not known. */
export function headingsIn(sheet: SheetSnapshot, wanted: readonly Heading[]): Heading[] {
  const words = new Set(wanted.map((heading) => heading.words));
  const texts = sheet.values.flatMap((line, row) =>
    line.flatMap((_, column): Heading[] => {
      const text = textAt(sheet, row + 1, column + 1);
      return words.has(wordsOf(text)) ? [{ row: row + 1, column: column + 1, text, words: wordsOf(text) }] : [];
    }),
  );
  return wanted.flatMap((heading) => {
    const same = texts.filter(({ text }) => text === heading.text);
    const alike = same.length > 0 ? same : texts.filter((one) => one.words === heading.words);
    return alike.length === 1 ? alike : [];
  });
}
