import { describe, expect, test } from 'vitest';
import { accessGate } from '#estimating/gates/access.js';
import { accessibilityGate } from '#estimating/gates/accessibility.js';
import { constructionGate, strandedDollars } from '#estimating/gates/construction.js';
import {
  contaminationGate,
  type Growing,
  LEAD_LEVELS_AS_OF,
} from '#estimating/gates/contamination.js';
import { type GateResult, overallStatus } from '#estimating/gates/gate-result.js';
import { reviewGate, REVIEWS } from '#estimating/gates/review.js';
import { rootProtectionGate } from '#estimating/gates/root-protection.js';
import { slopeGate } from '#estimating/gates/slope.js';
import { utilitiesGate } from '#estimating/gates/utilities.js';
import { typical } from '#estimating/defaults/coefficients.js';
import { known, type Known, UNKNOWN } from '#units/known.js';
import { costChecks } from './outside/cost.checks.js';
import { runOutsideChecks } from './outside/outside-check.js';
import { gateChecks } from './outside/gate.checks.js';

runOutsideChecks([...costChecks.filter(({ formula }) => formula === 'gates'), ...gateChecks]);

/** Whatever is not passed says what would clear it; every gate says whom to ask. */
function expectHelp({ status, clearedBy, ask, note }: GateResult): void {
  expect(ask.length).toBeGreaterThan(5);
  expect(note.length).toBeGreaterThan(5);
  if (status !== 'pass') expect(clearedBy.length).toBeGreaterThan(10);
}

describe('contamination', () => {
  const rule = {
    screening: typical('gate.lead-screening'),
    stop: typical('gate.lead-stop'),
    testYears: typical('gate.soil-test-years'),
  };
  const at = (lead: Known<number>, growing: Growing, testAgeYears = 1): GateResult =>
    contaminationGate({ leadMgPerKg: lead, growing, testAgeYears }, rule);

  test.each([
    [199, 'food in the ground', 'pass'],
    [200, 'food in the ground', 'fail'],
    [200, 'food in raised beds', 'unknown'],
    [599, 'ornamental', 'unknown'],
    [600, 'ornamental', 'fail'],
    [600, 'food in raised beds', 'fail'],
    [12, 'ornamental', 'pass'],
  ] as const)('%i mg/kg for %s: %s', (lead, growing, status) => {
    const gate = at(known(lead), growing);
    expect(gate.status).toBe(status);
    expect(gate.note).toContain(`${lead} mg/kg (screening 200, stop 600)`);
    expectHelp(gate);
  });

  test('no test is not a clean test, nor is an old one', () => {
    expect(at(UNKNOWN, 'ornamental')).toMatchObject({
      status: 'unknown',
      note: 'Soil lead is unknown.',
    });
    expect(at(known(20), 'food in the ground', 3).status).toBe('pass');
    expect(at(known(20), 'food in the ground', 4)).toMatchObject({
      status: 'unknown',
      note: 'The soil test is 4 years old.',
    });
    expectHelp(at(UNKNOWN, 'ornamental'));
    expectHelp(at(known(20), 'food in the ground', 4));
  });

  test('a pass is called a screening result, with the date of the numbers', () => {
    const gate = at(known(46), 'food in the ground');
    expect(gate.clearedBy).toContain('not a clearance');
    expect(gate.asOf).toBe(LEAD_LEVELS_AS_OF);
    expect(gate.asOf).toBe('2025-10-16');
    expect(gate).toMatchObject({
      kind: 'contamination',
      ask: 'environmental health and safety office',
    });
  });
});

