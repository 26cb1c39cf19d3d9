// Whether a program of this computer is still running.
import { hasCode } from './fileTrouble';

export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (thrown) {
    // It runs, for another user.
    return hasCode(thrown, 'EPERM');
  }
}
