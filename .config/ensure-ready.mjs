/**
 * Makes a clone ready to run, then runs a built program in this same process:
 *
 *     node .config/ensure-ready.mjs                          install and build what is missing
 *     node .config/ensure-ready.mjs --only-install           install what is missing
 *     node .config/ensure-ready.mjs bundles/cli.js ARGS      the same, then run dist/bundles/cli.js
 *
 * Uses nothing but Node, since it runs before anything is installed. All that it says goes to
 * standard error: standard output belongs to the program.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildIfStale } from './ready/build.mjs';
import { installIfStale } from './ready/install.mjs';
import { withLock } from './ready/lock.mjs';
import { fail, root } from './ready/say.mjs';

refuseOldNode();
const onlyInstall = process.argv[2] === '--only-install';
const steps = onlyInstall ? [installIfStale] : [installIfStale, buildIfStale];
if (steps.some((step) => step.needed())) {
  await withLock(() => steps.filter((step) => step.needed()).forEach((step) => step.run()));
}
if (!onlyInstall) await runProgram(process.argv[2]);

/** Stops on a Node older than package.json asks for, which would fail later with a puzzling error. */
function refuseOldNode() {
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const wanted = engines.node
    .replace(/[^\d.]/g, '')
    .split('.')
    .map(Number);
  const found = process.versions.node.split('.').map(Number);
  const firstDifference = wanted.findIndex((part, index) => part !== found[index]);
  if (firstDifference >= 0 && found[firstDifference] < wanted[firstDifference]) {
    fail(`Node ${wanted.join('.')} or newer is needed; this is Node ${process.versions.node}.`);
  }
}

/** Runs a program of dist/ in this process, so that signals, exit code and start time are its own. */
async function runProgram(path) {
  if (path === undefined) return;
  const file = join(root, 'dist', path);
  if (!existsSync(file)) fail(`There is no dist/${path}: the build holds no such program.`);
  process.setSourceMapsEnabled(true);
  process.argv.splice(1, 2, file);
  await import(pathToFileURL(file).href);
}
