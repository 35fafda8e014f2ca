/** Whatever a person gives wrong ends in exit code 2 and a sentence that says what to do. */
import { spawnSync } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../support/cli/run-command.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();
const HELP = /Run "campus-plan help"/;

async function expectRefused(args: readonly string[], says: RegExp): Promise<void> {
  const { code, out, notes } = await runCommand(...args);
  expect([code, out]).toEqual([2, '']);
  expect(notes).toMatch(says);
  expect(notes).not.toMatch(/^\s+at .*:\d+/m);
}

describe('wrong arguments', () => {
  test.each<[string, string[], RegExp]>([
    ['a command that is not there', ['plant'], /unknown command 'plant'/],
    ['a campus left out', ['solve'], /missing required argument 'campus'/],
    ['a plan left out', ['verify', SMALL_CAMPUS], /missing required argument 'plan'/],
    ['one file too many', ['check', SMALL_CAMPUS, 'more.json'], /too many arguments/],
    ['an option that is not there', ['check', SMALL_CAMPUS, '--fast'], /unknown option '--fast'/],
    ['no folder for documents', ['documents', SMALL_CAMPUS, 'p.json'], /'--out <folder>'/],
    ['an option without its value', ['solve', SMALL_CAMPUS, '--plan'], /argument missing/],
  ])('%s', async (_, args, says) => {
    await expectRefused(args, says);
    await expectRefused(args, HELP);
  });

  test.each<[string, string, RegExp]>([
    ['--seconds', 'NaN', /a number above 0, at most 14400/],
    ['--seconds', '0', /a number above 0/],
    ['--seconds', 'Infinity', /a number above 0/],
    // Longer than a timer can count: it would go off at once.
    ['--seconds', '3000000', /at most 14400/],
    ['--work', '1.5', /a whole number above 0/],
    ['--work', '', /a whole number above 0/],
    ['--seed', '-1', /a whole number, 0 or above/],
    ['--seed', 'three', /a whole number, 0 or above/],
    ['--gap', '1', /a share from 0 to below 1/],
  ])('%s %s', (option, value, says) =>
    expectRefused(['solve', SMALL_CAMPUS, `${option}=${value}`], says),
  );

  test('nothing at all prints the commands', async () => {
    const { code, notes } = await runCommand();
    expect(code).toBe(2);
    expect(notes).toMatch(/check .*\n[^]*solve .*\n[^]*verify .*\n[^]*documents /);
  });
});

describe('wrong files', () => {
  const missing = /nowhere\.json cannot be read: there is no such file or folder; look at the name/;

  test.each<[string, string[]]>([
    ['check', ['check', 'nowhere.json']],
    ['solve', ['solve', 'nowhere.json']],
    ['verify', ['verify', 'nowhere.json', 'plan.json']],
    ['verify of a plan', ['verify', SMALL_CAMPUS, 'nowhere.json']],
    ['documents', ['documents', SMALL_CAMPUS, 'nowhere.json', '--out', 'out']],
  ])('%s of a file that is missing', (_, args) => expectRefused(args, missing));

  test('a folder for a file', () =>
    expectRefused(['check', 'seeds'], /seeds cannot be read: it is a folder; give a file/));

  test('a file for a folder on the way', () =>
    expectRefused(['check', `${SMALL_CAMPUS}/x.json`], /is not a folder; look at the name/));

  test('a campus with mistakes is not solved, and all are told', () =>
    expectRefused(
      ['solve', 'seeds/mistakes/twenty-mistakes-at-once.json', '--json'],
      /cannot be used:(\n {2}(error {2}|warning) .*){20}/,
    ));

  test('a campus file for a plan file', () =>
    expectRefused(['verify', SMALL_CAMPUS, SMALL_CAMPUS], /FILE-FORMAT .* "campus-plan\/plan"/));

  test('a plan file that is cut off', async () => {
    await writeFile(folder.at('cut.json'), '{"format": "campus-plan/plan", "plan": {');
    await expectRefused(['verify', SMALL_CAMPUS, folder.at('cut.json')], /FILE-NOT-JSON .*line 1/);
  });

  test('bytes that are no text', async () => {
    await writeFile(folder.at('bytes.json'), Buffer.from([0, 255, 254, 128, 10]));
    await expectRefused(['solve', folder.at('bytes.json')], /FILE-NOT-JSON/);
  });
});

describe('places that cannot be written are told before the solve', () => {
  const solveInto = (path: string) => ['solve', SMALL_CAMPUS, '--work', '1', '--plan', path];

  test('a folder that is missing', () =>
    expectRefused(
      solveInto(folder.at('missing/plan.json')),
      /^\S*plan\.json cannot be written: there is no such file or folder[^\n]*$/,
    ));

  test('a folder itself', () =>
    expectRefused(
      solveInto(folder.at('')),
      /^\S* cannot be written: it is a folder; give a file$/,
    ));

  test('a file for a folder on the way', async () => {
    await writeFile(folder.at('file'), '');
    await expectRefused(
      solveInto(folder.at('file/plan.json')),
      /^\S* cannot be written: .*not a folder[^\n]*$/,
    );
  });

  test('the campus file, which stays as it was', async () => {
    const before = await readFile(SMALL_CAMPUS, 'utf8');
    await writeFile(folder.at('campus.json'), before);
    const args = ['solve', folder.at('campus.json'), '--plan', folder.at('./campus.json')];
    await expectRefused(
      args,
      /^\S* cannot be written: it is the campus file itself; give another name$/,
    );
    expect(await readFile(folder.at('campus.json'), 'utf8')).toBe(before);
  });
});

describe('help', () => {
  test.each(['check', 'solve', 'verify', 'documents'])('%s lists the exit codes', async (name) => {
    for (const args of [
      [name, '--help'],
      ['help', name],
    ]) {
      const { code, out, notes } = await runCommand(...args);
      expect([code, notes]).toEqual([0, '']);
      expect(out).toMatch(new RegExp(`^Usage: campus-plan ${name} `));
      for (const number of [0, 2, 3, 4, 5]) expect(out).toMatch(new RegExp(`\\b${number} \\w`));
    }
  });
});

test('the command says nothing of streams where nobody reads on', () => {
  const line = `node dist/apps/cli/main.js check seeds/mistakes/twenty-mistakes-at-once.json | true`;
  const { stderr } = spawnSync('sh', ['-c', line], { encoding: 'utf8' });
  expect(stderr).toBe('');
});
