// Installs the packages of the lock file where others are there, or none. Plain Node: nothing is there yet. They are installed beside
// node_modules and put in its place when all are there, so an installation that fails takes nothing away, and of two starts at
// once one installs and the other waits.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

const modules = join(root, 'node_modules');
/** Both the place of the installation and the sign that one is on. */
const workshop = join(root, 'node_modules.installing');
const pauseMilliseconds = 500;
/** From making the workshop to signing it. */
const signMilliseconds = 5000;

/** npm.cmd cannot be started without a shell on Windows; npm's own script can, and npm names it to what it starts. */
function npm(words, cwd) {
  const script = process.env.npm_execpath;
  const [command, before] = script?.endsWith('.js') ? [process.execPath, [script]] : ['npm', []];
  return spawnSync(command, [...before, ...words], { cwd, stdio: 'inherit', shell: process.platform === 'win32' && before.length === 0 }).status;
}

function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Rampwright needs Node 20.19 or later; this is ${process.versions.node}.`);
  process.exit(1);
}

function packagesOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages ?? {};
  } catch {
    return {};
  }
}

/** By content, since a checkout or a copy gives files new dates. Optional packages are for other systems. */
function isInstalled() {
  const there = packagesOf(join(modules, '.package-lock.json'));
  const wanted = Object.entries(packagesOf(join(root, 'package-lock.json'))).filter(([path, { optional }]) => path !== '' && optional !== true);
  return wanted.every(([path, { version, integrity }]) => there[path]?.version === version && there[path]?.integrity === integrity);
}

/** Whether what the program itself imports is there in the wanted versions, though other packages are not. */
function canStart() {
  const { dependencies = {} } = packagesOf(join(root, 'package-lock.json'))[''] ?? {};
  const there = packagesOf(join(modules, '.package-lock.json'));
  const names = Object.entries(dependencies);
  return names.length > 0 && names.every(([name, version]) => there[`node_modules/${name}`]?.version === version);
}

function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (thrown) {
    return thrown.code === 'EPERM';
  }
}

const signature = join(workshop, 'pid');

/** Whether somebody is at work there. One that was killed has left its workshop. */
function isBusy() {
  try {
    return isRunning(Number(readFileSync(signature, 'utf8')));
  } catch {
    const age = existsSync(workshop) ? Date.now() - statSync(workshop).mtimeMs : Infinity;
    return age < signMilliseconds;
  }
}

function enterWorkshop() {
  try {
    mkdirSync(workshop);
    writeFileSync(signature, String(process.pid));
    return true;
  } catch (thrown) {
    if (thrown.code !== 'EEXIST') throw thrown;
    return false;
  }
}

/** Moved away first, so that of two who find it left only one clears it. */
function clearLeft() {
  const left = `${workshop}.left-${process.pid}`;
  try {
    renameSync(workshop, left);
  } catch {
    return;
  }
  rmSync(left, { recursive: true, force: true });
}

const oldModules = 'node_modules.old-';

/** What a start that was killed between its two moves had put aside. */
function putBack() {
  const [aside, ...others] = readdirSync(root).filter((name) => name.startsWith(oldModules));
  if (aside !== undefined && !existsSync(modules)) renameSync(join(root, aside), modules);
  else if (aside !== undefined) others.push(aside);
  for (const name of others) rmSync(join(root, name), { recursive: true, force: true });
}

/** The old packages go when the new ones are in their place. */
function putInPlace() {
  const old = join(root, `${oldModules}${process.pid}`);
  const wasThere = existsSync(modules);
  if (wasThere) renameSync(modules, old);
  try {
    renameSync(join(workshop, 'node_modules'), modules);
  } catch (thrown) {
    if (wasThere) renameSync(old, modules);
    throw thrown;
  }
  rmSync(old, { recursive: true, force: true });
}

function install() {
  console.log('Installing packages (npm ci) ...');
  for (const name of ['package.json', 'package-lock.json', '.npmrc']) {
    if (existsSync(join(root, name))) copyFileSync(join(root, name), join(workshop, name));
  }
  if (npm(['ci'], workshop) !== 0) return false;
  putInPlace();
  return true;
}

const pause = () => new Promise((done) => setTimeout(done, pauseMilliseconds));

/** Waits while another start installs. */
async function waitForWorkshop() {
  let told = false;
  while (!enterWorkshop()) {
    if (!isBusy()) clearLeft();
    else if (!told) console.log('Another start is installing the packages; waiting for it ...');
    told ||= isBusy();
    await pause();
  }
}

export async function installMissing() {
  checkNode();
  if (isInstalled()) return;
  await waitForWorkshop();
  const done = (() => {
    try {
      putBack();
      return isInstalled() || install();
    } finally {
      rmSync(workshop, { recursive: true, force: true });
    }
  })();
  if (done) return;
  const kept = existsSync(modules) ? ' Those that were there are still there.' : '';
  console.error(`The packages could not be installed; see npm's message above.${kept}`);
  if (!canStart()) process.exit(1);
  console.error('Rampwright starts with those: what it imports itself is there in the versions wanted.');
}
