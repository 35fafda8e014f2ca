/** What each command does with good files. The solves here run in the thread of the build. */
import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PlanFile } from '#contracts/plan-file.js';
import { runCommand, type CommandRun } from '../../support/cli/run-command.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const MISTAKES = 'seeds/mistakes/twenty-mistakes-at-once';
const folder = temporaryFolder();

/** Solves the small campus with one seed and work limit, and saves the plan. */
function solveInto(name: string, ...more: string[]): Promise<CommandRun> {
  const limits = ['--work', '20', '--seed', '3', '--plan', folder.at(name)];
  return runCommand('solve', SMALL_CAMPUS, ...limits, ...more);
}

describe('check', () => {
  test('says of a good file that it can be planned from', async () => {
    const { code, out } = await runCommand('check', SMALL_CAMPUS);
    expect([code, out]).toEqual([
      0,
      'Larch Ferry College: the file can be planned from (0 errors, 0 warnings).',
    ]);
  });

  test('prints a good file as JSON', async () => {
    const { code, out } = await runCommand('check', SMALL_CAMPUS, '--json');
    expect([code, JSON.parse(out)]).toEqual([
      0,
      { ok: true, errors: 0, warnings: 0, problems: [] },
    ]);
  });

  test('tells all twenty mistakes of a bad file at once, a line each', async () => {
    const expected = JSON.parse(await readFile(`${MISTAKES}.expected.json`, 'utf8')) as unknown[];
    const { code, out } = await runCommand('check', `${MISTAKES}.json`);
    expect(code).toBe(2);
    const lines = out.split('\n').filter((line) => /^ {2}(error {2}|warning) /.test(line));
    expect(lines.length).toBeGreaterThanOrEqual(20);
    expect(lines).toHaveLength(expected.length);
    expect(out).toMatch(/The file cannot be planned from \(\d+ errors, \d+ warnings?\)\.$/);
  });

  test('prints the mistakes of a bad file as JSON, each with its remedy', async () => {
    const { code, out } = await runCommand('check', `${MISTAKES}.json`, '--json');
    expect(code).toBe(2);
    const told = JSON.parse(out);
    expect(told.ok).toBe(false);
    expect(told.problems).toHaveLength(told.errors + told.warnings);
    for (const problem of told.problems) expect(problem.remedy).toMatch(/\w.*[.?]$/);
  });
});

