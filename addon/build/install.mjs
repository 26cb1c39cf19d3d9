// Installs the packages of the lock file where they are missing or older than it. Plain Node: nothing is there yet.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** npm.cmd cannot be started without a shell on Windows; npm's own script can, and npm names it to what it starts. */
function npm(words) {
  const script = process.env.npm_execpath;
  const [command, before] = script?.endsWith('.js') ? [process.execPath, [script]] : ['npm', []];
  return spawnSync(command, [...before, ...words], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' && before.length === 0 }).status;
}

function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Rampwright needs Node 20.19 or later; this is ${process.versions.node}.`);
  process.exit(1);
}

export function installMissing() {
  checkNode();
  const installed = join(root, 'node_modules', '.package-lock.json');
  const wanted = join(root, 'package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(wanted).mtimeMs) return;
  console.log('Installing packages (npm ci) ...');
  if (npm(['ci']) === 0) return;
  console.error('The packages could not be installed; see npm\'s message above.');
  process.exit(1);
}
