import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fail, root, runQuietly, say, secondsSince } from './say.mjs';

const stampFile = join(root, 'dist', '.build-stamp');
// The bench measures the page on the desk of tests/support.
const sources = [
  ...['apps', 'libs', 'tests/bench', 'tests/support'],
  ...['.config', 'package.json', 'tsconfig.json'],
];

/** Builds dist/ when a source is newer than the last build. */
export const buildIfStale = { needed, run };

function needed() {
  const built = modifiedAt(stampFile);
  return sources.some((source) => isNewer(join(root, source), built));
}

function run() {
  const started = performance.now();
  say('Building ...');
  if (!runQuietly(process.execPath, [join(root, '.config', 'build.mjs')])) {
    fail('The build failed; the errors are above.');
  }
  say(`Built in ${secondsSince(started)}.`);
}

/** A folder's own time is looked at too: it changes when a file in it is removed. */
function isNewer(path, moment) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return false;
  if (found.mtimeMs > moment) return true;
  return found.isDirectory() && readdirSync(path).some((name) => isNewer(join(path, name), moment));
}

function modifiedAt(file) {
  return existsSync(file) ? statSync(file).mtimeMs : 0;
}
