/**
 * Every question asked of campuses with next to nothing: a sentence that can be read out and an exit code,
 * never a number that is none. The re-solves run in threads of the build.
 */
import { expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { runCommand } from '../../support/cli/run-command.js';
import { smallCampus, withoutRules } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();

/** The yearly promise alone, as far as the campus still has years for it. */
function promisingYearly(file: CampusFile): void {
  const steady = file.commitments.filter(({ id }) => id === 'steady');
  withoutRules(file);
  file.commitments = steady;
}

const UNKNOWN: CampusFile['candidateSites'][number]['gates'][number] = {
  kind: 'utilities',
  status: 'unknown',
  note: 'No locate has been asked for.',
  bars: 'all',
  clearedBy: 'A locate by the public one-call and the campus’s own locator',
};

const CAMPUSES: Readonly<Record<string, (file: CampusFile) => void>> = {
  'no site at all': (file) => {
    promisingYearly(file);
    file.candidateSites = [];
  },
  'neither site nor promise': (file) => {
    withoutRules(file);
    file.candidateSites = [];
    file.existingSites = [];
  },
  'one site': (file) => {
    promisingYearly(file);
    file.candidateSites = file.candidateSites.slice(0, 1);
  },
  'no money': (file) => {
    promisingYearly(file);
    file.standingCosts = [];
    file.existingSites = [];
    for (const fund of file.funds) {
      Object.assign(fund, { openingBalanceDollars: 0, floorDollars: 0, inflows: [] });
      delete fund.yearlyInflows;
    }
  },
  'only unknown gates': (file) => {
    promisingYearly(file);
    for (const site of file.candidateSites) {
      site.gates = [...site.gates.filter(({ kind }) => kind !== UNKNOWN.kind), UNKNOWN];
    }
  },
  'one year': (file) => {
    promisingYearly(file);
    file.calendar.horizonYears = 1;
  },
};

/** Campuses without a site that could be prepared next year. */
const CLOSED = ['no site at all', 'neither site nor promise', 'only unknown gates'];

const NO_NUMBER = /NaN|undefined|Infinity|null|\[object|, after \.|“”|has {2}and|\b0 more\b/;

test.each(Object.entries(CAMPUSES))('%s: every question has an answer', async (name, change) => {
  const campus = await folder.save(`${name}.json`, smallCampus(change));
  const plan = folder.at(`${name}.plan.json`);
  const solved = await runCommand('solve', campus, '--work', '5', '--plan', plan);
  expect(solved.code, solved.notes).toBe(0);
  const work = ['--seconds', '6'];
  const asked = [
    ['next-site', campus, plan, ...work],
    ['limits', campus, plan, ...work],
    ['promises', campus, plan, ...work],
    ['additions', campus, plan, ...work],
    ['conflicts', campus, ...work],
    ['futures', campus, plan, '--futures', '50', ...work],
    ['compare', plan, plan, '--campus', campus],
  ];
  const answers = await Promise.all(asked.map((args) => runCommand(...args)));
  for (const [i, { code, out, notes }] of answers.entries()) {
    const command = asked[i]?.[0] ?? '';
    expect(code, `${command}: ${notes}`).toBe(0);
    expect(out.split('\n')[0], command).toMatch(/^[“A-Z0-9].*\.$/);
    expect(out, command).not.toMatch(NO_NUMBER);
  }
  const [next, limits] = answers;
  if (!CLOSED.includes(name)) return;
  expect(next?.out).toMatch(/^No candidate is eligible in FY28\./);
  expect(limits?.out).toMatch(/ {2}Sites: (nothing|the promise cannot be kept even in FY28)/);
});

test('why asks for a site that there is', async () => {
  const none = await folder.save('none.json', smallCampus(CAMPUSES['no site at all']));
  const { code, notes } = await runCommand('why', none, 'S-1');
  expect([code, notes]).toEqual([2, 'There is no candidate site S-1; the file has none at all.']);
  const one = await folder.save('one.json', smallCampus(CAMPUSES['one site']));
  expect((await runCommand('why', one, 'S-9')).notes).toBe(
    'There is no candidate site S-9; the file has S-1.',
  );
});
