// One step of npm test: a program, with a limit for how long it may take, and its output as it comes or kept until it ends.
import { spawn } from 'node:child_process';
import { root } from './install.mjs';

const forWindows = process.platform === 'win32';

/** With all that it has started: a worker that hangs outlives the program that waits for it. */
function killAll(child) {
  if (forWindows) child.kill('SIGKILL');
  else process.kill(-child.pid, 'SIGKILL');
}

const running = new Set();

/** A step in a group of its own hears no Ctrl-C and no end of this process. */
export function killRunning() {
  for (const child of running) {
    try {
      killAll(child);
    } catch {
      // It has just ended.
    }
  }
}

/**
 * Resolves to whether it passed, how long it took, and what it wrote where `kept` says to keep it. `silentMinutes` is for how long it
 * may write nothing at all, `minutes` for how long it may take.
 */
export function runStep([command, ...words], { kept = false, minutes, silentMinutes = minutes, env = process.env }) {
  const start = performance.now();
  const child = spawn(command, words, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'], detached: !forWindows });
  running.add(child);
  let output = '';
  let last = performance.now();
  let tooLong;
  const write = (text) => {
    if (kept) output += text;
    else process.stdout.write(text);
  };
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text) => {
      last = performance.now();
      write(text);
    });
  }
  const watch = setInterval(() => {
    const passed = (since) => (performance.now() - since) / 60_000;
    if (passed(start) > minutes) tooLong = `was ended, because it took more than ${minutes} minutes`;
    else if (passed(last) > silentMinutes) tooLong = `was ended, because it wrote nothing for ${silentMinutes} minutes: a worker hangs`;
    if (tooLong !== undefined) killAll(child);
  }, 250);
  return new Promise((resolve) => {
    const end = (status) => {
      clearInterval(watch);
      running.delete(child);
      resolve({ passed: status === 0 && tooLong === undefined, seconds: (performance.now() - start) / 1000, output, tooLong });
    };
    child.once('error', (thrown) => {
      output += `${thrown.message}\n`;
      end(1);
    });
    child.once('close', end);
  });
}
