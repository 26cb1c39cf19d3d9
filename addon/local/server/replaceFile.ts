// A file replaced whole, so that a crash leaves the old one or the new one and never half of one. It keeps its mode and, as far as
// the system lets this user, its owner and group.
import { open, readdir, readFile, rename, rm, stat, type FileHandle } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { hasCode } from './fileTrouble';
import { isRunning } from './running';

/** For this user alone, where no file says otherwise. */
const ownMode = 0o600;

/** What stands beside the file while it is being written. */
const besideOf = (path: string): string => `${path}.${process.pid}.tmp`;

export async function readIfThere(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (thrown) {
    if (hasCode(thrown, 'ENOENT')) return undefined;
    throw thrown;
  }
}

/** Undefined where there is no file. */
export const statIfThere = (path: string): Promise<Awaited<ReturnType<typeof stat>> | undefined> =>
  stat(path).catch((thrown: unknown) => {
    if (hasCode(thrown, 'ENOENT')) return undefined;
    throw thrown;
  });

/** A user who may not give a file away may still keep it in its group. */
async function keepOwner(handle: FileHandle, uid: number, gid: number): Promise<void> {
  const made = await handle.stat();
  if (made.uid === uid && made.gid === gid) return;
  await handle.chown(uid, gid).catch(() => handle.chown(made.uid, gid).catch(() => undefined));
}

/** `like` is the file whose mode and owner the new one gets. */
export async function replaceFile(path: string, content: string | Uint8Array, like = path): Promise<void> {
  const beside = besideOf(path);
  try {
    const old = await statIfThere(like);
    const handle = await open(beside, 'w', ownMode);
    try {
      await handle.writeFile(content);
      if (old !== undefined) {
        await keepOwner(handle, Number(old.uid), Number(old.gid));
        await handle.chmod(Number(old.mode) & 0o777);
      }
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, path);
  } catch (thrown) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw thrown;
  }
}

/** What programs that were killed while they wrote this file, or something of its, have left. To be called before this one writes. */
export async function removeLeftOvers(path: string): Promise<void> {
  const [folder, name] = [dirname(path), basename(path)];
  const isLeftOver = (one: string): boolean => {
    const writer = one.startsWith(`${name}.`) ? /\.(\d+)\.tmp$/.exec(one)?.[1] : undefined;
    return writer !== undefined && (Number(writer) === process.pid || !isRunning(Number(writer)));
  };
  const there = await readdir(folder).catch(() => []);
  for (const one of there.filter(isLeftOver)) await rm(join(folder, one), { force: true }).catch(() => undefined);
}