describe('a plan that was solved and saved', () => {
  let solved: CommandRun;

  beforeAll(async () => {
    solved = await solveInto('plan.json', '--json');
  });

  test('is told as JSON with its ending, tiers and how near to proven it is', () => {
    expect(solved.code).toBe(0);
    const told = JSON.parse(solved.out);
    expect(told).toMatchObject({ verified: true, conflict: [], plan: folder.at('plan.json') });
    expect(['proven', 'work-limit']).toContain(told.ending);
    expect(told.sitesBuilt).toBeGreaterThan(0);
    expect(told.seconds).toBeGreaterThan(0);
    const names = told.tiers.map(({ name }: { name: string }) => name);
    expect(names).toEqual([
      'unserved-peak',
      'unserved-total',
      'commitment:steady',
      'benefit',
      'recurring-cost',
    ]);
    const lead = told.tiers.find(({ name }: { name: string }) => name === told.tier);
    expect([told.objective, told.bound, told.gap]).toEqual([lead.value, lead.bound, lead.gap]);
  });

  test('is saved with its seed and limit, and with the sites that were told', async () => {
    const file = JSON.parse(await readFile(folder.at('plan.json'), 'utf8')) as PlanFile;
    expect(file.solver).toMatchObject({ seed: 3, limit: { kind: 'work', units: 20 } });
    expect(file.plan.placements).toHaveLength(JSON.parse(solved.out).sitesBuilt);
  });

  test('is the same to the byte from the same file, seed and work limit', async () => {
    const again = await solveInto('again.json');
    expect(again.code).toBe(0);
    expect(again.out).toContain(`Saved in ${folder.at('again.json')}`);
    const bytes = await Promise.all(
      ['plan.json', 'again.json'].map((name) => readFile(folder.at(name))),
    );
    expect(bytes[1]!.equals(bytes[0]!)).toBe(true);
  });

  test('is gone on from, and what comes of it is no worse', async () => {
    const args = ['--from', folder.at('plan.json'), '--work', '1', '--json'];
    const { code, out } = await runCommand('solve', SMALL_CAMPUS, ...args);
    expect(code).toBe(0);
    const valueOf = (told: string, name: string): number =>
      JSON.parse(told).tiers.find((t: { name: string }) => t.name === name).value;
    expect(valueOf(out, 'commitment:steady')).toBe(valueOf(solved.out, 'commitment:steady'));
    expect(valueOf(out, 'benefit')).toBeGreaterThanOrEqual(valueOf(solved.out, 'benefit'));
  });

  test('is not gone on from where the file is no plan', async () => {
    const { code, notes } = await runCommand('solve', SMALL_CAMPUS, '--from', SMALL_CAMPUS);
    expect(code).toBe(2);
    expect(notes).toContain('cannot be used');
  });

  test('passes when it is verified', async () => {
    const { code, out } = await runCommand('verify', SMALL_CAMPUS, folder.at('plan.json'));
    expect(code).toBe(0);
    expect(out).toMatch(/^Verified: .* to the cent and the hundredth of an hour\.$/);
  });

  test('becomes a PDF in a folder that is made for it', async () => {
    const args = [SMALL_CAMPUS, folder.at('plan.json'), '--out', folder.at('made/here'), '--json'];
    const { code, out } = await runCommand('documents', ...args);
    expect(code).toBe(0);
    const { documents } = JSON.parse(out) as { documents: string[] };
    expect(documents.length).toBeGreaterThan(0);
    for (const path of documents) {
      expect(path).toContain(folder.at('made/here'));
      expect((await readFile(path)).subarray(0, 5).toString('latin1')).toBe('%PDF-');
    }
  });

  test('becomes a final document only with a name and with all that it needs, said line by line', async () => {
    const plan = folder.at('plan.json');
    const final = (only: string, out: string, ...more: string[]) => {
      const wish = ['--only', only, '--out', folder.at(out), '--final', ...more];
      return runCommand('documents', SMALL_CAMPUS, plan, ...wish);
    };
    const unnamed = await final('staffing-request', 'unnamed');
    expect(unnamed.code).toBe(3);
    expect(unnamed.notes).toContain(
      'Not ready to be final, so no document is written:\n  Grounds staffing request:\n    approval: Nobody is named',
    );
    const open = await final('annual-report', 'open', '--approved-by', 'Pat Rowan');
    expect(open.code).toBe(3);
    expect(open.notes).toContain('record: What happened is not on record.');
    for (const name of ['unnamed', 'open']) {
      await expect(readFile(folder.at(name))).rejects.toThrow('ENOENT');
    }
    const named = await final('staffing-request', 'named', '--approved-by', 'Pat Rowan');
    expect([named.code, named.out]).toEqual([0, expect.stringContaining('staffing-request.pdf')]);
  });

  test('becomes no document once it was edited so that it fails', async () => {
    const file = JSON.parse(await readFile(folder.at('plan.json'), 'utf8')) as PlanFile;
    file.plan.workDays[0]!.count = 99;
    const edited = await folder.save('edited.json', file);
    const args = [SMALL_CAMPUS, edited, '--out', folder.at('none')];
    const { code, notes } = await runCommand('documents', ...args);
    expect(code).toBe(3);
    expect(notes).toMatch(/no document is written:\n {2}work-days {2}fall-day: /);
    await expect(readFile(folder.at('none'))).rejects.toThrow('ENOENT');
  });

  test('becomes no document once it names what the campus does not have', async () => {
    const file = JSON.parse(await readFile(folder.at('plan.json'), 'utf8')) as PlanFile;
    file.plan.placements[0]!.site = 'S-9';
    const edited = await folder.save('stray.json', file);
    const args = [SMALL_CAMPUS, edited, '--out', folder.at('none')];
    const { code, notes } = await runCommand('documents', ...args);
    expect(code).toBe(2);
    expect(notes).toMatch(/no site called S-9/);
  });
});
