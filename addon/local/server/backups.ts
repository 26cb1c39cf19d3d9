// Dated copies of the workbook beside it: as it was before each session, and before each day of a long one. The ten newest are
// kept, and of those before them one a week. Nothing goes before the new copy is whole.
import { readdir, readFile, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { spareBackups } from '../saved/spareBackups';
import { replaceFile } from './replaceFile';

export interface Backup {
  readonly path: string;
  /** Milliseconds of UTC. */
  readonly made: number;
}

/** 2026-11-29T14-05-09Z: a colon cannot stand in a file's name everywhere. */
const stampOf = (made: number): string => `${new Date(made).toISOString().slice(0, 19).replace(/:/g, '-')}Z`;
const stamp = /^(\d{4}-\d\d-\d\d)T(\d\d)-(\d\d)-(\d\d)Z$/;

function madeFrom(text: string): number | undefined {
  const [, day, hours, minutes, seconds] = stamp.exec(text) ?? [];
  const made = day === undefined ? NaN : Date.parse(`${day}T${hours}:${minutes}:${seconds}Z`);
  return Number.isNaN(made) ? undefined : made;
}

const endingOf = '.backup';

/** Newest first. Version 0.1.0 kept one copy without a date: it counts by the day of its file. */
export async function backupsOf(path: string): Promise<Backup[]> {
  const [folder, start] = [dirname(path), `${basename(path)}${endingOf}`];
  const names = await readdir(folder).catch(() => []);
  const found: Backup[] = [];
  for (const name of names) {
    const full = join(folder, name);
    const dated = name.startsWith(`${start}-`) ? madeFrom(name.slice(start.length + 1)) : undefined;
    if (dated !== undefined) found.push({ path: full, made: dated });
    else if (name === start) found.push({ path: full, made: (await stat(full)).mtimeMs });
  }
  return found.sort((one, other) => other.made - one.made);
}

const second = 1000;

/** Names have seconds, and two copies of one second would be one. */
function freeMoment(backups: readonly Backup[], now: number): number {
  const taken = new Set(backups.map(({ made }) => stampOf(made)));
  let moment = now;
  while (taken.has(stampOf(moment))) moment += second;
  return moment;
}

/** Copies the file as it stands, unless the newest copy is the same. */
export async function makeBackup(path: string, now: number): Promise<void> {
  const content = await readFile(path);
  const backups = await backupsOf(path);
  const [newest] = backups;
  if (newest !== undefined && content.equals(await readFile(newest.path))) return;
  await replaceFile(`${path}${endingOf}-${stampOf(freeMoment(backups, now))}`, content, path);
  // The one without a date is of version 0.1.0, and stays.
  for (const { path: old } of spareBackups(await backupsOf(path))) if (!old.endsWith(endingOf)) await rm(old, { force: true });
}
