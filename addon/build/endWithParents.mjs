// npm starts a shell, and the shell this program: somebody who kills npm means the program too, but a killed npm tells nobody.
import { existsSync, readFileSync } from 'node:fs';

const lookMilliseconds = 500;

/** The parent of a process where the system tells it (Linux). */
function parentOf(pid) {
  try {
    const afterName = readFileSync(`/proc/${pid}/stat`, 'utf8').replace(/^.*\) /s, '');
    return Number(afterName.split(' ')[1]);
  } catch {
    return undefined;
  }
}

const nameOf = (pid) => {
  try {
    return readFileSync(`/proc/${pid}/comm`, 'utf8').trim();
  } catch {
    return '';
  }
};

/** Calls `end` when the process that started this one is gone, or the npm behind a shell that did. */
export function endWithParents(end) {
  const parent = process.ppid;
  const behind = process.env.npm_lifecycle_event !== undefined && /^(?:da|ba|z|a)?sh$/.test(nameOf(parent)) ? parentOf(parent) : undefined;
  const timer = setInterval(() => {
    const gone = process.ppid !== parent || (behind !== undefined && behind > 1 && !existsSync(`/proc/${behind}`));
    if (!gone) return;
    clearInterval(timer);
    end();
  }, lookMilliseconds);
  timer.unref();
}
