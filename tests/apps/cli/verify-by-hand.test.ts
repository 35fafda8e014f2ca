/**
 * Plan files edited by hand. The plans they start from pass, so that each failure is the edit's own.
 * No outside source is needed: what each edit breaks is what it was written to break.
 */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writePlanFile, type PlanFile } from '#contracts/plan-file.js';
import { constructedPlanFile, planFileOfDecisions } from '../../support/cli/constructed-plan.js';
import { shortCampus, shortDecisions, type Edit } from '../../support/cli/edited-plans.js';
import { DEMO_STORIES, SMALL_STORIES, type Caught } from '../../support/cli/hand-edits.js';
import { runCommand, type CommandRun } from '../../support/cli/run-command.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';

const DEMO = 'seeds/demo-strained.json';
let folder = '';
let shortFile: string;
let short: PlanFile;
let demo: PlanFile;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'edited-plans-'));
  shortFile = join(folder, 'short.json');
  const text = JSON.stringify(shortCampus());
  await writeFile(shortFile, text);
  short = planFileOfDecisions(text, shortDecisions);
  demo = constructedPlanFile(await readFile(DEMO, 'utf8'));
});

afterAll(() => rm(folder, { recursive: true, force: true }));

interface Breaches {
  readonly verified: boolean;
  readonly breaches: readonly { rule: string; record: string; message: string }[];
}

async function verifyEdited(campus: string, plan: PlanFile, edit: Edit): Promise<CommandRun> {
  const file = structuredClone(plan);
  edit(file);
  const path = join(folder, 'edited.json');
  await writeFile(path, writePlanFile(file));
  return runCommand('verify', campus, path, '--json');
}

/** The edit fails the checks, and one breach has the rule and record and says so. */
async function expectCaught(run: Promise<CommandRun>, [rule, record, says]: Caught): Promise<void> {
  const { code, out } = await run;
  expect(code).toBe(3);
  const { verified, breaches } = JSON.parse(out) as Breaches;
  expect(verified).toBe(false);
  expect(breaches).toContainEqual({ rule, record, message: expect.stringMatching(says) });
}

describe('a plan of a small campus, edited by hand', () => {
  test('has hires, work days, purchases, hours unserved, and passes before it is edited', async () => {
    const { plan } = short;
    const rows = [plan.hires, plan.workDays, plan.compostPurchases, plan.unserved];
    expect(rows.every((list) => list.length > 0)).toBe(true);
    const { code, out } = await verifyEdited(shortFile, short, () => undefined);
    expect([code, JSON.parse(out)]).toEqual([0, { verified: true, breaches: [] }]);
  });

  test.each(SMALL_STORIES)('fails where %s', (_, edit, caught) =>
    expectCaught(verifyEdited(shortFile, short, edit), caught),
  );

  test('cannot be judged beside another campus file', async () => {
    const { code, out, notes } = await verifyEdited(SMALL_CAMPUS, short, () => undefined);
    expect([code, out]).toEqual([2, '']);
    expect(notes).toMatch(/PLAN-OTHER-CAMPUS {2}campus, digest: .* solve again/);
  });

  test('cannot be judged with the digest of another campus', async () => {
    const digest = `sha-256:${'0'.repeat(64)}`;
    const edited = verifyEdited(shortFile, short, (file) => (file.campus.digest = digest));
    expect((await edited).code).toBe(2);
  });
});

describe('a plan of the demo campus, edited by hand', () => {
  test('passes before it is edited', async () => {
    expect((await verifyEdited(DEMO, demo, () => undefined)).code).toBe(0);
  });

  test.each(DEMO_STORIES)('fails where %s', (_, edit, caught) =>
    expectCaught(verifyEdited(DEMO, demo, edit), caught),
  );

  test('is told in words as well, every breach and their count', async () => {
    const file = structuredClone(demo);
    file.plan.placements.push({ ...file.plan.placements[0]! });
    const path = join(folder, 'told.json');
    await writeFile(path, writePlanFile(file));
    const { code, out } = await runCommand('verify', DEMO, path);
    expect(code).toBe(3);
    expect(out).toMatch(/built-once {2}TVU-\d\d: .* built 2 times/);
    expect(out).toMatch(/Not verified: \d+ breach(es)?\.$/);
  });
});
