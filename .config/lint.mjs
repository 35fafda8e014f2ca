/**
 * All that can be checked without running the program: formatter, type checker, import fence and
 * linter. Each keeps a cache under node_modules/.cache, and all are run even when one has failed.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { root, say, secondsSince } from './ready/say.mjs';

const cache = 'node_modules/.cache';
const fence = '.config/dependency-cruiser.cjs';
const folders = ['apps', 'libs', 'tests'].filter((folder) => existsSync(join(root, folder)));

const checks = [
  {
    name: 'types',
    program: 'typescript/bin/tsc',
    args: ['--noEmit', '--tsBuildInfoFile', `${cache}/tsc.tsbuildinfo`],
  },
  {
    name: 'types of the page and its tests',
    program: 'typescript/bin/tsc',
    args: ['-p', 'tests/apps/web'],
  },
  {
    name: 'formatter',
    program: 'prettier/bin/prettier.cjs',
    args: ['--check', '--log-level', 'warn', '--cache', '.'],
  },
  {
    name: 'import fence',
    program: 'dependency-cruiser/bin/dependency-cruise.mjs',
    args: ['--config', fence, '--output-type', 'err-long', ...folders],
  },
  {
    name: 'linter',
    program: 'eslint/bin/eslint.js',
    args: [
      ...['--config', '.config/eslint.config.js', '--max-warnings', '0'],
      ...['--cache', '--cache-location', `${cache}/eslint`, '--cache-strategy', 'content', '.'],
    ],
  },
];

mkdirSync(join(root, cache), { recursive: true });
const results = await inTwos(checks);
const failed = results.filter((well) => !well).length;
process.stdout.write(`lint: ${results.length - failed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;

/** Two at a time, the linter first, as it takes longest. */
async function inTwos(all) {
  const waiting = [...all].reverse();
  const results = [];
  const worker = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      results.push(await run(next));
    }
  };
  await Promise.all([worker(), worker()]);
  return results;
}

function run({ name, program, args }) {
  const started = performance.now();
  const child = spawn(process.execPath, [join(root, 'node_modules', program), ...args], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const output = [];
  child.stdout.on('data', (chunk) => output.push(chunk));
  child.stderr.on('data', (chunk) => output.push(chunk));
  return new Promise((resolve) => {
    child.on('close', (code) => {
      const time = secondsSince(started);
      say(code === 0 ? `${name}: fine (${time})` : `${name}: failed (${time})`);
      if (code !== 0) process.stdout.write(Buffer.concat(output));
      resolve(code === 0);
    });
  });
}
