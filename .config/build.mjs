/**
 * Builds dist/: the libs and apps by the TypeScript compiler, the page by Vite where apps/web has
 * a Vite configuration, and the files that are neither (JSON and the like) as they are.
 */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { root } from './ready/say.mjs';

const dist = join(root, 'dist');
const sourceFolders = ['apps', 'libs', 'tests/bench'];
const isSource = (path) => /\.tsx?$/.test(path);
const isPage = (path) => path.startsWith(join('apps', 'web'));

const started = new Date();
const kept = sourceFolders.flatMap(filesOf).filter((path) => !isPage(path));
run('typescript/bin/tsc', ['-p', '.config/tsconfig.build.json', '--pretty']);
kept.filter((path) => !isSource(path)).forEach(copyAsIs);
removeLeftovers();
if (existsSync(join(root, 'apps/web/vite.config.ts'))) {
  run('vite/bin/vite.js', ['build', 'apps/web', '--logLevel', 'warn']);
}
stampAt(started);

function run(tool, args) {
  const { status } = spawnSync(process.execPath, [join(root, 'node_modules', tool), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}

/** Paths of all files below a folder of the project, relative to the project. */
function filesOf(folder) {
  const path = join(root, folder);
  if (!existsSync(path)) return [];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));
}

function copyAsIs(path) {
  const target = join(dist, path);
  const { mtimeMs } = statSync(join(root, path));
  if (statSync(target, { throwIfNoEntry: false })?.mtimeMs === mtimeMs) return;
  mkdirSync(dirname(target), { recursive: true });
  cpSync(join(root, path), target, { preserveTimestamps: true });
}

/** A file whose source is gone must not go on being imported from dist. */
function removeLeftovers() {
  const sources = new Set(kept.map((path) => path.replace(/\.tsx?$/, '')));
  const built = sourceFolders.flatMap((folder) => filesOf(join('dist', folder)));
  for (const path of built) {
    const source = relative('dist', path).replace(/\.js(\.map)?$/, '');
    if (!sources.has(source)) rmSync(join(root, path));
  }
}

/** Dated at the start, so that a source saved while the build ran counts as newer. */
function stampAt(moment) {
  const stamp = join(dist, '.build-stamp');
  writeFileSync(stamp, '');
  utimesSync(stamp, moment, moment);
}
