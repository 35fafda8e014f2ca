/** What was measured fills the gates that nobody states, and speaks against those that it does not bear out. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { gateReview } from '#estimating/gates/gate-review.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { siteEstimates } from '#planning/site-estimate.js';
import { gatesOpen } from '#rules/eligible-years/columns.js';
import { yearsLater } from '#units/fiscal-year.js';

const base = JSON.parse(readFileSync('seeds/mistakes/base.json', 'utf8'));
const [first, ...others] = base.candidateSites;

function loaded(change: object, facts: object = {}) {
  const site = { ...first, ...change, facts: { ...first.facts, ...facts } };
  const load = loadCampusFile({ ...base, candidateSites: [site, ...others] });
  if (!load.ok) throw new Error(JSON.stringify(load.problems));
  return { campus: load.campus, codes: load.warnings.map(({ code }) => code) };
}

const gatesOf = (campus: Campus) => campus.candidates[0]!.gates;
const row = (campus: Campus, kind: string) =>
  gateReview(campus, campus.candidates[0]!).find((gate) => gate.kind === kind);

const INSIDE = [-37.9998, 47.7001];
const tree = (trunkInches: number) => ({ name: 'linden 4', position: INSIDE, trunkInches });

describe('trees', () => {
  test('give the share in root protection: circles of a foot for each inch of trunk', () => {
    const { campus } = loaded({ trees: [tree(20)] });
    const share = campus.candidates[0]!.facts.rootProtectedShare;
    if (!share.known) throw new Error('the share is not known');
    // The circle lies wholly inside: pi r^2 on the 8,000 sf of the site, whose drawn area is within 5 %.
    expect(share.value).toBeCloseTo((Math.PI * 20 ** 2) / 8000, 2);
  });

  test('take less of the compost where there are some, and nothing where there are none', () => {
    const compost = (change: object) => {
      const answer = siteEstimates(loaded(change).campus, { site: 'S-1', units: 'us' });
      if (answer.kind !== 'estimated') throw new Error(answer.problem.problem);
      const nodes = answer.estimates.estimates[0]!.sections.takeoff;
      return nodes.find(({ name }) => name === 'compost')!.value!;
    };
    expect(compost({ trees: [tree(20)] })).toBeLessThan(compost({}));
    expect(compost({ trees: [] })).toBe(compost({}));
  });

  test('leave the gate open above a quarter, until an arborist agreed', () => {
    const trees = [tree(28)];
    expect(row(loaded({ trees }).campus, 'root-protection')).toMatchObject({
      status: 'unknown',
      basis: 'not recorded',
      ask: 'campus arborist',
    });
    const agreed = loaded({ trees, survey: { arboristAgreed: true } }).campus;
    expect(row(agreed, 'root-protection')).toMatchObject({ status: 'pass', basis: 'measured' });
    const refused = loaded({ trees, survey: { arboristAgreed: false } });
    expect(gatesOf(refused.campus).at(-1)).toMatchObject({ kind: 'root-protection', bars: 'all' });
    expect(refused.codes).toContain('GATE-MEASURED-TO-FAIL');
  });

  test('are protected by the radius that the campus measured for them', () => {
    const radius = { coefficient: 'gate.root-radius', value: 1.5, unit: 'ft/in' };
    const overrides = [{ ...radius, source: 'tree committee', date: '2026-10-02' }];
    const share = (change: object) => {
      const { rootProtectedShare } = loaded(change).campus.candidates[0]!.facts;
      return rootProtectedShare.known ? rootProtectedShare.value : NaN;
    };
    const trees = [tree(12)];
    expect(share({ trees, overrides }) / share({ trees })).toBeCloseTo(1.5 ** 2, 1);
  });
});

describe('a gate that nobody states', () => {
  test.each([
    ['slope', {}, { slopePercent: 19 }],
    ['access', { survey: { truckWidthFeet: 8 } }, {}],
    ['accessibility', { survey: { route: { clearWidthInches: 30 } } }, {}],
  ])('%s bars the site where it is measured to fail', (kind, change, facts) => {
    const { campus, codes } = loaded(change, facts);
    expect(codes).toEqual(['GATE-MEASURED-TO-FAIL']);
    expect(gatesOf(campus).at(-1)).toMatchObject({ kind, status: 'fail', bars: 'all' });
    const site = campus.candidates[0]!;
    const year = yearsLater(campus.calendar.firstYear, 5);
    const open = site.buildTypes.map((buildType) => gatesOpen(campus, { site, buildType, year }));
    expect(open.every((is) => !is)).toBe(true);
  });

  test('is left unknown where nothing was measured, and bars nothing', () => {
    const { campus, codes } = loaded({});
    expect(codes).toEqual([]);
    expect(gatesOf(campus)).toHaveLength(first.gates.length);
    for (const kind of ['access', 'accessibility', 'heritage', 'fire-lane', 'structure']) {
      const gate = row(campus, kind);
      expect(gate, kind).toMatchObject({ status: 'unknown', basis: 'not recorded' });
      expect(gate?.clearedBy, kind).not.toBe('');
      expect(gate?.ask, kind).not.toBe('');
    }
  });

  test('is passed where it was measured to, with the date of a regulator’s number', () => {
    const { campus } = loaded({ survey: { truckWidthFeet: 11, groundBearsTruck: true } });
    expect(row(campus, 'access')).toMatchObject({ status: 'pass', basis: 'measured', asOf: null });
    expect(row(campus, 'contamination')).toMatchObject({ status: 'pass', asOf: '2025-10-16' });
  });
});

test('works on the site in the first year of the plan are told', () => {
  const works = { ...base.construction[0], sites: ['S-1'], certaintyPercent: 100 };
  const now = { ...works, from: 'FY2028', to: 'FY2029' };
  const load = loadCampusFile({ ...base, construction: [now], handPlacements: [] });
  if (!load.ok) throw new Error(JSON.stringify(load.problems));
  expect(row(load.campus, 'construction')).toMatchObject({ status: 'fail', basis: 'measured' });
});

test('a stated gate shows what was measured beside it', () => {
  const survey = { utilityLines: [], digInches: 12, marksInForce: true };
  const gate = row(loaded({ survey }).campus, 'utilities');
  expect(gate).toMatchObject({ status: 'pass', basis: 'stated' });
  expect(gate?.measured).toBe('Marked, and deeper than the dig.');
});
