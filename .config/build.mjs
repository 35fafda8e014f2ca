/**
 * Builds dist/: the libs and apps by the TypeScript compiler, the page by Vite where apps/web has
 * a Vite configuration, and the files that are neither (JSON and the like) as they are. Programs that
 * are to start soon are bundled from that by Vite too, in dist/bundles.
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
import { build as viteBuild } from 'vite';
import { root } from './ready/say.mjs';

const dist = join(root, 'dist');
const sourceFolders = ['apps', 'libs', 'tests/bench'];
/** What starts again and again while somebody waits: hundreds of small modules take half a second to load. */
const bundles = {
  cli: 'apps/cli/main.js',
  'solve-thread': 'libs/solving/solve-thread.js',
  'resolve-thread': 'libs/solving/resolve-thread.js',
  'futures-thread': 'libs/solving/futures-thread.js',
  'ours-process': 'tests/bench/optimizer/ours-process.js',
};
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
await bundle();
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

/** Bundles our own code and zod, whose many files are slow to load; other packages stay as they are. */
async function bundle() {
  const input = Object.entries(bundles).map(([name, path]) => [name, join(dist, path)]);
  await viteBuild({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    ssr: { noExternal: ['zod'] },
    build: {
      ssr: true,
      target: 'node20',
      minify: false,
      sourcemap: true,
      outDir: join(dist, 'bundles'),
      emptyOutDir: true,
      rolldownOptions: {
        input: Object.fromEntries(input),
        output: { entryFileNames: '[name].js', chunkFileNames: 'shared/[name]-[hash].js' },
      },
    },
  });
}

/** Dated at the start, so that a source saved while the build ran counts as newer. */
function stampAt(moment) {
  const stamp = join(dist, '.build-stamp');
  writeFileSync(stamp, '');
  utimesSync(stamp, moment, moment);
}
