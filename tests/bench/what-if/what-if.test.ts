import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { fiscalYear } from '#units/fiscal-year.js';
import type { TierResult } from '#domain/tier.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import type { OursRun } from '../optimizer/ours.js';
import { namedChanges } from './changes.js';
import { judgeAnswer, whatIfTable } from './compare.js';

const tier = (name: string, value: number, tolerance: number): TierResult => ({
  ...{ name, value, tolerance, unit: 'sites', sense: name === 'benefit' ? 'max' : 'min' },
  ...{ bound: null, gap: null, proven: false },
});

const ran = (short: number, benefit: number): OursRun => ({
  ...{ ended: 'stopped', ending: 'time-limit', seconds: 3, moments: [], held: {} },
  ...{ plans: { told: 1, sound: 1 }, verified: true, earlyProven: false },
  tiers: [tier('commitment:one', short, 0), tier('benefit', benefit, 1e-4)],
});

test('an answer is compared tier by tier, and by benefit where the earlier tiers are equal', () => {
  const judge = (quick: OursRun, long: OursRun) => judgeAnswer({ name: 'a', quick, long });
  expect(judge(ran(1, 991), ran(1, 1000))).toMatchObject({ better: 'long', within: true });
  expect(judge(ran(1, 989), ran(1, 1000))).toMatchObject({ better: 'long', within: false });
  expect(judge(ran(1, 1000.05), ran(1, 1000))).toMatchObject({ better: 'equal', within: true });
  expect(judge(ran(2, 2000), ran(1, 1000))).toMatchObject({ better: 'long', within: false });
  expect(judge(ran(0, 500), ran(1, 1000))).toMatchObject({ better: 'quick', within: true });
  expect(judge({ ...ran(0, 1), tiers: [] }, ran(1, 1000))).toBeUndefined();
});

test('the table names the tier in which two plans differ', () => {
  const table = whatIfTable([{ name: 'a change', quick: ran(2, 990), long: ran(1, 1000) }]);
  expect(table).toContain('| a change | commitment:one: 2, long run 1 | long | 1.00 % | NO |');
  expect(table).toContain('0 of 1');
});

test('every change of the demo is a campus file that can be used, and none changes nothing', () => {
  const file = JSON.parse(readFileSync('seeds/demo-strained.json', 'utf8')) as CampusFile;
  const placements = file.candidateSites.map((site, i) => ({
    ...{ site: site.id, buildType: site.buildTypes[0] ?? '' },
    year: fiscalYear(2030 + i),
  }));
  const decisions = { placements, hires: [], workDays: [], purchases: [] };
  const changes = namedChanges({ file, decisions });
  expect(changes).toHaveLength(8);
  for (const { name, file: changed } of changes) {
    const load = loadCampusFile(JSON.stringify(changed));
    expect(load.ok ? [] : load.problems, name).toEqual([]);
    expect({ ...changed, id: file.id }, name).not.toEqual(file);
  }
});
