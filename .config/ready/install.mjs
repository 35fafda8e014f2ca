import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fail, root, runQuietly, say, secondsSince } from './say.mjs';

const lockFile = join(root, 'package-lock.json');
const modules = join(root, 'node_modules');
const stampFile = join(modules, '.ready');
/** npm's own record of what it has put into node_modules. */
const installedFile = join(modules, '.package-lock.json');

/** Installs the packages of package-lock.json when node_modules does not hold them. */
export const installIfStale = { needed, run };

function needed() {
  if (stamp() === readOr(stampFile, '')) return false;
  if (!holdsEveryPackage()) return true;
  writeStamp();
  return false;
}

function run() {
  const fresh = !existsSync(modules);
  const started = performance.now();
  say(fresh ? 'Installing packages (once, about a minute) ...' : 'Updating packages ...');
  const well =
    (fresh && runQuietly('npm', ['ci', '--no-progress'])) ||
    runQuietly('npm', ['install', '--no-save', '--no-progress']);
  if (!well) fail('Packages could not be installed. Is the package registry reachable?');
  writeStamp();
  say(`Installed packages in ${secondsSince(started)}.`);
}

/** Compares npm's record with the lock file; packages for other platforms may be absent. */
function holdsEveryPackage() {
  const installed = JSON.parse(readOr(installedFile, '{"packages":{}}')).packages;
  const locked = JSON.parse(readFileSync(lockFile, 'utf8')).packages;
  return Object.entries(locked).every(
    ([path, { version, optional }]) =>
      path === '' || optional === true || installed[path]?.version === version,
  );
}

function stamp() {
  return createHash('sha256').update(readFileSync(lockFile)).digest('hex');
}

/** A read-only node_modules that holds everything is as good as a stamped one. */
function writeStamp() {
  try {
    writeFileSync(stampFile, stamp());
  } catch (error) {
    if (error.code !== 'EACCES' && error.code !== 'EROFS') throw error;
  }
}

function readOr(file, otherwise) {
  return existsSync(file) ? readFileSync(file, 'utf8') : otherwise;
}
