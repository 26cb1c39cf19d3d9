// Before a workbook is served: whether its file can be opened as it stands. Where it is gone beside its copies, or damaged, the
// program stops and asks, since a demo in its place would look saved; two options of the next start answer.
import { mkdir, readFile, rename } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { backupsOf, type Backup } from './backups';
import { linkTarget } from './realPath';
import { readIfThere, replaceFile, statIfThere } from './replaceFile';
import { standingOf } from '../saved/workbookText';

/** What the person who starts the program has said. */
export interface Answer {
  /** Begin with the demo, whatever is beside the file. */
  readonly anew: boolean;
  /** Go on from the newest copy that is whole. */
  readonly restore: boolean;
}

/** The program stops with this sentence. */
export class StopsHereError extends Error {}

const dayOf = (made: number): string => `${new Date(made).toISOString().slice(0, 16).replace('T', ' ')}Z`;

async function newestWhole(backups: readonly Backup[]): Promise<Backup | undefined> {
  for (const one of backups) if (standingOf(await readFile(one.path, 'utf8')) !== 'damaged') return one;
  return undefined;
}

function question(trouble: string, backup: Backup | undefined, command: string): StopsHereError {
  const ways = [
    ...(backup === undefined ? [] : [`  ${command} --restore    goes on from the copy of ${dayOf(backup.made)} (${basename(backup.path)})`]),
    `  ${command} --new        begins a new workbook with the invented demo; copies stay as they are`,
  ];
  return new StopsHereError([`${trouble} Nothing was changed. Say what to do:`, ...ways].join('\n'));
}

/** The damaged file stays beside the workbook: somebody may still read something out of it. */
async function setAside(path: string, now: number): Promise<string> {
  const aside = `${path}.damaged-${new Date(now).toISOString().slice(0, 19).replace(/:/g, '-')}Z`;
  await rename(path, aside);
  return aside;
}

export interface Opening {
  /** The path as the person wrote it, and the file behind every link. */
  readonly given: string;
  readonly path: string;
  readonly answer: Answer;
  /** The command that starts the program so, without an answer. */
  readonly command: string;
  readonly makeFirst: () => string;
}

interface Found {
  readonly isThere: boolean;
  readonly trouble: string | undefined;
  readonly backup: Backup | undefined;
}

function troubleOf({ given, path }: Opening, text: string | undefined, backups: readonly Backup[]): string | undefined {
  if (text !== undefined)
    return standingOf(text) === 'damaged' ? `The file ${path} is not a workbook of this program, or only a part of one.` : undefined;
  if (linkTarget(given) !== undefined) return `${given} is a link to ${path}, and nothing is there.`;
  return backups.length > 0 ? `The workbook ${path} is gone, but copies of it are there.` : undefined;
}

/** Changes nothing. Throws StopsHereError with what to tell where it is not clear what to do. */
export async function checkFile(opening: Opening): Promise<Found> {
  const { path, answer, command } = opening;
  if ((await statIfThere(path))?.isDirectory() === true) throw new StopsHereError(`${path} is a folder; the workbook must be a file in one.`);
  const [text, backups] = [await readIfThere(path), await backupsOf(path)];
  const trouble = troubleOf(opening, text, backups);
  const backup = await newestWhole(backups);
  if (answer.anew && answer.restore) throw new StopsHereError('Say --new or --restore, not both.');
  if (text !== undefined && trouble === undefined && (answer.anew || answer.restore))
    throw new StopsHereError(
      `The workbook ${path} is whole, so --new and --restore do nothing to it. A copy of it is opened by npm start -- --file, then the path of the copy.`,
    );
  if (trouble !== undefined && !answer.anew && !answer.restore) throw question(trouble, backup, command);
  if (answer.restore && backup === undefined) throw new StopsHereError(`There is no whole copy of ${path} to go on from.`);
  return { isThere: text !== undefined, trouble, backup };
}

/** Does what the person has said. Gives what was done, in sentences. Only the owner of the file may call this. */
export async function answerFile(opening: Opening, now: number): Promise<string[]> {
  const { path, answer, makeFirst } = opening;
  const { isThere, trouble, backup } = await checkFile(opening);
  if (trouble === undefined && !answer.restore) return [];
  const said = isThere ? [`The file that was there is now ${await setAside(path, now)}.`] : [];
  await mkdir(dirname(path), { recursive: true });
  if (!answer.restore || backup === undefined) {
    await replaceFile(path, makeFirst());
    return said;
  }
  await replaceFile(path, await readFile(backup.path), backup.path);
  return [...said, `The workbook is as in the copy of ${dayOf(backup.made)} (${basename(backup.path)}).`];
}
