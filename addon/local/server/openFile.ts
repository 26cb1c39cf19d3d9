// Makes a workbook file this program's own, or says whose it is; looks at it, and does what the person has answered.
import { hostname } from 'node:os';
import { inWords } from './fileTrouble';
import { answerFile, checkFile, StopsHereError, type Opening } from './opening';
import { ownFile, type Owner, type Ownership } from './owner';
import { realPathOf } from './realPath';
import { removeLeftOvers } from './replaceFile';
import { WorkbookFile } from './workbookFile';

export interface OpenedFile extends Ownership {
  readonly file: WorkbookFile;
}

function ownedElsewhere(path: string, { pid, computer, address }: Owner): string {
  if (computer === hostname()) return `This workbook (${path}) is open already, at ${address} (process ${pid}).`;
  throw new StopsHereError(
    `The workbook ${path} is open on the computer "${computer}" (process ${pid}). Where that is not so any more, remove ${path}.lock and start again.`,
  );
}

const isOwner = (one: Ownership | Owner): one is Owner => 'pid' in one;

async function take(opening: Opening, now: number): Promise<OpenedFile | undefined> {
  const { path, makeFirst } = opening;
  await checkFile(opening);
  const owned = await ownFile(path);
  if (isOwner(owned)) {
    console.log(`\n${ownedElsewhere(path, owned)}`);
    return undefined;
  }
  try {
    await removeLeftOvers(path);
    for (const said of await answerFile(opening, now)) console.log(said);
    return { ...owned, file: new WorkbookFile(path, makeFirst) };
  } catch (thrown) {
    owned.giveUp();
    throw thrown;
  }
}

/** Undefined where another program has the file open: that was said. Throws StopsHereError where it cannot be opened. */
export async function openFile(wanted: Omit<Opening, 'path'>): Promise<OpenedFile | undefined> {
  let path = wanted.given;
  try {
    path = realPathOf(wanted.given);
    return await take({ ...wanted, path }, Date.now());
  } catch (thrown) {
    const worded = inWords(path, thrown);
    throw worded === thrown || !(worded instanceof Error) ? thrown : new StopsHereError(`Nothing was opened: ${worded.message}`);
  }
}
