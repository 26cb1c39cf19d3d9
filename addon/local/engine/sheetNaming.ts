// Names of sheets that the engine can read. Brackets mean another workbook to it, an exclamation mark the end of a sheet's name, and a few
// more stop its reader: a sheet so called would lose every formula and every name that refers to it. So what a sheet is to be called is
// changed before it is done.
import type { ICommandInfo, ICommandService, IDisposable } from '@univerjs/core';

const inTheirPlace: Readonly<Record<string, string>> = { '[': '(', ']': ')' };
const renaming = 'sheet.command.set-worksheet-name';
const inserting = 'sheet.command.insert-sheet';

/** `others` are the names of the other sheets. */
export function readableSheetName(name: string, others: readonly string[]): string {
  const plain = name.replace(/[![\]*/?\\\u0000-\u001f\u007f]/g, (one) => inTheirPlace[one] ?? '-').replace(/^@/, '-');
  const taken = new Set(others.map((one) => one.toLowerCase()));
  let free = plain;
  if (plain !== name) for (let next = 2; taken.has(free.toLowerCase()); next += 1) free = `${plain} ${next}`;
  return free;
}

interface Naming {
  /** What the command names: its own parameters, or those of the sheet in them. */
  readonly holder: { name?: unknown };
  readonly sheetId: string | undefined;
}

function namingIn({ id, params }: ICommandInfo): Naming | undefined {
  const given = params as { name?: unknown; subUnitId?: string; sheet?: { name?: unknown } } | undefined;
  if (id === renaming && given !== undefined) return { holder: given, sheetId: given.subUnitId };
  return id === inserting && given?.sheet !== undefined ? { holder: given.sheet, sheetId: undefined } : undefined;
}

/** `namesBut` gives the names of all sheets but one; `tell` is given what was wanted and what was done. */
export const keepNamesReadable = (
  commands: ICommandService,
  namesBut: (sheetId: string | undefined) => readonly string[],
  tell: (wanted: string, given: string) => void = () => undefined,
): IDisposable =>
  commands.beforeCommandExecuted((command) => {
    const { holder, sheetId } = namingIn(command) ?? {};
    if (holder === undefined || typeof holder.name !== 'string') return;
    const [wanted, given] = [holder.name, readableSheetName(holder.name, namesBut(sheetId))];
    if (given === wanted) return;
    holder.name = given;
    tell(wanted, given);
  });

interface NamedSheet {
  getSheetId(): string;
  getSheetName(): string;
}

export const sheetNamesBut = (workbook: { getSheets(): readonly NamedSheet[] }, sheetId: string | undefined): string[] =>
  workbook.getSheets().flatMap((sheet) => (sheet.getSheetId() === sheetId ? [] : [sheet.getSheetName()]));
