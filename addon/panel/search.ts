// Finds functions by words: all of them must occur somewhere in what is known of the function.
import type { FunctionEntry } from './catalogue';

const plain = (text: string): string => text.toLowerCase().replace(/[_-]+/g, ' ');

/** Lower is better: the name itself, then its beginning, then anywhere in the name, then the words about it. */
function rank(entry: FunctionEntry, words: readonly string[], phrase: string): number | undefined {
  const name = plain(entry.name);
  const about = plain(
    [
      entry.name,
      entry.subject,
      entry.summary,
      ...entry.parameters.map((one) => `${one.name} ${one.unit}`),
      ...entry.results.map((one) => one.name),
    ].join(' '),
  );
  if (!words.every((word) => about.includes(word))) return undefined;
  if (name === phrase) return 0;
  if (name.startsWith(phrase)) return 1;
  return words.every((word) => name.includes(word)) ? 2 : 3;
}

export function searchFunctions(entries: readonly FunctionEntry[], wanted: string): readonly FunctionEntry[] {
  const phrase = plain(wanted).trim();
  if (phrase === '') return entries;
  const words = phrase.split(/\s+/);
  const ranked = entries.map((entry) => ({ entry, place: rank(entry, words, phrase) }));
  return [0, 1, 2, 3].flatMap((place) => ranked.filter((one) => one.place === place).map(({ entry }) => entry));
}
