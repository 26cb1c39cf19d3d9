// Whose the flights of a file are: what the user answers, and the name that each gets in a log of several pilots.
import { plainWords } from '../../../functions/registry/readText';
import type { CellValue } from '../../workbook/snapshot';
import { pilotPlace, type Answers, type ImportedLog } from '../importLog';
import type { FileColumns, NamedColumns } from '../namedColumns';

/** What the user has answered so far; `alike` for flights that agree with one of the log in part only. */
export interface FileAnswers extends Answers {
  readonly alike?: 'add' | 'leave out';
  /** Whose the flights are that name nobody, where the log names pilots; blank for nobody's. */
  readonly owner?: string;
}

export interface ImportSaid {
  /** For the user, in sentences. */
  readonly said: string;
  /** What may be answered, each with all answers so far. */
  readonly choices: readonly { readonly label: string; readonly answers: FileAnswers }[];
  /** What may be said of the columns of the file. */
  readonly columns?: { readonly label: string; readonly of: FileColumns; readonly now: NamedColumns };
}

export const counted = (count: number): string => `${count} ${count === 1 ? 'flight' : 'flights'}`;

/** Everybody whom the log names, each once. */
export function pilotsNamed(headings: readonly string[], flights: readonly (readonly CellValue[])[]): readonly string[] {
  const at = pilotPlace(headings);
  const names = at < 0 ? [] : flights.map((row) => String(row[at] ?? '').trim()).filter((name) => name !== '');
  return names.filter((name, index) => names.findIndex((other) => plainWords(other) === plainWords(name)) === index);
}

/** In a log of one pilot, who names nobody, new rows name nobody either: else those before would be nobody's. */
export function withOwner(imported: ImportedLog, named: readonly string[], owner: string | undefined): ImportedLog {
  const flights = imported.flights.map(({ pilot = owner ?? '', ...flight }) => (named.length === 0 || pilot === '' ? flight : { ...flight, pilot }));
  return { ...imported, flights };
}

/** Whose flights a file holds that does not say so is asked where the log is of several pilots. */
export function askOwner(imported: ImportedLog, named: readonly string[], answers: FileAnswers): ImportSaid | undefined {
  const nobodys = imported.flights.filter(({ pilot }) => pilot === undefined).length;
  if (named.length === 0 || nobodys === 0 || answers.owner !== undefined) return undefined;
  return {
    said: `Nothing was added yet. The log names pilots, and ${counted(nobodys)} of the file ${nobodys === 1 ? 'does' : 'do'} not: whose? Without a name they count for nobody.`,
    choices: [
      ...named.map((owner) => ({ label: `Of ${owner}`, answers: { ...answers, owner } })),
      { label: 'Without a name', answers: { ...answers, owner: '' } },
    ],
  };
}