describe('utilities', () => {
  const line = (depth: Known<number>) => ({
    kind: 'electric duct bank',
    owner: 'power shop',
    depthInches: depth,
  });

  test('nobody looked is unknown, nothing dug passes with the reminder to ask', () => {
    const gate = utilitiesGate({ found: UNKNOWN, digInches: 6, marked: known(true) });
    expect(gate).toMatchObject({
      kind: 'utilities',
      status: 'unknown',
      note: 'Nobody has looked for utilities.',
    });
    expectHelp(gate);
    const still = utilitiesGate({ found: known([line(known(2))]), digInches: 0, marked: UNKNOWN });
    expect(still.status).toBe('pass');
    expect(still.clearedBy).toContain('one-call');
  });

  test('a line no deeper than the dig fails and is named', () => {
    const gate = utilitiesGate({
      found: known([line(known(12))]),
      digInches: 12,
      marked: known(true),
    });
    expect(gate.status).toBe('fail');
    expect(gate.note).toBe('Shallower than the dig: electric duct bank (power shop).');
    expectHelp(gate);
    const two = utilitiesGate({
      found: known([line(known(1)), line(known(2))]),
      digInches: 12,
      marked: known(true),
    });
    expect(two.note).toContain('), electric');
  });

  test('unknown depth or missing marks stay unknown', () => {
    const deep = utilitiesGate({
      found: known([line(UNKNOWN)]),
      digInches: 6,
      marked: known(true),
    });
    expect(deep).toMatchObject({
      status: 'unknown',
      note: 'A line of unknown depth crosses the site.',
    });
    expectHelp(deep);
    for (const marked of [UNKNOWN, known(false)]) {
      const gate = utilitiesGate({ found: known([]), digInches: 6, marked });
      expect(gate).toMatchObject({ status: 'unknown', note: 'No marks in force.' });
      expectHelp(gate);
    }
  });

  test('deep and marked passes, by hand within the tolerance zone', () => {
    const gate = utilitiesGate({
      found: known([line(known(18))]),
      digInches: 12,
      marked: known(true),
    });
    expect(gate.status).toBe('pass');
    expect(gate.clearedBy).toContain('tolerance zone');
    expectHelp(gate);
  });
});

describe('construction', () => {
  const tunnel = {
    name: 'Tunnel renewal',
    from: 2031,
    to: 2032,
    certaintyPercent: 70,
    overlapShare: 0.4,
  };
  const at = (buildYear: number, works: Partial<typeof tunnel> = {}): GateResult =>
    constructionGate({
      buildYear,
      works: [{ ...tunnel, ...works }],
      overlapLimit: 0.02,
      hardAtPercent: 80,
    });

  test('unsure works make their years and the ones beside them unknown', () => {
    expect([2029, 2030, 2031, 2032, 2033, 2034].map((year) => at(year).status)).toEqual([
      'pass',
      'unknown',
      'unknown',
      'unknown',
      'unknown',
      'pass',
    ]);
    expect(at(2031).note).toBe('Tunnel renewal is 70 % certain for fiscal years 2031 to 2032.');
    expectHelp(at(2031));
    expect(at(2029)).toMatchObject({
      kind: 'construction',
      note: 'No works on the site in these years.',
    });
  });

  test('sure works bar their years', () => {
    expect(
      [2030, 2031, 2032, 2033].map((year) => at(year, { certaintyPercent: 80 }).status),
    ).toEqual(['unknown', 'fail', 'fail', 'unknown']);
    const gate = at(2032, { certaintyPercent: 90 });
    expect(gate.note).toBe('Tunnel renewal takes the site in fiscal years 2031 to 2032.');
    expectHelp(gate);
  });

  test('a sliver of overlap is let pass', () => {
    expect(at(2031, { overlapShare: 0.02 }).status).toBe('pass');
    expect(at(2031, { overlapShare: 0.021 }).status).toBe('unknown');
  });

  test('capital is stranded by the unused part of its life', () => {
    const stranding = {
      capital: 70_000,
      plantedYear: 2028,
      worksFrom: 2035,
      certaintyPercent: 100,
      paybackYears: 7,
    };
    expect(strandedDollars(stranding)).toBe(0);
    expect(strandedDollars({ ...stranding, worksFrom: 2040 })).toBe(0);
    expect(strandedDollars({ ...stranding, worksFrom: 2028 })).toBe(70_000);
    expect(strandedDollars({ ...stranding, worksFrom: 2020 })).toBe(70_000);
    expect(strandedDollars({ ...stranding, worksFrom: 2034 })).toBeCloseTo(10_000, 6);
  });
});

