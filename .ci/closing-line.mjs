/**
 * Prints the closing line of a run, `N passed, N failed`, from the test runner's JSON report, with
 * the lint (LINT=passed or failed) as one more check. Fails when any failed, when a file could not
 * be loaded, and when the report is missing or holds no test.
 */
import { existsSync, readFileSync } from 'node:fs';

const counts = withLint(testCounts(process.argv[2]));
console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exitCode = counts.failed === 0 ? 0 : 1;

function testCounts(report) {
  if (report === undefined || !existsSync(report)) return { passed: 0, failed: 1 };
  const { numPassedTests, numFailedTests, success, testResults } = JSON.parse(
    readFileSync(report, 'utf8'),
  );
  const unloaded = testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length;
  const failed = numFailedTests + unloaded;
  const silent = failed === 0 && (!success || numPassedTests === 0) ? 1 : 0;
  return { passed: numPassedTests, failed: failed + silent };
}

function withLint({ passed, failed }) {
  return process.env.LINT === 'passed'
    ? { passed: passed + 1, failed }
    : { passed, failed: failed + 1 };
}
