import { describe, expect, test } from 'vitest';
import { constructionGate, strandedDollars } from '#estimating/gates/construction.js';
import {
  contaminationGate,
  type Growing,
  LEAD_LEVELS_AS_OF,
} from '#estimating/gates/contamination.js';
import { type GateResult } from '#estimating/gates/gate-result.js';
import { rootProtectionGate } from '#estimating/gates/root-protection.js';
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
  const at = (
    lead: Known<number>,
    growing: Growing,
    testAgeYears: Known<number> = known(1),
  ): GateResult => contaminationGate({ leadMgPerKg: lead, growing, testAgeYears }, rule);

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
    expect(at(known(20), 'food in the ground', known(3)).status).toBe('pass');
    expect(at(known(20), 'food in the ground', known(4))).toMatchObject({
      status: 'unknown',
      note: 'The soil test is 4 years old.',
    });
    expectHelp(at(UNKNOWN, 'ornamental'));
    expect(at(known(20), 'food in the ground', UNKNOWN)).toMatchObject({
      status: 'unknown',
      note: 'Lead 20 mg/kg (screening 200, stop 600). No test of it is dated.',
    });
    expect(at(known(700), 'ornamental', UNKNOWN).status).toBe('fail');
    expectHelp(at(known(20), 'food in the ground', known(4)));
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
    const gate = utilitiesGate({ found: UNKNOWN, digInches: known(6), marked: known(true) });
    expect(gate).toMatchObject({
      kind: 'utilities',
      status: 'unknown',
      note: 'Nobody has looked for utilities.',
    });
    expectHelp(gate);
    const still = utilitiesGate({
      found: known([line(known(2))]),
      digInches: known(0),
      marked: UNKNOWN,
    });
    expect(still.status).toBe('pass');
    expect(still.clearedBy).toContain('one-call');
  });

  test('a line no deeper than the dig fails and is named', () => {
    const gate = utilitiesGate({
      found: known([line(known(12))]),
      digInches: known(12),
      marked: known(true),
    });
    expect(gate.status).toBe('fail');
    expect(gate.note).toBe('Shallower than the dig: electric duct bank (power shop).');
    expectHelp(gate);
    const two = utilitiesGate({
      found: known([line(known(1)), line(known(2))]),
      digInches: known(12),
      marked: known(true),
    });
    expect(two.note).toContain('), electric');
  });

  test('unknown depth or missing marks stay unknown', () => {
    const deep = utilitiesGate({
      found: known([line(UNKNOWN)]),
      digInches: known(6),
      marked: known(true),
    });
    expect(deep).toMatchObject({
      status: 'unknown',
      note: 'A line of unknown depth crosses the site.',
    });
    expectHelp(deep);
    for (const marked of [UNKNOWN, known(false)]) {
      const gate = utilitiesGate({ found: known([]), digInches: known(6), marked });
      expect(gate).toMatchObject({ status: 'unknown', note: 'No marks in force.' });
      expectHelp(gate);
    }
  });

  test('deep and marked passes, by hand within the tolerance zone', () => {
    const gate = utilitiesGate({
      found: known([line(known(18))]),
      digInches: known(12),
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
    expect(at(2031).note).toBe('Tunnel renewal is 70% certain for fiscal years 2031 to 2032.');
    expectHelp(at(2031));
    expect(at(2029)).toMatchObject({
      kind: 'construction',
      note: 'No works on the site in fiscal year 2029. In other years: Tunnel renewal in fiscal years 2031 to 2032.',
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
      note: '31% of the site lies in root protection.',
    });
    expect(at(known(0.31), known(true))).toMatchObject({
      status: 'pass',
      note: '31% of the site lies in root protection. An arborist agreed.',
    });
    expect(at(known(0.31), known(false))).toMatchObject({
      status: 'fail',
      note: '31% of the site lies in root protection. An arborist refused.',
    });
    for (const gate of [at(UNKNOWN), at(known(0.31)), at(known(0.31), known(false))])
      expectHelp(gate);
  });

  test('even a pass keeps the roots', () => {
    expect(at(known(0.1)).clearedBy).toContain('nothing against the trunk');
    expect(at(known(0.31), known(true)).clearedBy).toContain('No grade change');
  });
});
