import { describe, expect, test } from 'vitest';
import { accessGate } from '#estimating/gates/access.js';
import { accessibilityGate } from '#estimating/gates/accessibility.js';
import { type GateResult, overallStatus } from '#estimating/gates/gate-result.js';
import { reviewGate, REVIEWS } from '#estimating/gates/review.js';
import { slopeGate } from '#estimating/gates/slope.js';
import { typical } from '#estimating/defaults/coefficients.js';
import { known, type Known, UNKNOWN } from '#units/known.js';

function expectHelp({ status, clearedBy, ask, note }: GateResult): void {
  expect(ask.length).toBeGreaterThan(5);
  expect(note.length).toBeGreaterThan(5);
  if (status !== 'pass') expect(clearedBy.length).toBeGreaterThan(10);
}

describe('slope', () => {
  const at = (slope: Known<number>): GateResult =>
    slopeGate({ slopePercent: slope, limitPercent: 12 });

  test('fails above the limit only', () => {
    expect([12, 12.1].map((slope) => at(known(slope)).status)).toEqual(['pass', 'fail']);
    expect(at(known(14)).note).toBe('Slope 14% (limit 12%).');
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