describe('root protection', () => {
  const at = (share: Known<number>, arboristAgreed: Known<boolean> = UNKNOWN): GateResult =>
    rootProtectionGate({ protectedShare: share, limitShare: 0.25, arboristAgreed });

  test('up to the limit passes, above it the arborist decides', () => {
    expect(at(UNKNOWN)).toMatchObject({
      kind: 'root-protection',
      status: 'unknown',
      note: 'Trees are not measured.',
    });
    expect(at(known(0.25)).status).toBe('pass');
    expect(at(known(0.31))).toMatchObject({
      status: 'unknown',
      note: '31 % of the site lies in root protection.',
    });
    expect(at(known(0.31), known(true))).toMatchObject({
      status: 'pass',
      note: '31 % of the site lies in root protection. An arborist agreed.',
    });
    expect(at(known(0.31), known(false))).toMatchObject({
      status: 'fail',
      note: '31 % of the site lies in root protection. An arborist refused.',
    });
    for (const gate of [at(UNKNOWN), at(known(0.31)), at(known(0.31), known(false))])
      expectHelp(gate);
  });

  test('even a pass keeps the roots', () => {
    expect(at(known(0.1)).clearedBy).toContain('nothing against the trunk');
    expect(at(known(0.31), known(true)).clearedBy).toContain('No grade change');
  });
});

describe('slope', () => {
  const at = (slope: Known<number>): GateResult =>
    slopeGate({ slopePercent: slope, limitPercent: 12 });

  test('fails above the limit only', () => {
    expect([12, 12.1].map((slope) => at(known(slope)).status)).toEqual(['pass', 'fail']);
    expect(at(known(14)).note).toBe('Slope 14 % (limit 12 %).');
    expect(at(UNKNOWN)).toMatchObject({
      kind: 'slope',
      status: 'unknown',
      note: 'Slope is not measured.',
    });
    for (const gate of [at(known(14)), at(UNKNOWN), at(known(3))]) expectHelp(gate);
  });
});

describe('access', () => {
  const at = (width: Known<number>, bears: Known<boolean>): GateResult =>
    accessGate({ truckWidthFt: width, leastWidthFt: 10, bearsTruck: bears });

  test('width and bearing are both needed', () => {
    expect(at(known(10), known(true)).status).toBe('pass');
    expect(at(known(9.9), known(true))).toMatchObject({
      status: 'fail',
      note: 'The way is 9.9 ft wide (10 ft needed).',
    });
    expect(at(known(12), known(false))).toMatchObject({
      kind: 'access',
      status: 'fail',
      note: 'The ground over a structure does not bear a truck.',
    });
    expect(at(UNKNOWN, known(true))).toMatchObject({
      status: 'unknown',
      note: 'No tipping point is recorded.',
    });
    expect(at(known(12), UNKNOWN)).toMatchObject({ status: 'unknown' });
    for (const gate of [
      at(known(9), known(true)),
      at(known(9), known(false)),
      at(UNKNOWN, UNKNOWN),
      at(known(12), UNKNOWN),
    ]) {
      expectHelp(gate);
    }
  });
});

