/** How solves of unusual campuses end. They run in the thread of the build. */
import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { runCommand, type CommandRun } from '../../support/cli/run-command.js';
import { smallCampus, withoutRules } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();

async function solveChanged(
  change: (file: CampusFile) => void,
  ...more: string[]
): Promise<CommandRun> {
  const path = await folder.save('campus.json', smallCampus(change));
  return runCommand('solve', path, '--work', '5', '--plan', folder.at('plan.json'), ...more);
}

/** Two binding promises of a site each; the capital of five years pays for either, not for both. */
function promiseTwo(file: CampusFile): void {
  const bank = file.commitments.find(({ id }) => id === 'bank')!;
  withoutRules(file);
  const capital = file.funds.find(({ id }) => id === 'capital')!;
  capital.yearlyInflows = [{ from: 'FY2028', amountDollars: 22_000, growthPercent: 0 }];
  const test = { kind: 'named-site', site: 'S-1', by: 'FY2029', buildTypes: 'any' } as const;
  file.commitments = [bank, { ...bank, id: 'steps', name: 'Library Steps by FY29', test }];
}

function keepOnly(id: string): (file: CampusFile) => void {
  return (file) => {
    promiseTwo(file);
    file.commitments = file.commitments.filter((c) => c.id === id);
  };
}

function withoutMoney(file: CampusFile): void {
  withoutRules(file);
  for (const fund of file.funds) {
    Object.assign(fund, { openingBalanceDollars: 0, floorDollars: 0, inflows: [] });
    delete fund.yearlyInflows;
  }
}

describe('promises that the money cannot keep together', () => {
  test('end in no plan, and the promises are named', async () => {
    const { code, out } = await solveChanged(promiseTwo);
    expect(code).toBe(4);
    expect(out).toMatch(/proven that no plan keeps every binding rule/);
    expect(out).toContain('cannot all be kept: commitment "Mill Bank by FY32" (bank)');
    expect(out).toContain('cannot all be kept: commitment "Library Steps by FY29" (steps)');
    expect(existsSync(folder.at('plan.json'))).toBe(false);
  });

  test('are told as JSON, without a plan', async () => {
    const { code, out } = await solveChanged(promiseTwo, '--json');
    expect(code).toBe(4);
    const told = JSON.parse(out);
    expect(told).toMatchObject({ ending: 'no-plan', verified: false, sitesBuilt: 0, plan: null });
    const ids = told.conflict.map(({ id }: { id: string }) => id);
    expect(ids).toEqual(expect.arrayContaining(['bank', 'steps']));
  });

  test.each(['bank', 'steps'])('can be kept one at a time: %s', async (id) => {
    expect((await solveChanged(keepOnly(id))).code).toBe(0);
  });
});

describe('campuses with next to nothing', () => {
  test('no candidate site: a proven plan that builds none', async () => {
    const { code, out } = await solveChanged((file) => {
      withoutRules(file);
      file.candidateSites = [];
    }, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ ending: 'proven', verified: true, sitesBuilt: 0 });
  });

  test('a horizon of one year: a verified plan', async () => {
    const { code, out } = await solveChanged((file) => {
      withoutRules(file);
      file.calendar.horizonYears = 1;
    }, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ verified: true, sitesBuilt: 1 });
    const plan = folder.at('plan.json');
    expect((await runCommand('verify', folder.at('campus.json'), plan)).code).toBe(0);
  });

  test('no money, with a gardener to be paid: no plan, and money is the limit', async () => {
    const { code, out } = await solveChanged(withoutMoney, '--json');
    expect(code).toBe(4);
    const told = JSON.parse(out);
    expect(told.conflict).toEqual([{ kind: 'limit', id: 'money', name: expect.any(String) }]);
  });

  test('no money and nothing to pay: a proven plan that builds no site', async () => {
    const { code, out } = await solveChanged((file) => {
      withoutMoney(file);
      file.standingCosts = [];
      file.existingSites = [];
    }, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ ending: 'proven', verified: true, sitesBuilt: 0 });
  });
});
