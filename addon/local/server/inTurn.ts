// One program at a time, where several start at once. Each raises a flag of its own beside the file and only then looks for those of
// the others: of two, at least the later one sees the other's, so two never act together. Node has no lock of the system's that ends
// with its program.
import { readdir, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { statIfThere } from './replaceFile';
import { isRunning } from './running';

const pauseMilliseconds = 20;
/** What is done in turn takes milliseconds: an older flag is a killed program's, whose number another program may have by now. */
const flagMilliseconds = 20_000;

/** The numbers of the other programs whose flags stand. */
async function othersOf(path: string): Promise<readonly number[]> {
  const [folder, before, after] = [dirname(path), `${basename(path)}.turn.`, '.tmp'];
  const flags = (await readdir(folder)).filter((name) => name.startsWith(before) && name.endsWith(after));
  const ages = flags.map(async (name) => {
    const found = await statIfThere(join(folder, name));
    return { pid: Number(name.slice(before.length, -after.length)), age: found === undefined ? Infinity : Date.now() - Number(found.mtimeMs) };
  });
  const stands = ({ pid, age }: { pid: number; age: number }): boolean => pid !== process.pid && age < flagMilliseconds && isRunning(pid);
  return (await Promise.all(ages)).filter(stands).map(({ pid }) => pid);
}

/** Runs `act` when no other program is running one of the same path. A program with a higher number gives way. */
export async function inTurn(path: string, act: () => Promise<void>): Promise<void> {
  // Named as what is being written, so that a killed program's flag is removed as what else it left.
  const flag = `${path}.turn.${process.pid}.tmp`;
  const lower = (): Promise<void> => rm(flag, { force: true });
  try {
    await writeFile(flag, '', { mode: 0o600 });
    for (let others = await othersOf(path); others.length > 0; others = await othersOf(path)) {
      const givesWay = others.some((pid) => pid < process.pid);
      if (givesWay) await lower();
      await pause(pauseMilliseconds);
      if (givesWay) await writeFile(flag, '', { mode: 0o600 });
    }
    await act();
  } finally {
    await lower();
  }
}
