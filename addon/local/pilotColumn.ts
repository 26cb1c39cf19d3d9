// The column of a file of flights that says who flew. Landings of other people counted as one's own would look like recent experience.
import { plainWords } from '../../functions/registry/readText';

export interface PilotColumn {
  readonly at: number;
  readonly heading: string;
  /** Everybody named there, in the order of the file; '' where a row names nobody. */
  readonly names: readonly string[];
}

const ofPilot = /\bpilot|\bpic\b|\bp1\b|\bcaptain\b|\bcommander\b|\bcrew\b|\bmember\b|\bflown by\b|\bname\b|\bwho\b/;
/** Others who may sit in one's own flights, and names of things. */
const ofOthers =
  /\bco ?pilot|\bsecond\b|\bsafety\b|\binstructor\b|\bexaminer\b|\bstudent\b|\bpassengers?\b|\baircraft\b|\bfield\b|\bairfield\b|\bplace\b|\broute\b|\bfile\b/;

/** The names of a column, each once whatever its capitals. */
function namesIn(rows: readonly (readonly string[])[], at: number): string[] {
  const names = new Map<string, string>();
  for (const row of rows) {
    const name = (row[at] ?? '').trim();
    if (!names.has(plainWords(name))) names.set(plainWords(name), name);
  }
  return [...names.values()];
}

/** The column with the most to ask: one of several names before one of a single name. A column of hours holds no names. `named`: the one that a person has named. */
export function pilotColumn(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  isName: (cell: string) => boolean,
  named?: number,
): PilotColumn | undefined {
  if (named !== undefined) return { at: named, heading: (header[named] ?? '').trim(), names: namesIn(rows, named) };
  const columns = header.flatMap((heading, at): PilotColumn[] => {
    const words = plainWords(heading);
    if (!ofPilot.test(words) || ofOthers.test(words)) return [];
    const names = namesIn(rows, at);
    const named = names.filter((name) => name !== '');
    return named.length > 0 && named.every(isName) ? [{ at, heading: heading.trim(), names }] : [];
  });
  return columns.find(({ names }) => names.length > 1) ?? columns[0];
}
