// What a person has said of the columns of a file, kept in this browser for the next file with the same headings.
import { isHeadedBy, type FileColumns, type NamedColumns } from '../namedColumns';

const memory = 'rampwright-columns';
/** The last ones named; older ones are asked about again. */
const mostKept = 20;

function kept(): NamedColumns[] {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(memory) ?? '[]');
    return Array.isArray(read) ? (read as NamedColumns[]) : [];
  } catch {
    // Nothing is kept in private windows of some browsers, and a memory that somebody else has written is none.
    return [];
  }
}

export const rememberedColumns = (file: FileColumns | undefined): NamedColumns | undefined =>
  file === undefined ? undefined : kept().find((named) => isHeadedBy(file.headings, named));

export function rememberColumns(named: NamedColumns): void {
  const others = kept().filter(({ headings }) => !isHeadedBy(headings, named));
  try {
    localStorage.setItem(memory, JSON.stringify([named, ...others].slice(0, mostKept)));
  } catch {
    // Asked again the next time.
  }
}
