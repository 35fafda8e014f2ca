import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'closing-'));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (status: string, tests: number): object => ({
  status,
  assertionResults: Array.from({ length: tests }, () => ({})),
});

const report = (passed: number, failed: number, testResults: readonly object[]): object => ({
  numPassedTests: passed,
  numFailedTests: failed,
  success:
    failed === 0 && testResults.every((result) => 'status' in result && result.status === 'passed'),
  testResults,
});

test.each([
  ['all is well', report(3, 0, [file('passed', 3)]), 'passed', '4 passed, 0 failed', 0],
  ['the lint failed', report(3, 0, [file('passed', 3)]), 'failed', '3 passed, 1 failed', 1],
  ['a test failed', report(2, 1, [file('failed', 3)]), 'passed', '3 passed, 1 failed', 1],
  [
    'a file did not load',
    report(2, 0, [file('passed', 2), file('failed', 0)]),
    'passed',
    '3 passed, 1 failed',
    1,
  ],
  ['no test ran', report(0, 0, []), 'passed', '1 passed, 1 failed', 1],
  ['the tests never began', undefined, 'passed', '1 passed, 1 failed', 1],
])('the closing line of CI when %s', (title, content, lint, line, code) => {
  const path = join(folder, `${title}.json`);
  if (content !== undefined) writeFileSync(path, JSON.stringify(content));
  const { stdout, status } = spawnSync(process.execPath, ['.ci/closing-line.mjs', path], {
    encoding: 'utf8',
    env: { ...process.env, LINT: lint },
  });
  expect(stdout.trimEnd()).toBe(line);
  expect(status).toBe(code);
});
