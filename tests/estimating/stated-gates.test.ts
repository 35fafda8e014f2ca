/** Gates as stated against gates as measured, on the tiny campus; planning day 25 November 2026. */
import { describe, expect, test } from 'vitest';
import type { Evidence, Gate, SiteFacts } from '#domain/site.js';
import type { SiteSurvey } from '#domain/survey.js';
import { gateReview } from '#estimating/gates/gate-review.js';
import { measuredGates } from '#estimating/gates/measured-gates.js';
import { gateProblems, withMeasuredGates } from '#estimating/gates/stated-gates.js';
import { utilitiesGate } from '#estimating/gates/utilities.js';
import { known, UNKNOWN } from '#units/known.js';
import { works } from '../support/tiny/works.js';
import { NO_FACTS, tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

interface Given {
  readonly facts?: Partial<SiteFacts>;
  readonly gates?: readonly Gate[];
  readonly evidence?: readonly Evidence[];
}

function campusWith({ facts = {}, ...given }: Given) {
  const site = tinySite('A', { facts: { ...NO_FACTS, ...facts }, ...given });
  return tinyCampus({ candidates: [site, tinySite('B')] });
}

const gate = (kind: Gate['kind'], status: Gate['status']): Gate => ({
  kind,
  status,
  note: 'as the office said',
  bars: 'all',
  clearedBy: 'a letter',
});
const sample = (date: string, fact = 'soil lead'): Evidence => ({
  fact,
  value: 'composite',
  method: 'laboratory',
  observer: 'a test',
  date,
});
const steep = { slopePercent: known(40) };
const level = { slopePercent: known(2) };

describe('lead', () => {
  const measured = (mg: number, ...evidence: Evidence[]) => {
    const campus = campusWith({ facts: { leadMgPerKg: known(mg) }, evidence });
    return measuredGates(campus, campus.candidates[0]!).contamination;
  };
  const fresh = sample('2026-10-01');

  test('bars food from 200 mg/kg on, and all building from 600', () => {
    expect(measured(199, fresh)).toMatchObject({ bars: 'edible', result: { status: 'pass' } });
    expect(measured(200, fresh)).toMatchObject({ bars: 'edible', result: { status: 'fail' } });
    expect(measured(599, fresh)).toMatchObject({ bars: 'edible', result: { status: 'fail' } });
    expect(measured(600, fresh)).toMatchObject({ bars: 'all', result: { status: 'fail' } });
  });

  test('that is unknown bars no more than food', () => {
    const campus = campusWith({});
    expect(measuredGates(campus, campus.candidates[0]!).contamination).toMatchObject({
      bars: 'edible',
      result: { status: 'unknown' },
    });
  });

  test('is as old as its newest test of soil, and of nothing else', () => {
    const status = (...evidence: Evidence[]) => measured(50, ...evidence).result.status;
    // A test holds for three years of 365.25 days: 1,095 days are younger, 1,096 are older.
    expect(status(sample('2023-11-26'))).toBe('pass');
    expect(status(sample('2023-11-25'))).toBe('unknown');
    expect(status(sample('2026-10-01'), sample('2012-04-01'))).toBe('pass');
    expect(status(sample('2012-04-01'), sample('2026-10-01'))).toBe('pass');
    expect(status(sample('2012-04-01'), sample('2026-10-01', 'shade'))).toBe('unknown');
    expect(status(sample('2026-10-01', 'shade'))).toBe('unknown');
    expect(measured(50).result.note).toContain('No test of it is dated');
    expect(measured(50, sample('2016-11-24')).result.note).toBe('The soil test is 10 years old.');
  });
});

describe('a gate that was measured to fail', () => {
  test('is added where nobody states it, and told', () => {
    const campus = campusWith({ facts: steep, gates: [gate('access', 'pass')] });
    const [a, b] = withMeasuredGates(campus);
    expect(a?.gates.map(({ kind, status }) => [kind, status])).toEqual([
      ['access', 'pass'],
      ['slope', 'fail'],
    ]);
    expect(a?.gates[1]?.note).toMatch(/\(measured\)$/);
    expect(a?.gates[1]?.clearedBy).toMatch(/ Ask: .+\.$/);
    expect(b).toBe(campus.candidates[1]);
    const [problem, ...more] = gateProblems(campus);
    expect(more).toEqual([]);
    expect(problem).toMatchObject({
      code: 'GATE-MEASURED-TO-FAIL',
      severity: 'warning',
      record: 'site A',
      field: 'gates',
      value: 'slope',
    });
    expect(problem?.problem).toContain('No slope gate is stated');
    expect(problem?.remedy).toContain('What clears it');
  });

  test('is left as it is stated, among others', () => {
    const gates = [gate('access', 'pass'), gate('slope', 'unknown')];
    const campus = campusWith({ facts: steep, gates });
    expect(withMeasuredGates(campus)[0]).toBe(campus.candidates[0]);
    expect(gateProblems(campus)).toEqual([]);
  });
});

describe('a stated gate that measures speak against', () => {
  const told = (given: Given) =>
    gateProblems(campusWith(given)).map(({ code, severity, field }) => [code, severity, field]);
  const contradicted = (severity: string, kind: string) => [
    ['GATE-CONTRADICTED', severity, `gates[${kind}].status`],
  ];

  test('is told either way round, and not where both agree', () => {
    expect(told({ facts: steep, gates: [gate('slope', 'pass')] })).toEqual(
      contradicted('warning', 'slope'),
    );
    expect(told({ facts: level, gates: [gate('slope', 'fail')] })).toEqual(
      contradicted('warning', 'slope'),
    );
    expect(told({ facts: steep, gates: [gate('slope', 'fail')] })).toEqual([]);
    expect(told({ facts: level, gates: [gate('slope', 'pass')] })).toEqual([]);
  });

  test('is not, where either is unknown or nothing measures it', () => {
    expect(told({ facts: level, gates: [gate('slope', 'unknown')] })).toEqual([]);
    expect(told({ facts: { slopePercent: UNKNOWN }, gates: [gate('slope', 'fail')] })).toEqual([]);
    expect(
      told({ facts: steep, gates: [gate('slope', 'fail'), gate('heritage', 'fail')] }),
    ).toEqual([]);
  });

  test('is an error where lead is said to pass, since that is about food', () => {
    const lead = (mg: number) => ({
      facts: { leadMgPerKg: known(mg) },
      evidence: [sample('2026-10-01')],
    });
    expect(told({ ...lead(300), gates: [gate('contamination', 'pass')] })).toEqual(
      contradicted('error', 'contamination'),
    );
    expect(told({ ...lead(50), gates: [gate('contamination', 'fail')] })).toEqual(
      contradicted('warning', 'contamination'),
    );
  });

  test('says what was stated and what was found, and whom to ask', () => {
    const [problem] = gateProblems(campusWith({ facts: steep, gates: [gate('slope', 'pass')] }));
    expect(problem?.value).toBe('pass');
    expect(problem?.problem).toMatch(/^The gate is said to pass, .* says fail: .*40/);
    expect(problem?.remedy).toMatch(/Whom to ask: .+\.$/);
  });
});

describe('the gates of a site for a reader', () => {
  const rowsOf = (given: Given, construction = tinyCampus().construction) => {
    const campus = { ...campusWith(given), construction };
    return gateReview(campus, campus.candidates[0]!);
  };
  const row = (given: Given, kind: Gate['kind']) => rowsOf(given).find((r) => r.kind === kind);

  test('what is stated has beside it what was measured, where that decides something', () => {
    expect(row({ facts: steep, gates: [gate('slope', 'pass')] }, 'slope')).toMatchObject({
      status: 'pass',
      basis: 'stated',
      asOf: null,
      measured: expect.stringContaining('40'),
    });
    const blind = { facts: { slopePercent: UNKNOWN }, gates: [gate('slope', 'pass')] };
    expect(row(blind, 'slope')?.measured).toBeNull();
    const lead = { gates: [gate('contamination', 'pass')] };
    expect(row(lead, 'contamination')?.asOf).toBe('2025-10-16');
  });

  test('works elsewhere do not close it', () => {
    const status = (site: string) =>
      rowsOf({}, [works('tunnel', 2028, { sites: [site] })]).find(
        ({ kind }) => kind === 'construction',
      )?.status;
    expect(status('A')).toBe('fail');
    expect(status('B')).toBe('pass');
  });
});

test('a survey without the depth of the dig leaves the utilities open, whatever is found', () => {
  const lines: SiteSurvey['utilityLines'] = known([]);
  const gate = utilitiesGate({ found: lines, digInches: UNKNOWN, marked: known(true) });
  expect(gate).toMatchObject({ status: 'unknown', note: 'How deep the work digs is not stated.' });
});