describe('accessibility', () => {
  const rule = {
    clearWidthInches: typical('gate.route-width'),
    passingEveryFt: typical('gate.route-passing-every'),
    runningSlopePercent: typical('gate.route-running-slope'),
    crossSlopePercent: typical('gate.route-cross-slope'),
  };
  const good = {
    clearWidthInches: known(36),
    passingEveryFt: known(200),
    runningSlopePercent: known(5),
    crossSlopePercent: known(2.08),
    firmAndStable: known(true),
  };

  test('the numbers of section 403 pass exactly', () => {
    const gate = accessibilityGate(good, rule);
    expect(gate).toMatchObject({ kind: 'accessibility', status: 'pass', asOf: '2010-09-15' });
    expect(gate.note).toContain('section 403');
    expectHelp(gate);
  });

  test('each number beyond its limit fails and is named', () => {
    const note = (change: Partial<typeof good>): string => {
      const gate = accessibilityGate({ ...good, ...change }, rule);
      expect(gate.status).toBe('fail');
      expectHelp(gate);
      return gate.note;
    };
    expect(note({ clearWidthInches: known(35) })).toBe(
      'Route: clear width (in) is 35, at least 36 needed.',
    );
    expect(note({ passingEveryFt: known(240) })).toContain(
      'distance between passing places (ft) is 240, at most 200',
    );
    expect(note({ runningSlopePercent: known(6) })).toContain(
      'running slope (%) is 6, at most 5 allowed',
    );
    expect(note({ crossSlopePercent: known(2.1) })).toContain('cross slope (%) is 2.1');
    expect(note({ firmAndStable: known(false) })).toBe('Route: surface is not firm.');
    expect(note({ firmAndStable: known(false), runningSlopePercent: known(6) })).toContain(
      '; surface is not firm',
    );
  });

  test('what is not measured is unknown, what fails is said all the same', () => {
    const gate = accessibilityGate(
      { ...good, crossSlopePercent: UNKNOWN, firmAndStable: UNKNOWN },
      rule,
    );
    expect(gate).toMatchObject({ status: 'unknown', note: '2 facts of the route are not known.' });
    expectHelp(gate);
    const steep = accessibilityGate(
      { ...good, crossSlopePercent: UNKNOWN, runningSlopePercent: known(9) },
      rule,
    );
    expect(steep.status).toBe('fail');
    expect(accessibilityGate({ ...good, clearWidthInches: UNKNOWN }, rule).status).toBe('unknown');
  });
});

describe('reviews', () => {
  test.each(['heritage', 'flood-or-wetland', 'fire-lane', 'structure'] as const)('%s', (kind) => {
    expect(reviewGate(kind, known(true), 'Seen on site.')).toMatchObject({
      kind,
      status: 'pass',
      clearedBy: '',
    });
    const refused = reviewGate(kind, known(false), 'Hydrant in the way.');
    expect(refused).toMatchObject({
      status: 'fail',
      note: 'Hydrant in the way.',
      ask: REVIEWS[kind].ask,
    });
    const open = reviewGate(kind, UNKNOWN, '');
    expect(open).toMatchObject({ status: 'unknown', note: 'Not reviewed.' });
    expect(reviewGate(kind, UNKNOWN, 'Fill of unknown origin.').note).toBe(
      'Fill of unknown origin.',
    );
    for (const gate of [refused, open]) expectHelp(gate);
  });

  test('each asks somebody else and something else', () => {
    const reviews = Object.values(REVIEWS);
    expect(new Set(reviews.map(({ ask }) => ask)).size).toBe(4);
    expect(new Set(reviews.map(({ clearedBy }) => clearedBy)).size).toBe(4);
    expect(REVIEWS.heritage.ask).toContain('tribal nations');
    expect(REVIEWS['fire-lane'].ask).toBe('fire marshal');
    expect(REVIEWS.structure.ask).toContain('engineer');
    expect(REVIEWS['flood-or-wetland'].ask).toContain('permitting agency');
  });
});

describe('all gates of a site', () => {
  const gate = (status: GateResult['status']): GateResult => ({
    kind: 'slope',
    status,
    note: '',
    clearedBy: '',
    ask: '',
  });

  test('one fail fails, else one unknown is unknown', () => {
    expect(overallStatus([])).toBe('pass');
    expect(overallStatus([gate('pass'), gate('pass')])).toBe('pass');
    expect(overallStatus([gate('pass'), gate('unknown')])).toBe('unknown');
    expect(overallStatus([gate('unknown'), gate('fail'), gate('pass')])).toBe('fail');
  });
});
