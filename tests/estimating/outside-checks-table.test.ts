import { readFileSync, writeFileSync } from 'node:fs';
import { format } from 'prettier';
import { expect, test } from 'vitest';
import { EVERY_CHECK } from './outside/every-check.js';
import type { OutsideCheck } from './outside/outside-check.js';

const README = 'libs/estimating/README.md';
const OPEN = '<!-- outside checks: written by tests/estimating/outside-checks-table.test.ts -->';
const CLOSE = '<!-- end of outside checks -->';

/** Nine significant digits: enough for the largest area, and the same on every machine. */
function shown(value: number): string {
  return String(Number(value.toPrecision(9)));
}

function line({ formula, what, expected, unit, tolerance, ground, source }: OutsideCheck): string {
  const cells = [formula, what, `${shown(expected)} ${unit}`, shown(tolerance), ground, source];
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

function table(): string {
  const head = [
    '| formula | what | expected | tolerance | ground | source |',
    '|---|---|---|---|---|---|',
  ];
  return [OPEN, '', ...head, ...EVERY_CHECK.map(line), '', CLOSE].join('\n');
}

test('the table of outside checks in the README is the one the tests run', async () => {
  const readme = readFileSync(README, 'utf8');
  const start = readme.indexOf(OPEN);
  const end = readme.indexOf(CLOSE) + CLOSE.length;
  expect(start, `${README} holds the marks of the table`).toBeGreaterThan(0);
  const anew = readme.slice(0, start) + table() + readme.slice(end);
  const wanted = await format(anew, { parser: 'markdown' });
  if (process.env['UPDATE'] === '1') writeFileSync(README, wanted);
  expect(readFileSync(README, 'utf8'), 'run with UPDATE=1 to write it anew').toBe(wanted);
});

test('no check is listed twice', () => {
  const names = EVERY_CHECK.map(({ formula, what }) => `${formula}: ${what}`);
  expect(new Set(names).size).toBe(names.length);
});

test('each formula is held to something from outside', () => {
  const formulas = new Set(EVERY_CHECK.map(({ formula }) => formula));
  expect([...formulas].sort()).toEqual([
    'care-hours',
    'compost',
    'cost',
    'gates',
    'geometry',
    'install-hours',
    'labor-supply',
    'suitability',
    'takeoff',
    'water',
    'yield',
  ]);
});
