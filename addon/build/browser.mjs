// Finds a Chromium to drive in the browser tests, or installs one where that is possible.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const usual = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium'];

const installed = () => [process.env.CHROME_PATH, ...usual].find((path) => path !== undefined && existsSync(path));

function installWithApt() {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  console.log('Installing Chromium (apt-get) ...');
  const options = { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  spawnSync('apt-get', ['update', '-qq'], options);
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], options);
}

/** The path of a Chromium; undefined where there is none and none can be installed. */
export function findBrowser() {
  const there = installed();
  if (there !== undefined) return there;
  installWithApt();
  return installed();
}
